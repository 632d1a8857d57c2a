// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/channels.h"

#include <vector>

namespace drawercast::air {

inline constexpr double slot_mm = 10; ///< least width of a channel that fills without help (common practice)
inline constexpr double slot_ratio = 4; ///< and at least its depth over this
inline constexpr double never_fills_mm =
    6; ///< narrower than this foam does not come through (common practice)

/// A pour the maker set.
struct SetPour {
    shape::Vec at; ///< mold frame
    double ml = 0;
    bool operator==(const SetPour&) const = default;
};

enum class PourKind { slot, top, channel };

/// One act of pouring.
struct PourStep {
    int order = 0; ///< from 1
    PourKind kind = PourKind::channel;
    shape::Vec at;
    double ml = 0;
    double width_mm = 0; ///< of the channel
    int channel = -1;    ///< −1: over a block
    bool set = false;    ///< by the maker
    bool operator==(const PourStep&) const = default;
};

/// Two things with a slot too narrow to fill by itself between them, or one and the wall.
struct Slot {
    int first = 0;   ///< pocket
    int second = -1; ///< pocket, the same for a slot between two of its bodies; −1: the edge of the opening
    double width_mm = 0;
    double least_mm = 0; ///< that it should have
    shape::Vec from;
    shape::Vec to;
};

struct PourMap {
    std::vector<PourStep> steps; ///< in order: slots, over blocks, the widest last
    double set_ml = 0;           ///< of these the maker's own
    bool operator==(const PourMap&) const = default;
};

/// Where to pour how much of `poured_ml`: each channel gets its share of the room it feeds, less what the
/// maker pours there or over the blocks it feeds.
PourMap pour_map_of(double poured_ml, const std::vector<SetPour>& set, double height_mm, const Cells& cells,
                    const Channels& channels, const std::vector<int>& fed_by);

/// The narrow slots of a floor, each pair once, where it is narrowest. A slot is as deep as the lower of
/// both.
std::vector<Slot> slots_of(const Floor& floor);

/// Open boards shut off by blocks, with no pour of the maker's in them; all but the one with most room.
struct ShutChannel {
    int channel = 0;
    double ml = 0; ///< that it needs of its own
    shape::Vec at;
};
std::vector<ShutChannel> shut_channels_of(const PourMap& map, const Channels& channels);

} // namespace drawercast::air
