// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace drawercast::layout {

/// mend: can't be made or won't work. look: below what the shop wants. note: worth knowing.
enum class Severity { mend, look, note };

/// What a check is about. A code never changes its meaning; text_of(code) is its name in files.
enum class Code {
    wall_thin,
    edge_thin,
    floor_thin,
    overlap,
    outside,
    too_high,
    notch_apart,
    fit_vanishes,
    insert_split,
    obstructed,
    overload,
    foot_pressure,
    not_placed,
    no_cup,
    short_if_low,
    hard_if_high,
    too_many_batches,
    dose_altitude,
    pour_late,
    dose_refused,
    geometry,
    air_pocket_unvented,
    vent_on_stiffener,
    vent_meat,
    squeeze_out,
    floor_slow,
    slot_narrow,
    channel_shut,
    plate_bow,
    plate_gap,
    plate_stress,
    screw_pull,
    wall_bow,
    screw_short,
    rod_short, // value, limit: a rod's length and what it takes from nut to nut
    board_thin,
    close_late,
    closures_few,
    closure_none,   // value, limit: the least and greatest length of a screw that would fit
    head_unchecked, // value: the plate's thickness
    stock_short,
    cut_small,
    wall_stress,
    base_bow,
    base_gap,
    base_stress,
    base_pull,
    cup_unusable,
    cup_far,    // value, limit: the cups' and the label's expansion
    drill_none, // value, limit: pilot (0: none needed) and hole through the plate, mm
    vent_outside,
    pour_outside,
    volume_doubted, // value, limit: measured by dunking and as outlined, mL
    pours_over,     // value, limit: what the pours set by hand take and what is poured, mL
    cup_warmth,     // value, limit: the shop's temperature today and the cup's, °C
};

std::vector<Code> all_codes();
std::string_view text_of(Code code); ///< "wall-thin"
std::optional<Code> code_of(std::string_view text);
std::string_view
unit_of(Code code); ///< "mm", "kg", "kPa", "s", "m", "mL", "kPa·s", "N", "MPa", "°C" or "" (–)

enum class CheckFrame { none, drawer, mold };
std::string_view text_of(CheckFrame frame);  ///< "", "drawer", "mold"
std::string_view text_of(Severity severity); ///< "mend", "look", "note"

/// One finding: a code with its numbers and its place. The sentence is made from it elsewhere
/// (plan/sentences.h).
struct Check {
    Code code = Code::wall_thin;
    Severity severity = Severity::note;
    std::vector<std::string> subjects; ///< "i1#1", or an object's id; sorted
    double value = 0;
    double limit = 0;
    CheckFrame frame = CheckFrame::none;
    std::optional<shape::Vec> at; ///< a point on the plan, or a segment with `to`
    std::optional<shape::Vec> to;
    bool left_as_is = false;
    bool operator==(const Check&) const = default;
};

/// A check with its numbers, of nobody and nowhere yet.
Check check_of(Code code, Severity severity, double value, double limit);

/// Whether it must be mended: a mend the maker has not left as is.
inline bool to_mend(const Check& check) { return check.severity == Severity::mend && !check.left_as_is; }

/// Total order: mend before look before note, what is left as is after all of them; then code, subjects,
/// value.
bool comes_before(const Check& a, const Check& b);

} // namespace drawercast::layout
