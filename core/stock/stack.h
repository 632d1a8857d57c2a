// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/shop.h"

#include <string>
#include <vector>

/// Boards laid flat on one another.
namespace drawercast::stock {

struct Stack {
    std::vector<std::size_t> boards; ///< indices into the boards asked with, thickest first (at the bottom)
    double height_mm = 0;
    bool operator==(const Stack&) const = default;
};

/// A height that boards give, and what is then sawn off it.
struct StackToHeight {
    Stack stack;
    double height_mm = 0;  ///< as made
    double saw_off_mm = 0; ///< 0: the boards give it as they are
    bool operator==(const StackToHeight&) const = default;
};

/// The stack nearest to `height_mm`; of equals the lower one, then the one of fewer boards. At least one
/// board. `boards` must not be empty.
Stack nearest_stack(double height_mm, const std::vector<job::Board>& boards);

/// A block or filler of that height: the nearest stack where it is no further off than half a saw step, else
/// the lowest stack that is high enough, sawn down to the saw's step.
StackToHeight stack_to(double height_mm, const std::vector<job::Board>& boards, double saw_step_mm);

/// What the plate rests on is as high as the walls: the lowest stack that is not lower, sawn or planed down
/// to exactly `height_mm`.
StackToHeight stack_down_to(double height_mm, const std::vector<job::Board>& boards);

/// The boards blocks are made of: those at hand, else those the box is made of.
std::vector<job::Board> boards_for_blocks(const std::vector<job::Board>& all, const job::Board& box_board,
                                          const job::Board& plate_board);

/// A finished pocket depth that such boards give as they are: the nearest stack, less what the film and the
/// enlargement change: depth = (stack + film)/enlargement.
double depth_from_boards_mm(double depth_mm, const std::vector<job::Board>& boards, double enlargement,
                            double film_mm);

} // namespace drawercast::stock
