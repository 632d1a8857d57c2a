// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/record.h"
#include "layout/check.h"

#include <string_view>
#include <vector>

namespace drawercast::layout {

/// Whether `value` of a check is worse than `than`: smaller where the limit is a minimum (walls, edges,
/// floors, how full the low end gets, how many are placed), larger where it is a maximum.
/// Never by less than 0.001, so that a value stored rounded still stands.
bool worse(Code code, double value, double than);

/// Marks the looks of `drawer` that the maker left as is (same code, same subjects, not worse than when he
/// did) and sorts again. A look that has become a mend, or got worse, is not marked.
void mark_left_as_is(std::vector<Check>& checks, const std::vector<job::LeftAsIs>& left,
                     std::string_view drawer);

} // namespace drawercast::layout
