// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/frame.h"

#include "sheets/marks.h"

#include <QtGlobal>

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace drawercast::sheets {

/// A drawing as data, described once and painted on screen, printer, PDF and SVG. The frame is in the type:
/// whatever prints a pattern board can't be handed a drawer plan.
template <class Frame>
struct Sheet {
    std::string name;    ///< "Drawer plan": English; language::tr says it
    Box area;            ///< what must be seen, mm
    Vec lower_room_px{}; ///< room for words and dimensions left of and below the area
    Vec upper_room_px{}; ///< right of and above it
    std::vector<Mark> marks;
};

/// What the frame is called, beside its sign (an F, upright or reversed): English; language::tr says it.
inline std::string_view frame_words(const Sheet<shape::InDrawer>&) {
    return QT_TRANSLATE_NOOP("Sheets", "Drawer, from above");
}
inline std::string_view frame_words(const Sheet<shape::InMold>&) {
    return QT_TRANSLATE_NOOP("Sheets", "Mold, MIRRORED");
}
inline bool is_mirrored(const Sheet<shape::InDrawer>&) { return false; }
inline bool is_mirrored(const Sheet<shape::InMold>&) { return true; }

/// Puts marks on a sheet; takes outlines and points of the sheet's own frame only.
template <class Frame>
class Drafter {
  public:
    explicit Drafter(Sheet<Frame>& sheet) : sheet_(sheet) {}

    /// Layer and subject of what is put from now on.
    void turn_to(Layer layer, std::string subject = {}) {
        layer_ = layer;
        subject_ = std::move(subject);
    }
    void put(MarkKind kind) { sheet_.marks.push_back({layer_, subject_, std::move(kind)}); }

    void edge(const shape::Outline<Frame>& outline, theme::LineRole line,
              std::optional<theme::Wash> wash = std::nullopt) {
        put(PathMark{path_of(outline.contour), line, wash});
    }
    void edge(const shape::Area<Frame>& area, theme::LineRole line,
              std::optional<theme::Wash> wash = std::nullopt) {
        put(PathMark{path_of(area.region), line, wash});
    }
    void hatch(const shape::Outline<Frame>& outline, Hatch hatch) {
        put(HatchMark{path_of(outline.contour), hatch});
    }
    void hatch(const shape::Area<Frame>& area, Hatch hatch) { put(HatchMark{path_of(area.region), hatch}); }

  private:
    Sheet<Frame>& sheet_;
    Layer layer_ = Layer::ground;
    std::string subject_;
};

} // namespace drawercast::sheets
