// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/correction.h"

#include <vector>

namespace drawercast::casting {

/// A pocket of one mold and all that concerns it alone.
struct Place {
    Standing standing;
    shape::Box box;      ///< of its blocks
    double reach_mm = 0; ///< of its clay
    double footprint_mm2 = 0;
    double blocks_mm3 = 0;
    double fillet_mm3 = 0;
    double even_mm = 0;
    bool at_edge = false; ///< its clay or blocks reach the opening's edge
    Correction beyond;
};

/// Two pockets whose clay or blocks meet, by their places; `first` < `second`.
struct Contact {
    int first = 0;
    int second = 0;
    Correction shared;
};

/// All contacts of one mold in order, kept up while pockets come and go.
class Contacts {
  public:
    const std::vector<Contact>& all() const { return all_; }
    void clear() { all_.clear(); }
    /// Places moved: `now_at[old place]`, −1 where it is gone.
    void renumber(const std::vector<int>& now_at);
    /// Drops the contacts of the places in `changed` (ascending) and finds them anew.
    void refresh(const std::vector<int>& changed, const std::vector<Place>& places, const Ground& ground);

  private:
    void sort_from(std::size_t first_new);
    std::vector<Contact> all_;
};

} // namespace drawercast::casting
