// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include <optional>

/// From tape readings of a real drawer, which is never quite square, to the rectangle an insert can be made
/// to.
namespace drawercast::job {

/// The inside of a drawer as read with a tape at one height, mm: three widths, three depths, both diagonals.
struct Taped {
    double front_mm = 0;        ///< width along the front
    double middle_width_mm = 0; ///< width halfway back
    double back_mm = 0;         ///< width along the back
    double left_mm = 0;         ///< depth along the left side
    double middle_depth_mm = 0; ///< depth in the middle
    double right_mm = 0;        ///< depth along the right side
    double rising_mm = 0;       ///< diagonal from front left to back right
    double falling_mm = 0;      ///< diagonal from back left to front right

    bool operator==(const Taped&) const = default;
};

/// Where one direction's size went, mm: greatest reading − uneven − skew = the rectangle's side.
struct Lost {
    double uneven_mm =
        0; ///< between the greatest and the least reading: taper, bowed sides, narrower at the bottom
    double skew_mm = 0; ///< below the least reading: corners that are not square
    bool operator==(const Lost&) const = default;
};

/// The rectangle that goes in at the top and lies at the bottom.
struct Inside {
    double width_mm = 0;
    double depth_mm = 0;
    Lost width_lost;
    Lost depth_lost;
    double disagree_mm =
        0; ///< how far the worse pair of diagonals is from what the sides allow: reading error
    bool operator==(const Inside&) const = default;
};

/// Diagonals further than this share of themselves from what the sides allow are a misreading (our guess: 5
/// mm on a drawer of 480 × 360; a tape read with care is good to 1 mm).
inline constexpr double misread_share = 0.008;

/// The largest rectangle inside all readings at the top and, where taken, at the bottom.
///
/// The corners. Let A, B be the front corners and C, D those behind them, u = ((B − A) + (D − C))/2 and
/// v = ((C − A) + (D − B))/2. Then D − A = v + u and C − B = v − u, so for any four corners
///     rising² − falling² = 4 u·v,    rising² + falling² = 2(u² + v²).
/// The four sides and the difference of the squared diagonals fix a quadrilateral (five readings, five
/// freedoms); the sum of the squares is left over and only checks the tape. So both squares are shifted by
/// the one amount that makes the back as wide as read; the shift, as a length, is `disagree_mm`.
///
/// The sides. u and v join the middles of opposite sides. Where the middle is read narrower than |u|, sides
/// bow in by the difference; a tape cannot say which one, so the worse of "all on one side" and "all on the
/// other" is taken (what is lost is convex in the share, so one of the two ends is the worst). A middle read
/// wider is of no use to a rectangle. One side bowed in beside one bowed out as far cannot be seen by these
/// readings.
///
/// The rectangle. In a frame turned by θ its left side is the rightmost point of the left wall, and so on
/// round: it lies inside whatever the walls do between their ends (which gives away under lean²/length: 0.1
/// mm for 5 mm on 300). Its sides are, to first order in the lean of the walls, concave and piecewise linear
/// in θ, so the area has one hill between the outermost angles at which it lies flush with a wall, and is
/// climbed there by thirds: a parallelogram skewed by s along its front loses s from its width where it is
/// wider than deep, and else width/depth·s from its depth. Top and bottom share the front as their direction;
/// how far they are shifted against each other is not read, so each must hold the rectangle on its own. Sizes
/// are never more than the least reading.
///
/// Problems: "measured-range" (a reading that is not above 0 and at most 5000 mm), "measured-disagree"
/// (corners that cannot be, or diagonals off by more than misread_share), "measured-nothing" (nothing is
/// left). `where` is "top" or "bottom".
Expected<Inside> largest_inside(const Taped& top, const std::optional<Taped>& bottom);

} // namespace drawercast::job
