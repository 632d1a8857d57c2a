// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/bodies.h"

#include <algorithm>
#include <numeric>

namespace drawercast::casting {

shape::Contour enlarged(shape::Contour contour, double k) {
    for (auto& corner : contour.core) corner = corner * k;
    contour.round_mm *= k;
    return contour;
}

namespace {

constexpr double sliver_mm2 = 5; // no saw leaves less

bool whole_in(const shape::Region& inner, const shape::Region& outer) {
    const auto outside = shape::without(inner, outer);
    return outside && shape::area(*outside) < sliver_mm2;
}

bool overlap(const shape::Region& a, const shape::Region& b) {
    const auto both = shape::shared(a, b);
    return both && shape::area(*both) > sliver_mm2;
}

class Meetings {
  public:
    explicit Meetings(const std::vector<BodyGiven>& bodies) : bodies_(bodies), met_(bodies.size()) {
        for (const auto& body : bodies) regions_.push_back(shape::region_of(body.outline));
        order_.resize(bodies.size());
        std::iota(order_.begin(), order_.end(), std::size_t{0});
        std::stable_sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) {
            return bodies_[a].height_mm > bodies_[b].height_mm;
        });
    }

    std::vector<BodyMeeting> take() {
        for (std::size_t rank = 0; rank < order_.size(); ++rank)
            if (!stand_on_lower(rank)) butt_higher(rank);
        return std::move(met_);
    }

  private:
    bool stand_on_lower(std::size_t rank) {
        const std::size_t body = order_[rank];
        if (bodies_[body].lying) return false;
        for (std::size_t lower = rank + 1; lower < order_.size(); ++lower) {
            const std::size_t under = order_[lower];
            if (bodies_[under].lying || bodies_[under].height_mm >= bodies_[body].height_mm) continue;
            if (!whole_in(regions_[body], regions_[under])) continue;
            met_[body].rest = Rest::on_body;
            met_[body].other = static_cast<int>(under);
            met_[body].below_mm = bodies_[under].height_mm;
            return true;
        }
        return false;
    }

    /// Cut away under every higher one that reaches the board and overlaps it.
    void butt_higher(std::size_t rank) {
        const std::size_t body = order_[rank];
        shape::Region left = regions_[body];
        for (std::size_t higher = 0; higher < rank; ++higher) {
            const std::size_t by = order_[higher];
            if (met_[by].rest == Rest::on_body || !overlap(left, regions_[by])) continue;
            const auto rest = shape::without(left, regions_[by]);
            if (!rest) continue; // kept as it was: too large, and the maker trims it
            left = *rest;
            if (met_[body].other < 0) met_[body].other = static_cast<int>(by);
            met_[body].rest = Rest::butts;
        }
        if (met_[body].rest != Rest::butts) return;
        for (auto& patch : left.patches)
            if (shape::area(patch.outer) > sliver_mm2) met_[body].left.push_back(std::move(patch));
    }

    const std::vector<BodyGiven>& bodies_;
    std::vector<BodyMeeting> met_;
    std::vector<shape::Region> regions_;
    std::vector<std::size_t> order_; ///< highest first
};

} // namespace

std::vector<BodyMeeting> meetings_of(const std::vector<BodyGiven>& bodies) { return Meetings(bodies).take(); }

} // namespace drawercast::casting
