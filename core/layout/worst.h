// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/check.h"
#include "layout/minimums.h"
#include "shape/gap.h"

#include <algorithm>
#include <limits>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace drawercast::layout {

/// The worst of several distances that miss their minimum: the least value over limit, the first of equals.
class Worst {
  public:
    void take(const shape::Gap& gap, double limit) {
        if (!below(gap.mm, limit) || !(gap.mm / limit < ratio_)) return;
        ratio_ = gap.mm / limit;
        gap_ = gap;
        limit_ = limit;
    }
    bool found() const { return limit_ > 0; }
    Check check(Code code, std::vector<std::string> subjects) const {
        const double value = std::max(0.0, gap_.mm); // out by less than the slack is flush
        return {code,
                severity_below(value, limit_),
                std::move(subjects),
                value,
                limit_,
                CheckFrame::drawer,
                gap_.a,
                gap_.b,
                false};
    }

  private:
    double ratio_ = std::numeric_limits<double>::infinity();
    shape::Gap gap_;
    double limit_ = 0;
};

/// Outlines that overlap by less are flush: turned ones do so by what set operations round their vertices.
inline constexpr double flush_mm = 0.003;

/// The widest of several overlaps.
struct Overlap {
    bool found() const { return mm > flush_mm; }
    double mm = 0;
    shape::Vec at;
    std::optional<shape::Vec> to;
    void take(double width_mm, shape::Vec where, std::optional<shape::Vec> edge = std::nullopt) {
        if (!(width_mm > mm)) return;
        mm = width_mm;
        at = where;
        to = edge;
    }
};

} // namespace drawercast::layout
