// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/checks.h"
#include "layout/worst.h"
#include "shape/gap.h"

#include <algorithm>

namespace drawercast::layout {

namespace {

using FormCut = Cut<shape::InObject>;
using shape::Gap;

/// The hollows that hang together with the levels, directly or over other notches; the rest are notches
/// apart.
std::vector<bool> joined_to_levels(const std::vector<FormCut>& cuts) {
    std::vector<bool> joined;
    for (const FormCut& cut : cuts) joined.push_back(cut.kind == FormCut::Kind::level);
    for (bool grew = true; grew;) {
        grew = false;
        for (std::size_t i = 0; i < cuts.size(); ++i) {
            for (std::size_t j = 0; j < cuts.size() && !joined[i]; ++j) {
                if (!joined[j]) continue;
                if (shape::gap_between(cuts[i].outline.contour, cuts[j].outline.contour, slack_mm).mm >
                    slack_mm)
                    continue;
                joined[i] = grew = true;
            }
        }
    }
    return joined;
}

} // namespace

void add_notch_checks(const PlacedPocket& pocket, const Minimums& minimums, std::vector<Check>& checks) {
    // In the object's own plane, so that turning the pocket never decides whether a notch touches.
    const std::vector<FormCut>& cuts = pocket.form->cuts;
    if (cuts.empty() || cuts.back().kind == FormCut::Kind::level) return; // notches come last
    const std::vector<bool> joined = joined_to_levels(cuts);
    Gap nearest;
    Worst wall;
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        if (joined[i]) continue;
        for (std::size_t j = 0; j < cuts.size(); ++j) {
            if (!joined[j] && j <= i) continue; // two notches apart: once
            Gap gap = shape::gap_between(cuts[i].outline.contour, cuts[j].outline.contour);
            gap.a = shape::placed(gap.a, pocket.pose);
            gap.b = shape::placed(gap.b, pocket.pose);
            if (!joined[j] && gap.mm <= slack_mm) continue; // one hollow together
            if (joined[j] && gap.mm < nearest.mm) nearest = gap;
            wall.take(gap, minimums.wall(std::min(cuts[i].depth_mm, cuts[j].depth_mm)));
        }
    }
    if (nearest.mm == shape::any_distance) return; // all joined
    checks.push_back({Code::notch_apart,
                      Severity::note,
                      {pocket.subject},
                      0,
                      0,
                      CheckFrame::drawer,
                      nearest.a,
                      nearest.b,
                      false});
    if (wall.found()) checks.push_back(wall.check(Code::wall_thin, {pocket.subject}));
}

} // namespace drawercast::layout
