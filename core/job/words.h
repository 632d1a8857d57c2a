// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <string_view>
#include <utility>
#include <vector>

/// The words of the job file and what they mean, for reading and writing alike.
namespace drawercast::job {

template <class Enum>
using Words = std::vector<std::pair<std::string_view, Enum>>;

inline Words<DisplayUnits> unit_words() {
    return {{"mm", DisplayUnits::mm}, {"in", DisplayUnits::inch}, {"in/32", DisplayUnits::inch_32}};
}
inline Words<ClosureKind> closure_words() {
    return {{"screw", ClosureKind::screw},
            {"rod", ClosureKind::rod},
            {"clamp", ClosureKind::clamp},
            {"strap", ClosureKind::strap}};
}
inline Words<Supply> supply_words() {
    return {{"sealer", Supply::sealer},   {"release", Supply::release}, {"clay", Supply::clay},
            {"joint-seal", Supply::seal}, {"wood-glue", Supply::glue},  {"pigment", Supply::pigment},
            {"solvent", Supply::solvent}, {"gloves", Supply::gloves},   {"cups", Supply::cups}};
}
inline Words<Firmness> firmness_words() {
    return {{"firm", Firmness::firm}, {"medium", Firmness::medium}, {"soft", Firmness::soft}};
}
inline Words<Turns> turn_words() {
    return {{"quarter", Turns::quarter}, {"free", Turns::free}, {"none", Turns::none}, {"half", Turns::half}};
}
inline Words<BoxCorner> corner_words() {
    return {{"lapped", BoxCorner::lapped}, {"pinwheel", BoxCorner::pinwheel}};
}
inline Words<Along> along_words() { return {{"short", Along::short_side}, {"long", Along::long_side}}; }
/// Vents beside those the maker set: true for "auto".
inline Words<bool> rest_words() { return {{"auto", true}, {"none", false}}; }

template <class Enum>
std::string_view word_of(Enum value, const Words<Enum>& words) {
    for (const auto& [text, meaning] : words)
        if (meaning == value) return text;
    return {};
}

} // namespace drawercast::job
