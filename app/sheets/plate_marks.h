// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "mold/plate_answers.h"
#include "plan/plan.h"

#include "sheets/air_marks.h"
#include "sheets/field.h"
#include "sheets/magnitude_ladder.h"

#include <QString>

#include <string>
#include <vector>

/// The parts that the pressure plate's sheet and its templates are put together from.
namespace drawercast::sheets {

/// The inside of a drawer's box. Needs plan.insert.
Box box_inside(const job::Job& job, const plan::DrawerPlan& plan);

/// The plate covers the box and the tops of its walls.
Box plate_box(const mold::PlateDesign& design, const Box& inside);

/// Which edge of the plate a closure stands at, as a unit vector pointing outward.
Vec outward(const mold::ClosureAt& closure, const Box& inside);

/// Number of each closure, by index: its place in the driving order, from 1. It stands on the sheet, on the
/// templates and in the drilling table alike.
std::vector<int> closure_numbers(const mold::PlateDesign& design);

Box stiffener_box(const mold::PlateDesign& design, const mold::StiffenerAt& at);

/// On a template, along a piece that lies there: "stiffener 2", "bearer 1".
void add_piece_name(MoldPen& pen, const mold::StiffenerAt& at, const QString& name);

/// Bands between the levels, and the lines between them.
void add_bands(MoldPen& pen, const Field& field, const Bands& bands);
void add_contours(MoldPen& pen, const Field& field, const Bands& bands);
/// Figures in the lines that are long enough, where there is room for them `within`.
void add_contour_figures(MoldPen& pen, const Field& field, const Bands& bands, const Box& within,
                         double least_line_mm);

/// Plain pieces on the plate with their center lines and names.
void add_stiffeners(MoldPen& pen, const job::Job& job, const mold::PlateDesign& design);

/// A ringed cross for a screw or rod, a small ring for a clamp or strap, which needs no hole.
void add_closure_signs(MoldPen& pen, const mold::PlateDesign& design);

/// Outside the plate at each closure its number, and a bar as long as its pull: at the tick a third of what
/// it holds is reached. The worst in bold.
void add_pulls(MoldPen& pen, const job::Job& job, const mold::PlateAnswer& answer, const Box& inside);

/// Longest bar, with what stands around it: room that the sheet needs outside the plate, mm.
inline constexpr double pull_room_mm = 30;

} // namespace drawercast::sheets
