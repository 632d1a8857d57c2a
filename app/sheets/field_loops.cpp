// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/field.h"

#include <array>
#include <map>

namespace drawercast::sheets {

namespace {

/// The field with a rim of its own edge lines on which nothing is high: every line on it then comes back to
/// where it began.
class Loops {
  public:
    Loops(const Field& field, double level)
        : field_(field), level_(level), columns_(field.x_mm.size() + 2), rows_(field.y_mm.size() + 2) {}

    std::vector<std::vector<Vec>> trace() {
        for (std::size_t row = 0; row + 1 < rows_; ++row)
            for (std::size_t column = 0; column + 1 < columns_; ++column) cross(column, row);
        std::vector<std::vector<Vec>> loops;
        while (!ends_.empty()) loops.push_back(follow(ends_.begin()->first));
        return loops;
    }

  private:
    struct Node {
        std::size_t column, row;
    };
    /// Between a node and the one right of it (0) or behind it (1).
    using Crossing = std::size_t;
    Crossing crossing(Node n, std::size_t way) const { return 2 * (n.row * columns_ + n.column) + way; }

    static std::size_t inner(std::size_t i, std::size_t count) {
        return i == 0 ? 0 : i + 1 == count ? count - 3 : i - 1;
    }
    bool on_rim(Node n) const {
        return n.column == 0 || n.row == 0 || n.column + 1 == columns_ || n.row + 1 == rows_;
    }
    double value(Node n) const {
        if (on_rim(n)) return level_ - 1;
        return field_.at(inner(n.column, columns_), inner(n.row, rows_));
    }
    Vec place(Node n) const {
        return {field_.x_mm[inner(n.column, columns_)], field_.y_mm[inner(n.row, rows_)]};
    }

    void cross(std::size_t column, std::size_t row) {
        const std::array<Node, 4> corner{
            Node{column, row}, {column + 1, row}, {column + 1, row + 1}, {column, row + 1}};
        const std::array<Crossing, 4> side{crossing(corner[0], 0), crossing(corner[1], 1),
                                           crossing(corner[3], 0), crossing(corner[0], 1)};
        std::array<std::size_t, 4> cut{};
        std::size_t cuts = 0;
        const auto high = [&](std::size_t i) { return value(corner[i % 4]) >= level_; };
        for (std::size_t i = 0; i < 4; ++i)
            if (high(i) != high(i + 1)) cut[cuts++] = i;
        if (cuts == 2) link(side[cut[0]], side[cut[1]]);
        if (cuts < 4) return;
        const std::size_t turn = high(0) ? 3 : 0; // cuts off the high corners one by one
        link(side[turn], side[(turn + 1) % 4]);
        link(side[(turn + 2) % 4], side[(turn + 3) % 4]);
    }

    void link(Crossing a, Crossing b) {
        ends_[a].push_back(b);
        ends_[b].push_back(a);
    }

    Vec point(Crossing at) const {
        const std::size_t node = at / 2;
        const Node a{node % columns_, node / columns_};
        const Node b = at % 2 == 0 ? Node{a.column + 1, a.row} : Node{a.column, a.row + 1};
        const double share = (level_ - value(a)) / (value(b) - value(a));
        return place(a) + (place(b) - place(a)) * share;
    }

    std::vector<Vec> follow(Crossing at) {
        std::vector<Vec> loop;
        for (;;) {
            const auto found = ends_.find(at);
            if (found == ends_.end()) return loop;
            loop.push_back(point(at));
            const Crossing next = found->second.back();
            ends_.erase(found);
            const auto after = ends_.find(next);
            if (after == ends_.end()) return loop;
            std::erase(after->second, at);
            if (after->second.empty()) { // the last step back to the start
                loop.push_back(point(next));
                ends_.erase(after);
                return loop;
            }
            at = next;
        }
    }

    const Field& field_;
    double level_;
    std::size_t columns_, rows_;
    std::map<Crossing, std::vector<Crossing>> ends_;
};

} // namespace

std::vector<std::vector<Vec>> level_loops(const Field& field, double level) {
    if (field.x_mm.size() < 2 || field.y_mm.size() < 2) return {};
    return Loops(field, level).trace();
}

Path loops_path(const std::vector<std::vector<Vec>>& loops) {
    Path path;
    for (const auto& loop : loops)
        if (loop.size() > 2) path = joined(std::move(path), polygon(loop));
    return path;
}

} // namespace drawercast::sheets
