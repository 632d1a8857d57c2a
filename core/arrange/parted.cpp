// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/parted.h"

#include "arrange/retry.h"
#include "arrange/shorten.h"
#include "arrange/skyline.h"
#include "base/contains.h"

#include <algorithm>
#include <compare>
#include <limits>
#include <optional>

namespace drawercast::arrange {

namespace {

constexpr std::uint64_t look = 40'000; ///< evaluations between two looks at what stands well so far
// Boxes are laid in a room this full at least, as a part of the budget: emptier ones are parted at once, and
// stand less crowded then (our guess).
constexpr double full = 0.7;
constexpr double laying = 0.05;
constexpr double laying_boxes = 0.4; ///< where all are about as large as their boxes
constexpr double about_its_box = 0.97;
// An empty box that is too full for throws until so much of the budget is gone is squeezed into from a longer
// one.
constexpr double thrown = 0.1;
constexpr double explored = 0.4;
constexpr double refined = 0.5;

/// The figure from `old` on that overlaps most, of those that do; none: the size.
std::size_t most_in_the_way(const Search& search, std::size_t old) {
    std::size_t worst = search.size();
    double most = 0;
    for (std::size_t i = old; i < search.size(); ++i)
        if (search.overlap_of(i) > most) {
            most = search.overlap_of(i);
            worst = i;
        }
    return worst;
}

std::size_t in_count(const std::vector<bool>& out) {
    return static_cast<std::size_t>(std::count(out.begin(), out.end(), false));
}

/// How many of those not out a figure overlaps, the room counted, and how much.
struct InTheWay {
    int count = 0;
    double much = 0;
    auto operator<=>(const InTheWay&) const = default;
};

InTheWay in_the_way(const Search& search, const std::vector<bool>& out, std::size_t i) {
    InTheWay sum;
    for (std::size_t j = 0; j <= search.size() && !out[i]; ++j) {
        const double overlap = j < search.size() && out[j] ? 0 : search.overlap(i, j);
        sum.count += overlap > 0 ? 1 : 0;
        sum.much += overlap;
    }
    return sum;
}

/// What can stay as it stands now: what overlaps the most others goes first, so that few go (the greedy cover
/// of a graph). Where what stood already is parted from nothing, all that is new goes.
Parted what_stays(const Search& search, std::size_t old, const std::vector<bool>& left_out,
                  const Stands& first) {
    Parted parted{search.stands(), left_out};
    for (;;) {
        InTheWay most;
        std::size_t worst = search.size();
        for (std::size_t i = old; i < search.size(); ++i)
            if (const InTheWay one = in_the_way(search, parted.out, i); one > most) {
                most = one;
                worst = i;
            }
        if (worst == search.size()) break;
        parted.out[worst] = true;
    }
    for (std::size_t i = 0; i < old; ++i)
        if (in_the_way(search, parted.out, i).count > 0) {
            std::fill(parted.out.begin() + static_cast<std::ptrdiff_t>(old), parted.out.end(), true);
            std::copy(first.begin(), first.end(), parted.stands.begin());
            break;
        }
    return parted;
}

/// What no arrangement gets round: the area of each figure's largest hollow with half the least wall about
/// it, against the room's box with as much less of an edge.
class Areas {
  public:
    explicit Areas(const Crowd& crowd) {
        double wall = std::numeric_limits<double>::infinity();
        double edge = wall;
        for (const auto& turns : crowd.figures)
            for (const TurnedPart& part : turns[0].parts) {
                wall = std::min(wall, crowd.room.wall_mm(part.depth_mm, part.depth_mm));
                edge = std::min(edge, crowd.room.edge_mm(part.depth_mm));
            }
        const shape::Box box = crowd.room.box.grown(wall / 2 - edge);
        room_ = box.empty() ? 0 : box.width() * box.height();
        for (const auto& turns : crowd.figures) {
            double most = 0;
            for (const TurnedPart& part : turns[0].parts)
                most = std::max(most, shape::area(shape::Contour{part.core, part.round_mm + wall / 2}));
            areas_.push_back(most);
        }
    }
    double of(const std::vector<bool>& out) const {
        double sum = 0;
        for (std::size_t i = 0; i < out.size(); ++i)
            if (!out[i]) sum += areas_[i];
        return sum;
    }
    bool too_much(const std::vector<bool>& out) const { return of(out) > room_ * (1 + margin); }
    bool fill(const std::vector<bool>& out) const { return of(out) > room_ * full; }

