// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/check.h"
#include "plan/plan.h"

#include "summary/page_frame.h"

#include <string>
#include <vector>

namespace drawercast::summary {

/// One check of a list: its number there and its zone, if it has a place.
struct ListedCheck {
    layout::Check check;
    int number = 0;
    std::string zone;
};
std::vector<ListedCheck> listed(const plan::DrawerPlan& drawer, job::DisplayUnits units);
std::vector<ListedCheck> listed(const std::vector<layout::Check>& checks);

/// Height of one check's entry at that width.
double check_height(const ListedCheck& check, double width, const Summary& summary);
/// Badge, both numbers, severity in words, whom it concerns and what to do. Returns the height used.
double write_check(sheets::Inks& inks, Vec top_left, double width, const ListedCheck& check,
                   const Summary& summary);

/// "1 to mend: do not cast yet" in red, or the number of looks, or that nothing is to mend; right-aligned.
void write_state(sheets::Inks& inks, Vec right_middle, const std::vector<ListedCheck>& checks,
                 const Summary& summary);

} // namespace drawercast::summary
