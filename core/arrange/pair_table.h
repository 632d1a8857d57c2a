// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "arrange/figure.h"
#include "arrange/room.h"

#include <cstddef>
#include <memory>
#include <vector>

namespace drawercast::arrange {

/// Whether two figures come nearer than the room's walls; `by`: from a's origin to b's. Exact.
bool too_near(const Room& room, const TurnedFigure& a, const TurnedFigure& b, shape::Vec by);

/// How badly figures overlap that do: the root of the summed weight (figure.h) and `soft_mm`, so that it
/// never is next to nothing. Once it is over `enough`, any such number.
double overlap(const Room& room, const TurnedFigure& a, const TurnedFigure& b, shape::Vec by, double soft_mm,
               double enough);

/// The same remembered for one pair over a grid of ways between their origins, filled where it is asked: most
/// cells are wholly apart or wholly over each other, and only in the others the sides are asked. So whether
/// they are too near stays exact; how badly is taken between a cell's corners.
class PairTable {
  public:
    PairTable(const Room& room, const TurnedFigure& a, const TurnedFigure& b, double soft_mm);
    double overlap(const Room& room, shape::Vec by); ///< 0 where not too near

  private:
    enum class Lie : unsigned char { unknown, apart, over, unsure };
    static constexpr int cells = 48; ///< each way
    Lie look(const Room& room, int column, int row) const;
    float corner(const Room& room, int column, int row);

    const TurnedFigure* a_;
    const TurnedFigure* b_;
    double soft_;
    shape::Vec from_;     ///< the grid's least corner
    shape::Vec cell_;     ///< its cells' sides, mm
    shape::Vec per_cell_; ///< the inverse
    std::vector<Lie> lies_;
    std::vector<float> corners_; ///< negative: not asked yet
};

/// The tables of all pairs of turned figures, each made when it is first asked for.
class PairTables {
  public:
    /// Nothing is remembered of more turned figures than this: each pair would be asked too seldom.
    static constexpr std::size_t most_figures = 160;

    PairTables(std::vector<const TurnedFigure*> figures, double soft_mm);
    /// Of figures by their numbers.
    double overlap(const Room& room, std::size_t a, std::size_t b, shape::Vec by);

  private:
    std::vector<const TurnedFigure*> figures_;
    double soft_;
    std::vector<std::unique_ptr<PairTable>> tables_;
};

} // namespace drawercast::arrange
