// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/front.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace drawercast::air {
namespace {

constexpr double precise = 1e-7; ///< of the mean cell's liquid
constexpr double rough = 1e-2;   ///< while the full cells still change: of the residual so far
constexpr int most_rounds = 400;

} // namespace

Rise::Rise(const Cells& cells, const Links& links, const Liquid& liquid, double full_expansion)
    : cells_(cells), links_(links), liquid_(liquid), full_expansion_(full_expansion),
      stiff_(cells.mesh.size(), 0.0), multigrid_(cells.mesh, links) {
    first_touch_ = full_expansion;
    double all = 0;
    for_each_cell(cells.mesh, [&](std::size_t cell) {
        stiff_[cell] = links.sum(cell, cells.mesh.stride());
        all += liquid.mm3[cell];
        if (liquid.mm3[cell] > 0)
            first_touch_ = std::min(first_touch_, cells.room_mm3[cell] / liquid.mm3[cell]);
    });
    first_touch_ = std::max(first_touch_, 1.0);
    tolerance_mm3_ = precise * all / static_cast<double>(cells.mesh.columns() * cells.mesh.rows());
}

Front Rise::start() const {
    Front front;
    front.expansion = 1;
    front.push.assign(cells_.mesh.size(), 0.0);
    front.unfilled.assign(cells_.mesh.size(), 0.0);
    for_each_cell(cells_.mesh,
                  [&](std::size_t cell) { front.unfilled[cell] = std::max(0.0, lacking(cell, 1)); });
    return front;
}

double Rise::unfilled(const Values& push, std::size_t cell, double expansion) const {
    const std::size_t stride = cells_.mesh.stride();
    return lacking(cell, expansion) + stiff_[cell] * push[cell] - links_.right[cell - 1] * push[cell - 1] -
           links_.right[cell] * push[cell + 1] - links_.back[cell - stride] * push[cell - stride] -
           links_.back[cell] * push[cell + stride];
}

/// There and back, each cell as full as its neighbors now make it.
void Rise::sweep(Values& push, double expansion) const {
    const Mesh& mesh = cells_.mesh;
    const auto relax = [&](std::size_t cell) {
        if (stiff_[cell] <= 0) return;
        push[cell] = std::max(0.0, push[cell] - unfilled(push, cell, expansion) / stiff_[cell]);
    };
    for_each_cell(mesh, relax);
    for (int row = mesh.rows() - 1; row >= 0; --row) {
        const std::size_t first = mesh.at(0, row);
        for (std::size_t cell = first + static_cast<std::size_t>(mesh.columns()); cell-- > first;)
            relax(cell);
    }
}

Front Rise::at(double expansion, const Front& before) {
    const Mesh& mesh = cells_.mesh;
    Front front;
    front.expansion = expansion;
    front.push = before.push;
    front.unfilled.assign(mesh.size(), 0.0);
    Marks full(mesh.size(), 0);
    Marks chosen;
    Values& left = front.unfilled;
    for (int round = 0; round < most_rounds; ++round) {
        sweep(front.push, expansion);
        double worst = 0;  // of the residual in full cells
        double pushed = 0; // the most that a dry cell holds too much
        for_each_cell(mesh, [&](std::size_t cell) {
            full[cell] = front.push[cell] > 0;
            const double rest = stiff_[cell] > 0 ? unfilled(front.push, cell, expansion) : 0;
            left[cell] = -rest;
            if (full[cell])
                worst = std::max(worst, std::abs(rest));
            else
                pushed = std::max(pushed, -rest);
        });
        if (worst <= tolerance_mm3_ && pushed <= tolerance_mm3_) break;
        const bool settled = full == chosen;
        if (!settled) multigrid_.choose(full), chosen = full;
        multigrid_.solve(front.push, left,
                         settled ? tolerance_mm3_ / 4 : std::max(tolerance_mm3_ / 4, rough * worst));
        for_each_cell(mesh, [&](std::size_t cell) { front.push[cell] = std::max(0.0, front.push[cell]); });
    }
    for_each_cell(mesh, [&](std::size_t cell) {
        const double rest =
            stiff_[cell] > 0 ? unfilled(front.push, cell, expansion) : lacking(cell, expansion);
        left[cell] = front.push[cell] > 0 ? 0 : std::max(0.0, rest);
    });
    return front;
}

Values Rise::full(const Pieces& pieces) {
    const Mesh& mesh = cells_.mesh;
    Values push(mesh.size(), 0.0);
    Values left(mesh.size(), 0.0);
    Marks all(mesh.size(), 0);
    std::vector<double> sum(static_cast<std::size_t>(pieces.count) + 1, 0.0);
    std::vector<double> members(sum.size(), 0.0);
    for_each_cell(mesh, [&](std::size_t cell) {
        all[cell] = stiff_[cell] > 0;
        if (!all[cell]) return;
        left[cell] = -lacking(cell, full_expansion_);
        sum[static_cast<std::size_t>(pieces.piece[cell])] += left[cell];
        members[static_cast<std::size_t>(pieces.piece[cell])] += 1;
    });
    for_each_cell(mesh, [&](std::size_t cell) { // rounding must not leave the problem without an answer
        const auto piece = static_cast<std::size_t>(pieces.piece[cell]);
        if (all[cell]) left[cell] -= sum[piece] / members[piece];
    });
    multigrid_.choose(all);
    multigrid_.solve(push, left, tolerance_mm3_);
    std::vector<double> least(sum.size(), std::numeric_limits<double>::infinity());
    for_each_cell(mesh, [&](std::size_t cell) {
        auto& low = least[static_cast<std::size_t>(pieces.piece[cell])];
        if (all[cell]) low = std::min(low, push[cell]);
    });
    for_each_cell(mesh, [&](std::size_t cell) {
        if (all[cell]) push[cell] -= least[static_cast<std::size_t>(pieces.piece[cell])];
    });
    return push;
}

} // namespace drawercast::air
