// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/strip.h"

#include "arrange/skyline.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace drawercast::arrange {

namespace {

// Shares of the budget that are gone when a phase ends; the last one cuts finely.
constexpr double laying = 0.5; ///< of rectangles
constexpr double exploring = 0.8;
// Measured on shapes0, 20 s, two seeds: 0.950 and 0.946 of the record; 0.935 and 0.935 with cuts of 0.01 and
// 2 strikes of 100 tries; 0.923 and 0.935 with 1 strike of 80 and a patience of 30.
constexpr double cut_at_most = 0.005;
constexpr double cut_at_least = 0.001;
constexpr int strikes = 3;
constexpr int tries = 200;
constexpr std::size_t patience = 10; ///< failures in a row, before a smaller cut is tried

Room strip_room(double length, double height) {
    Room room;
    room.box = {{0, 0}, {length, height}};
    return room;
}

/// The stands with all that is right of `cut` moved by `by`.
Stands cut_at(const Search& search, double cut, double by) {
    Stands stands = search.stands();
    for (std::size_t i = 0; i < stands.size(); ++i)
        if (stands[i].at.x + search.figure(i).box.center().x > cut) stands[i].at.x -= by;
    return stands;
}

/// Two of the larger ones that are not alike change places.
void swap_two_large(Search& search) {
    std::vector<std::size_t> order(search.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    const auto size = [&](std::size_t i) { return search.figure(i).size; };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return size(a) > size(b); });
    order.resize(std::max<std::size_t>(1, order.size() * 3 / 4));
    const std::size_t one = order[search.random().below(order.size())];
    std::vector<std::size_t> others;
    for (const std::size_t other : order)
        if (std::abs(size(other) - size(one)) > 0.01 * size(one)) others.push_back(other);
    if (!others.empty()) search.swap(one, others[search.random().below(others.size())]);
}

bool rectangle(const TurnedFigure& figure) {
    if (figure.parts.size() != 1 || figure.parts[0].round_mm > 0) return false;
    const double whole = figure.box.width() * figure.box.height();
    return shape::area({figure.parts[0].core, 0}) >= whole * (1 - 1e-9);
}

struct Run {
    Search& search;
    double height;
    double first_length;
    const Budget& budget;
    const Watch& watch;
    Strip best;
    std::uint64_t laid = 0; ///< boxes, which take about as long as evaluations

    double done() const {
        return static_cast<double>(search.evaluations() + laid) / static_cast<double>(budget.evaluations);
    }
    bool over(double share) const { return done() >= share || watch(std::min(1.0, done())); }
    void resize(double length) { search.set_box({{0, 0}, {length, height}}); }

    void start() {
        for (double length = first_length;; length *= 1.12) {
            resize(length);
            for (std::size_t i = 0; i < search.size(); ++i) search.put_anywhere(i);
            search.forget_weights();
            if (!search.part(1, 25, [] { return false; })) continue;
            best = {length, search.stands(), 0};
            return;
        }
    }

    /// Rectangles are better laid than parted: each time into a little less.
    bool lay(const std::vector<std::vector<TurnedFigure>>& figures) {
        std::vector<std::vector<Side>> boxes;
        for (const auto& turns : figures) boxes.push_back(ways_to_lay(turns, Room::touch_mm));
        auto order = large_first(boxes);
        const auto stop = [&] {
            laid += boxes.size();
            return over(laying);
        };
        best.length = std::numeric_limits<double>::infinity();
        for (double length = best.length;; length = best.length * (1 - cut_at_least)) {
            const Layout layout =
                best_laid(boxes, height + Room::touch_mm, length, order, search.random(), stop);
            if (layout.left > 0) return !best.stands.empty();
            best = {layout.length, {}, 0};
            for (std::size_t i = 0; i < boxes.size(); ++i) {
                const std::size_t turn = boxes[i][layout.boxes[i]->way].turn;
                best.stands.push_back({layout.boxes[i]->at - figures[i][turn].box.min, turn, 0});
            }
        }
    }

    /// The best with as much cut out somewhere as it is to get shorter.
    void cut_out(double length) {
        resize(best.length);
        search.set_stands(best.stands);
        search.set_stands(cut_at(search, search.random().between(0, best.length), best.length - length));
        resize(length);
    }

    struct Failed {
        double overlap;
        Stands stands;
    };

    /// From the best into that length; where that fails, from what failed with little overlap, two swapped.
    bool squeeze(double length, double share) {
        const auto stop = [&] { return over(share); };
        cut_out(length);
        std::vector<Failed> failed; // the least first
        for (;;) {
            search.forget_weights();
            if (search.part(strikes, tries, stop)) break;
            if (failed.size() == patience || stop()) return false;
            const Failed one{search.total(), search.stands()};
            failed.insert(
                std::upper_bound(failed.begin(), failed.end(), one,
                                 [](const Failed& a, const Failed& b) { return a.overlap < b.overlap; }),
                one);
            const double least_often = search.random()() * search.random()();
            search.set_stands(
                failed[static_cast<std::size_t>(least_often * static_cast<double>(failed.size()))].stands);
            swap_two_large(search);
        }
        best = {length, search.stands(), 0};
        return true;
    }

    void explore(double share) {
        for (double cut = cut_at_most; !over(share);)
            cut = squeeze(best.length * (1 - cut), share) ? cut_at_most : std::max(cut_at_least, cut / 2);
    }

    void compress() {
        while (!over(1)) {
            const double late = (done() - exploring) / (1 - exploring);
            const double length = best.length * (1 - 0.001 * std::pow(0.05, std::max(0.0, late)));
            cut_out(length);
            search.forget_weights();
            if (search.part(1, 40, [&] { return over(1); })) best = {length, search.stands(), 0};
        }
    }
};

} // namespace

Strip shortest_strip(const std::vector<Figure>& figures, double height, const Budget& budget,
                     const Watch& watch) {
    std::vector<std::vector<TurnedFigure>> turns;
    double area = 0;
    double widest = 0;
    bool rectangles = true;
    for (const Figure& figure : figures) {
        turns.push_back(turned(figure));
        for (const Part& part : figure.parts) area += shape::area(part.outline);
        widest = std::max({widest, turns.back()[0].box.width(), turns.back()[0].box.height()});
        rectangles = rectangles && std::all_of(turns.back().begin(), turns.back().end(), rectangle);
    }
    const double length = std::max(widest * 1.001, 1.4 * area / height);
    Search search(strip_room(length, height), turns, budget.seed);
    Run run{search, height, length, budget, watch, {}};
    if (!rectangles || !run.lay(turns)) run.start();
    run.explore(exploring);
    run.compress();
    run.best.evaluations = search.evaluations() + run.laid;
    return run.best;
}

} // namespace drawercast::arrange
