// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/plate_options.h"
#include "mold/plate_trial.h"

#include <cstddef>
#include <deque>
#include <memory>
#include <vector>

namespace drawercast::mold {

/// Trials on one mesh, remembered: what a plate does under 1 kPa depends neither on the pressure nor on what
/// closures cost or hold, so most designs have been looked at before.
class LooksOnMesh {
  public:
    LooksOnMesh(const Fineness& fineness, std::size_t boxes_kept)
        : fineness_(fineness), boxes_kept_(boxes_kept) {}

    /// Ready for plates over this box; forgets those over another. Stiffeners at these places share a
    /// condensed plate, any others have one of their own.
    void start(const PlateShape& shape, std::vector<double> across_mm, std::vector<double> deep_mm);
    /// As trial_of; the reference holds until the next start().
    const Trial& at(const PlateDesign& design, double most_gap_mm, const LiftField& like);
    const LiftField& last() const { return last_; } ///< how the plate lay that was tried last
    void forget_boxes() { boxes_.clear(); }         ///< some megabytes each

  private:
    struct Box {
        job::Board board;
        std::vector<double> across_mm, deep_mm;
        std::unique_ptr<PlateOnBox> plate;
    };
    struct Seen {
        PlateDesign design;
        Trial trial;
    };
    const PlateOnBox& box_for(const PlateDesign& design);

    Fineness fineness_;
    std::size_t boxes_kept_;
    PlateShape shape_;
    std::vector<double> across_mm_, deep_mm_;
    std::deque<Box> boxes_;
    std::deque<Seen> seen_;
    LiftField last_;
};

/// What was looked at on one mold, roughly and closely. Its answers never depend on what was asked before.
class PlateLooks {
  public:
    /// Ready for designs of this mold; forgets those of another.
    void start(const PlateIn& in, const job::Board& box_board, const std::vector<Stiffening>& stiffenings);
    void start_close(const PlateShape& shape) { close_.start(shape, {}, {}); } ///< close looks alone
    /// Within a few percent, at a tenth of the time.
    const Trial& rough(const PlateDesign& design, double most_gap_mm) {
        return rough_.at(design, most_gap_mm, rough_.last());
    }
    /// `like`: as in trial_of.
    const Trial& close(const PlateDesign& design, double most_gap_mm, const LiftField& like = {}) {
        return close_.at(design, most_gap_mm, like);
    }
    void forget_boxes();

  private:
    LooksOnMesh rough_{{4, 24}, 16};
    LooksOnMesh close_{{}, 2};
};

} // namespace drawercast::mold
