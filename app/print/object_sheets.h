// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "print/page.h"
#include "print/paper.h"

#include <vector>

/// Sheets for the bench where things are measured, before any layout.
namespace drawercast::print {

/// Every object of the job from above at true size, as it was measured and without any fit: to lay the thing
/// on, and tick that it fits. Turned by a quarter where that brings it onto the paper; what is larger than
/// the paper is listed, not drawn. Rulers both ways on each page.
std::vector<Page> object_sheets(const job::Job& job, Paper paper, const Printing& printing);

/// A sheet to fill in by hand: a line for each thing's sizes, and a grid of 5 mm (or 1/4 in) to trace on.
std::vector<Page> measuring_sheet(job::DisplayUnits units, Paper paper, const Printing& printing);

} // namespace drawercast::print
