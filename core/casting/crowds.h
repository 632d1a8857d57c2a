// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/contacts.h"

#include <map>
#include <utility>
#include <vector>

namespace drawercast::casting {

/// Where three or more pockets meet, tile by tile of the floor, kept up while pockets come and go. A tile's
/// correction depends on the pockets that meet in it alone, and there are never many: a tight drawer does not
/// become one union.
class Crowds {
  public:
    using Tile = std::pair<int, int>;
    static constexpr double tile_mm = 32;

    /// Only tiles with something to correct, in order.
    const std::map<Tile, Correction>& all() const { return all_; }
    void clear() { all_.clear(); }
    /// Works out anew the tiles that come near `dirty`: where pockets stand, or stood, that changed; clay
    /// included.
    void refresh(const std::vector<shape::Box>& dirty, const std::vector<Place>& places,
                 const std::vector<Contact>& contacts, const Ground& ground);

  private:
    std::map<Tile, Correction> all_;
};

} // namespace drawercast::casting
