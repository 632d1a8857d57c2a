// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "layout/notch_edge.h"
#include "layout/pocket.h"

#include <optional>
#include <string>

namespace drawercast::app {

/// Sliding a finger notch along the edge of its pocket: a pure function from where the pointer is now to a
/// job. How far the notch stands off the edge, and how it is turned to it, stay.
class NotchGesture {
  public:
    struct Start {
        job::Job job;
        std::string subject;
        std::size_t notch = 0;
        shape::Vec grabbed; ///< drawer mm
    };
    struct Step {
        job::Job job;
        shape::Vec at;              ///< the notch's middle, drawer mm
        bool in_the_middle = false; ///< snapped to the middle of a side
    };

    /// `pocket`: as placed in start.job. Nothing where there is no such notch or no edge.
    static std::optional<NotchGesture> begin(Start start, const layout::PlacedPocket& pocket);

    /// `radius_mm` > 0: middles of sides attract from that far.
    Step at(shape::Vec pointer, double radius_mm) const;
    /// Along the edge by keys; counter-clockwise where > 0.
    Step slid(double by_mm) const;
    /// Which way that is at the notch, in the drawer; of length 1.
    shape::Vec way() const;

  private:
    NotchGesture(Start start, const job::Notch& notch, const shape::Pose& pose, layout::NotchEdge edge);
    Step seated(const layout::NotchEdge::Seat& seat, bool in_the_middle) const;
    shape::Vec in_object(shape::Vec drawer_mm) const;

    Start start_;
    job::Notch notch_;
    shape::Pose pose_; ///< of the pocket
    layout::NotchEdge edge_;
    layout::NotchEdge::Seat seat_; ///< at the start
    shape::Vec off_;               ///< from the seat, in its own axes
};

} // namespace drawercast::app
