// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/stack.h"

#include "base/demand.h"
#include "base/number.h"
#include "stock/micro.h"
#include "stock/saw.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace drawercast::stock {

namespace {

/// For every height that boards give up to a little over `most`: the fewest boards that give it.
struct Reached {
    int count = 0;
    std::size_t last = 0; ///< board on top
};
std::map<Micro, Reached> heights_up_to(double most_mm, const std::vector<job::Board>& boards) {
    DRAWERCAST_DEMAND(!boards.empty(), "a stack needs a board");
    double thickest = 0;
    for (const auto& board : boards) thickest = std::max(thickest, board.thickness_mm);
    const Micro most = micro_of_piece(most_mm + thickest);
    std::map<Micro, Reached> reached{{0, {}}};
    for (auto at = reached.begin(); at != reached.end(); ++at) // grows while it is walked, upward only
        for (std::size_t i = 0; i < boards.size(); ++i) {
            const Micro next = at->first + micro_of_piece(boards[i].thickness_mm);
            if (next > most) continue;
            const int count = at->second.count + 1;
            const auto known = reached.find(next);
            if (known == reached.end() || count < known->second.count) reached[next] = {count, i};
        }
    reached.erase(0);
    return reached;
}

Stack stack_at(Micro height, const std::map<Micro, Reached>& reached, const std::vector<job::Board>& boards) {
    Stack stack;
    stack.height_mm = mm_of(height);
    while (height > 0) {
        const std::size_t board = reached.at(height).last;
        stack.boards.push_back(board);
        height -= micro_of_piece(boards[board].thickness_mm);
    }
    std::stable_sort(stack.boards.begin(), stack.boards.end(), [&](std::size_t a, std::size_t b) {
        return boards[a].thickness_mm > boards[b].thickness_mm;
    });
    return stack;
}

} // namespace

Stack nearest_stack(double height_mm, const std::vector<job::Board>& boards) {
    const auto reached = heights_up_to(height_mm, boards);
    const auto off = [&](Micro height) { return std::abs(mm_of(height) - height_mm); };
    auto best = reached.begin();
    for (auto at = reached.begin(); at != reached.end(); ++at)
        if (off(at->first) < off(best->first)) best = at;
    return stack_at(best->first, reached, boards);
}

StackToHeight stack_to(double height_mm, const std::vector<job::Board>& boards, double saw_step_mm) {
    const Stack nearest = nearest_stack(height_mm, boards);
    if (std::abs(nearest.height_mm - height_mm) <= saw_step_mm / 2 + 1e-9)
        return {nearest, nearest.height_mm, 0};
    return stack_down_to(sawn_mm(height_mm, saw_step_mm), boards);
}

StackToHeight stack_down_to(double height_mm, const std::vector<job::Board>& boards) {
    const auto reached = heights_up_to(height_mm, boards);
    const auto enough = reached.lower_bound(micro_of_stock(height_mm));
    DRAWERCAST_DEMAND(enough != reached.end(), "boards give any height");
    const Stack stack = stack_at(enough->first, reached, boards);
    return {stack, height_mm, grained(std::max(0.0, stack.height_mm - height_mm))};
}

std::vector<job::Board> boards_for_blocks(const std::vector<job::Board>& all, const job::Board& box_board,
                                          const job::Board& plate_board) {
    std::vector<job::Board> boards;
    const auto add = [&](const job::Board& board) {
        const bool known = std::any_of(boards.begin(), boards.end(),
                                       [&](const job::Board& other) { return other.name == board.name; });
        if (!known) boards.push_back(board);
    };
    for (const auto& board : all)
        if (board.at_hand > 0) add(board);
    add(box_board);
    add(plate_board);
    return boards;
}

double depth_from_boards_mm(double depth_mm, const std::vector<job::Board>& boards, double enlargement,
                            double film_mm) {
    const Stack stack = nearest_stack(depth_mm * enlargement - film_mm, boards);
    return grained((stack.height_mm + film_mm) / enlargement);
}

} // namespace drawercast::stock
