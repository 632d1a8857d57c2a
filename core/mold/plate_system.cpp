// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_system.h"

#include "base/demand.h"

#include <Eigen/Cholesky>
#include <Eigen/Dense>

#include <algorithm>
#include <numeric>
#include <utility>

namespace drawercast::mold {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;

Index index(std::size_t i) { return static_cast<Index>(i); }

/// Where an unknown lies among the blocks.
struct Place {
    std::size_t block = 0;
    Index within = 0;
};

} // namespace

Between between(const std::vector<double>& lines, double value) {
    const auto after = std::upper_bound(lines.begin(), lines.end(), value) - lines.begin();
    const auto first = static_cast<std::size_t>(
        std::clamp<std::ptrdiff_t>(after - 1, 0, static_cast<std::ptrdiff_t>(lines.size()) - 2));
    return {first, std::clamp((value - lines[first]) / (lines[first + 1] - lines[first]), 0.0, 1.0)};
}

struct PlateSystem::Factor {
    std::size_t columns = 0;
    bool blocks_are_columns = true;
    std::vector<bool> fixed;
    std::vector<MatrixXd> diagonal; ///< lower Cholesky factors
    std::vector<MatrixXd> below;    ///< below[i] couples block i + 1 to block i

    std::size_t blocks() const { return diagonal.size(); }
    Index size() const { return diagonal.front().rows(); }

    Place place(std::size_t node, std::size_t unknown) const {
        const std::size_t column = node % columns;
        const std::size_t row = node / columns;
        const std::size_t along = blocks_are_columns ? row : column;
        return {blocks_are_columns ? column : row, index(node_unknowns * along + unknown)};
    }

    void add_element(const PlateSection& section, const PlateGrid& grid, std::size_t column, std::size_t row);
    void hold(const Holding& holding, std::size_t nodes);
    void factor();
    void forward(std::size_t block, std::vector<MatrixXd>& x, Index active) const;
    void backward(std::size_t block, std::vector<MatrixXd>& x) const;
};

void PlateSystem::Factor::add_element(const PlateSection& section, const PlateGrid& grid, std::size_t column,
                                      std::size_t row) {
    const auto k = element_stiffness(section, grid.x_mm[column + 1] - grid.x_mm[column],
                                     grid.y_mm[row + 1] - grid.y_mm[row]);
    const std::array nodes{grid.node(column, row), grid.node(column + 1, row), grid.node(column, row + 1),
                           grid.node(column + 1, row + 1)};
    for (std::size_t i = 0; i < element_unknowns; ++i) {
        const Place a = place(nodes[i / node_unknowns], i % node_unknowns);
        for (std::size_t j = 0; j < element_unknowns; ++j) {
            const Place b = place(nodes[j / node_unknowns], j % node_unknowns);
            if (a.block == b.block) diagonal[a.block](a.within, b.within) += k[i][j];
            if (a.block == b.block + 1) below[b.block](a.within, b.within) += k[i][j];
        }
    }
}

void PlateSystem::Factor::hold(const Holding& holding, std::size_t nodes) {
    for (std::size_t node = 0; node < nodes; ++node) {
        const Place lift = place(node, 0);
        diagonal[lift.block](lift.within, lift.within) += holding.spring_n_mm[node];
        for (std::size_t unknown = 0; unknown < node_unknowns; ++unknown) {
            if (!holding.fixed[node_unknowns * node + unknown]) continue;
            const Place p = place(node, unknown);
            diagonal[p.block].row(p.within).setZero();
            diagonal[p.block].col(p.within).setZero();
            diagonal[p.block](p.within, p.within) = 1;
            if (p.block > 0) below[p.block - 1].row(p.within).setZero();
            if (p.block + 1 < blocks()) below[p.block].col(p.within).setZero();
        }
    }
}

void PlateSystem::Factor::factor() {
    for (std::size_t i = 0; i < blocks(); ++i) {
        if (i > 0) diagonal[i].triangularView<Eigen::Lower>() -= below[i - 1] * below[i - 1].transpose();
        const Eigen::LLT<Eigen::Ref<MatrixXd>> cholesky(diagonal[i]); // in place
        DRAWERCAST_DEMAND(cholesky.info() == Eigen::Success, "the holding leaves no motion free");
        if (i + 1 < blocks()) // B L^-T
            diagonal[i].triangularView<Eigen::Lower>().transpose().solveInPlace<Eigen::OnTheRight>(below[i]);
    }
}

