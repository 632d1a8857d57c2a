// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/correction.h"

#include "casting/coverage.h"
#include "casting/sections.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace drawercast::casting {
namespace {

using shape::Box;
using shape::Vec;

/// Some pockets, what counts of them, and where.
class Spot {
  public:
    Spot(std::span<const Standing* const> members, const Ground& ground, Counting counting, Field field)
        : members_(members), ground_(ground), counting_(counting), field_(field) {
        for (const Standing* member : members)
            turns_.push_back(shape::Turn::of_degrees(member->pocket->pose.turn_deg));
    }

    double foot_area() {
        return area(0, [](const Standing& member) { return &member.casting->foot; });
    }

    /// Plan area of blocks and clay at a node of the ground.
    double clay_area(std::size_t node) {
        return area(clay_reach(ground_.fillet_mm, ground_.nodes[node].height_mm),
                    [node](const Standing& member) { return &member.casting->clay[node]; });
    }

    /// From the nodes' areas over `foot_mm2`; upward, as long as there is anything: clay only recedes.
    double fillet(double foot_mm2) {
        double sum = 0;
        for (std::size_t k = ground_.nodes.size(); k-- > 0;) {
            const double clay_mm2 = clay_area(k);
            if (clay_mm2 == 0) break;
            sum += ground_.nodes[k].weight_mm * (clay_mm2 - foot_mm2);
        }
        return sum;
    }

    /// The same where the clay meets below a height only, and the blocks not at all. The curve starts with a
    /// kink there that Gauss' nodes would not see, and its integrand is 0 at both ends.
    double fillet_below(double height_mm) {
        const double start = std::asin(1 - height_mm / ground_.fillet_mm);
        std::vector<Vec> curve{{start, 0}};
        for (std::size_t k = 0; k < ground_.nodes.size(); ++k)
            if (ground_.nodes[k].phi > start)
                curve.push_back({ground_.nodes[k].phi, ground_.nodes[k].per_phi_mm * clay_area(k)});
        curve.push_back({std::numbers::pi / 2, 0});
        return integral_through(curve);
    }

    Layers layers() {
        std::vector<double> heights;
        for (const Standing* member : members_) {
            const auto own = slice_heights(member->pocket->form->cuts, ground_.insert->thickness_mm);
            heights.insert(heights.end(), own.begin(), own.end());
        }
        std::sort(heights.begin(), heights.end());
        heights.erase(std::unique(heights.begin(), heights.end()), heights.end());
        Layers out;
        for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
            const double found = section_area((heights[i] + heights[i + 1]) / 2);
            if (found != 0) out.push_back({heights[i], heights[i + 1], found});
        }
        return out;
    }

  private:
    template <class FootprintOf>
    double area(double reach_mm, FootprintOf footprint_of) {
        placed_.clear();
        Field field = field_;
        for (std::size_t i = 0; i < members_.size(); ++i) {
            const layout::PlacedPocket& pocket = *members_[i]->pocket;
            placed_.push_back({footprint_of(*members_[i]), turns_[i], pocket.pose.at});
            if (counting_ != Counting::crowded) // one, or what two share
                field.window = shape::shared_box(field.window, pocket.box.grown(reach_mm + clay_sagitta_mm));
        }
        return coverage_.area(placed_, field, counting_);
    }

    double section_area(double height_mm) {
        std::vector<Footprint> sections;
        for (const Standing* member : members_)
            sections.push_back(
                section_at(member->pocket->form->cuts, ground_.insert->thickness_mm, height_mm));
        std::size_t next = 0;
        return area(0, [&](const Standing&) { return &sections[next++]; });
    }

    std::span<const Standing* const> members_;
    const Ground& ground_;
    Counting counting_;
    Field field_;
    std::vector<shape::Turn> turns_;
    std::vector<Placed> placed_;
    Coverage coverage_;
};

Correction correction_of(Spot& spot, const Meeting& meeting) {
    Correction out;
    if (!meeting.touching) {
        out.fillet_mm3 = spot.fillet_below(meeting.below_mm);
        return out;
    }
    out.footprint_mm2 = spot.foot_area();
    out.fillet_mm3 = spot.fillet(out.footprint_mm2);
    if (out.footprint_mm2 != 0) out.layers = spot.layers();
    return out;
}

Box everywhere() {
    constexpr double far = 1e9;
    return {{-far, -far}, {far, far}};
}

} // namespace

Correction beyond_edge(const Standing& block, const Meeting& at_edge, const Ground& ground) {
    const std::array members{&block};
    Spot spot(members, ground, Counting::any, {everywhere(), &ground.opening, true});
    return correction_of(spot, at_edge);
}

Correction shared_by(const Standing& a, const Standing& b, const Meeting& meeting, const Ground& ground,
                     bool at_edge) {
    const bool in_order = a.pocket->subject <= b.pocket->subject;
    const std::array members{in_order ? &a : &b, in_order ? &b : &a};
    Spot spot(members, ground, Counting::shared, {everywhere(), at_edge ? &ground.opening : nullptr, false});
    return correction_of(spot, meeting);
}

Correction crowded_in(const Box& window, std::span<const Standing* const> members, const Ground& ground,
                      bool at_edge) {
    Spot spot(members, ground, Counting::crowded, {window, at_edge ? &ground.opening : nullptr, false});
    const bool clay_meets = !ground.nodes.empty() && spot.clay_area(ground.nodes.size() - 1) != 0;
    if (!clay_meets && ground.fillet_mm > 0) return {}; // the lowest node has the widest clay
    return correction_of(spot, Meeting{true, 0});
}

} // namespace drawercast::casting
