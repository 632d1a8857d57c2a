// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/stock_checks.h"

#include "stock/saw.h"

#include <algorithm>
#include <map>

namespace drawercast::plan {

namespace {

using layout::Check;
using layout::Code;
using layout::Severity;

/// The block of that number in the drawer, "i1#1"; none for parts of the box.
std::vector<std::string> subjects_of(const stock::DrawerStock& drawer, int block) {
    for (const auto& made : drawer.blocks)
        if (made.number == block) return {made.subject};
    return {};
}

Check check(Code code, Severity severity, std::vector<std::string> subjects, double value, double limit) {
    Check made = layout::check_of(code, severity, value, limit);
    made.subjects = std::move(subjects);
    return made;
}

void add_short(const StockPlan& stock, const stock::DrawerStock& drawer, std::vector<Check>& checks) {
    const auto add = [&](const auto& part, double mm, double limit_mm) {
        if (part.drawer == drawer.drawer)
            checks.push_back(
                check(Code::stock_short, Severity::mend, subjects_of(drawer, part.block), mm, limit_mm));
    };
    for (const auto& cut : stock.cuts.boards) {
        const double length_mm = cut.board.sheet_length_mm - 2 * stock::sheet_trim_mm,
                     width_mm = cut.board.sheet_width_mm - 2 * stock::sheet_trim_mm;
        for (const int index : cut.too_large) {
            const stock::Part& part = stock.parts[static_cast<std::size_t>(index)];
            const double longest = std::max(length_mm, width_mm), other = std::min(length_mm, width_mm);
            if (part.length_mm > longest)
                add(part, part.length_mm, longest);
            else // it is its other side that does not fit
                add(part, std::min(part.length_mm, part.width_mm), other);
        }
    }
    for (const auto& cut : stock.cuts.bars)
        for (const int index : cut.too_long) {
            const auto& part = stock.lengths[static_cast<std::size_t>(index)];
            add(part, part.length_mm, cut.bar_mm);
        }
}

void add_small(const stock::DrawerStock& drawer, std::vector<Check>& checks) {
    std::map<int, double> narrowest; // by block
    for (const auto& part : drawer.parts) {
        if (part.block == 0 || part.length_mm < stock::least_cut_mm || part.width_mm >= least_rip_mm)
            continue;
        const auto known = narrowest.try_emplace(part.block, part.width_mm).first;
        known->second = std::min(known->second, part.width_mm);
    }
    for (const auto& [block, width] : narrowest)
        checks.push_back(
            check(Code::cut_small, Severity::note, subjects_of(drawer, block), width, least_rip_mm));
}

} // namespace

std::vector<Check> stock_checks(const StockPlan& stock, const std::string& drawer) {
    std::vector<Check> checks;
    for (const auto& made : stock.drawers) {
        if (made.drawer != drawer) continue;
        add_short(stock, made, checks);
        add_small(made, checks);
    }
    return checks;
}

} // namespace drawercast::plan
