// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "arrange/search.h"

#include <vector>

namespace drawercast::arrange {

/// Stands that could not be parted, to go on from: one with little overlap rather than one with much, after
/// two of the larger figures that are not alike changed places (Gardeyn and Vanden Berghe, arXiv 2509.13329).
class Retry {
  public:
    std::size_t failures() const { return failures_.size(); }
    void forget() { failures_.clear(); } ///< another question
    void after_failure(Search& search);

  private:
    struct Failure {
        double overlap;
        Stands stands;
    };
    std::vector<Failure> failures_; ///< the least first
};

} // namespace drawercast::arrange
