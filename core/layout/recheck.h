// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/checks.h"

#include <cstddef>
#include <cstdint>
#include <limits>
#include <vector>

namespace drawercast::layout {

/// The checks of one drawer, kept up to date while pockets move: an edit looks only at the pockets near by.
/// Whatever the edits were, checks() equals layout_checks() of what stands now, bit for bit, since both ask
/// the same functions.
class Recheck {
  public:
    explicit Recheck(DrawerLimits limits);

    /// Starts anew with these pockets. A sweep along x finds the pairs.
    void set_all(std::vector<Standing> pockets);
    /// Replaces the pocket at `index` by one that stands elsewhere or is another.
    void move(std::size_t index, Standing pocket);
    /// Puts a pocket before `index` (at the end: size()).
    void insert(std::size_t index, Standing pocket);
    void remove(std::size_t index);

    std::size_t size() const { return pockets_.size(); }
    const Standing& at(std::size_t index) const { return pockets_.at(index); }
    const DrawerLimits& limits() const { return limits_; }

    /// Sorted. The reference stays good until the next call of this object.
    const std::vector<Check>& checks();

  private:
    using Index = std::uint32_t;
    static constexpr Index nobody = std::numeric_limits<Index>::max();

    /// Whose check it is: one pocket's, a pair's, or (nobody, nobody) the drawer's; and of which stand of
    /// theirs. A check whose pocket stands anew is stale: moving costs nothing for what was found before.
    struct Owners {
        Index a = nobody;
        Index b = nobody;
        Index stand_a = 0;
        Index stand_b = 0;
    };
    struct Found {
        Check check;
        Owners owners;
    };

    double reach_of(const Standing& standing) const;
    void find_own(Index index);
    void find_pair(Index a, Index b);
    void find_around(Index index);
    bool holds(Owners owners) const;
    void merge();

    DrawerLimits limits_;
    std::vector<Standing> pockets_;
    std::vector<shape::Box> boxes_; ///< of the pockets, side by side in memory for the scan
    std::vector<double> reach_;     ///< the widest wall a pocket can ask for
    std::vector<Index> stands_;     ///< how often each pocket was put anew
    std::vector<Check> checks_;     ///< merged and sorted
    std::vector<Owners> owners_;    ///< of checks_, side by side
    std::vector<Found> found_;      ///< since the last merge, not sorted
    std::vector<Check> fresh_;      ///< room for one pocket's
    std::vector<Check> old_checks_; ///< room for the merge: as large as checks_, so kept
    std::vector<Owners> old_owners_;
    bool merged_ = false;
};

} // namespace drawercast::layout
