// SPDX-License-Identifier: GPL-3.0-or-later
#include "buildup/bodies.h"

#include "casting/fillet.h"
#include "casting/sections.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::buildup {

using shape::Box;
using shape::Region;
using shape::Ring;
using shape::Vec;

namespace {

constexpr double sagitta_mm = 0.25; ///< chords of arcs, at the scale of a picture
constexpr int clay_layers = 4;
constexpr int round_layers = 6;

Region outlined(const shape::Contour& contour) {
    return shape::region_of(shape::traced(contour, sagitta_mm));
}

std::vector<double> sorted(std::vector<double> heights) {
    std::sort(heights.begin(), heights.end());
    const auto same = [](double a, double b) { return b - a < 0.01; };
    heights.erase(std::unique(heights.begin(), heights.end(), same), heights.end());
    return heights;
}

Region merged(const std::vector<Region>& all) {
    const auto sum = shape::united(all);
    return sum ? *sum : Region{};
}

/// The plan of one level or notch of a block at a height within it.
Region cut_at(const layout::Cut<shape::InMold>& cut, double height_mm) {
    const auto& core = cut.outline.contour.core;
    if (!cut.round || core.size() != 4) return outlined(cut.outline.contour);
    const double half = casting::half_width(*cut.round, height_mm);
    // the side across the axis is the one that is as long as the block is wide at the board
    const double foot = 2 * casting::half_width(*cut.round, 0);
    const double first = shape::length(core[1] - core[0]), second = shape::length(core[2] - core[1]);
    const bool first_across = std::abs(first - foot) < std::abs(second - foot);
    const Vec a = first_across ? (core[1] + core[2]) * 0.5 : (core[0] + core[1]) * 0.5;
    const Vec b = first_across ? (core[3] + core[0]) * 0.5 : (core[2] + core[3]) * 0.5;
    // the axis runs through the middles of the two sides across it
    const Vec from = first_across ? (core[0] + core[1]) * 0.5 : (core[1] + core[2]) * 0.5;
    const Vec to = first_across ? (core[2] + core[3]) * 0.5 : (core[3] + core[0]) * 0.5;
    const double full = shape::length(a - b);
    return strip(from, to, std::min(full, 2 * half));
}

Solid block_of(const casting::Block& block) {
    Solid solid{Part::block, block.subject, {}};
    std::vector<double> heights{0};
    for (const auto& part : block.parts) {
        heights.push_back(part.cut.depth_mm);
        if (!part.cut.round) continue;
        solid.smooth = true;
        const double axis = std::max(0.0, part.cut.round->axis_mm);
        for (int i = 0; i < round_layers; ++i) {
            const double share = std::sin(std::numbers::pi / 2 * i / round_layers);
            heights.push_back(axis + (part.cut.depth_mm - axis) * share);
        }
    }
    heights = sorted(std::move(heights));
    for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
        const double middle = (heights[i] + heights[i + 1]) / 2;
        std::vector<Region> plans;
        for (const auto& part : block.parts)
            if (part.cut.depth_mm > middle) plans.push_back(cut_at(part.cut, middle));
        Region plan = merged(plans);
        if (!plan.empty()) solid.layers.push_back({std::move(plan), heights[i], heights[i + 1]});
    }
    return solid;
}

/// Leaves out points that lie within `sagitta_mm` of the way between their neighbors: an offset's arcs are
/// finer than a picture shows.
Ring coarse(const Ring& ring) {
    Ring kept;
    std::vector<Vec> dropped;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        dropped.push_back(ring[i]);
        const Vec next = ring[(i + 1) % ring.size()];
        const Vec from = kept.empty() ? next : kept.back();
        const double span = shape::length(next - from);
        const bool near = span > 0 && std::all_of(dropped.begin(), dropped.end(), [&](Vec p) {
                              return std::abs(shape::cross(next - from, p - from)) < sagitta_mm / 2 * span;
                          });
        if (!kept.empty() && near) continue;
        kept.push_back(ring[i]);
        dropped.clear();
    }
    return kept.size() < 3 ? ring : kept;
}

