// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "layout/snap.h"
#include "plan/plan.h"

#include "canvas/view_map.h"
#include "theme/palette.h"

#include <QPainter>
#include <QPointF>
#include <QRectF>

#include <optional>
#include <string>
#include <vector>

/// The blue pencil: what is chosen, tried and snapped to. It is only ever on the screen.
namespace drawercast::app {

struct LiveScene {
    const plan::DrawerPlan& plan;
    const job::Job& job;
    const std::vector<std::string>& chosen;
    const std::string& hovered;
    bool moving = false; ///< the chosen ones are being dragged or turned
    const layout::Snap& guides;
    const std::optional<shape::Box>& band;
    std::optional<QPointF> turn_ring;
    const ViewMap& view;
    const theme::Theme& theme;
};

void paint_live_marks(QPainter& painter, const LiveScene& scene);

/// Where paint_live_marks may leave a trace because of the chosen pockets and the guides.
QRectF live_reach(const LiveScene& scene);

/// A distance shown while something is moved.
struct LiveDimension {
    shape::Vec from;
    shape::Vec to;
};
/// To the nearest edge of the insert each way, and to the nearest neighbor.
std::vector<LiveDimension> live_dimensions(const plan::DrawerPlan& plan,
                                           const std::vector<std::string>& chosen);

/// Lines every `step_mm` inside the insert, every fifth one stronger; none where they would stand closer than
/// 5 px.
void paint_grid_lines(QPainter& painter, const shape::Box& insert, double step_mm, const ViewMap& view,
                      const theme::Theme& theme);

void paint_focus_frame(QPainter& painter, const QRect& rect, const theme::Theme& theme);

} // namespace drawercast::app
