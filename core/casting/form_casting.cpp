// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/form_casting.h"

#include "casting/coverage.h"
#include "casting/sections.h"
#include "shape/gap.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::casting {
namespace {

using Cuts = std::vector<FormCut>;

/// Whether clay up to `reach_mm` around the outline meets itself nowhere: then its area grows by Steiner's
/// formula.
bool open_all_round(const shape::Contour& outline, double reach_mm) {
    if (shape::convex(outline)) return true;
    Footprint clay;
    clay.add(path_around(outline, reach_mm, clay_sagitta_mm));
    const double formula = shape::area(shape::Contour{outline.core, outline.round_mm + reach_mm});
    return std::abs(union_area(clay) - formula) <= 1e-9 * formula;
}

bool all_alone(const Cuts& cuts, const std::vector<double>& reach_mm) {
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        if (!open_all_round(cuts[i].outline.contour, reach_mm[i])) return false;
        for (std::size_t j = i + 1; j < cuts.size(); ++j) {
            const double reach = reach_mm[i] + reach_mm[j];
            if (shape::gap_between(cuts[i].outline.contour, cuts[j].outline.contour, reach).mm < reach)
                return false;
        }
    }
    return true;
}

double fillet_of(const Cuts& cuts, const std::vector<double>& reach_mm, double insert_mm, double fillet_mm) {
    if (!all_alone(cuts, reach_mm)) return fillet_by_areas(cuts, insert_mm, fillet_mm, own_clay_nodes);
    double sum = 0;
    for (std::size_t i = 0; i < cuts.size(); ++i) sum += fillet_alone(cuts[i].outline.contour, reach_mm[i]);
    return sum;
}

/// The measured volume stands for the levels; what the notches add to them stays.
double measured_mm3(const FormIn& in, double outlined_mm3) {
    return 1000 * *in.volume_ml + outlined_mm3 - levels_mm3(*in.form, in.insert_mm);
}

} // namespace

double fillet_by_areas(const Cuts& cuts, double insert_mm, double fillet_mm, int nodes) {
    std::vector<double> radii;
    for (const FormCut& cut : cuts) radii.push_back(std::min(fillet_mm, height_of(cut, insert_mm)));
    std::sort(radii.begin(), radii.end());
    radii.erase(std::unique(radii.begin(), radii.end()), radii.end());

    const auto area_at_height = [&](double height_mm) {
        return union_area(clay_at(cuts, insert_mm, fillet_mm, height_mm));
    };
    const double foot = area_at_height(fillet_mm);
    double sum = 0;
    double low = 0;
    for (const double radius : radii) { // a fillet ends at each of these heights
        for (const Node& node : gauss_nodes(nodes, 0, std::asin(1 - low / radius))) {
            const double height = radius * (1 - std::sin(node.at));
            sum += node.weight * radius * std::cos(node.at) * (area_at_height(height) - foot);
        }
        low = radius;
    }
    return sum;
}

double levels_mm3(const layout::PocketForm& form, double insert_mm) {
    Cuts levels;
    for (const FormCut& cut : form.cuts)
        if (cut.kind == FormCut::Kind::level) levels.push_back(cut);
    return volume(layers_of(levels, insert_mm));
}

FormCasting casting_of(const FormIn& in) {
    const Cuts& cuts = in.form->cuts;
    FormCasting out;
    out.layers = layers_of(cuts, in.insert_mm);
    out.footprint_mm2 = foot_area(cuts);
    out.even_mm = lowest_top(out.layers);
    out.blocks_mm3 = volume(out.layers);
    if (in.volume_ml) out.blocks_mm3 = measured_mm3(in, out.blocks_mm3);
    for (const FormCut& cut : cuts) {
        out.reach_mm.push_back(std::min(in.fillet_mm, height_of(cut, in.insert_mm)));
        out.greatest_reach_mm = std::max(out.greatest_reach_mm, out.reach_mm.back());
    }
    out.foot = clay_at(cuts, in.insert_mm, in.fillet_mm, in.fillet_mm);
    if (in.fillet_mm > 0) {
        out.fillet_mm3 = fillet_of(cuts, out.reach_mm, in.insert_mm, in.fillet_mm);
        for (const ClayNode& node : clay_nodes(in.fillet_mm, shared_clay_nodes))
            out.clay.push_back(clay_at(cuts, in.insert_mm, in.fillet_mm, node.height_mm));
    }
    return out;
}

} // namespace drawercast::casting
