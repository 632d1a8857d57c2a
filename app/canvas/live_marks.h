// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "layout/snap.h"
#include "plan/plan.h"

#include "canvas/measure_point.h"
#include "canvas/view_map.h"
#include "sheets/inking.h"
#include "theme/palette.h"

#include <QPointF>
#include <QString>

#include <optional>
#include <string>
#include <utility>
#include <vector>

/// The blue pencil: what is chosen, tried and snapped to. It is only ever on the screen.
namespace drawercast::app {

/// Words beside what is being done: how far something is turned, what a notch snapped to.
struct LiveNote {
    QString words;
    shape::Vec at; ///< drawer mm
};

/// What tools show while they are at it, until the next call.
struct LiveAids {
    layout::Snap guides;
    std::optional<shape::Box> band; ///< mm
    std::optional<LiveNote> note;
};

/// What the blue pencil draws on.
struct LiveFrame {
    const ViewMap& view;
    QSizeF size; ///< of the view
    const theme::Theme& theme;
    const sheets::Taken& taken; ///< what words keep off
    const LiveAids& aids;
    const std::vector<std::string>& moving; ///< pockets being dragged or turned
    std::optional<shape::Vec> last_air;     ///< while they are: where the mold would fill last, mm
    std::optional<shape::Box> plate;        ///< of the chosen check, px
};

/// On the drawer plan.
struct LiveScene {
    const LiveFrame& frame;
    const plan::DrawerPlan& plan;
    const job::Job& job;
    const std::vector<std::string>& chosen;
    const std::vector<std::string>& spaced; ///< shown with their distances
    std::optional<std::size_t> notch{};     ///< chosen, of the last chosen pocket
    std::string hovered{};
    std::optional<QPointF> turn_ring{};  ///< nothing: not shown
    std::optional<MeasurePoint> under{}; ///< what a measurement would take hold of
    std::optional<std::pair<MeasurePoint, MeasurePoint>> measured{};
};

sheets::Inks live_ink(const LiveScene& scene);

} // namespace drawercast::app
