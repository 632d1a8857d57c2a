// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/sections.h"

#include "casting/coverage.h"
#include "casting/fillet.h"
#include "casting/quadrature.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::casting {
namespace {

using shape::Vec;

constexpr int slices_per_round = 24;
constexpr double overlap_mm2 = 1e-6; // flush sides that were turned share slivers of rounding

/// A lying round's opening is a rectangle whose first side runs along the axis.
double axis_length(const FormCut& cut) {
    const auto& core = cut.outline.contour.core;
    return length(core[1] - core[0]);
}

shape::Contour narrowed(const FormCut& cut, double height_mm) {
    shape::Contour out = cut.outline.contour;
    auto& core = out.core;
    const double half = half_width(*cut.round, height_mm);
    const Vec across = core[3] - core[0];
    const Vec reach = across * (half / length(across));
    const Vec from = (core[0] + core[3]) * 0.5;
    const Vec to = (core[1] + core[2]) * 0.5;
    core = {from - reach, to - reach, to + reach, from + reach};
    return out;
}

/// ∫ 2·√(R² − u²) du from 0 to u.
double half_disc(double radius, double u) {
    const double v = std::clamp(u / radius, -1.0, 1.0);
    return radius * radius * (v * std::sqrt(1 - v * v) + std::asin(v));
}

/// Heights from the axis (or the face) of a round down to its height, finer where it closes.
std::vector<double> round_slices(const FormCut& cut, double insert_mm) {
    const double from = std::max(0.0, cut.round->axis_mm);
    const double to = height_of(cut, insert_mm);
    std::vector<double> heights;
    for (int k = 0; k <= slices_per_round; ++k)
        heights.push_back(from + (to - from) * std::sin(std::numbers::pi / 2 * k / slices_per_round));
    heights.back() = to;
    return heights;
}

void add_round(const FormCut& cut, double insert_mm, Layers& layers) {
    const layout::Round& round = *cut.round;
    const double along = axis_length(cut);
    const double straight = std::clamp(round.axis_mm, 0.0, insert_mm);
    if (straight > 0) layers.push_back({0, straight, 2 * round.radius_mm * along});
    if (height_of(cut, insert_mm) <= straight) return;
    const std::vector<double> heights = round_slices(cut, insert_mm);
    for (std::size_t k = 0; k + 1 < heights.size(); ++k) {
        const double low = heights[k];
        const double high = heights[k + 1];
        const double area = half_disc(round.radius_mm, high - round.axis_mm) -
                            half_disc(round.radius_mm, low - round.axis_mm);
        layers.push_back({low, high, along * area / (high - low)});
    }
}

void add_alone(const FormCut& cut, double insert_mm, Layers& layers) {
    if (cut.round) return add_round(cut, insert_mm, layers);
    layers.push_back({0, height_of(cut, insert_mm), shape::area(cut.outline.contour)});
}

bool overlapping(std::span<const FormCut> cuts) {
    if (cuts.size() < 2) return false;
    std::vector<Footprint> feet(cuts.size());
    std::vector<Placed> placed;
    Field field;
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        feet[i].add(path_around(cuts[i].outline.contour, 0, block_sagitta_mm));
        placed.push_back({&feet[i], {}, {}});
        field.window.add(feet[i].box);
    }
    return Coverage().area(placed, field, Counting::shared) > overlap_mm2;
}

bool narrows(std::span<const FormCut> cuts, double low_mm, double high_mm, double insert_mm) {
    return std::any_of(cuts.begin(), cuts.end(), [&](const FormCut& cut) {
        return cut.round && high_mm > cut.round->axis_mm && low_mm < height_of(cut, insert_mm);
    });
}

} // namespace

double half_width(const layout::Round& round, double height_mm) {
    const double below = std::max(0.0, height_mm - round.axis_mm);
    return std::sqrt(std::max(0.0, round.radius_mm * round.radius_mm - below * below));
}

double height_of(const FormCut& cut, double insert_mm) { return std::min(cut.depth_mm, insert_mm); }

double foot_area(std::span<const FormCut> cuts) {
    if (!overlapping(cuts)) {
        double sum = 0;
        for (const FormCut& cut : cuts) sum += shape::area(cut.outline.contour);
        return sum;
    }
    Footprint feet;
    for (const FormCut& cut : cuts) feet.add(path_around(cut.outline.contour, 0, block_sagitta_mm));
    return union_area(feet);
}

Footprint section_at(std::span<const FormCut> cuts, double insert_mm, double height_mm) {
    Footprint out;
    for (const FormCut& cut : cuts) {
        if (!(height_of(cut, insert_mm) > height_mm)) continue;
        const bool narrowing = cut.round && height_mm > std::max(0.0, cut.round->axis_mm);
        out.add(path_around(narrowing ? narrowed(cut, height_mm) : cut.outline.contour, 0, block_sagitta_mm));
    }
    return out;
}

Footprint clay_at(std::span<const FormCut> cuts, double insert_mm, double fillet_mm, double height_mm) {
    Footprint out;
    for (const FormCut& cut : cuts) {
        const double radius = std::min(fillet_mm, height_of(cut, insert_mm));
        out.add(path_around(cut.outline.contour, clay_reach(radius, height_mm), clay_sagitta_mm));
    }
    return out;
}

std::vector<double> slice_heights(std::span<const FormCut> cuts, double insert_mm) {
    std::vector<double> heights{0};
    for (const FormCut& cut : cuts) {
        heights.push_back(height_of(cut, insert_mm));
        if (!cut.round || !(height_of(cut, insert_mm) > std::max(0.0, cut.round->axis_mm))) continue;
        const auto slices = round_slices(cut, insert_mm);
        heights.insert(heights.end(), slices.begin(), slices.end());
    }
    std::sort(heights.begin(), heights.end());
    heights.erase(std::unique(heights.begin(), heights.end()), heights.end());
    return heights;
}

Layers layers_of(std::span<const FormCut> cuts, double insert_mm) {
    Layers layers;
    if (!overlapping(cuts)) {
        for (const FormCut& cut : cuts) add_alone(cut, insert_mm, layers);
        return layers;
    }
    const auto area_of = [&](double height_mm) { return union_area(section_at(cuts, insert_mm, height_mm)); };
    const std::vector<double> heights = slice_heights(cuts, insert_mm);
    for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
        const double low = heights[i];
        const double high = heights[i + 1];
        double area = 0;
        if (narrows(cuts, low, high, insert_mm))
            for (const Node& node : gauss_nodes(3, low, high)) area += node.weight * area_of(node.at);
        else
            area = (high - low) * area_of((low + high) / 2);
        layers.push_back({low, high, area / (high - low)});
    }
    return layers;
}

} // namespace drawercast::casting
