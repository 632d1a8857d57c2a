// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/marks.h"

#include <string>

namespace drawercast::sheets {

/// The side of its ring on which words stand if they can.
enum class Way { right, below };
struct Around {
    Way first = Way::right;
    Box within{}; ///< mm; empty: anywhere
    std::string shorter{};
};

/// Words beside a ring about `at`, on whichever side of it there is room; else on a leader, else
/// the shorter ones.
TextMark words_around(Vec at, double radius_mm, std::string words, const Around& around);

} // namespace drawercast::sheets
