// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/live_dimensions.h"

#include "base/contains.h"
#include "shape/gap.h"

#include "canvas/hit.h"

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

using shape::Box;
using shape::Vec;

Box around(Vec a, Vec b) {
    Box box;
    box.add(a);
    box.add(b);
    return box;
}

/// One direction of the drawer: which way the insert's two edges lie.
struct Way {
    bool along_x;
    double low(const Box& box) const { return along_x ? box.min.x : box.min.y; }
    double high(const Box& box) const { return along_x ? box.max.x : box.max.y; }
    Vec point(double along, double across) const { return along_x ? Vec{along, across} : Vec{across, along}; }
    double across(const Box& box, double share) const {
        return along_x ? box.min.y + share * box.height() : box.min.x + share * box.width();
    }
};

std::optional<LiveDimension> free_line(const Way& way, const Box& box, double edge, double side,
                                       const std::vector<Box>& others) {
    for (const double share : {0.5, 0.25, 0.75, 0.1, 0.9}) {
        const double across = way.across(box, share);
        const LiveDimension line{way.point(edge, across), way.point(side, across), std::nullopt};
        const Box covered = around(line.from, line.to);
        if (std::any_of(others.begin(), others.end(), [&](const Box& b) { return shape::near(b, covered); }))
            continue;
        if (share == 0.5) return line;
        return LiveDimension{line.from, line.to, way.point(side, way.across(box, 0.5))};
    }
    return std::nullopt;
}

void add_edges(std::vector<LiveDimension>& out, const Box& box, const Box& insert,
               const std::vector<Box>& others) {
    for (const Way way : {Way{true}, Way{false}}) {
        const double low = way.low(box) - way.low(insert), high = way.high(insert) - way.high(box);
        const auto to_low = [&] { return free_line(way, box, way.low(insert), way.low(box), others); };
        const auto to_high = [&] { return free_line(way, box, way.high(insert), way.high(box), others); };
        std::optional<LiveDimension> line; // none to an edge that it sticks out over
        const bool low_first = low <= high;
        for (const bool to_the_low : {low_first, !low_first})
            if (!line && (to_the_low ? low : high) > 0) line = to_the_low ? to_low() : to_high();
        if (line) out.push_back(*line);
    }
}

/// A check drawn on the sheet says its distance itself.
bool has_check(const plan::DrawerPlan& plan, const std::string& a, const std::string& b) {
    return std::any_of(plan.checks.begin(), plan.checks.end(), [&](const layout::Check& check) {
        return check.at && check.to && check.severity != layout::Severity::note &&
               contains(check.subjects, a) && contains(check.subjects, b);
    });
}

void add_neighbor(std::vector<LiveDimension>& out, const plan::DrawerPlan& plan,
                  const std::vector<std::string>& moving) {
    shape::Gap nearest;
    const std::string *self = nullptr, *other = nullptr;
    for (const auto& subject : moving) {
        const auto* pocket = find_pocket(plan, subject);
        if (pocket == nullptr) continue;
        for (const auto& one : plan.pockets) {
            if (!shape::near(pocket->box, one->box, nearest.mm) || contains(moving, one->subject)) continue;
            for (std::size_t i = 0; i < pocket->cuts.size(); ++i)
                for (std::size_t k = 0; k < one->cuts.size(); ++k) {
                    const auto gap =
                        shape::gap_between(pocket->cuts[i].outline.contour, pocket->boxes[i],
                                           one->cuts[k].outline.contour, one->boxes[k], nearest.mm);
                    if (!(gap.mm < nearest.mm)) continue;
                    nearest = gap;
                    self = &pocket->subject;
                    other = &one->subject;
                }
        }
    }
    if (self != nullptr && nearest.mm > 0 && !has_check(plan, *self, *other))
        out.push_back({nearest.a, nearest.b, std::nullopt});
}

} // namespace

std::vector<LiveDimension> live_dimensions(const plan::DrawerPlan& plan,
                                           const std::vector<std::string>& moving) {
    const Box box = box_of(plan, moving);
    std::vector<LiveDimension> out;
    if (box.empty()) return out;
    std::vector<Box> others;
    for (const auto& pocket : plan.pockets)
        if (!contains(moving, pocket->subject)) others.push_back(pocket->box);
    if (plan.insert) add_edges(out, box, plan.insert->box, others);
    add_neighbor(out, plan, moving);
    return out;
}

} // namespace drawercast::app
