// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

/// Screws of the mold's own joints (the plate's closures are worked out with the plate).
namespace drawercast::stock {

inline constexpr double joint_screw_mm = 4;   ///< diameter; pilot 2.5, clearance 4.5 (common practice)
inline constexpr double joint_pitch_mm = 100; ///< at most, along a wall's foot (common practice)
inline constexpr double corner_pitch_mm = 40; ///< at most, up a corner (common practice)
inline constexpr double first_joint_mm = 30;  ///< from a wall's end, at least
inline constexpr double joint_grip_mm =
    30; ///< in the second part, an edge: 7 to 8 diameters (common practice)
inline constexpr double block_grip_mm = 20; ///< in a block, a face, as long as it is high enough
inline constexpr double least_grip_mm = 8;  ///< with less a screw holds nothing: glue (our guess)
inline constexpr double skin_mm = 5;        ///< left between a screw's point and the far face

/// The screw to buy through `through_mm` into `into_mm` of wood: the shortest one that grips `grip_mm`, or
/// the longest that keeps its skin; none where that grips less than least_grip_mm. Lengths as sold, 16 to
/// 120 mm (common practice).
std::optional<double> screw_length_mm(double through_mm, double into_mm, double grip_mm);

/// A headless nail, nipped off to whole millimeters: it grips 15 mm where it can, and keeps 2 mm of skin;
/// none where that grips less than 5 mm (our guess).
std::optional<double> pin_length_mm(double through_mm, double into_mm);

/// Where `count` stand along a line: equal pitch, the outer two as screws_along() has them.
std::vector<double> spread_mm(double line_mm, double end_mm, int count);

/// How many stand along a line at `pitch_mm` or less, the outer two `end_mm` from its ends; two at least.
int screws_along(double line_mm, double end_mm, double pitch_mm);

} // namespace drawercast::stock
