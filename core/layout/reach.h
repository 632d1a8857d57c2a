// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/object.h"
#include "layout/pocket.h"

namespace drawercast::layout {

/// How fingers get at an object in its pocket. All limits are our guess, about a large hand in a thin glove:
/// a finger is 20 mm wide and wants 12 mm of room beside the object, and holds on to 15 mm of its side.
struct Reach {
    double proud_mm = 0;      ///< how far the object stands over the insert's face; < 0: it lies below it
    int fingers = 0;          ///< how many find room in the pocket's notches, side by side in each
    bool two_fingers = false; ///< can take it: in the notches, or by what stands over the face
    bool operator==(const Reach&) const = default;
};

inline constexpr double finger_wide_mm = 20;
inline constexpr double finger_room_mm = 12;
inline constexpr double finger_hold_mm = 15;

/// A notch counts as far as it lies outside the levels, at right angles to their edge, and below the object's
/// top. Through levels end at the insert's bottom.
Reach reach_of(const PocketForm& form, const job::Object& object);

} // namespace drawercast::layout
