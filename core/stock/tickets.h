// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/cut_list.h"

#include <string>
#include <vector>

/// What to set the saw's fence to, and what to cut at that setting.
namespace drawercast::stock {

struct TicketLine {
    double length_mm = 0; ///< crosscut
    std::vector<std::string> labels;
    bool from_strip = false; ///< too short to hold: off a strip of the fence's width
    bool operator==(const TicketLine&) const = default;
};
struct Ticket {
    std::string board;
    double thickness_mm = 0;
    double fence_mm = 0;
    double run_mm = 0;             ///< length of all strips of this width
    std::vector<TicketLine> lines; ///< longest first
    bool operator==(const Ticket&) const = default;
};

/// One for each width of each board, widest first: one setting cuts all drawers' parts.
std::vector<Ticket> tickets_of(const CutList& list, const std::vector<Part>& parts);

} // namespace drawercast::stock
