// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/plate_beam.h"
#include "mold/plate_free.h"
#include "mold/plate_lines.h"

#include <cstddef>
#include <vector>

namespace drawercast::mold {

/// A closure as the plate feels it: pulls down what lifts, by its spring.
struct Hold {
    shape::Vec at;
    double spring_n_mm = 0;
};

/// A stiffener on the plate, along a line of the grid from edge to edge.
struct Batten {
    bool along_x = false;
    double at_mm = 0; ///< of the line, across it
    BeamSection section;
};

/// How the plate lies under 1 kPa. Everything grows with the pressure in proportion: nothing is driven up
/// beforehand, and wall tops only push.
struct Held {
    std::vector<double> pull_n;  ///< of each hold
    std::vector<double> force_n; ///< on each node, the four springs' own taken back: what unknowns() asks for
    std::vector<double> lift_mm; ///< of each point of the free plate
    std::vector<bool> rests;     ///< whether each point is pushed by wall top or filler
    double resting_n = 0;        ///< sum of what wall tops and fillers push
    int rounds = 0;              ///< until no node pulled and none sank in
};

/// One plate on one box, condensed once; then any closures and stiffeners are a small solve each.
class PlateOnBox {
  public:
    /// `across_mm` and `deep_mm`: where stiffeners may stand, along y at these x and along x at these y.
    PlateOnBox(const PlateSection& section, const PlateShape& shape, const std::vector<double>& across_mm,
               const std::vector<double>& deep_mm, const Fineness& fineness = {});

    /// `start`: points thought to rest, from a like case; empty: the plate's outer edge.
    Held held(const std::vector<Hold>& holds, const std::vector<Batten>& battens,
              const std::vector<bool>& start = {}) const;

    const FreePlate& plate() const { return plate_; }
    const PlateShape& shape() const { return shape_; }
    const NodeAreas& areas() const { return areas_; }

  private:
    PlateShape shape_;
    PlateGrid grid_;
    NodeAreas areas_;
    std::vector<std::size_t> wanted_;
    FreePlate plate_;
    std::vector<double> push_n_;    ///< of the foam on each node
    std::vector<double> free_lift_; ///< of each point, on the four springs alone
    std::vector<double> rest_n_mm_; ///< spring of wall top and filler under each point, 0: none
};

/// Nodes of the line at `at_mm` that a batten along x (or y) follows, in order.
std::vector<std::size_t> nodes_of_line(const PlateGrid& grid, bool along_x, double at_mm);

} // namespace drawercast::mold
