// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/parallax.h"

#include "shape/region.h"

#include <algorithm>

namespace drawercast::capture {

Expected<shape::Ring> without_parallax(const shape::Ring& seen, const Camera& camera, double height_mm,
                                       Walls walls) {
    if (height_mm <= 0 || camera.by == CameraBy::nothing) return seen;
    const double share = (camera.distance_mm - height_mm) / camera.distance_mm;
    shape::Ring lowered = seen;
    for (shape::Vec& p : lowered) p = camera.foot + (p - camera.foot) * share;
    if (walls == Walls::edge_only) return lowered;
    const auto both = shape::shared(shape::region_of(seen), shape::region_of(lowered));
    if (!both) return both.error();
    const auto largest = std::max_element(both->patches.begin(), both->patches.end(),
                                          [](const shape::Patch& a, const shape::Patch& b) {
                                              return shape::area(a.outer) < shape::area(b.outer);
                                          });
    if (largest == both->patches.end())
        return Problem("capture-parallax", {},
                       phrase("nothing is left of an object once its height is taken out"),
                       phrase("Check the height, or stand nearer above it"));
    return largest->outer;
}

double parallax_doubt(const shape::Ring& seen, const Camera& camera, double height_mm) {
    if (height_mm <= 0 || camera.by == CameraBy::nothing) return 0;
    double farthest = 0;
    for (const shape::Vec p : seen) farthest = std::max(farthest, length(p - camera.foot));
    return farthest * height_mm * camera.within_mm / (camera.distance_mm * camera.distance_mm);
}

} // namespace drawercast::capture
