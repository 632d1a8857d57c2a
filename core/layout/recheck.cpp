// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/recheck.h"

#include "base/demand.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace drawercast::layout {

Recheck::Recheck(DrawerLimits limits) : limits_(std::move(limits)) {}

void Recheck::set_all(std::vector<Standing> pockets) {
    pockets_ = std::move(pockets);
    boxes_.clear();
    reach_.clear();
    for (const Standing& standing : pockets_) {
        boxes_.push_back(standing.pocket->box);
        reach_.push_back(reach_of(standing));
    }
    stands_.assign(pockets_.size(), 0);
    checks_.clear();
    owners_.clear();
    found_.clear();
    merged_ = false;

    std::vector<Index> order(pockets_.size());
    std::iota(order.begin(), order.end(), Index{0});
    std::sort(order.begin(), order.end(),
              [this](Index a, Index b) { return boxes_[a].min.x < boxes_[b].min.x; });
    for (std::size_t k = 0; k < order.size(); ++k) {
        const Index a = order[k];
        find_own(a);
        const shape::Box reached = boxes_[a].grown(reach_[a]);
        for (std::size_t m = k + 1; m < order.size() && boxes_[order[m]].min.x <= reached.max.x; ++m)
            if (shape::near(reached, boxes_[order[m]])) find_pair(a, order[m]);
    }
}

void Recheck::move(std::size_t index, Standing pocket) {
    DRAWERCAST_DEMAND(index < pockets_.size(), "only a pocket that is there can move");
    const Index self = static_cast<Index>(index);
    ++stands_[index];
    boxes_[index] = pocket.pocket->box;
    reach_[index] = reach_of(pocket);
    pockets_[index] = std::move(pocket);
    find_around(self);
}

void Recheck::insert(std::size_t index, Standing pocket) {
    DRAWERCAST_DEMAND(index <= pockets_.size(), "a pocket goes before another or at the end");
    const Index self = static_cast<Index>(index);
    merge();
    for (Owners& owners : owners_)
        for (Index* owner : {&owners.a, &owners.b})
            if (*owner != nobody && *owner >= self) ++*owner;
    const auto at = static_cast<std::ptrdiff_t>(index);
    boxes_.insert(boxes_.begin() + at, pocket.pocket->box);
    reach_.insert(reach_.begin() + at, reach_of(pocket));
    pockets_.insert(pockets_.begin() + at, std::move(pocket));
    stands_.insert(stands_.begin() + at, 0);
    find_around(self);
}

void Recheck::remove(std::size_t index) {
    DRAWERCAST_DEMAND(index < pockets_.size(), "only a pocket that is there can go");
    const Index self = static_cast<Index>(index);
    ++stands_[index];
    merge(); // drops its checks
    for (Owners& owners : owners_)
        for (Index* owner : {&owners.a, &owners.b})
            if (*owner != nobody && *owner > self) --*owner;
    const auto at = static_cast<std::ptrdiff_t>(index);
    boxes_.erase(boxes_.begin() + at);
    reach_.erase(reach_.begin() + at);
    pockets_.erase(pockets_.begin() + at);
    stands_.erase(stands_.begin() + at);
    merged_ = false; // the load is less now
}

const std::vector<Check>& Recheck::checks() {
    if (!merged_) merge();
    return checks_;
}

double Recheck::reach_of(const Standing& standing) const {
    return limits_.minimums.wall(standing.pocket->form->greatest_depth_mm);
}

void Recheck::find_own(Index index) {
    fresh_.clear();
    add_pocket_checks(*pockets_[index].pocket, *pockets_[index].object, limits_, fresh_);
    for (Check& check : fresh_) found_.push_back({std::move(check), {index, nobody, stands_[index], 0}});
}

void Recheck::find_pair(Index a, Index b) {
    if (auto check = pair_check(*pockets_[a].pocket, *pockets_[b].pocket, limits_.minimums))
        found_.push_back({*std::move(check), {a, b, stands_[a], stands_[b]}});
}

void Recheck::find_around(Index index) {
    if (found_.size() > checks_.size() + pockets_.size()) merge(); // nobody asked for long: don't hoard
    merged_ = false;
    find_own(index);
    // Reading every box in turn beats an index up to some thousand pockets; the pairs found are what costs.
    const shape::Box reached = boxes_[index].grown(reach_[index]);
    for (Index other = 0; other < boxes_.size(); ++other)
        if (other != index && shape::near(reached, boxes_[other])) find_pair(index, other);
}

bool Recheck::holds(Owners owners) const {
    if (owners.a == nobody) return false; // the drawer's are made anew each time: sums of all pockets
    return owners.stand_a == stands_[owners.a] && (owners.b == nobody || owners.stand_b == stands_[owners.b]);
}

void Recheck::merge() {
    std::erase_if(found_, [this](const Found& one) { return !holds(one.owners); });
    double objects_g = 0;
    for (const Standing& standing : pockets_) objects_g += standing.object->mass_g;
    fresh_.clear();
    add_drawer_checks(objects_g, limits_, fresh_);
    for (Check& check : fresh_) found_.push_back({std::move(check), {}});
    std::sort(found_.begin(), found_.end(),
              [](const Found& a, const Found& b) { return comes_before(a.check, b.check); });

    old_checks_.swap(checks_);
    old_owners_.swap(owners_);
    checks_.clear();
    owners_.clear();
    auto next = found_.begin();
    const auto take_found = [&] {
        checks_.push_back(std::move(next->check));
        owners_.push_back(next->owners);
        ++next;
    };
    for (std::size_t i = 0; i < old_checks_.size(); ++i) {
        if (!holds(old_owners_[i])) continue;
        while (next != found_.end() && comes_before(next->check, old_checks_[i])) take_found();
        checks_.push_back(std::move(old_checks_[i]));
        owners_.push_back(old_owners_[i]);
    }
    while (next != found_.end()) take_found();
    found_.clear();
    merged_ = true;
}

} // namespace drawercast::layout