  private:
    static constexpr double margin = 0.01; ///< coarse outlines are a little too large
    double room_ = 0;
    std::vector<double> areas_;
};

bool about_a_box(const TurnedFigure& figure) {
    const double whole = figure.box.width() * figure.box.height();
    return std::any_of(figure.parts.begin(), figure.parts.end(), [&](const TurnedPart& part) {
        return shape::area({part.core, part.round_mm}) > about_its_box * whole;
    });
}

/// An empty room that is a box, as a strip that figures' boxes are laid in: the widest wall between any, the
/// widest edge around.
struct Shelf {
    shape::Box inner;
    std::vector<std::vector<Side>> boxes;
    double wall = 0;

    explicit Shelf(const Crowd& crowd) {
        double edge = 0;
        std::vector<double> depths;
        for (const auto& turns : crowd.figures)
            for (const TurnedPart& part : turns[0].parts) {
                edge = std::max(edge, crowd.room.edge_mm(part.depth_mm));
                depths.push_back(part.depth_mm);
            }
        std::sort(depths.begin(), depths.end()); // a wall is by depths: the widest between the deepest
        if (!depths.empty()) wall = crowd.room.wall_mm(depths.back(), depths.back());
        wall += Room::touch_mm; // a sum of sides may be a digit less
        inner = crowd.room.box.grown(-edge);
        for (const auto& turns : crowd.figures) boxes.push_back(ways_to_lay(turns, wall));
    }
    Layout best(std::vector<std::size_t>& order, Random& random, const std::function<bool()>& stop) const {
        return best_laid(boxes, inner.height() + wall, inner.width() + wall, order, random, stop);
    }
    Stand stand(const Crowd& crowd, std::size_t i, const Lying& lying) const {
        const std::size_t turn = boxes[i][lying.way].turn;
        return {inner.min + lying.at - crowd.figures[i][turn].box.min, turn, 0};
    }
};

/// One search for places, from its first throw to the end of its budget.
class Parting {
  public:
    Parting(const Crowd& crowd, const Budget& budget, const Watch& watch, const TellParted& tell)
        : crowd_(crowd), budget_(budget), watch_(watch), tell_(tell), old_(crowd.standing.size()),
          search_(crowd.room, crowd.figures, budget.seed), areas_(crowd), fixed_(crowd.fixed),
          left_out_(search_.size(), false) {
        fixed_.resize(search_.size(), false);
        search_.set_fixed(fixed_);
        if (crowd.any_angle.size() == search_.size()) search_.set_any_angle(crowd.any_angle);
        Stands stands = crowd.standing;
        stands.resize(search_.size());
        search_.set_stands(stands);
        for (std::size_t i = old_; i < search_.size(); ++i) {
            const bool fits = std::any_of(crowd.figures[i].begin(), crowd.figures[i].end(),
                                          [&](const auto& one) { return !origins(crowd.room, one).empty(); });
            if (fits) search_.put_anywhere(i);
            left_out_[i] = !fits;
        }
        never_ = left_out_;
        search_.set_left_out(left_out_);
        best_ = {stands, std::vector<bool>(search_.size(), false)};
        std::fill(best_.out.begin() + static_cast<std::ptrdiff_t>(old_), best_.out.end(), true);
        next_drop_ = 0.5;
        may_squeeze_ = old_ == 0 && crowd.room.rings.empty();
        if (may_squeeze_ && areas_.fill(left_out_)) lay();
    }

    Parted result() {
        const bool may_move = contains(crowd_.fixed, false);
        while (in_count(left_out_) > old_ || may_move) {
            search_.forget_weights();
            const bool parted = search_.part(2, 80, [&] { return over(); });
            Parted now = what_stays(search_, old_, left_out_, crowd_.standing);
            if (parted && in_count(now.out) == in_count(best_.out))
                best_ = std::move(now); // all in order
            else
                take(std::move(now));
            if (over() || (parted ? !readmit() : !drop_or_throw())) break;
        }
        return best_;
    }

