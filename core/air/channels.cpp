// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/channels.h"

#include "air/joined.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace drawercast::air {
namespace {

using shape::Vec;

/// Basins of width: grown from the widest cells down; two that meet stay apart where the meeting place is a
/// neck to both, else become one.
class Basins {
  public:
    Basins(const Cells& cells, const Values& widths)
        : cells_(cells), widths_(widths), basin_(cells.mesh.size(), -1) {}

    std::vector<int> grow() {
        std::vector<std::size_t> order;
        for_each_cell(cells_.mesh, [&](std::size_t cell) {
            if (cells_.open(cell) && cells_.channel[cell]) order.push_back(cell);
        });
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return widths_[a] > widths_[b]; });
        // Cells as wide as each other are taken up from where they touch what is there, so that a neck is cut
        // in its middle.
        for (std::size_t from = 0; from < order.size();) {
            std::size_t to = from;
            while (to < order.size() && widths_[order[to]] > widths_[order[from]] * (1 - same_width)) ++to;
            flood({order.begin() + static_cast<std::ptrdiff_t>(from),
                   order.begin() + static_cast<std::ptrdiff_t>(to)});
            from = to;
        }
        for_each_cell(cells_.mesh, [&](std::size_t cell) {
            if (basin_[cell] >= 0) basin_[cell] = root(basin_[cell]);
        });
        return std::move(basin_);
    }

  private:
    static constexpr double same_width = 0.01;

    int root(int basin) const {
        while (parent_[static_cast<std::size_t>(basin)] != basin)
            basin = parent_[static_cast<std::size_t>(basin)];
        return basin;
    }

    void flood(const std::vector<std::size_t>& level) {
        for (const std::size_t cell : level) pending(cell) = 1;
        std::vector<std::size_t> front;
        for (const std::size_t cell : level)
            if (touches_basin(cell)) front.push_back(cell);
        spread(std::move(front));
        for (const std::size_t seed : level)
            if (pending(seed)) start_basin(seed), spread({seed});
        for (const std::size_t cell : level) meet(cell);
    }

    char& pending(std::size_t cell) {
        if (pending_.empty()) pending_.assign(cells_.mesh.size(), 0);
        return pending_[cell];
    }
    bool touches_basin(std::size_t cell) const {
        const auto around = neighbors(cells_.mesh, cell);
        return std::any_of(around.begin(), around.end(), [&](std::size_t next) { return basin_[next] >= 0; });
    }
    void start_basin(std::size_t cell) {
        basin_[cell] = static_cast<int>(parent_.size());
        parent_.push_back(basin_[cell]);
        widest_.push_back(widths_[cell]);
        pending(cell) = 0;
    }

    /// Breadth first, so that what several basins reach is shared evenly.
    void spread(std::vector<std::size_t> front) {
        while (!front.empty()) {
            std::vector<std::size_t> next_front;
            for (const std::size_t cell : front) {
                if (basin_[cell] < 0) take_in(cell);
                for (const std::size_t next : neighbors(cells_.mesh, cell))
                    if (pending(next) == 1 && basin_[next] < 0) pending(next) = 2, next_front.push_back(next);
            }
            front = std::move(next_front);
        }
    }
    void take_in(std::size_t cell) {
        for (const std::size_t next : neighbors(cells_.mesh, cell))
            if (basin_[next] >= 0) {
                basin_[cell] = basin_[next];
                break;
            }
        pending(cell) = 0;
    }

    void meet(std::size_t cell) {
        for (const std::size_t next : neighbors(cells_.mesh, cell)) {
            if (basin_[next] < 0) continue;
            const int a = root(basin_[cell]);
            const int b = root(basin_[next]);
            if (a == b) continue;
            const double lesser =
                std::min(widest_[static_cast<std::size_t>(a)], widest_[static_cast<std::size_t>(b)]);
            if (std::min(widths_[cell], widths_[next]) < neck_share * lesser) continue;
            const auto [low, high] = std::minmax(a, b);
            parent_[static_cast<std::size_t>(high)] = low;
            widest_[static_cast<std::size_t>(low)] =
                std::max(widest_[static_cast<std::size_t>(low)], widest_[static_cast<std::size_t>(high)]);
        }
    }

    const Cells& cells_;
    const Values& widths_;
    std::vector<int> basin_;
    std::vector<int> parent_;
    Values widest_;
    Marks pending_;
};

