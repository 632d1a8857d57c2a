// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/layout_stage.h"

#include <algorithm>

namespace drawercast::plan {

namespace {

bool same_instance(const layout::Standing& a, const layout::Standing& b) {
    return a.pocket == b.pocket && a.object == b.object;
}

/// Beyond this many edits starting anew is quicker than following them.
std::size_t worth_following(std::size_t pockets) { return pockets / 4 + 1; }

} // namespace

/// Moves what changed in the part both lists share; what one has more than the other lies in one run between
/// a common head and a common tail, as any single act of the maker leaves it.
void LayoutStage::follow(const std::vector<layout::Standing>& standing) {
    auto& recheck = *recheck_;
    const std::size_t old_size = recheck.size();
    const std::size_t shared = std::min(old_size, standing.size());
    std::size_t head = 0;
    std::size_t tail = 0;
    if (old_size == standing.size()) {
        head = shared;
    } else {
        while (head < shared && recheck.at(head).pocket->subject == standing[head].pocket->subject) ++head;
        while (tail < shared - head && recheck.at(old_size - 1 - tail).pocket->subject ==
                                           standing[standing.size() - 1 - tail].pocket->subject)
            ++tail;
    }
    for (std::size_t i = old_size - tail; i > head; --i) recheck.remove(i - 1);
    for (std::size_t i = head; i < standing.size() - tail; ++i) recheck.insert(i, standing[i]);
    for (std::size_t i = 0; i < standing.size(); ++i)
        if (!same_instance(recheck.at(i), standing[i])) recheck.move(i, standing[i]);
}

const std::vector<layout::Check>& LayoutStage::update(const layout::DrawerLimits& limits,
                                                      const std::vector<layout::Standing>& standing) {
    const bool same_limits = recheck_ && recheck_->limits() == limits;
    if (!same_limits) recheck_.emplace(limits);
    std::size_t changed = standing.size();
    if (same_limits) {
        changed = std::max(recheck_->size(), standing.size()) - std::min(recheck_->size(), standing.size());
        if (recheck_->size() == standing.size())
            for (std::size_t i = 0; i < standing.size(); ++i)
                changed += !same_instance(recheck_->at(i), standing[i]);
    }
    if (!same_limits || changed > worth_following(standing.size()))
        recheck_->set_all(standing);
    else
        follow(standing);
    return recheck_->checks();
}

} // namespace drawercast::plan
