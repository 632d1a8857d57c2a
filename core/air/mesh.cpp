// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/mesh.h"

#include "base/demand.h"

#include <cmath>

namespace drawercast::air {

Mesh::Mesh(double width_mm, double depth_mm, double pitch_mm) {
    DRAWERCAST_DEMAND(width_mm > 0 && depth_mm > 0 && pitch_mm > 0, "a mesh has an extent");
    const auto count = [&](double mm) {
        return std::max(1, static_cast<int>(std::ceil(mm / pitch_mm - 1e-9)));
    };
    columns_ = count(width_mm);
    rows_ = count(depth_mm);
    dx_ = width_mm / columns_;
    dy_ = depth_mm / rows_;
}

} // namespace drawercast::air
