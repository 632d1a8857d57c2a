// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/checks.h"
#include "layout/worst.h"
#include "shape/gap.h"

namespace drawercast::layout {

namespace {

using shape::Contour;
using shape::Gap;

/// The widest overlap of the pocket with an obstruction as it stands (the gap around it is the insert's
/// edge).
Overlap obstructed(const PlacedPocket& pocket, const Insert& insert) {
    Overlap worst;
    for (const auto& obstruction : insert.obstructions) {
        for (const auto& cut : pocket.cuts) {
            const Gap gap = shape::gap_between(cut.outline.contour, obstruction.contour, 0);
            if (gap.mm == 0)
                worst.take(shape::overlap_width(cut.outline.contour, obstruction.contour), gap.a);
        }
    }
    return worst;
}

/// How far the pocket sticks out over the edge `outer`.
void take_outside(const Gap& gap, Overlap& outside) {
    if (gap.mm < 0) outside.take(-gap.mm, gap.a, gap.b);
}

void add_outside(const PlacedPocket& pocket, const Overlap& outside, std::vector<Check>& checks) {
    if (outside.found())
        checks.push_back({Code::outside,
                          Severity::mend,
                          {pocket.subject},
                          outside.mm,
                          0,
                          CheckFrame::drawer,
                          outside.at,
                          outside.to,
                          false});
}

} // namespace

void add_edge_checks(const PlacedPocket& pocket, const Insert& insert, const Minimums& minimums,
                     std::vector<Check>& checks) {
    const Overlap on_obstruction = obstructed(pocket, insert);
    if (on_obstruction.found()) {
        // The obstruction explains what is missing of the insert there; only leaving the drawer itself is
        // news.
        checks.push_back({Code::obstructed,
                          Severity::mend,
                          {pocket.subject},
                          0,
                          0,
                          CheckFrame::drawer,
                          on_obstruction.at,
                          std::nullopt,
                          false});
        Overlap outside;
        for (const auto& cut : pocket.cuts)
            take_outside(shape::gap_inside(cut.outline.contour, insert.drawer.contour, 0), outside);
        add_outside(pocket, outside, checks);
        return;
    }
    Worst edge;
    Overlap outside;
    for (std::size_t i = 0; i < pocket.cuts.size(); ++i) {
        const Contour& outline = pocket.cuts[i].outline.contour;
        const double limit = minimums.edge(pocket.cuts[i].depth_mm);
        const Gap rim = shape::gap_inside(outline, insert.edges[0].contour, limit);
        take_outside(rim, outside);
        edge.take(rim, limit);
        for (std::size_t hole = 1; hole < insert.edges.size(); ++hole) {
            const Contour& other = insert.edges[hole].contour;
            const Gap gap = shape::gap_between(outline, other, limit);
            if (gap.mm == 0) outside.take(shape::overlap_width(outline, other), gap.a);
            edge.take(gap, limit);
        }
    }
    if (outside.found())
        add_outside(pocket, outside, checks);
    else if (edge.found())
        checks.push_back(edge.check(Code::edge_thin, {pocket.subject}));
}

} // namespace drawercast::layout
