// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include "sheets/magnitude_ladder.h"
#include "sheets/pattern_board.h"
#include "sheets/sheet.h"

namespace drawercast::sheets {

/// What the bands on the plate tell: how far it lifts at closed pressure, or when the foam arrives below it.
enum class PlateGround { lift, arrival };

/// The pressure plate from above, over the mirrored mold: outline, the opening below it dashed, bands with
/// their figures, stiffeners, closures with their pull and driving order, vents and the places where air
/// stays, bow and gap beside their limits, checks that lie on it. Empty but for its name while no plate is
/// known. `lines_only`: without washes, bars and checks.
Sheet<shape::InMold> pressure_plate(const job::Job& job, const plan::DrawerPlan& plan, Finish finish,
                                    PlateGround ground = PlateGround::lift);

/// The bands that pressure_plate() shows: for the sheet's legend.
Bands plate_bands(const job::Job& job, const plan::DrawerPlan& plan, PlateGround ground);

} // namespace drawercast::sheets
