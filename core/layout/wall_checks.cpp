// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/checks.h"
#include "layout/worst.h"
#include "shape/gap.h"

#include <algorithm>
#include <utility>

namespace drawercast::layout {

std::optional<Check> pair_check(const PlacedPocket& first, const PlacedPocket& second,
                                const Minimums& minimums) {
    const bool in_order =
        first.subject <= second.subject; // one order only: sums of floating point depend on it
    const PlacedPocket& a = in_order ? first : second;
    const PlacedPocket& b = in_order ? second : first;
    Worst wall;
    Overlap overlap;
    for (std::size_t i = 0; i < a.cuts.size(); ++i) {
        for (std::size_t j = 0; j < b.cuts.size(); ++j) {
            const double limit = minimums.wall(std::min(a.cuts[i].depth_mm, b.cuts[j].depth_mm));
            if (!shape::near(a.boxes[i], b.boxes[j], limit)) continue;
            const auto& outline_a = a.cuts[i].outline.contour;
            const auto& outline_b = b.cuts[j].outline.contour;
            const shape::Gap gap = shape::gap_between(outline_a, a.boxes[i], outline_b, b.boxes[j], limit);
            wall.take(gap, limit);
            if (gap.mm == 0) overlap.take(shape::overlap_width(outline_a, outline_b), gap.a);
        }
    }
    if (overlap.found())
        return Check{Code::overlap,      Severity::mend, {a.subject, b.subject}, overlap.mm, 0,
                     CheckFrame::drawer, overlap.at,     std::nullopt,           false};
    if (wall.found()) return wall.check(Code::wall_thin, {a.subject, b.subject});
    return std::nullopt;
}

} // namespace drawercast::layout
