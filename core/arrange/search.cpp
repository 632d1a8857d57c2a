// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/search.h"

#include "shape/boxes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace drawercast::arrange {

using shape::Vec;

namespace {

constexpr int anywhere = 28;    ///< samples over the whole room
constexpr int nearby = 18;      ///< samples around where the figure stands
constexpr std::size_t kept = 3; ///< of them descended from
constexpr int fine_turns = 4;   ///< tried of what may stand at any angle
constexpr double widest_fine_turn_deg = 7.5;
constexpr double angle_grain_deg = 1e-3; ///< finer nobody could set it down
constexpr double everything = std::numeric_limits<double>::infinity();

/// Whether figures are the same at each of their turns.
template <class TurnedOnes>
bool alike(const TurnedOnes& a, const TurnedOnes& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const auto& one, const auto& other) {
        return one.figure.turn_deg == other.figure.turn_deg && one.figure.parts == other.figure.parts;
    });
}

} // namespace

Search::Search(Room room, std::vector<std::vector<TurnedFigure>> figures, std::uint64_t seed)
    : room_(std::move(room)), random_(seed) {
    figures_.resize(figures.size());
    for (std::size_t i = 0; i < figures.size(); ++i)
        for (TurnedFigure& figure : figures[i]) figures_[i].push_back({std::move(figure), {}});
    stands_.resize(size());
    further_.resize(size());
    any_angle_.assign(size(), false);
    boxes_.resize(size());
    fixed_.assign(size(), false);
    out_.assign(size(), false);
    double largest = 0;
    for (const auto& turns : figures_) {
        const TurnedFigure& first = turns[0].figure;
        largest = std::max(largest, std::max(first.box.width(), first.box.height()));
        for (const auto& part : first.parts)
            for (const auto& others : figures_)
                for (const auto& other : others[0].figure.parts)
                    widest_wall_ = std::max(widest_wall_, room_.wall_mm(part.depth_mm, other.depth_mm));
    }
    for (const auto& turns : figures_)
        for (const auto& others : figures_)
            sizes_.push_back(std::sqrt(std::sqrt(turns[0].figure.size * others[0].figure.size)));
    soft_ = std::max(0.01 * largest, 1e-9);
    number_figures();
    forget_weights();
    set_box(room_.box);
}

/// The same figures get the same numbers.
void Search::number_figures() {
    std::vector<const TurnedFigure*> all;
    for (std::size_t i = 0; i < size(); ++i) {
        const auto first_alike = std::find_if(figures_.begin(), figures_.begin() + std::ptrdiff_t(i),
                                              [&](const auto& other) { return alike(other, figures_[i]); });
        const auto before = static_cast<std::size_t>(first_alike - figures_.begin());
        numbers_.push_back(before < i ? numbers_[before] : all.size());
        if (before < i) continue;
        for (const Turned& turned : figures_[i]) all.push_back(&turned.figure);
    }
    if (all.size() <= PairTables::most_figures) tables_.emplace(std::move(all), soft_);
}

void Search::set_box(const shape::Box& box) {
    room_.box = box;
    for (auto& turns : figures_)
        for (Turned& turned : turns) turned.origins = origins(room_, turned.figure);
    set_stands(stands_);
}

const Search::Turned& Search::turned_at(std::size_t i, const Stand& stand) const {
    if (stand.further_deg == 0) return figures_[i][stand.turn];
    const bool trial =
        trial_of_ == i && stand.turn == trial_stand_.turn && stand.further_deg == trial_stand_.further_deg;
    return trial ? trial_ : further_[i];
}

Search::Turned Search::turned_further(std::size_t i, const Stand& stand) const {
    TurnedFigure figure = turned_by(figures_[i][stand.turn].figure, stand.further_deg);
    const shape::Box box = origins(room_, figure);
    return {std::move(figure), box};
}

Stand Search::clamped(std::size_t i, Stand stand) const {
    if (fixed_[i]) return stand;
    const shape::Box& box = turned_at(i, stand).origins;
    stand.at = {std::max(std::min(stand.at.x, box.max.x), box.min.x),
                std::max(std::min(stand.at.y, box.max.y), box.min.y)};
    return stand;
}

void Search::set_stands(Stands stands) {
    stands_ = std::move(stands);
    trial_of_ = size();
    for (std::size_t i = 0; i < size(); ++i) {
        if (stands_[i].further_deg != 0) further_[i] = turned_further(i, stands_[i]);
        stands_[i] = clamped(i, stands_[i]);
    }
    renew_all();
}

void Search::set_left_out(std::vector<bool> out) {
    out_ = std::move(out);
    renew_all();
}

void Search::put_anywhere(std::size_t i) {
    std::vector<std::size_t> fitting;
    for (std::size_t t = 0; t < figures_[i].size(); ++t)
        if (!figures_[i][t].origins.empty()) fitting.push_back(t);
    const std::size_t turn = fitting.empty() ? 0 : fitting[random_.below(fitting.size())];
    const shape::Box& box = figures_[i][turn].origins;
    stands_[i] =
        clamped(i, {{random_.between(box.min.x, box.max.x), random_.between(box.min.y, box.max.y)}, turn, 0});
    renew(i);
}

