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

/// Stretches of open board of one width, taken together from the narrowest up: one that lies between two
/// wider ones stays a channel of its own where it is a neck to both, any other becomes part of what it leads
/// to.
class Stretches {
  public:
    Stretches(const Cells& cells, const Values& widths)
        : cells_(cells), widths_(widths), stretch_(cells.mesh.size(), -1) {}

    /// The number of each cell's channel: any, but the same all over a channel.
    std::vector<int> join() {
        cut();
        std::vector<int> order(all_.size());
        std::iota(order.begin(), order.end(), 0);
        joined_ = order;
        std::stable_sort(order.begin(), order.end(),
                         [&](int a, int b) { return at(a).width_mm < at(b).width_mm; });
        for (const int stretch : order) settle(stretch);
        for (int& stretch : stretch_)
            if (stretch >= 0) stretch = root(stretch);
        return std::move(stretch_);
    }

  private:
    struct Stretch {
        double width_mm = 0;
        std::vector<std::size_t> cells;
    };
    struct Side { ///< of a stretch: where it opens into wider ones
        double width_mm = 0;
        int into = -1;
    };
    static constexpr double same_width = 0.01;
    static constexpr double real_stretch = 0.5; ///< of its width's square: less is a crevice at a mouth

    Stretch& at(int i) { return all_[static_cast<std::size_t>(i)]; }
    bool board(std::size_t cell) const { return cells_.open(cell) && cells_.channel[cell]; }

    void cut() {
        for_each_cell(cells_.mesh, [&](std::size_t seed) {
            if (stretch_[seed] >= 0 || !board(seed)) return;
            const int number = static_cast<int>(all_.size());
            all_.push_back({widths_[seed], {seed}});
            stretch_[seed] = number;
            for (std::size_t i = 0; i < at(number).cells.size(); ++i)
                for (const std::size_t next : neighbors(cells_.mesh, at(number).cells[i])) {
                    if (stretch_[next] >= 0 || !board(next)) continue;
                    if (std::abs(widths_[next] - widths_[seed]) > same_width * widths_[seed]) continue;
                    stretch_[next] = number;
                    at(number).cells.push_back(next);
                }
        });
    }

    /// Joins a stretch to the sides that it is no neck to, and so these to each other; its cells are from
    /// then on those of the narrowest of them.
    void settle(int stretch) {
        std::vector<Side> sides = sides_of(stretch);
        if (sides.empty()) return;
        std::stable_sort(sides.begin(), sides.end(), [](Side a, Side b) { return a.width_mm < b.width_mm; });
        const double width = at(stretch).width_mm;
        if (sides.size() > 1 && width < neck_share * sides[sides.size() - 2].width_mm) return;
        for (std::size_t i = 1; i < sides.size(); ++i)
            if (width >= neck_share * sides[i].width_mm) unite(sides[0].into, sides[i].into);
        unite(stretch, sides[0].into);
        merge(stretch, sides[0].into);
    }

    int root(int stretch) const {
        while (joined_[static_cast<std::size_t>(stretch)] != stretch)
            stretch = joined_[static_cast<std::size_t>(stretch)];
        return stretch;
    }
    void unite(int a, int b) {
        const auto [low, high] =
            std::minmax({root(a), root(b)}); // of values: of arguments it would be references
        joined_[static_cast<std::size_t>(high)] = low;
    }

    /// Wider cells around the stretch, in groups that touch each other.
    std::vector<Side> sides_of(int stretch) {
        std::vector<std::size_t> around;
        for (const std::size_t cell : at(stretch).cells)
            for (const std::size_t next : neighbors(cells_.mesh, cell))
                if (stretch_[next] >= 0 && at(stretch_[next]).width_mm > at(stretch).width_mm)
                    around.push_back(next);
        std::sort(around.begin(), around.end());
        around.erase(std::unique(around.begin(), around.end()), around.end());
        std::vector<Side> sides;
        std::vector<char> seen(around.size(), 0);
        for (std::size_t seed = 0; seed < around.size(); ++seed) {
            if (seen[seed]) continue;
            seen[seed] = 1;
            Side side;
            std::vector<std::size_t> group{seed};
            for (std::size_t i = 0; i < group.size(); ++i) {
                const std::size_t cell = around[group[i]];
                const double width = width_beyond(stretch_[cell]);
                if (width > side.width_mm) side = {width, stretch_[cell]};
                for (std::size_t k = 0; k < around.size(); ++k)
                    if (!seen[k] && touch(cell, around[k])) seen[k] = 1, group.push_back(k);
            }
            sides.push_back(side);
        }
        return sides;
    }
    bool touch(std::size_t a, std::size_t b) const {
        const Mesh& mesh = cells_.mesh;
        return std::abs(mesh.column_of(a) - mesh.column_of(b)) <= 1 &&
               std::abs(mesh.row_of(a) - mesh.row_of(b)) <= 1;
    }

