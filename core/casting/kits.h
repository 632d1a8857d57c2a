// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/answers.h"
#include "job/foam.h"

#include <vector>

namespace drawercast::casting {

inline constexpr double spare_share = 0.10; ///< over all that is mixed (common practice)

struct PurchaseIn {
    double mixed_ml = 0;        ///< over all drawers
    std::vector<job::Kit> kits; ///< not empty; those under 1 mL are not bought
    bool operator==(const PurchaseIn&) const = default;
};

/// Which kits to open and to buy. Foam on the shelf is taken first: where it is enough, the kits that leave
/// the least over, then the fewest, then those listed first; else all of it, and of the shop's kits the
/// cheapest whole set that covers the rest, then least left over, then fewest, then those listed first.
/// Exact: all sets are considered, in whole mL (a kit's rounded down, the need up) and prices to 0.0001.
Purchase purchase_of(const PurchaseIn& in);

} // namespace drawercast::casting
