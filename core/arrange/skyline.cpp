// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/skyline.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace drawercast::arrange {

using shape::Vec;

namespace {

constexpr double as_good = 1e-3;    ///< of the strip's height: what counts as equal
constexpr std::size_t memory = 500; ///< layouts back: our guess

/// A stretch of the skyline: from `from` across, at `level` along.
struct Step {
    double from;
    double width;
    double level;
};

class Skyline {
  public:
    Skyline(double height, double length)
        : same_(height * as_good), length_(length), steps_{{0, height, 0}} {}

    std::size_t lowest() const {
        const auto low = std::min_element(steps_.begin(), steps_.end(),
                                          [](const Step& a, const Step& b) { return a.level < b.level; });
        return static_cast<std::size_t>(low - steps_.begin());
    }
    double below(std::size_t i) const { return i > 0 ? steps_[i - 1].level : edge; }
    double above(std::size_t i) const { return i + 1 < steps_.size() ? steps_[i + 1].level : edge; }

    /// How well that suits the step; negative: not at all.
    int merit(std::size_t i, const Side& side) const {
        const double spare = steps_[i].width - side.across;
        if (spare < 0) return -1;
        const double top = steps_[i].level + side.along;
        if (top > length_) return -1;
        const auto flush = [&](double level) { return std::abs(top - level) < same_; };
        const double higher = std::max(below(i), above(i));
        const double lower = std::min(below(i), above(i));
        if (spare < same_) return flush(higher) || flush(lower) ? 4 : top < higher ? 3 : 2;
        return flush(higher) || flush(lower) ? 1 : 0;
    }

    /// Onto that step, beside the neighbor it is flush with, else the higher one.
    Vec lay(std::size_t i, const Side& side) {
        Step& step = steps_[i];
        const double top = step.level + side.along;
        const bool flush_below = std::abs(top - below(i)) < same_;
        const bool flush_above = std::abs(top - above(i)) < same_;
        const bool up = flush_above != flush_below ? flush_above : above(i) > below(i);
        const Vec at{step.level, up ? step.from + step.width - side.across : step.from};
        const Step laid{at.y, side.across, top};
        if (step.width - side.across <= 0) {
            step = laid;
        } else {
            step.width -= side.across;
            if (!up) step.from += side.across;
            steps_.insert(steps_.begin() + static_cast<std::ptrdiff_t>(up ? i + 1 : i), laid);
        }
        return at;
    }

    /// Nothing fits there: up to its lower neighbor, and one with it.
    void raise(std::size_t i) {
        steps_[i].level = std::min(below(i), above(i));
        const std::size_t with = below(i) <= above(i) ? i - 1 : i;
        steps_[with].width += steps_[with + 1].width;
        steps_.erase(steps_.begin() + static_cast<std::ptrdiff_t>(with + 1));
    }
    bool whole() const { return steps_.size() == 1; } ///< one step alone

  private:
    static constexpr double edge = std::numeric_limits<double>::infinity();
    double same_;
    double length_;
    std::vector<Step> steps_;
};

double area(const std::vector<Side>& box) { return box[0].along * box[0].across; }

struct Pick {
    int merit = -1;
    std::size_t place = 0; ///< in what is left of the order
    std::size_t way = 0;
};

Pick best_pick(const Skyline& skyline, std::size_t step, const std::vector<std::vector<Side>>& boxes,
               const std::vector<std::size_t>& left) {
    constexpr int best_merit = 4;
    Pick best;
    for (std::size_t place = 0; place < left.size() && best.merit < best_merit; ++place) {
        const auto& ways = boxes[left[place]];
        for (std::size_t way = 0; way < ways.size(); ++way)
            if (const int merit = skyline.merit(step, ways[way]); merit > best.merit)
                best = {merit, place, way};
    }
    return best;
}

} // namespace

Layout laid(const std::vector<std::vector<Side>>& boxes, double height, double length,
            const std::vector<std::size_t>& order) {
    Skyline skyline(height, length);
    Layout out;
    out.boxes.resize(boxes.size());
    std::vector<std::size_t> left = order;
    while (!left.empty()) {
        const std::size_t step = skyline.lowest();
        const Pick pick = best_pick(skyline, step, boxes, left);
        if (pick.merit < 0) {
            if (skyline.whole()) break;
            skyline.raise(step);
            continue;
        }
        const std::size_t box = left[pick.place];
        const Side& side = boxes[box][pick.way];
        out.boxes[box] = {skyline.lay(step, side), pick.way};
        out.length = std::max(out.length, out.boxes[box]->at.x + side.along);
        left.erase(left.begin() + static_cast<std::ptrdiff_t>(pick.place));
    }
    for (const std::size_t box : left) out.left += area(boxes[box]);
    return out;
}

std::vector<std::size_t> large_first(const std::vector<std::vector<Side>>& boxes) {
    std::vector<std::size_t> order(boxes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return area(boxes[a]) > area(boxes[b]); });
    return order;
}

Layout best_laid(const std::vector<std::vector<Side>>& boxes, double height, double length,
                 std::vector<std::size_t>& order, Random& random, const std::function<bool()>& stop) {
    Layout best = laid(boxes, height, length, order);
    double now = best.left;
    std::vector<double> late(memory, now);
    for (std::size_t k = 0; best.left > 0 && !stop(); k = (k + 1) % memory) {
        const std::size_t a = random.below(order.size());
        const std::size_t b = random.below(order.size());
        std::swap(order[a], order[b]);
        Layout next = laid(boxes, height, length, order);
        if (next.left > now && next.left > late[k]) {
            std::swap(order[a], order[b]);
        } else {
            now = next.left;
            if (now < best.left) best = std::move(next);
        }
        late[k] = std::min(late[k], now);
    }
    return best;
}

std::vector<Side> ways_to_lay(const std::vector<TurnedFigure>& turns, double clear_mm) {
    constexpr double hardly = 1.001;
    double least = std::numeric_limits<double>::infinity();
    for (const TurnedFigure& one : turns) least = std::min(least, one.size);
    std::vector<Side> ways;
    for (std::size_t turn = 0; turn < turns.size(); ++turn) {
        const TurnedFigure& one = turns[turn];
        const Side side{one.box.width() + clear_mm, one.box.height() + clear_mm, turn};
        const bool known = std::any_of(ways.begin(), ways.end(), [&](const Side& other) {
            return std::abs(other.along - side.along) < 1e-9 && std::abs(other.across - side.across) < 1e-9;
        });
        if (one.size <= hardly * least && !known) ways.push_back(side);
    }
    return ways;
}

} // namespace drawercast::arrange
