// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "shape/frame.h"

#include "sheets/path.h"

#include <string>

namespace drawercast::sheets {

/// Side of a zone, mm: a hand's width, small enough to find one pocket. 60 mm, or 2 1/2 in.
double zone_side_mm(job::DisplayUnits units);

/// "A" for the strip at the front, then "B", …, "Z", "AA".
std::string zone_letter(int row);

/// The zone of a point of the drawer, as lettered in its wall: "D6". Points outside get the nearest zone.
std::string zone_of(shape::Point<shape::InDrawer> point, const Box& drawer, job::DisplayUnits units);

/// How many zones stand along a side; the last may be short.
int zone_count(double side_mm, double zone_mm);

} // namespace drawercast::sheets
