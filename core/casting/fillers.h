// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/answers.h"

#include <vector>

namespace drawercast::casting {

inline constexpr double filler_pitch_mm =
    150;                                    ///< no part of a filler is further from a screw (common practice)
inline constexpr double filler_edge_mm = 6; ///< a screw nearer to a side splits it: one and a half diameters

/// A piece of full height beside the insert, as it stands on the base.
struct Filler {
    int number = 0; ///< F1, F2 …: from the back, left to right
    shape::Ring outline;
    std::vector<shape::Vec> screws; ///< from below; none where it is too slim for one: glued
    bool operator==(const Filler&) const = default;
};

/// The fillers of a board with their screws: two as far apart as fixing_of() has them, one where it is small,
/// more where it is long. Slivers beside rounded corners that only drawing knows are none: clay fills them.
std::vector<Filler> fillers_of(const PatternBoard& board);

} // namespace drawercast::casting
