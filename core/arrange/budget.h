// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace drawercast::arrange {

/// How long a search may go on. Evaluations are the same everywhere; whoever watches may stop it sooner.
struct Budget {
    std::uint64_t evaluations = 2'000'000;
    std::uint64_t seed = 1;
};

} // namespace drawercast::arrange
