// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/closing.h"
#include "mold/plate_answers.h"
#include "plan/json_text.h"

namespace drawercast::plan {

/// The drawer's "plate"; points [x, y] in the mold frame:
/// - board, box_board, thickness_mm (the plate's), stiffeners (how many), stiffener and stiffeners_mm (center
///   lines [from, to]) where there are any;
/// - bow_mm, gap_mm at closed pressure; stress_mpa, stiffener_stress_mpa at the pressure to build for;
/// - closure, end_closure (at stiffeners' ends), closures (how many), closures_mm, closure_n (pull at the
///   pressure to build for), closure_capacity_n (mean ultimate of each, 0 for a screw too short to hold),
///   order (from 1 into closures_mm, as they are driven); max_closure_n and capacity_n are those of the
///   closure with the greatest share of its capacity;
/// - governs ("bow", "gap", "stress", "stiffener-stress", "closure", "wall-bow", "wall-stress",
///   "screw-length", "closing")
///   with use, its value over its limit; price; runner_up (board, stiffeners, closures, price), absent where
///   nothing else was tried.
void write_plate(JsonText& json, const mold::PlateAnswer& answer);

/// The drawer's "base", held down as the plate is held up: bearers (how many under it), bearer and
/// end_closure where there are any; bow_mm, gap_mm at closed pressure; stress_mpa, max_pull_n (of the screw
/// with the greatest share of its capacity_n) at the pressure to build for; foot_screws (into the walls);
/// use, the worst value over its limit. Absent until worked out, and where the plate does not hold.
void write_base(JsonText& json, const mold::PlateAnswer& answer);

/// Members of "time", seconds from the start of mixing: plate_on_s, close_s (driving all closures),
/// close_margin_s (by how much the plate may come on later in the worse case; below 0 it must be sooner),
/// in_by_contact (how many closures must be in when the mold is full).
void write_closing(JsonText& json, const mold::Closing& closing);

} // namespace drawercast::plan
