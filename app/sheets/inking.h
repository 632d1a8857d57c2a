// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/ink.h"
#include "sheets/marks.h"
#include "sheets/taken.h"
#include "sheets/view.h"
#include "theme/palette.h"

#include <optional>
#include <vector>

namespace drawercast::sheets {

/// Where a check's plate was put; `from` is the place it speaks of.
struct SetPlate {
    std::string key;
    Vec from;
    Box box;
};

/// Turns marks to ink for one view in one theme. Words look for room among what was inked before them, so
/// marks come in the order in which they are to lie on each other, checks last.
class Inking {
  public:
    Inking(const View& view, const theme::Theme& theme) : view_(view), theme_(theme) {}
    /// Beside what was inked elsewhere. A check's plate keeps the place it had in `before` while that is
    /// free, so that plates do not jump about while something else moves.
    Inking(const View& view, const theme::Theme& theme, Taken taken, std::vector<SetPlate> before)
        : view_(view), theme_(theme), taken_(std::move(taken)), before_(std::move(before)) {}

    void ink(const Mark& mark);
    /// All that was inked; checks' plates come last, when all that they speak of is drawn.
    Inks take();
    const Taken& taken() const { return taken_; }
    const std::vector<SetPlate>& plates() const { return plates_; }

  private:
    void add(const PathMark& mark);
    void add(const HatchMark& mark);
    void add(const LabelMark& mark);
    void add(const TextMark& mark);
    void add(const DimensionMark& mark);
    void add(const GapMark& mark);
    void add(const FlagMark& mark);
    void add(const CenterMark& mark);
    void add(const SignMark& mark);
    void add(const LegendMark& mark);
    void add(const KeepFreeMark& mark);

    struct Block; // lines of words measured together
    Block measured(const std::vector<TextLine>& lines) const;
    void write_block(const Block& block, Vec center, bool upright);
    bool label_inside(const LabelMark& mark, bool uncover);
    void label_outside(const LabelMark& mark);
    void plate(const Box& box, const QColor& color);

    struct Written; // one line of words with what it takes
    Written line_of(const TextMark& mark) const;
    Box taken_by(const Written& words, const Spot& spot) const;
    bool is_clear(const Box& box, const Elsewhere& elsewhere) const;
    std::optional<Spot> spot_for(const TextMark& mark, const Written& words) const;
    void write_line(const TextMark& mark, const Written& words, Vec base);
    bool on_leader(const TextMark& mark, const Written& words);

    /// The place a check's plate had before, moved along with what it speaks of.
    std::optional<Box> kept_place(Vec from, Vec size, const std::string& key) const;
    void leader(Vec from, Vec to, const CheckTag& tag);
    void check_plate(Vec from, const CheckTag& tag);
    void badge(Vec center, const CheckTag& tag);
    Vec badge_size() const;

    void stroke(const Path& device, theme::LineRole role);
    void arrow_head(Vec tip, Vec direction, const QColor& color, double px = 8);
    theme::Lettering lettering(theme::TextRole role) const;
    double px(double logical) const { return logical * view_.per_px; }

    const View& view_;
    const theme::Theme& theme_;
    Inks inks_;
    std::string about_;
    Taken taken_;
    std::vector<SetPlate> before_;
    std::vector<SetPlate> plates_;
    std::vector<std::pair<Vec, CheckTag>> waiting_; ///< for their plates
};

/// Inks of `marks` (of one layer or all) in their order.
Inks ink_of(const std::vector<Mark>& marks, const View& view, const theme::Theme& theme);
Inks ink_of(const std::vector<Mark>& marks, Layer layer, const View& view, const theme::Theme& theme);

} // namespace drawercast::sheets
