// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/cavity.h"

#include "base/demand.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace drawercast::casting {
namespace {

/// Where each of `before` is in `now`, −1 where it is gone; `now` holds no instance twice.
std::vector<int> found_again(const std::vector<CavityPocket>& before, const std::vector<CavityPocket>& now) {
    std::unordered_map<const layout::PlacedPocket*, int> index;
    for (std::size_t i = 0; i < now.size(); ++i) index.emplace(now[i].pocket.get(), static_cast<int>(i));
    std::vector<int> out(before.size(), -1);
    for (std::size_t i = 0; i < before.size(); ++i) {
        const auto at = index.find(before[i].pocket.get());
        if (at != index.end() && now[static_cast<std::size_t>(at->second)] == before[i]) out[i] = at->second;
    }
    return out;
}

Cavity enlarged(Cavity cavity, double k) {
    const double k2 = k * k;
    const double k3 = k2 * k;
    cavity.insert_area_mm2 *= k2;
    cavity.height_mm *= k;
    cavity.gross_mm3 *= k3;
    cavity.blocks_mm3 *= k3;
    cavity.fillet_mm3 *= k3;
    cavity.net_mm3 *= k3;
    cavity.open_area_mm2 *= k2;
    return cavity;
}

} // namespace

Cavity cavity_of(const CavityIn& in) { return CavityMemory().update(in); }

Cavity CavityMemory::update(const CavityIn& in) {
    if (!on_same_ground(in)) start_anew(in);
    enlargement_ = in.enlargement;
    std::vector<shape::Box> dirty;
    const std::vector<int> changed = take_over(in, dirty);
    if (!dirty.empty()) {
        contacts_.refresh(changed, places_, *ground_);
        crowds_.refresh(dirty, places_, contacts_.all(), *ground_);
        drop_unused_forms();
    }
    sum_up();
    return enlarged(finished_, enlargement_);
}

bool CavityMemory::on_same_ground(const CavityIn& in) const {
    return ground_ && ground_->insert == in.insert && ground_->fillet_mm == in.fillet_mm / in.enlargement;
}

void CavityMemory::start_anew(const CavityIn& in) {
    DRAWERCAST_DEMAND(in.insert && !in.insert->edges.empty(), "a mold has an insert");
    ground_ = std::make_unique<Ground>(in.insert, in.fillet_mm / in.enlargement);
    pockets_.clear();
    places_.clear();
    contacts_.clear();
    crowds_.clear();
}

/// Brings the places up to date. The places that are new or others than before, ascending; `dirty`: their
/// boxes and those of the pockets that left, clay included.
std::vector<int> CavityMemory::take_over(const CavityIn& in, std::vector<shape::Box>& dirty) {
    const auto leaves = [&](const Place& place) { dirty.push_back(place.box.grown(place.reach_mm)); };
    std::vector<int> changed;
    if (pockets_.size() != in.pockets.size()) {
        const std::vector<int> now_at = found_again(pockets_, in.pockets);
        std::vector<Place> places(in.pockets.size());
        std::vector<CavityPocket> pockets(in.pockets.size());
        for (std::size_t i = 0; i < now_at.size(); ++i) {
            if (now_at[i] < 0) {
                leaves(places_[i]);
                continue;
            }
            const auto at = static_cast<std::size_t>(now_at[i]);
            places[at] = std::move(places_[i]);
            pockets[at] = pockets_[i];
        }
        contacts_.renumber(now_at);
        places_ = std::move(places);
        pockets_ = std::move(pockets);
    }
    for (std::size_t i = 0; i < pockets_.size(); ++i) {
        if (pockets_[i] == in.pockets[i]) continue;
        if (pockets_[i].pocket) leaves(places_[i]);
        pockets_[i] = in.pockets[i];
        places_[i] = place_of(pockets_[i]);
        leaves(places_[i]);
        changed.push_back(static_cast<int>(i));
    }
    return changed;
}

Place CavityMemory::place_of(const CavityPocket& pocket) {
    Place place;
    place.standing = {pocket.pocket, casting_for(pocket)};
    const FormCasting& casting = *place.standing.casting;
    place.box = pocket.pocket->box;
    place.reach_mm = casting.greatest_reach_mm;
    place.footprint_mm2 = casting.footprint_mm2;
    place.blocks_mm3 = casting.blocks_mm3;
    place.fillet_mm3 = casting.fillet_mm3;
    place.even_mm = casting.even_mm;
    if (const auto meeting = meeting_at_edge(place.standing, *ground_)) {
        place.at_edge = true;
        place.beyond = beyond_edge(place.standing, *meeting, *ground_);
    }
    return place;
}