void Search::forget_weights() { weights_.assign(size() * (size() + 1), 1.0); }

void Search::swap(std::size_t a, std::size_t b) {
    const Vec at_a = shape::moved(figure(a).box, stands_[a].at).center();
    const Vec at_b = shape::moved(figure(b).box, stands_[b].at).center();
    stands_[a].at = at_b - figure(a).box.center();
    stands_[b].at = at_a - figure(b).box.center();
    stands_[a] = clamped(a, stands_[a]);
    stands_[b] = clamped(b, stands_[b]);
    renew(a);
    renew(b);
}

/// Of that figure there with another; once it is over `enough`, any such number.
double Search::pair(std::size_t i, const Stand& stand, const TurnedFigure& one, std::size_t j,
                    double enough) {
    const Stand& other = stands_[j];
    const Vec by = other.at - stand.at;
    const double size = sizes_[i * this->size() + j];
    if (tables_ && stand.further_deg == 0 && other.further_deg == 0)
        return tables_->overlap(room_, numbers_[i] + stand.turn, numbers_[j] + other.turn, by) * size;
    return arrange::overlap(room_, one, figure(j), by, soft_, enough / size) * size;
}

double Search::outside(const TurnedFigure& one, Vec at) const {
    if (!leaves(room_, one, at)) return 0;
    return (std::sqrt(leaving_weight(room_, one, at)) + soft_) * std::sqrt(one.size);
}

/// Which others' boxes come as near to that one as the widest wall; what is left out has none.
void Search::look_around(const shape::Box& box) {
    const shape::Box wide = box.grown(widest_wall_);
    near_.resize(size() + 1); // one is written beyond the last that is near
    std::size_t count = 0;
    for (std::size_t j = 0; j < size(); ++j) { // without a branch: most are far, and which is chance
        near_[count] = j;
        const shape::Box& other = boxes_[j];
        count += static_cast<std::size_t>(wide.min.x <= other.max.x) &
                 static_cast<std::size_t>(other.min.x <= wide.max.x) &
                 static_cast<std::size_t>(wide.min.y <= other.max.y) &
                 static_cast<std::size_t>(other.min.y <= wide.max.y);
    }
    near_.resize(count);
}

/// What the figure would cost there; once it is more than `enough`, any such number.
double Search::price(std::size_t i, const Stand& stand, double enough) {
    ++evaluations_;
    const TurnedFigure& one = turned_at(i, stand).figure;
    look_around(shape::moved(one.box, stand.at));
    double sum = 0;
    for (const std::size_t j : near_) {
        if (j == i) continue;
        sum += weight(i, j) * pair(i, stand, one, j, (enough - sum) / weight(i, j));
        if (sum > enough) return sum;
    }
    return sum + weight(i, size()) * outside(one, stand.at);
}

/// Steps along, across and aslant that grow where they help and shrink where they do not.
Stand Search::descended(std::size_t i, Stand from, double& value, double step, double least) {
    static constexpr std::array<Vec, 4> ways{Vec{1, 0}, Vec{0, 1}, Vec{0.7071, 0.7071}, Vec{0.7071, -0.7071}};
    while (step > least && value > 0) {
        const Vec way = ways[random_.below(ways.size())] * step;
        bool better = false;
        for (const double sign : {1.0, -1.0}) {
            const Stand there = clamped(i, {from.at + way * sign, from.turn, from.further_deg});
            if (there == from) continue;
            const double worth = price(i, there, value);
            if (worth >= value) continue;
            value = worth;
            from = there;
            better = true;
            break;
        }
        step *= better ? 1.1 : 0.5;
    }
    return from;
}

void Search::move(std::size_t i) {
    struct Sample {
        double value;
        Stand stand;
    };
    const auto& turns = figures_[i];
    std::vector<Sample> best;
    const auto take = [&](const Stand& stand) {
        if (turned_at(i, stand).origins.empty()) return;
        const double enough =
            best.size() < kept ? std::numeric_limits<double>::infinity() : best.back().value;
        const double value = price(i, stand, enough);
        if (value >= enough) return;
        best.insert(std::upper_bound(best.begin(), best.end(), value,
                                     [](double v, const Sample& s) { return v < s.value; }),
                    {value, stand});
        if (best.size() > kept) best.pop_back();
    };
    const Stand now = stands_[i];
    const double cost = price(i, now, std::numeric_limits<double>::infinity());
    const double size = turns[0].figure.size;
    take(now);
    for (int k = 0; k < nearby; ++k) {
        Stand there = now;
        if (random_() >= 0.6) {
            there = {now.at, random_.below(turns.size()), 0};
            there.at = now.at + figure(i).box.center() - turns[there.turn].figure.box.center();
        }
        const double reach = 0.5 * size;
        there.at = there.at + Vec{random_.between(-reach, reach), random_.between(-reach, reach)};
        take(clamped(i, there));
    }
    for (int k = 0; k < anywhere; ++k) {
        const std::size_t turn = random_.below(turns.size());
        const shape::Box& box = turns[turn].origins;
        take({{random_.between(box.min.x, box.max.x), random_.between(box.min.y, box.max.y)}, turn, 0});
    }
    if (best.empty()) return;
    for (Sample& sample : best)
        sample.stand = descended(i, sample.stand, sample.value, 0.06 * size, 0.003 * size);
    Sample& top = *std::min_element(best.begin(), best.end(),
                                    [](const Sample& a, const Sample& b) { return a.value < b.value; });
    top.stand = descended(i, top.stand, top.value, 0.005 * size, 2e-5 * size);
    if (any_angle_[i] && top.value > 0) turn_finely(i, top.stand, top.value);
    if (top.value >= cost) return;
    if (top.stand.further_deg != 0) further_[i] = turned_further(i, top.stand);
    stands_[i] = top.stand;
    renew(i);
}