void describe(const Cells& cells, const Values& widths, Channels& channels) {
    const Mesh& mesh = cells.mesh;
    std::vector<Vec> centroid(channels.all.size());
    for_each_cell(mesh, [&](std::size_t cell) {
        if (channels.channel[cell] < 0) return;
        const auto i = static_cast<std::size_t>(channels.channel[cell]);
        auto& channel = channels.all[i];
        channel.width_mm = std::max(channel.width_mm, widths[cell]);
        channel.area_mm2 += cells.area_mm2[cell];
        centroid[i] = centroid[i] + mesh.center(cell) * cells.area_mm2[cell];
    });
    std::vector<double> nearest(channels.all.size(), std::numeric_limits<double>::infinity());
    for_each_cell(mesh, [&](std::size_t cell) {
        if (channels.channel[cell] < 0) return;
        const auto i = static_cast<std::size_t>(channels.channel[cell]);
        auto& channel = channels.all[i];
        if (widths[cell] < 0.95 * channel.width_mm) return;
        const double mm = length(mesh.center(cell) - centroid[i] * (1 / channel.area_mm2));
        if (mm < nearest[i]) nearest[i] = mm, channel.middle = mesh.center(cell);
    });
}

} // namespace

Channels channels_of(const Cells& cells, const Values& widths_mm) {
    Channels out;
    const std::vector<int> basins = Basins(cells, widths_mm).grow();
    const Joined boards =
        joined_cells(cells.mesh, [&](std::size_t cell) { return cells.open(cell) && cells.channel[cell]; });
    out.boards = boards.count;
    out.channel.assign(cells.mesh.size(), -1);
    std::vector<int> number(cells.mesh.size(), -1); // of each basin
    for_each_cell(cells.mesh, [&](std::size_t cell) {
        if (basins[cell] < 0) return;
        int& n = number[static_cast<std::size_t>(basins[cell])];
        if (n < 0) {
            n = static_cast<int>(out.all.size());
            out.all.push_back({0, 0, {}, boards.piece[cell] - 1});
        }
        out.channel[cell] = n;
    });
    describe(cells, widths_mm, out);
    return out;
}

std::vector<int> fed_by(const Cells& cells, const Channels& channels, const Values& push_when_full) {
    std::vector<int> out = channels.channel;
    std::vector<std::size_t> climb;
    for_each_cell(cells.mesh, [&](std::size_t start) {
        if (!cells.open(start) || out[start] >= 0) return;
        climb.clear();
        std::size_t at = start;
        int found = -1;
        for (;;) {
            climb.push_back(at);
            std::size_t best = at;
            for (const std::size_t next : neighbors(cells.mesh, at))
                if (cells.open(next) && push_when_full[next] > push_when_full[best]) best = next;
            if (best == at) break; // a top that foam flows from: it was poured on
            at = best;
            if (out[at] >= 0) {
                found = out[at];
                break;
            }
        }
        if (found >= 0)
            for (const std::size_t cell : climb) out[cell] = found;
    });
    return out;
}

Puddle puddle_at(Vec at, double share, const Floor& floor, const Cells& cells, const Channels& channels) {
    Puddle puddle;
    puddle.share = share;
    const std::size_t here = cells.mesh.holding(at);
    if (!cells.open(here)) return puddle;
    const int channel = channels.channel[here];
    const auto same_top = [&](std::size_t cell) {
        if (!cells.open(cell) || cells.body[cell] < 0) return false;
        const Body& a = floor.bodies[static_cast<std::size_t>(cells.body[here])];
        const Body& b = floor.bodies[static_cast<std::size_t>(cells.body[cell])];
        return a.pocket == b.pocket && a.height_mm == b.height_mm;
    };
    if (channel >= 0) {
        for_each_cell(cells.mesh, [&](std::size_t cell) {
            if (channels.channel[cell] == channel) puddle.cells.push_back(cell);
        });
        return puddle;
    }
    const Joined tops = joined_cells(cells.mesh, same_top);
    for_each_cell(cells.mesh, [&](std::size_t cell) {
        if (tops.piece[cell] != 0 && tops.piece[cell] == tops.piece[here]) puddle.cells.push_back(cell);
    });
    return puddle;
}

} // namespace drawercast::air
