// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/pocket.h"

#include <vector>

namespace drawercast::layout {

/// The edge along which a pocket's finger notches slide: the outer outline of its levels, in the object's
/// plane, counter-clockwise.
class NotchEdge {
  public:
    /// A place on the edge.
    struct Seat {
        shape::Vec at;
        double turn_deg = 0; ///< of the edge there: its x axis runs along it, its y axis into the pocket
        double along_mm = 0; ///< from the edge's start; pieces of a pocket in several parts follow each other
    };

    /// Without an edge where there is no level.
    explicit NotchEdge(const PocketForm& form);

    bool empty() const { return parts_.empty(); }
    Seat nearest(shape::Vec point) const;
    /// As far along the edge from a seat as said, counter-clockwise where > 0, round and round.
    Seat slid(const Seat& seat, double by_mm) const;
    /// The middles of straight sides that a fingertip notices (8 mm or longer, our guess).
    std::vector<Seat> middles() const;

  private:
    struct Part {
        shape::Ring ring;
        double from_mm = 0;
        double length_mm = 0;
    };
    Seat seat(const Part& part, std::size_t side, double share, double along_mm) const;

    std::vector<Part> parts_;
};

} // namespace drawercast::layout