Region coarse(const Region& region) {
    std::vector<Region> patches;
    for (const auto& patch : region.patches) {
        Region one = shape::region_of(coarse(patch.outer));
        for (const Ring& hole : patch.holes) {
            Ring turned = coarse(hole);
            std::reverse(turned.begin(), turned.end());
            one = less(one, shape::region_of(turned));
        }
        patches.push_back(std::move(one));
    }
    return merged(patches);
}

Region of_all(const std::vector<Solid>& solids, double height_mm) {
    std::vector<Region> plans;
    for (const Solid& solid : solids)
        if (Region plan = plan_at(solid, height_mm); !plan.empty()) plans.push_back(std::move(plan));
    return merged(plans);
}

} // namespace

Region rectangle(const Box& box) {
    return shape::region_of(Ring{box.min, {box.max.x, box.min.y}, box.max, {box.min.x, box.max.y}});
}

Region disc(Vec center, double radius_mm) {
    constexpr int chords = 16;
    Ring ring;
    for (int i = 0; i < chords; ++i) {
        const double turn = 2 * std::numbers::pi * i / chords;
        ring.push_back(center + Vec{std::cos(turn), std::sin(turn)} * radius_mm);
    }
    return shape::region_of(ring);
}

Region strip(Vec from, Vec to, double width_mm) {
    const double length = shape::length(to - from);
    if (length == 0 || width_mm <= 0) return {};
    const Vec along = (to - from) * (1 / length), aside = Vec{-along.y, along.x} * (width_mm / 2);
    return shape::region_of(Ring{from - aside, to - aside, to + aside, from + aside});
}

Region less(const Region& a, const Region& b) {
    const auto rest = shape::without(a, b);
    return rest ? *rest : a;
}

Region both(const Region& a, const Region& b) {
    const auto common = shape::shared(a, b);
    return common ? *common : a;
}

Region plan_at(const Solid& solid, double height_mm) {
    for (const Layer& layer : solid.layers)
        if (layer.bottom_mm <= height_mm && height_mm < layer.top_mm) return layer.plan;
    return {};
}

std::vector<Solid> blocks_of(const casting::PatternBoard& board) {
    std::vector<Solid> blocks;
    for (const auto& block : board.blocks) blocks.push_back(block_of(block));
    return blocks;
}

Solid clay_of(const casting::PatternBoard& board, double fillet_mm, const std::vector<Solid>& blocks) {
    Solid clay{Part::clay, {}, {}, true};
    for (int i = 0; i < clay_layers && fillet_mm > 0; ++i) {
        const double bottom = fillet_mm * i / clay_layers, top = fillet_mm * (i + 1) / clay_layers;
        const double middle = (bottom + top) / 2;
        const Region feet = of_all(blocks, middle);
        const auto grown = shape::offset_round(feet, casting::clay_reach(fillet_mm, middle));
        if (!grown || feet.empty()) continue;
        clay.layers.push_back({both(less(coarse(*grown), feet), board.opening.region), bottom, top});
    }
    return clay;
}

Solid foam_of(const casting::PatternBoard& board, const std::vector<Solid>& blocks, const Solid& clay,
              const Region& away) {
    Solid foam{Part::foam, {}, {}, true};
    std::vector<double> heights{0, board.height_mm};
    for (const Solid& block : blocks)
        for (const Layer& layer : block.layers) heights.push_back(std::min(layer.top_mm, board.height_mm));
    for (const Layer& layer : clay.layers) heights.push_back(std::min(layer.top_mm, board.height_mm));
    heights = sorted(std::move(heights));
    const Region opening = less(board.opening.region, away);
    for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
        const double middle = (heights[i] + heights[i + 1]) / 2;
        Region plan = less(opening, of_all(blocks, middle));
        if (const Region wet = plan_at(clay, middle); !wet.empty()) plan = less(plan, wet);
        foam.layers.push_back({std::move(plan), heights[i], heights[i + 1]});
    }
    return foam;
}

} // namespace drawercast::buildup
