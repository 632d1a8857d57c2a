// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/answer.h"
#include "job/drawer.h"
#include "plan/plan.h"

#include "canvas/view_map.h"
#include "sheets/ink.h"
#include "theme/palette.h"

#include <QPointF>
#include <QStringList>

/// What only the screen shows of a sheet that stands still.
namespace drawercast::app {

/// Lines every `step_mm` inside the insert, every fifth one stronger; none where they would stand closer than
/// 5 px.
sheets::Inks grid_ink(const shape::Box& insert, double step_mm, const ViewMap& view,
                      const theme::Theme& theme);

/// A padlock in the corner of a locked pocket, in ink: it is so, and not only while one works.
sheets::Inks lock_ink(const plan::DrawerPlan& plan, const job::Drawer& drawer, const ViewMap& view,
                      const theme::Theme& theme);

/// A padlock beside each vent the maker set, on a sheet of the mold.
sheets::Inks vent_lock_ink(const air::Answer& air, const ViewMap& view, const theme::Theme& theme);

/// A heading and lines below it, around `middle`, px.
sheets::Inks words_ink(const QStringList& lines, QPointF middle, const theme::Theme& theme);

/// The edge of all of a pocket's hollows together, drawer mm.
sheets::Path outline_of(const layout::PlacedPocket& pocket);

} // namespace drawercast::app