void PlateSystem::Factor::forward(std::size_t block, std::vector<MatrixXd>& x, Index active) const {
    auto here = x[block].leftCols(active);
    if (block > 0) here.noalias() -= below[block - 1] * x[block - 1].leftCols(active);
    diagonal[block].triangularView<Eigen::Lower>().solveInPlace(here);
}

void PlateSystem::Factor::backward(std::size_t block, std::vector<MatrixXd>& x) const {
    if (block + 1 < blocks()) x[block].noalias() -= below[block].transpose() * x[block + 1];
    diagonal[block].triangularView<Eigen::Lower>().transpose().solveInPlace(x[block]);
}

PlateSystem::PlateSystem(const PlateSection& section, const PlateGrid& grid, const Holding& holding)
    : factor_(std::make_unique<Factor>()) {
    Factor& f = *factor_;
    f.columns = grid.columns();
    f.blocks_are_columns = grid.columns() >= grid.rows();
    const std::size_t blocks = std::max(grid.columns(), grid.rows());
    const Index size = index(node_unknowns * std::min(grid.columns(), grid.rows()));
    f.diagonal.assign(blocks, MatrixXd::Zero(size, size));
    f.below.assign(blocks - 1, MatrixXd::Zero(size, size));
    for (std::size_t row = 0; row + 1 < grid.rows(); ++row)
        for (std::size_t column = 0; column + 1 < grid.columns(); ++column)
            f.add_element(section, grid, column, row);
    f.fixed = holding.fixed;
    f.hold(holding, grid.nodes());
    f.factor();
}

PlateSystem::~PlateSystem() = default;
PlateSystem::PlateSystem(PlateSystem&&) noexcept = default;
PlateSystem& PlateSystem::operator=(PlateSystem&&) noexcept = default;

std::vector<double> PlateSystem::solve(const std::vector<double>& loads) const {
    const Factor& f = *factor_;
    std::vector<MatrixXd> x(f.blocks(), MatrixXd::Zero(f.size(), 1));
    for (std::size_t i = 0; i < loads.size(); ++i) {
        const Place p = f.place(i / node_unknowns, i % node_unknowns);
        x[p.block](p.within, 0) = f.fixed[i] ? 0 : loads[i];
    }
    for (std::size_t block = 0; block < f.blocks(); ++block) f.forward(block, x, 1);
    for (std::size_t block = f.blocks(); block-- > 0;) f.backward(block, x);
    std::vector<double> out(loads.size());
    for (std::size_t i = 0; i < loads.size(); ++i) {
        const Place p = f.place(i / node_unknowns, i % node_unknowns);
        out[i] = x[p.block](p.within, 0);
    }
    return out;
}

Square PlateSystem::lift_by_force(const std::vector<std::size_t>& nodes) const {
    const Factor& f = *factor_;
    std::vector<std::size_t> order(nodes.size()); // by block: a force is felt only from its block onward
    std::iota(order.begin(), order.end(), 0u);
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return f.place(nodes[a], 0).block < f.place(nodes[b], 0).block;
    });
    std::vector<MatrixXd> x(f.blocks(), MatrixXd::Zero(f.size(), index(nodes.size())));
    for (std::size_t column = 0; column < order.size(); ++column) {
        const Place p = f.place(nodes[order[column]], 0);
        x[p.block](p.within, index(column)) = f.fixed[node_unknowns * nodes[order[column]]] ? 0 : 1;
    }
    std::size_t active = 0;
    for (std::size_t block = 0; block < f.blocks(); ++block) {
        while (active < order.size() && f.place(nodes[order[active]], 0).block <= block) ++active;
        f.forward(block, x, index(active));
    }
    for (std::size_t block = f.blocks(); block-- > 0;) f.backward(block, x);
    Square out{nodes.size(), std::vector<double>(nodes.size() * nodes.size())};
    for (std::size_t column = 0; column < order.size(); ++column) {
        for (std::size_t row = 0; row < nodes.size(); ++row) {
            const Place p = f.place(nodes[row], 0);
            out.values[row * out.size + order[column]] = x[p.block](p.within, index(column));
        }
    }
    return out;
}

} // namespace drawercast::mold