    /// Up through crevices to the first real stretch.
    double width_beyond(int stretch) {
        for (;;) {
            const double width = at(stretch).width_mm;
            const double area = static_cast<double>(at(stretch).cells.size()) * cells_.mesh.cell_mm2();
            if (area >= real_stretch * width * width) return width;
            int widest = stretch;
            for (const std::size_t cell : at(stretch).cells)
                for (const std::size_t next : neighbors(cells_.mesh, cell))
                    if (stretch_[next] >= 0 && at(stretch_[next]).width_mm > at(widest).width_mm)
                        widest = stretch_[next];
            if (widest == stretch) return width;
            stretch = widest;
        }
    }

    void merge(int from, int into) {
        for (const std::size_t cell : at(from).cells) stretch_[cell] = into;
        at(into).cells.insert(at(into).cells.end(), at(from).cells.begin(), at(from).cells.end());
        at(from).cells.clear();
    }

    const Cells& cells_;
    const Values& widths_;
    std::vector<int> stretch_;
    std::vector<Stretch> all_;
    std::vector<int> joined_; ///< of each stretch, towards the first of its channel
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
    const std::vector<int> stretches = Stretches(cells, widths_mm).join();
    const Joined boards =
        joined_cells(cells.mesh, [&](std::size_t cell) { return cells.open(cell) && cells.channel[cell]; });
    out.boards = boards.count;
    out.channel.assign(cells.mesh.size(), -1);
    std::vector<int> number(cells.mesh.size(), -1); // of each stretch
    for_each_cell(cells.mesh, [&](std::size_t cell) {
        if (stretches[cell] < 0) return;
        int& n = number[static_cast<std::size_t>(stretches[cell])];
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

namespace {

/// The neighbor with most border to `channel`; −1: none.
int main_neighbor(int channel, const Cells& cells, const std::vector<int>& of_cell, std::size_t channels) {
    std::vector<int> border(channels, 0);
    for_each_cell(cells.mesh, [&](std::size_t cell) {
        if (of_cell[cell] != channel) return;
        for (const std::size_t next : neighbors(cells.mesh, cell))
            if (of_cell[next] >= 0 && of_cell[next] != channel)
                ++border[static_cast<std::size_t>(of_cell[next])];
    });
    const auto most = std::max_element(border.begin(), border.end());
    return most != border.end() && *most > 0 ? static_cast<int>(most - border.begin()) : -1;
}

} // namespace

void join_small(double least_mm3, const Cells& cells, const Values& widths_mm, Channels& channels,
                std::vector<int>& fed_by) {
    std::vector<double> feeds(channels.all.size(), 0.0);
    for_each_cell(cells.mesh, [&](std::size_t cell) {
        if (fed_by[cell] >= 0) feeds[static_cast<std::size_t>(fed_by[cell])] += cells.room_mm3[cell];
    });
    std::vector<int> into(feeds.size());
    std::iota(into.begin(), into.end(), 0);
    std::vector<char> settled(feeds.size(), 0);
    for (;;) {
        int least = -1;
        for (std::size_t i = 0; i < feeds.size(); ++i)
            if (!settled[i] && feeds[i] < least_mm3 &&
                (least < 0 || feeds[i] < feeds[static_cast<std::size_t>(least)]))
                least = static_cast<int>(i);
        if (least < 0) break;
        const auto small = static_cast<std::size_t>(least);
        settled[small] = 1;
        const int taker = main_neighbor(least, cells, channels.channel, feeds.size());
        if (taker < 0) continue;
        feeds[static_cast<std::size_t>(taker)] += feeds[small];
        for (int& channel : channels.channel) channel = channel == least ? taker : channel;
        for (int& channel : into) channel = channel == least ? taker : channel;
    }
    std::vector<int> number(into.size(), -1);
    std::vector<Channels::Channel> left;
    for (std::size_t i = 0; i < into.size(); ++i) {
        if (into[i] != static_cast<int>(i)) continue;
        number[i] = static_cast<int>(left.size());
        left.push_back({0, 0, {}, channels.all[i].board});
    }
    const auto renumber = [&](int& channel) {
        if (channel >= 0) channel = number[static_cast<std::size_t>(into[static_cast<std::size_t>(channel)])];
    };
    std::for_each(channels.channel.begin(), channels.channel.end(), renumber);
    std::for_each(fed_by.begin(), fed_by.end(), renumber);
    channels.all = std::move(left);
    describe(cells, widths_mm, channels);
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
