// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/tickets.h"

#include <algorithm>

namespace drawercast::stock {

namespace {

void add_line(Ticket& ticket, double length_mm, bool from_strip, const std::string& label) {
    const auto at = std::find_if(ticket.lines.begin(), ticket.lines.end(), [&](const TicketLine& line) {
        return line.length_mm == length_mm && line.from_strip == from_strip;
    });
    if (at != ticket.lines.end())
        at->labels.push_back(label);
    else
        ticket.lines.push_back({length_mm, {label}, from_strip});
}

Ticket& ticket_for(std::vector<Ticket>& tickets, std::size_t first, const job::Board& board,
                   double fence_mm) {
    const auto at = std::find_if(tickets.begin() + static_cast<std::ptrdiff_t>(first), tickets.end(),
                                 [&](const Ticket& ticket) { return ticket.fence_mm == fence_mm; });
    if (at != tickets.end()) return *at;
    tickets.push_back({board.name, board.thickness_mm, fence_mm, 0, {}});
    return tickets.back();
}

} // namespace

std::vector<Ticket> tickets_of(const CutList& list, const std::vector<Part>& parts) {
    std::vector<Ticket> tickets;
    for (const BoardCut& cut : list.boards) {
        const std::size_t first = tickets.size();
        for (const Piece& piece : cut.pieces) {
            Ticket& ticket = ticket_for(tickets, first, cut.board, piece.width_mm);
            ticket.run_mm += piece.length_mm;
            for (const int index : piece.parts) {
                const Part& part = parts[static_cast<std::size_t>(index)];
                add_line(ticket, piece.strip ? part.width_mm : part.length_mm, piece.strip, part.label);
            }
        }
        const auto begin = tickets.begin() + static_cast<std::ptrdiff_t>(first);
        std::stable_sort(begin, tickets.end(),
                         [](const Ticket& a, const Ticket& b) { return a.fence_mm > b.fence_mm; });
        for (auto ticket = begin; ticket != tickets.end(); ++ticket)
            std::stable_sort(
                ticket->lines.begin(), ticket->lines.end(),
                [](const TicketLine& a, const TicketLine& b) { return a.length_mm > b.length_mm; });
    }
    return tickets;
}

} // namespace drawercast::stock
