// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/check.h"

#include "base/demand.h"

#include <array>
#include <tuple>

namespace drawercast::layout {

namespace {

struct Name {
    Code code;
    std::string_view text;
    std::string_view unit;
};

constexpr std::array names{
    Name{Code::wall_thin, "wall-thin", "mm"},
    Name{Code::edge_thin, "edge-thin", "mm"},
    Name{Code::floor_thin, "floor-thin", "mm"},
    Name{Code::overlap, "overlap", "mm"},
    Name{Code::outside, "outside", "mm"},
    Name{Code::too_high, "too-high", "mm"},
    Name{Code::notch_apart, "notch-apart", ""},
    Name{Code::fit_vanishes, "fit-vanishes", ""},
    Name{Code::insert_split, "insert-split", ""},
    Name{Code::obstructed, "obstructed", ""},
    Name{Code::overload, "overload", "kg"},
    Name{Code::foot_pressure, "foot-pressure", "kPa"},
    Name{Code::not_placed, "not-placed", ""},
    Name{Code::no_cup, "no-cup", ""},
    Name{Code::short_if_low, "short-if-low", ""},
    Name{Code::hard_if_high, "hard-if-high", ""},
    Name{Code::too_many_batches, "too-many-batches", ""},
    Name{Code::dose_altitude, "dose-altitude", "m"},
    Name{Code::pour_late, "pour-late", "s"},
    Name{Code::dose_refused, "dose-refused", ""},
    Name{Code::geometry, "geometry", ""},
    Name{Code::air_pocket_unvented, "air-pocket-unvented", "mL"},
    Name{Code::vent_on_stiffener, "vent-on-stiffener", "mm"},
    Name{Code::vent_meat, "vent-meat", "mm"},
    Name{Code::squeeze_out, "squeeze-out", "mL"},
    Name{Code::floor_slow, "floor-slow", "kPa·s"},
    Name{Code::slot_narrow, "slot-narrow", "mm"},
    Name{Code::channel_shut, "channel-shut", "mL"},
    Name{Code::plate_bow, "plate-bow", "mm"},
    Name{Code::plate_gap, "plate-gap", "mm"},
    Name{Code::plate_stress, "plate-stress", "MPa"},
    Name{Code::screw_pull, "screw-pull", "N"},
    Name{Code::wall_bow, "wall-bow", "mm"},
    Name{Code::screw_short, "screw-short", "mm"},
    Name{Code::rod_short, "rod-short", "mm"},
    Name{Code::board_thin, "board-thin", "mm"},
    Name{Code::close_late, "close-late", "s"},
    Name{Code::closures_few, "closures-few", ""},
    Name{Code::closure_none, "closure-none", "mm"},
    Name{Code::head_unchecked, "head-unchecked", "mm"},
    Name{Code::stock_short, "stock-short", "mm"},
    Name{Code::cut_small, "cut-small", "mm"},
    Name{Code::wall_stress, "wall-stress", "MPa"},
    Name{Code::base_bow, "base-bow", "mm"},
    Name{Code::base_gap, "base-gap", "mm"},
    Name{Code::base_stress, "base-stress", "MPa"},
    Name{Code::base_pull, "base-pull", "N"},
    Name{Code::cup_unusable, "cup-unusable", ""},
    Name{Code::cup_far, "cup-far", ""},
    Name{Code::drill_none, "drill-none", "mm"},
    Name{Code::vent_outside, "vent-outside", ""},
    Name{Code::pour_outside, "pour-outside", ""},
    Name{Code::volume_doubted, "volume-doubted", "mL"},
    Name{Code::pours_over, "pours-over", "mL"},
    Name{Code::cup_warmth, "cup-warmth", "°C"},
};

static_assert(names.size() == static_cast<std::size_t>(Code::cup_warmth) + 1, "every code has a name");

const Name& name_of(Code code) {
    for (const Name& name : names)
        if (name.code == code) return name;
    demand_failed("every code has a name", __FILE__, __LINE__);
}

std::tuple<bool, double, double> key(const std::optional<shape::Vec>& p) {
    return p ? std::tuple(true, p->x, p->y) : std::tuple(false, 0.0, 0.0);
}

auto key(const Check& c) {
    return std::tuple_cat(std::tuple(c.left_as_is, c.severity, c.code), std::tie(c.subjects),
                          std::tuple(c.value, c.limit, c.frame, key(c.at), key(c.to)));
}

} // namespace

std::vector<Code> all_codes() {
    std::vector<Code> codes;
    for (const Name& name : names) codes.push_back(name.code);
    return codes;
}

std::string_view text_of(Code code) { return name_of(code).text; }

std::optional<Code> code_of(std::string_view text) {
    for (const Name& name : names)
        if (name.text == text) return name.code;
    return std::nullopt;
}

std::string_view unit_of(Code code) { return name_of(code).unit; }

std::string_view text_of(CheckFrame frame) {
    switch (frame) {
    case CheckFrame::none:
        return "";
    case CheckFrame::drawer:
        return "drawer";
    case CheckFrame::mold:
        return "mold";
    }
    demand_failed("every frame has a name", __FILE__, __LINE__);
}

std::string_view text_of(Severity severity) {
    switch (severity) {
    case Severity::mend:
        return "mend";
    case Severity::look:
        return "look";
    case Severity::note:
        return "note";
    }
    demand_failed("every severity has a name", __FILE__, __LINE__);
}

Check check_of(Code code, Severity severity, double value, double limit) {
    Check check;
    check.code = code;
    check.severity = severity;
    check.value = value;
    check.limit = limit;
    return check;
}

bool comes_before(const Check& a, const Check& b) { return key(a) < key(b); }

} // namespace drawercast::layout
