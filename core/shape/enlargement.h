// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace drawercast::shape {

/// What every length of the mold is multiplied by, so that foam which shrinks by `shrinkage` of its length
/// (linear, 0 ≤ s < 0.2) comes out at its finished size: k = 1/(1 − s).
constexpr double enlargement_for(double shrinkage) { return 1 / (1 - shrinkage); }

} // namespace drawercast::shape
