// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

#include <vector>

namespace drawercast::buildup {

/// A side of a plan, turned so that y grows away from the viewer; from.x < to.x.
struct Span {
    shape::Vec from;
    shape::Vec to;
};

/// Indices of `spans`, farther ones before those that hide them. Segments that do not cross have such an
/// order for every direction (de Berg et al., Computational Geometry, on translating segments one by one);
/// neighbors along a sweep line are all that must be compared.
std::vector<int> far_to_near(const std::vector<Span>& spans);

} // namespace drawercast::buildup
