// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/job.h"

#include <vector>

/// What a job may cost before anything is measured: the drawers' sizes, about how many objects, and about how
/// much of the inserts they cover. A guess with its spread, never a plan.
namespace drawercast::plan {

struct QuickDrawer {
    double width_mm = 480; ///< inside
    double depth_mm = 360;
    double insert_mm = 60;
    bool operator==(const QuickDrawer&) const = default;
};

struct QuickIn {
    std::vector<QuickDrawer> drawers;
    int objects = 10;        ///< over all drawers
    double area_share = 0.5; ///< of the inserts, under objects; above 0, at most 0.9
    bool operator==(const QuickIn&) const = default;
};

/// What is not known yet, and how far it may lie off (all our guesses). Each end is tried alone; the spread
/// of an answer is the root of the sum of the squares of what they do to it.
inline constexpr double quick_depth_share = 0.5; ///< pockets' depth over the insert's thickness
inline constexpr double quick_depth_low = 0.35;
inline constexpr double quick_depth_high = 0.65;
inline constexpr double quick_area_off = 0.20;    ///< of the area share
inline constexpr double quick_objects_off = 0.25; ///< of their number
inline constexpr double quick_hours_low = 0.75;   ///< of the run sheet's minutes
inline constexpr double quick_hours_high = 1.5;
inline constexpr double quick_board_use = 0.7; ///< of the sheets' area ends up in parts
inline constexpr double quick_board_use_low = 0.5;
inline constexpr double quick_board_use_high = 0.85;
inline constexpr int quick_further_boards = 2; ///< sheets of other thickness, begun for plate and blocks
inline constexpr int quick_further_low = 0;
inline constexpr int quick_further_high = 4;
inline constexpr double quick_closure_pitch_mm = 80; ///< along the box (common practice: 50 to 100)

struct Ranged {
    double low = 0;
    double expected = 0;
    double high = 0;
    bool operator==(const Ranged&) const = default;
};

struct QuickQuote {
    Ranged mixed_ml;
    Ranged hours;
    Ranged days;
    Ranged sheets; ///< of board
    Ranged foam;   ///< money
    Ranged wood;
    Ranged work;
    Ranged total; ///< with closures and margin
    bool foam_priced = false;
    bool work_priced = false;
    bool operator==(const QuickQuote&) const = default;
};

/// With the foam, shop, mold and currency of `job`; its objects and drawers are not looked at. Refused where
/// there is no drawer, a size is none that a job may have, or the foam can't fill such an insert.
Expected<QuickQuote> quick_quote(const job::Job& job, const QuickIn& in);

} // namespace drawercast::plan
