// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/left_as_is.h"

#include <algorithm>

namespace drawercast::layout {

namespace {

constexpr double stored_grain = 0.001;

bool limit_is_a_minimum(Code code) {
    switch (code) {
    case Code::wall_thin:
    case Code::edge_thin:
    case Code::floor_thin:
    case Code::not_placed:
    case Code::short_if_low:
    case Code::vent_on_stiffener:
    case Code::vent_meat:
    case Code::slot_narrow:
    case Code::screw_short:
    case Code::rod_short:
    case Code::board_thin:
    case Code::closures_few:
    case Code::head_unchecked:
    case Code::cut_small:
        return true;
    case Code::overlap:
    case Code::outside:
    case Code::too_high:
    case Code::notch_apart:
    case Code::fit_vanishes:
    case Code::insert_split:
    case Code::obstructed:
    case Code::overload:
    case Code::foot_pressure:
    case Code::no_cup:
    case Code::hard_if_high:
    case Code::too_many_batches:
    case Code::pour_late:
    case Code::dose_altitude:
    case Code::dose_refused:
    case Code::geometry:
    case Code::air_pocket_unvented:
    case Code::squeeze_out:
    case Code::floor_slow:
    case Code::channel_shut:
    case Code::cup_unusable:
    case Code::cup_far:
    case Code::drill_none:
    case Code::vent_outside:
    case Code::pour_outside:
    case Code::volume_doubted:
    case Code::pours_over:
    case Code::plate_bow:
    case Code::plate_gap:
    case Code::plate_stress:
    case Code::screw_pull:
    case Code::wall_bow:
    case Code::close_late:
    case Code::stock_short:
    case Code::closure_none:
    case Code::wall_stress:
    case Code::base_bow:
    case Code::base_gap:
    case Code::base_stress:
    case Code::base_pull:
    case Code::cup_warmth:
        return false;
    }
    return false;
}

bool covers(const job::LeftAsIs& left, const Check& check) {
    if (left.code != text_of(check.code) || worse(check.code, check.value, left.value)) return false;
    std::vector<std::string> subjects =
        left.subjects; // sorted by this program, but a file may come from elsewhere
    std::sort(subjects.begin(), subjects.end());
    return subjects == check.subjects;
}

} // namespace

bool worse(Code code, double value, double than) {
    return limit_is_a_minimum(code) ? value < than - stored_grain : value > than + stored_grain;
}

void mark_left_as_is(std::vector<Check>& checks, const std::vector<job::LeftAsIs>& left,
                     std::string_view drawer) {
    bool marked = false;
    for (const job::LeftAsIs& one : left) {
        if (one.drawer != drawer) continue;
        for (Check& check : checks) {
            if (check.severity != Severity::look || check.left_as_is || !covers(one, check)) continue;
            check.left_as_is = marked = true;
        }
    }
    if (marked) std::sort(checks.begin(), checks.end(), comes_before);
}

} // namespace drawercast::layout
