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
#include <vector>

/// The blue pencil: what is chosen, tried and snapped to. It is only ever on the screen.
namespace drawercast::app {

/// Words beside what is being done: how far something is turned, what a notch snapped to.
struct LiveNote {
    QString words;
    shape::Vec at; ///< drawer mm
};

struct LiveScene {
    const plan::DrawerPlan& plan;
    const job::Job& job;
    const std::vector<std::string>& chosen;
    const std::vector<std::string>& moving; ///< being dragged or turned
    std::optional<std::size_t> notch;       ///< chosen, of the last chosen pocket
    const std::string& hovered;
    const layout::Snap& guides;
    const std::optional<shape::Box>& band; ///< mm
    const std::optional<LiveNote>& note;
    std::optional<QPointF> turn_ring;  ///< nothing: not shown
    std::optional<shape::Box> plate;   ///< of the chosen check, px
    std::optional<MeasurePoint> under; ///< what a measurement would take hold of
    std::optional<std::pair<MeasurePoint, MeasurePoint>> measured;
    const ViewMap& view;
    QSizeF size; ///< of the view
    const theme::Theme& theme;
    const sheets::Taken& taken;           ///< what words keep off
    std::optional<shape::Vec> last_air{}; ///< while something is moved: where the mold would fill last, mm
};

sheets::Inks live_ink(const LiveScene& scene);

} // namespace drawercast::app
