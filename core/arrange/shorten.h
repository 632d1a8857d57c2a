// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "arrange/search.h"

#include <functional>

namespace drawercast::arrange {

/// How far a search's whole time is gone, 0 … 1, and whether it is to stop at once.
struct Clock {
    std::function<double()> done;
    std::function<bool()> stop;
};

/// A room's box made shorter from its right, its figures parted anew each time (Umetani et al. 2009), first
/// by larger cuts with retries, then by finer ones (Gardeyn and Vanden Berghe, arXiv 2509.13329).
class Shortening {
  public:
    /// Of figures in a box like that; over as soon as it is no longer than `enough`.
    Shortening(Search& search, const shape::Box& box, double enough, Clock clock);

    void start(double length); ///< from anywhere, in that length or as much longer as it takes
    void start(double length, const Stands& stands); ///< from figures that are parted in it
    void explore(double until_done);                 ///< by larger cuts, until so much of the time is gone
    void refine(double until_done);                  ///< by ever finer ones

    double length() const { return length_; }
    const Stands& stands() const { return stands_; } ///< parted in it

  private:
    bool over(double share) const;
    void resize(double length);
    void cut_out(double length);
    bool squeeze(double length, double share);

    Search& search_;
    shape::Box box_;
    double enough_;
    Clock clock_;
    double length_ = 0;
    Stands stands_;
};

} // namespace drawercast::arrange
