// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <iterator>

namespace drawercast {

/// Whether one of them is equal to `value`.
template <class Range, class Value>
constexpr bool contains(const Range& range, const Value& value) {
    return std::find(std::begin(range), std::end(range), value) != std::end(range);
}

} // namespace drawercast
