// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/form_casting.h"
#include "casting/ground.h"
#include "layout/pocket.h"

#include <memory>
#include <optional>

namespace drawercast::casting {

/// A pocket's blocks and clay where they stand.
struct Standing {
    std::shared_ptr<const layout::PlacedPocket> pocket;
    std::shared_ptr<const FormCasting> casting;
};

/// That the clay or the blocks of two meet, or that one's reach the opening's edge.
struct Meeting {
    bool touching = false; ///< the blocks themselves do
    double below_mm = 0;   ///< otherwise their clay does, below this height
};

std::optional<Meeting> meeting_of(const Standing& a, const Standing& b);
std::optional<Meeting> meeting_at_edge(const Standing& block, const Ground& ground);

} // namespace drawercast::casting
