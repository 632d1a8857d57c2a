// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/arrange/strip.h"

#include "arrange/shorten.h"
#include "arrange/skyline.h"

#include <algorithm>
#include <limits>

namespace drawercast::arrange {

namespace {

// Shares of the budget that are gone when a phase ends.
constexpr double laying = 0.5; ///< of rectangles
constexpr double starting = 0.5;
constexpr int starts = 3;
constexpr double exploring = 0.8;

bool rectangle(const TurnedFigure& figure) {
    if (figure.parts.size() != 1 || figure.parts[0].round_mm > 0) return false;
    const double whole = figure.box.width() * figure.box.height();
    return shape::area({figure.parts[0].core, 0}) >= whole * (1 - 1e-9);
}

/// Several times from anywhere; of what is found quickly the shortest goes on, as chance decides more than
/// patience.
void start_often(Shortening& shortening, double length, const std::function<bool()>& over) {
    Strip best{std::numeric_limits<double>::infinity(), {}, 0};
    for (int k = 1; k <= starts && (k == 1 || !over()); ++k) {
        shortening.start(length);
        shortening.explore(starting * k / starts);
        if (shortening.length() < best.length) best = {shortening.length(), shortening.stands(), 0};
    }
    shortening.start(best.length, best.stands);
}

/// Rectangles are better laid than parted: each time into a little less, until `stop`.
Strip laid_strip(const std::vector<std::vector<TurnedFigure>>& figures, double height, Random random,
                 const std::function<bool()>& stop) {
    constexpr double clear = 2 * Room::touch_mm; // a sum of sides may be a digit less
    constexpr double cut = 0.001;
    std::vector<std::vector<Side>> boxes;
    for (const auto& turns : figures) boxes.push_back(ways_to_lay(turns, clear));
    auto order = large_first(boxes);
    Strip best{std::numeric_limits<double>::infinity(), {}, 0};
    for (;;) {
        const Layout layout = best_laid(boxes, height + clear, best.length * (1 - cut), order, random, stop);
        if (layout.left > 0) return best;
        best = {layout.length, {}, 0};
        for (std::size_t i = 0; i < boxes.size(); ++i) {
            const std::size_t turn = boxes[i][layout.boxes[i]->way].turn;
            best.stands.push_back({layout.boxes[i]->at - figures[i][turn].box.min, turn, 0});
        }
    }
}

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
    Room room;
    room.box = {{0, 0}, {length, height}};
    Search search(room, turns, budget.seed);
    std::uint64_t laid = 0; // boxes, which take about as long as evaluations
    const auto done = [&] {
        return static_cast<double>(search.evaluations() + laid) / static_cast<double>(budget.evaluations);
    };
    const auto stop = [&] { return watch(std::min(1.0, done())); };
    Shortening shortening(search, room.box, 0, {done, stop});
    Strip first;
    if (rectangles)
        first = laid_strip(turns, height, Random(budget.seed), [&] {
            laid += turns.size();
            return done() >= laying || stop();
        });
    if (first.stands.empty())
        start_often(shortening, length, [&] { return done() >= starting || stop(); });
    else
        shortening.start(first.length, first.stands);
    shortening.explore(exploring);
    shortening.refine(1);
    return {shortening.length(), shortening.stands(), search.evaluations() + laid};
}

} // namespace drawercast::arrange