/// Turns between the ones given, ever less further, about the middle of the figure's box; kept where better.
void Search::turn_finely(std::size_t i, Stand& stand, double& value) {
    const double size = figures_[i][0].figure.size;
    double step = widest_fine_turn_deg;
    for (int k = 0; k < fine_turns; ++k) {
        Stand there = stand;
        there.further_deg += std::round(random_.between(-step, step) / angle_grain_deg) * angle_grain_deg;
        const Vec middle = stand.at + turned_at(i, stand).figure.box.center();
        Turned before = std::move(trial_);
        const auto [of, at] = std::pair{trial_of_, trial_stand_};
        trial_ = turned_further(i, there);
        trial_of_ = i;
        trial_stand_ = there;
        double worth = everything;
        if (!trial_.origins.empty()) {
            there = clamped(i, {middle - trial_.figure.box.center(), there.turn, there.further_deg});
            worth = price(i, there, everything);
            there = descended(i, there, worth, 0.02 * size, 1e-4 * size);
        }
        if (worth < value) {
            value = worth;
            stand = there;
        } else {
            trial_ = std::move(before);
            trial_of_ = of;
            trial_stand_ = at;
            step *= 0.6;
        }
        if (value == 0) break;
    }
}

void Search::renew(std::size_t i) {
    boxes_[i] = out_[i] ? shape::Box{} : shape::moved(figure(i).box, stands_[i].at);
    for (std::size_t j = 0; j < size(); ++j) {
        if (j == i) continue;
        const bool near = !out_[i] && !out_[j] && !(fixed_[i] && fixed_[j]) &&
                          shape::near(boxes_[i], boxes_[j], widest_wall_);
        loss(i, j) = loss(j, i) = near ? pair(i, stands_[i], figure(i), j, everything) : 0;
    }
    loss(i, size()) = out_[i] || fixed_[i] ? 0 : outside(figure(i), stands_[i].at);
}

void Search::renew_all() {
    losses_.assign(size() * (size() + 1), 0);
    for (std::size_t i = 0; i < size(); ++i)
        boxes_[i] = out_[i] ? shape::Box{} : shape::moved(figure(i).box, stands_[i].at);
    for (std::size_t i = 0; i < size(); ++i) renew(i);
}

double Search::overlap_of(std::size_t i) const {
    double sum = 0;
    for (std::size_t j = 0; j <= size(); ++j) sum += loss(i, j);
    return sum;
}

double Search::total() const {
    double sum = 0;
    for (std::size_t i = 0; i < size(); ++i) sum += overlap_of(i) + loss(i, size());
    return sum / 2;
}

void Search::move_all() {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < size(); ++i)
        if (!fixed_[i] && !out_[i] && overlap_of(i) > 0) order.push_back(i);
    for (std::size_t k = order.size(); k > 1; --k) std::swap(order[k - 1], order[random_.below(k)]);
    for (const std::size_t i : order)
        if (overlap_of(i) > 0) move(i);
}

/// Overlaps that stay grow heavier, the worst the most; what is settled is forgotten little by little.
void Search::weigh() {
    const double worst = *std::max_element(losses_.begin(), losses_.end());
    if (worst <= 0) return;
    for (std::size_t k = 0; k < losses_.size(); ++k)
        weights_[k] = losses_[k] > 0 ? weights_[k] * (1.2 + 0.8 * losses_[k] / worst)
                                     : std::max(1.0, weights_[k] * 0.95);
}

bool Search::part(int strikes, int tries, const std::function<bool()>& stop) {
    double least = total();
    Stands best = stands_;
    for (int strike = 0; strike < strikes && least > 0; ++strike) {
        const double before = least;
        for (int failed = 0; failed < tries && least > 0;) {
            if (stop()) {
                set_stands(best);
                return least == 0;
            }
            move_all();
            weigh();
            const double now = total();
            failed = now < 0.98 * least ? 0 : failed + 1;
            if (now < least) {
                least = now;
                best = stands_;
            }
        }
        if (least < 0.98 * before) strike = -1;
        if (least > 0) set_stands(best);
    }
    set_stands(best);
    return total() == 0;
}

} // namespace drawercast::arrange
