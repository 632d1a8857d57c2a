// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_looks.h"

#include "base/contains.h"
#include "mold/screws.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace drawercast::mold {

namespace {

/// As far as a trial reads a closure: its spring, and how far around it stresses mean nothing.
bool feel_alike(const job::Closure& a, const job::Closure& b, double thickness_mm) {
    return a.stiffness_n_mm == b.stiffness_n_mm &&
           std::max(thickness_mm, head_radius_mm(a)) == std::max(thickness_mm, head_radius_mm(b));
}

bool same_trial(const PlateDesign& a, const PlateDesign& b) {
    return a.closures == b.closures && a.stiffeners == b.stiffeners && a.board == b.board &&
           a.glued == b.glued && a.stiffener == b.stiffener &&
           feel_alike(a.closure, b.closure, a.board.thickness_mm) &&
           feel_alike(a.end_closure, b.end_closure, a.board.thickness_mm);
}

bool among(const std::vector<double>& some, const std::vector<double>& all) {
    return std::all_of(some.begin(), some.end(), [&](double one) { return contains(all, one); });
}

/// Where the stiffeners of a design stand, along y or along x.
std::pair<std::vector<double>, std::vector<double>> places_of(const PlateDesign& design) {
    std::pair<std::vector<double>, std::vector<double>> out;
    for (const StiffenerAt& at : design.stiffeners)
        if (at.from.x_mm == at.to.x_mm)
            out.first.push_back(at.from.x_mm);
        else
            out.second.push_back(at.from.y_mm);
    return out;
}

} // namespace

void LooksOnMesh::start(const PlateShape& shape, std::vector<double> across_mm, std::vector<double> deep_mm) {
    if (shape_ == shape && across_mm_ == across_mm && deep_mm_ == deep_mm) return;
    boxes_.clear();
    seen_.clear();
    last_ = {};
    shape_ = shape;
    across_mm_ = std::move(across_mm);
    deep_mm_ = std::move(deep_mm);
}

const PlateOnBox& LooksOnMesh::box_for(const PlateDesign& design) {
    std::vector<double> across, deep; // no structured binding: clang++ before 16 lets no lambda have one
    std::tie(across, deep) = places_of(design);
    if (among(across, across_mm_) && among(deep, deep_mm_)) across = across_mm_, deep = deep_mm_;
    const auto found = std::find_if(boxes_.begin(), boxes_.end(), [&](const Box& box) {
        return box.board == design.board && box.across_mm == across && box.deep_mm == deep;
    });
    if (found != boxes_.end()) return *found->plate;
    if (boxes_.size() == boxes_kept_) boxes_.pop_front();
    auto plate = std::make_unique<PlateOnBox>(section_of(design.board), shape_, across, deep, fineness_);
    boxes_.push_back({design.board, std::move(across), std::move(deep), std::move(plate)});
    return *boxes_.back().plate;
}

const Trial& LooksOnMesh::at(const PlateDesign& design, double most_gap_mm, const LiftField& like) {
    const auto found = std::find_if(seen_.begin(), seen_.end(),
                                    [&](const Seen& seen) { return same_trial(seen.design, design); });
    const bool fresh = found == seen_.end();
    if (!fresh && (!found->trial.cut_short || found->trial.gap_mm > most_gap_mm)) return found->trial;
    Trial trial = trial_of(box_for(design), design, most_gap_mm, like);
    last_ = trial.lift;
    if (!fresh) return found->trial = std::move(trial);
    return seen_.emplace_back(Seen{design, std::move(trial)}).trial;
}

void PlateLooks::start(const PlateIn& in, const job::Board& box_board,
                       const std::vector<Stiffening>& stiffenings) {
    std::vector<double> across, deep;
    for (const auto& stiffening : stiffenings) {
        const PatternIn pattern = pattern_in(in, box_board, stiffening);
        for (const double at : stiffener_places(pattern))
            (stiffeners_along_y(pattern) ? across : deep).push_back(at);
    }
    for (auto* places : {&across, &deep}) {
        std::sort(places->begin(), places->end());
        places->erase(std::unique(places->begin(), places->end()), places->end());
    }
    rough_.start(shape_of(in, box_board), std::move(across), std::move(deep));
    start_close(shape_of(in, box_board)); // bare plates need no lines, stiffened ones their own
}

void PlateLooks::forget_boxes() {
    rough_.forget_boxes();
    close_.forget_boxes();
}

} // namespace drawercast::mold
