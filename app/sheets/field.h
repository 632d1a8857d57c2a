// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/model.h"
#include "mold/plate_answers.h"

#include "sheets/path.h"

#include <vector>

/// A figure known at the crossings of upright and level lines, and the bands of it to draw.
namespace drawercast::sheets {

struct Field {
    std::vector<double> x_mm; ///< ascending
    std::vector<double> y_mm;
    std::vector<double> values; ///< row by row: y.size() rows of x.size()

    double at(std::size_t column, std::size_t row) const { return values[row * x_mm.size() + column]; }
};

/// Made finer by cubics through the values (slopes by parabolas through three neighbors), so that no two
/// lines are further apart than `pitch_mm`: a bow's contours then are as round as the bow.
Field refined(const Field& field, double pitch_mm);

Field field_of(const mold::LiftField& lift);

/// When the foam arrives, out to the walls of the mold; 0 where none comes.
Field field_of(const air::AirMap& map);

/// Linear between the lines; outside of them as at their edge.
double value_at(const Field& field, Vec p);

/// The outlines of all that is at `level` or above, along the edge of the field where it is so there: filled
/// by the even-odd rule they are the band. A saddle is cut so that the higher sides stay apart.
std::vector<std::vector<Vec>> level_loops(const Field& field, double level);

/// Closed path of these loops.
Path loops_path(const std::vector<std::vector<Vec>>& loops);

} // namespace drawercast::sheets