  private:
    double done() const {
        return static_cast<double>(search_.evaluations() + laid_) / static_cast<double>(budget_.evaluations);
    }
    /// What finds its place on the shelf stands there at first; the others where they were thrown.
    void lay() {
        const bool boxes = std::all_of(crowd_.figures.begin(), crowd_.figures.end(),
                                       [](const auto& turns) { return about_a_box(turns[0]); });
        const Shelf shelf(crowd_);
        auto order = large_first(shelf.boxes);
        const Layout layout = shelf.best(order, search_.random(), [&] {
            laid_ += shelf.boxes.size();
            return done() >= (boxes ? laying_boxes : laying) || watch_(done());
        });
        Parted parted{search_.stands(), std::vector<bool>(search_.size(), true)};
        for (std::size_t i = 0; i < search_.size(); ++i)
            if (const auto& lying = layout.boxes[i]; lying && !never_[i]) {
                parted.stands[i] = shelf.stand(crowd_, i, *lying);
                parted.out[i] = false;
            }
        if (boxes || layout.left == 0) search_.set_stands(parted.stands);
        take(std::move(parted));
    }
    bool over() {
        if (search_.evaluations() >= next_look_) {
            next_look_ = search_.evaluations() + look;
            take(what_stays(search_, old_, left_out_, crowd_.standing));
        }
        return done() >= 1 || watch_(done());
    }
    void take(Parted now) {
        if (in_count(now.out) <= in_count(best_.out)) return;
        best_ = std::move(now);
        tell_(best_);
    }
    void put_out(std::size_t i, bool out) {
        left_out_[i] = out;
        search_.set_left_out(left_out_);
        retry_.forget();
    }

    /// All that are in are parted: one that was left out is thrown in again, if its area could do.
    bool readmit() {
        for (std::size_t tried = 0; tried < left_out_.size(); ++tried) {
            next_in_ = (next_in_ + 1) % left_out_.size();
            if (!left_out_[next_in_] || never_[next_in_]) continue;
            std::vector<bool> fewer = left_out_;
            fewer[next_in_] = false;
            if (areas_.too_much(fewer)) continue;
            put_out(next_in_, false);
            search_.put_anywhere(next_in_);
            next_drop_ = (1 + done()) / 2;
            return true;
        }
        return false;
    }

    /// In a room that is a box: all parted in a longer one, which is shortened until it is this one.
    void squeeze_in() {
        const shape::Box& box = crowd_.room.box;
        Shortening longer(search_, box, box.width(),
                          {[&] { return done(); }, [&] { return watch_(done()); }});
        longer.start(box.width());
        longer.explore(explored);
        longer.refine(refined);
        search_.set_box(box);
        search_.set_stands(longer.stands());
        retry_.forget();
        next_drop_ = (1 + done()) / 2;
    }

    /// They cannot be parted: one goes out, or is thrown anew; false: nothing is left to try.
    bool drop_or_throw() {
        if (may_squeeze_ && done() >= thrown && !areas_.too_much(left_out_)) {
            may_squeeze_ = false;
            squeeze_in();
            return true;
        }
        const std::size_t worst = most_in_the_way(search_, old_);
        const bool drop = areas_.too_much(left_out_) || done() >= next_drop_;
        if (drop && worst < search_.size()) {
            put_out(worst, true);
            next_drop_ = (1 + done()) / 2;
            return true;
        }
        if (worst < search_.size() && search_.random()() < 0.5) {
            retry_.after_failure(search_);
        } else if (worst < search_.size()) {
            search_.put_anywhere(worst);
        } else if (const std::size_t old_one = most_in_the_way(search_, 0);
                   old_one < old_ && !fixed_[old_one]) {
            search_.put_anywhere(old_one); // what stood is alone with itself, and not in order
        }
        return true;
    }

    const Crowd& crowd_;
    const Budget& budget_;
    const Watch& watch_;
    const TellParted& tell_;
    std::size_t old_;
    Search search_;
    Areas areas_;
    Retry retry_;
    bool may_squeeze_ = false;
    std::vector<bool> fixed_;
    std::vector<bool> left_out_;
    std::vector<bool> never_; ///< larger than the room
    Parted best_;
    double next_drop_ = 0; ///< how much of the budget must be done
    std::size_t next_in_ = 0;
    std::uint64_t next_look_ = look;
    std::uint64_t laid_ = 0; ///< boxes, which take about as long as evaluations
};

} // namespace

Parted all_parted(const Crowd& crowd, const Budget& budget, const Watch& watch, const TellParted& tell) {
    return Parting(crowd, budget, watch, tell).result();
}

} // namespace drawercast::arrange
