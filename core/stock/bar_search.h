// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/micro.h"

#include <map>
#include <vector>

namespace drawercast::stock {

/// Whether pieces go into a given number of bars, a whole bar at a time. Pieces of one length are the same.
class BarSearch {
  public:
    enum class Found { yes, no, gave_up };

    /// `order`: all pieces, longest first. Lengths and bar are grown.
    BarSearch(Micro bar, const std::vector<Micro>& pieces, const std::vector<int>& order, int most_steps);

    Found with_bars(int bars);
    const std::vector<std::vector<int>>& bars() const { return bars_; } ///< after `yes`
    int steps() const { return steps_; }

  private:
    using Counts = std::vector<int>; ///< of each length, longest first

    Found place(Counts& left, int bars_left, Micro total_left);
    void completions(const Counts& left, std::size_t from, Micro room, Counts& filling,
                     std::vector<Counts>& out);
    void take_pieces();

    Micro bar_;
    std::vector<Micro> lengths_;          ///< different ones, longest first
    std::vector<std::vector<int>> named_; ///< the pieces of each length
    int most_steps_;
    int steps_ = 0;
    std::vector<Counts> chosen_;
    std::map<Counts, int> hopeless_; ///< what is left: as many bars were too few
    std::vector<std::vector<int>> bars_;
};

} // namespace drawercast::stock
