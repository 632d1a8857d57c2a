// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/level_lines.h"

#include <algorithm>
#include <array>
#include <map>

namespace drawercast::air {
namespace {

using shape::Vec;

/// Between two neighboring cell centers: the lower cell, and whether the other is behind it or to its right.
using Crossing = std::size_t;
Crossing crossing(std::size_t cell, bool back) { return 2 * cell + (back ? 1 : 0); }

class Lines {
  public:
    Lines(const Mesh& mesh, const Values& values, double level)
        : mesh_(mesh), values_(values), level_(level) {}

    std::vector<LevelLine> trace() {
        for (int row = 0; row + 1 < mesh_.rows(); ++row)
            for (int column = 0; column + 1 < mesh_.columns(); ++column) cross(mesh_.at(column, row));
        std::vector<LevelLine> lines;
        for (const auto& [start, ends] : ends_) // open lines from their ends first
            if (ends.size() == 1) follow(start, lines);
        for (const auto& [start, ends] : ends_) follow(start, lines);
        return lines;
    }

  private:
    bool high(std::size_t cell) const { return values_[cell] >= level_; }

    /// The square between four cell centers, `cell` the lower left one.
    void cross(std::size_t cell) {
        const std::size_t up = mesh_.stride();
        const std::array<std::size_t, 4> corner{cell, cell + 1, cell + up + 1, cell + up};
        if (std::any_of(corner.begin(), corner.end(), [&](std::size_t c) { return !(values_[c] > 0); }))
            return;
        const std::array<Crossing, 4> side{crossing(cell, false), crossing(cell + 1, true),
                                           crossing(cell + up, false), crossing(cell, true)};
        std::vector<std::size_t> cut; // sides, counter-clockwise
        for (std::size_t i = 0; i < 4; ++i)
            if (high(corner[i]) != high(corner[(i + 1) % 4])) cut.push_back(i);
        if (cut.size() == 2) link(side[cut[0]], side[cut[1]]);
        if (cut.size() < 4) return;
        const std::size_t turn = high(corner[0]) ? 3 : 0; // cuts off the high corners one by one
        link(side[turn], side[(turn + 1) % 4]);
        link(side[(turn + 2) % 4], side[(turn + 3) % 4]);
    }

    void link(Crossing a, Crossing b) {
        ends_[a].push_back(b);
        ends_[b].push_back(a);
    }

    Vec place(Crossing at) const {
        const std::size_t from = at / 2;
        const std::size_t to = at % 2 == 0 ? from + 1 : from + mesh_.stride();
        const double share = (level_ - values_[from]) / (values_[to] - values_[from]);
        return mesh_.center(from) + (mesh_.center(to) - mesh_.center(from)) * share;
    }

    void follow(Crossing start, std::vector<LevelLine>& lines) {
        LevelLine line;
        Crossing at = start;
        for (;;) {
            auto& ends = ends_.at(at);
            if (line.empty()) line.push_back(place(at));
            if (ends.empty()) break;
            const Crossing next = ends.back();
            ends.pop_back();
            auto& back = ends_.at(next);
            back.erase(std::find(back.begin(), back.end(), at));
            line.push_back(place(next));
            at = next;
        }
        if (line.size() > 1) lines.push_back(std::move(line));
    }

    const Mesh& mesh_;
    const Values& values_;
    double level_;
    std::map<Crossing, std::vector<Crossing>> ends_;
};

} // namespace

std::vector<LevelLine> level_lines(const Mesh& mesh, const Values& values, double level) {
    return Lines(mesh, values, level).trace();
}

} // namespace drawercast::air
