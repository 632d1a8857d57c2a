// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/pair_table.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace drawercast::arrange {

using shape::Vec;

namespace {

template <class Said>
bool any_pair(const TurnedFigure& a, const TurnedFigure& b, const Said& said) {
    for (const TurnedPart& one : a.parts)
        for (const TurnedPart& other : b.parts)
            if (said(one, other)) return true;
    return false;
}

double wall(const Room& room, const TurnedPart& a, const TurnedPart& b) {
    return room.wall_mm(a.depth_mm, b.depth_mm);
}

/// Whether some disc sticks deeper than that in one of the other's.
bool sticks(const TurnedPart& a, const TurnedPart& b, Vec by, double clear_mm, double deeper_mm) {
    const double more = a.round_mm + b.round_mm + clear_mm - deeper_mm;
    for (const Disc& one : a.discs)
        for (const Disc& other : b.discs) {
            const Vec off = other.center + by - one.center;
            const double reach = one.radius + other.radius + more;
            if (reach > 0 && dot(off, off) < reach * reach) return true;
        }
    return false;
}

double widest_wall(const Room& room, const TurnedFigure& a, const TurnedFigure& b) {
    double widest = 0;
    for (const TurnedPart& one : a.parts)
        for (const TurnedPart& other : b.parts) widest = std::max(widest, wall(room, one, other));
    return widest;
}

} // namespace

bool too_near(const Room& room, const TurnedFigure& a, const TurnedFigure& b, Vec by) {
    return any_pair(a, b, [&](const TurnedPart& one, const TurnedPart& other) {
        return too_near(one, other, by, wall(room, one, other));
    });
}

double overlap(const Room& room, const TurnedFigure& a, const TurnedFigure& b, Vec by, double soft_mm,
               double enough) {
    const double root = std::max(0.0, enough - soft_mm);
    const double enough_sum = root * root;
    double sum = 0;
    any_pair(a, b, [&](const TurnedPart& one, const TurnedPart& other) {
        const double clear = wall(room, one, other);
        if (too_near(one, other, by, clear))
            sum += overlap_weight(one, other, by, clear, soft_mm, enough_sum - sum);
        return sum > enough_sum;
    });
    return sum == 0 ? 0 : std::sqrt(sum) + soft_mm;
}

PairTable::PairTable(const Room& room, const TurnedFigure& a, const TurnedFigure& b, double soft_mm)
    : a_(&a), b_(&b), soft_(soft_mm), lies_(cells * cells, Lie::unknown),
      corners_((cells + 1) * (cells + 1), -1.0F) {
    const double widest = widest_wall(room, a, b);
    from_ = a.box.min - b.box.max - Vec{widest, widest};
    const Vec to = a.box.max - b.box.min + Vec{widest, widest};
    cell_ = (to - from_) * (1.0 / cells);
    per_cell_ = {1 / cell_.x, 1 / cell_.y};
}

double PairTable::overlap(const Room& room, Vec by) {
    const double x = (by.x - from_.x) * per_cell_.x;
    const double y = (by.y - from_.y) * per_cell_.y;
    if (!(x >= 0 && y >= 0 && x < cells && y < cells)) return 0;
    const int column = static_cast<int>(x);
    const int row = static_cast<int>(y);
    Lie& lie = lies_[static_cast<std::size_t>(row * cells + column)];
    if (lie == Lie::unknown) lie = look(room, column, row);
    if (lie == Lie::apart || (lie == Lie::unsure && !too_near(room, *a_, *b_, by))) return 0;
    const float right = static_cast<float>(x) - static_cast<float>(column);
    const float up = static_cast<float>(y) - static_cast<float>(row);
    const float low = corner(room, column, row) * (1 - right) + corner(room, column + 1, row) * right;
    const float high =
        corner(room, column, row + 1) * (1 - right) + corner(room, column + 1, row + 1) * right;
    return static_cast<double>(low * (1 - up) + high * up);
}

PairTable::Lie PairTable::look(const Room& room, int column, int row) const {
    const Vec by{from_.x + (column + 0.5) * cell_.x, from_.y + (row + 0.5) * cell_.y};
    const double half = 0.5001 * length(cell_);
    const bool near = any_pair(*a_, *b_, [&](const TurnedPart& one, const TurnedPart& other) {
        return too_near(one, other, by, wall(room, one, other) + half);
    });
    if (!near) return Lie::apart;
    const bool over = any_pair(*a_, *b_, [&](const TurnedPart& one, const TurnedPart& other) {
        return sticks(one, other, by, wall(room, one, other), half);
    });
    return over ? Lie::over : Lie::unsure;
}

float PairTable::corner(const Room& room, int column, int row) {
    float& value = corners_[static_cast<std::size_t>(row * (cells + 1) + column)];
    if (value >= 0) return value;
    const Vec by{from_.x + column * cell_.x, from_.y + row * cell_.y};
    double sum = 0;
    any_pair(*a_, *b_, [&](const TurnedPart& one, const TurnedPart& other) {
        sum += overlap_weight(one, other, by, wall(room, one, other), soft_,
                              std::numeric_limits<double>::infinity());
        return false;
    });
    return value = static_cast<float>(std::sqrt(sum) + soft_);
}

PairTables::PairTables(std::vector<const TurnedFigure*> figures, double soft_mm)
    : figures_(std::move(figures)), soft_(soft_mm) {
    tables_.resize(figures_.size() * figures_.size());
}

double PairTables::overlap(const Room& room, std::size_t a, std::size_t b, Vec by) {
    if (a > b) return overlap(room, b, a, by * -1);
    auto& table = tables_[a * figures_.size() + b];
    if (!table) table = std::make_unique<PairTable>(room, *figures_[a], *figures_[b], soft_);
    return table->overlap(room, by);
}

} // namespace drawercast::arrange