std::shared_ptr<const FormCasting> CavityMemory::casting_for(const CavityPocket& pocket) {
    const auto& form = pocket.pocket->form;
    const FormIn in{form, pocket.volume_ml, ground_->insert->thickness_mm, ground_->fillet_mm};
    const auto [first, last] = forms_.equal_range(form.get());
    for (auto known = first; known != last; ++known)
        if (known->second.in == in) return known->second.casting;
    return forms_.emplace(form.get(), KnownForm{in, std::make_shared<const FormCasting>(casting_of(in))})
        ->second.casting;
}

void CavityMemory::drop_unused_forms() {
    if (forms_.size() <= 2 * places_.size() + 16) return;
    std::erase_if(forms_, [](const auto& entry) { return entry.second.casting.use_count() == 1; });
}

void CavityMemory::sum_up() {
    double footprint = 0;
    double blocks = 0;
    double fillet = 0;
    even_mm_ = std::numeric_limits<double>::infinity();
    const auto count = [&](double sign, const Correction& correction) {
        footprint += sign * correction.footprint_mm2;
        fillet += sign * correction.fillet_mm3;
        if (!correction.layers.empty()) blocks += sign * volume(correction.layers);
    };
    for (const Place& place : places_) {
        footprint += place.footprint_mm2;
        blocks += place.blocks_mm3;
        fillet += place.fillet_mm3;
        even_mm_ = std::min(even_mm_, place.even_mm);
        if (place.at_edge) count(-1, place.beyond);
    }
    for (const Contact& contact : contacts_.all()) count(-1, contact.shared);
    for (const auto& [tile, crowd] : crowds_.all()) count(1, crowd);

    const layout::Insert& insert = *ground_->insert;
    finished_.insert_area_mm2 = insert.area_mm2;
    finished_.height_mm = insert.thickness_mm;
    finished_.gross_mm3 = insert.area_mm2 * insert.thickness_mm;
    finished_.blocks_mm3 = blocks;
    finished_.fillet_mm3 = fillet;
    finished_.net_mm3 = finished_.gross_mm3 - blocks - fillet;
    finished_.open_area_mm2 = insert.area_mm2 - footprint;
}

double CavityMemory::room_below_mm3(double height_mm) const {
    double sum = finished_.insert_area_mm2 * height_mm;
    for (const Place& place : places_)
        sum -= volume_below(place.standing.casting->layers, height_mm) -
               volume_below(place.beyond.layers, height_mm);
    for (const Contact& contact : contacts_.all()) sum += volume_below(contact.shared.layers, height_mm);
    for (const auto& [tile, crowd] : crowds_.all()) sum -= volume_below(crowd.layers, height_mm);
    return sum;
}

double CavityMemory::room_at_mm2(double height_mm) const {
    double sum = finished_.insert_area_mm2;
    for (const Place& place : places_)
        sum -= area_at(place.standing.casting->layers, height_mm) - area_at(place.beyond.layers, height_mm);
    for (const Contact& contact : contacts_.all()) sum += area_at(contact.shared.layers, height_mm);
    for (const auto& [tile, crowd] : crowds_.all()) sum -= area_at(crowd.layers, height_mm);
    return sum;
}

double CavityMemory::liquid_level_mm(double liquid_ml) const {
    const double liquid = 1000 * liquid_ml / (enlargement_ * enlargement_ * enlargement_);
    const double even = liquid / finished_.open_area_mm2;
    if (even > 0 && even <= even_mm_) return even * enlargement_;
    // The room grows ever faster with height, so that Newton's steps close in from above once they are there.
    double low = 0;
    double high = finished_.height_mm;
    double level = std::clamp(even_mm_, low, high);
    for (int i = 0; i < 60 && high - low > 1e-9; ++i) {
        const double missing = liquid - room_below_mm3(level);
        (missing > 0 ? low : high) = level;
        const double step = missing / room_at_mm2(level);
        if (std::abs(step) < 1e-9) break;
        const double next = level + step;
        level = next > low && next < high ? next : (low + high) / 2;
    }
    return level * enlargement_;
}

} // namespace drawercast::casting
