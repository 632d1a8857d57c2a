// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/multigrid.h"

#include <algorithm>
#include <cmath>

namespace drawercast::air {
namespace {

constexpr double over_correction = 1.8; ///< coarse cells are too stiff a picture of smooth errors
constexpr int coarsest = 4;             ///< cells each way
constexpr int coarsest_sweeps = 12;
constexpr double singular = 1e-12; ///< of a link: less to the outside is rounding

} // namespace

Multigrid::Multigrid(const Mesh& mesh, const Links& links) : links_(links) {
    double across = mesh.columns();
    double deep = mesh.rows();
    for (;;) {
        Level level;
        level.mesh = Mesh(across, deep, 1); // cells of 1 by 1: only their order counts
        const std::size_t size = level.mesh.size();
        level.links = Links(size);
        for (Values* values : {&level.diagonal, &level.inverse, &level.x, &level.b})
            values->assign(size, 0.0);
        levels_.push_back(std::move(level));
        if (across <= coarsest && deep <= coarsest) break;
        across = std::ceil(across / 2);
        deep = std::ceil(deep / 2);
    }
    const std::size_t size = mesh.size();
    for (Values* values : {&direction_, &applied_, &z_}) values->assign(size, 0.0);
}

void Multigrid::choose(const Marks& among) {
    Level& top = levels_.front();
    const std::size_t stride = top.mesh.stride();
    for_each_cell(top.mesh, [&](std::size_t cell) {
        const double sum = among[cell] ? links_.sum(cell, stride) : 0;
        top.diagonal[cell] = sum;
        top.inverse[cell] = sum > 0 ? 1 / sum : 0;
        top.links.right[cell] = among[cell] && among[cell + 1] ? links_.right[cell] : 0;
        top.links.back[cell] = among[cell] && among[cell + stride] ? links_.back[cell] : 0;
    });
    for (std::size_t depth = 1; depth < levels_.size(); ++depth) coarsen(levels_[depth - 1], levels_[depth]);
}

void Multigrid::coarsen(const Level& fine, Level& coarse) const {
    std::fill(coarse.diagonal.begin(), coarse.diagonal.end(), 0.0);
    std::fill(coarse.links.right.begin(), coarse.links.right.end(), 0.0);
    std::fill(coarse.links.back.begin(), coarse.links.back.end(), 0.0);
    for (int row = 0; row < fine.mesh.rows(); ++row)
        for (int column = 0; column < fine.mesh.columns(); ++column) {
            const std::size_t cell = fine.mesh.at(column, row);
            const std::size_t into = coarse.mesh.at(column / 2, row / 2);
            coarse.diagonal[into] += fine.diagonal[cell];
            if (column % 2 == 1)
                coarse.links.right[into] += fine.links.right[cell];
            else
                coarse.diagonal[into] -= 2 * fine.links.right[cell];
            if (row % 2 == 1)
                coarse.links.back[into] += fine.links.back[cell];
            else
                coarse.diagonal[into] -= 2 * fine.links.back[cell];
        }
    const std::size_t stride = coarse.mesh.stride();
    for_each_cell(coarse.mesh, [&](std::size_t cell) {
        // Rounding must not leave less on the diagonal than its links.
        const double out = coarse.links.sum(cell, stride);
        if (coarse.diagonal[cell] - out < singular * out) coarse.diagonal[cell] = out;
        coarse.inverse[cell] = coarse.diagonal[cell] > 0 ? 1 / coarse.diagonal[cell] : 0;
    });
}

namespace {

/// What flows in from the neighbors, as they are.
inline double inflow(const Links& links, const Values& x, std::size_t cell, std::size_t stride) {
    return links.right[cell - 1] * x[cell - 1] + links.right[cell] * x[cell + 1] +
           links.back[cell - stride] * x[cell - stride] + links.back[cell] * x[cell + stride];
}

} // namespace

void Multigrid::sweep_forward(Level& level) {
    const std::size_t stride = level.mesh.stride();
    for_each_cell(level.mesh, [&](std::size_t cell) {
        level.x[cell] = level.inverse[cell] * (level.b[cell] + inflow(level.links, level.x, cell, stride));
    });
}

void Multigrid::sweep_backward(Level& level) {
    const Mesh& mesh = level.mesh;
    const std::size_t stride = mesh.stride();
    for (int row = mesh.rows() - 1; row >= 0; --row) {
        const std::size_t first = mesh.at(0, row);
        for (std::size_t cell = first + static_cast<std::size_t>(mesh.columns()); cell-- > first;)
            level.x[cell] =
                level.inverse[cell] * (level.b[cell] + inflow(level.links, level.x, cell, stride));
    }
}

void Multigrid::cycle(std::size_t depth) {
    Level& level = levels_[depth];
    std::fill(level.x.begin(), level.x.end(), 0.0);
    if (depth + 1 == levels_.size()) {
        for (int i = 0; i < coarsest_sweeps; ++i) sweep_forward(level), sweep_backward(level);
        return;
    }
    sweep_forward(level);
    Level& coarse = levels_[depth + 1];
    const std::size_t stride = level.mesh.stride();
    std::fill(coarse.b.begin(), coarse.b.end(), 0.0);
    for (int row = 0; row < level.mesh.rows(); ++row)
        for (int column = 0; column < level.mesh.columns(); ++column) {
            const std::size_t cell = level.mesh.at(column, row);
            if (level.inverse[cell] == 0) continue;
            coarse.b[coarse.mesh.at(column / 2, row / 2)] += level.b[cell] -
                                                             level.diagonal[cell] * level.x[cell] +
                                                             inflow(level.links, level.x, cell, stride);
        }
    cycle(depth + 1);
    for (int row = 0; row < level.mesh.rows(); ++row)
        for (int column = 0; column < level.mesh.columns(); ++column) {
            const std::size_t cell = level.mesh.at(column, row);
            if (level.inverse[cell] != 0)
                level.x[cell] += over_correction * coarse.x[coarse.mesh.at(column / 2, row / 2)];
        }
    sweep_backward(level);
}

void Multigrid::precondition(const Values& r, Values& z) {
    Level& top = levels_.front();
    for_each_cell(top.mesh, [&](std::size_t cell) { top.b[cell] = top.inverse[cell] != 0 ? r[cell] : 0; });
    cycle(0);
    for_each_cell(top.mesh, [&](std::size_t cell) { z[cell] = top.x[cell]; });
}

int Multigrid::solve(Values& x, Values& r, double tolerance, int most) {
    const Level& top = levels_.front();
    const std::size_t stride = top.mesh.stride();
    const auto chosen = [&](std::size_t cell) { return top.inverse[cell] != 0; };
    const auto product = [&](const Values& a, const Values& b) {
        double sum = 0;
        for_each_cell(top.mesh, [&](std::size_t cell) {
            if (chosen(cell)) sum += a[cell] * b[cell];
        });
        return sum;
    };
    const auto worst = [&] {
        double most_r = 0;
        for_each_cell(top.mesh, [&](std::size_t cell) {
            if (chosen(cell)) most_r = std::max(most_r, std::abs(r[cell]));
        });
        return most_r;
    };
    int taken = 0;
    double before = 0; // r·z
    std::fill(direction_.begin(), direction_.end(), 0.0);
    while (taken < most && worst() > tolerance) {
        precondition(r, z_);
        const double now = product(r, z_);
        if (!(now > 0)) break;
        const double keep = taken == 0 ? 0 : now / before;
        before = now;
        for_each_cell(top.mesh, [&](std::size_t cell) {
            direction_[cell] = chosen(cell) ? z_[cell] + keep * direction_[cell] : 0;
        });
        for_each_cell(top.mesh, [&](std::size_t cell) {
            applied_[cell] = chosen(cell) ? top.diagonal[cell] * direction_[cell] -
                                                inflow(top.links, direction_, cell, stride)
                                          : 0;
        });
        const double curvature = product(direction_, applied_);
        if (!(curvature > 0)) break;
        const double step = now / curvature;
        for_each_cell(top.mesh, [&](std::size_t cell) {
            if (!chosen(cell)) return;
            x[cell] += step * direction_[cell];
            r[cell] -= step * applied_[cell];
        });
        ++taken;
    }
    return taken;
}

} // namespace drawercast::air
