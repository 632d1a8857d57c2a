// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/check.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace drawercast::layout {
namespace {

TEST(CheckNames, EveryCodeHasOneNameThatReadsBack) {
    std::set<std::string_view> seen;
    for (const Code code : all_codes()) {
        const std::string_view text = text_of(code);
        EXPECT_TRUE(seen.insert(text).second) << text;
        EXPECT_EQ(code_of(text), code);
    }
    EXPECT_EQ(code_of("wall_thin"), std::nullopt);
    EXPECT_EQ(code_of(""), std::nullopt);
}

TEST(CheckNames, UnitsAreThoseOfTheFigures) {
    struct Row {
        Code code;
        const char* text;
        const char* unit;
    };
    const Row rows[] = {{Code::wall_thin, "wall-thin", "mm"},
                        {Code::edge_thin, "edge-thin", "mm"},
                        {Code::floor_thin, "floor-thin", "mm"},
                        {Code::overlap, "overlap", "mm"},
                        {Code::outside, "outside", "mm"},
                        {Code::too_high, "too-high", "mm"},
                        {Code::notch_apart, "notch-apart", ""},
                        {Code::fit_vanishes, "fit-vanishes", ""},
                        {Code::insert_split, "insert-split", ""},
                        {Code::obstructed, "obstructed", ""},
                        {Code::overload, "overload", "kg"},
                        {Code::foot_pressure, "foot-pressure", "kPa"},
                        {Code::short_if_low, "short-if-low", ""},
                        {Code::hard_if_high, "hard-if-high", ""},
                        {Code::dose_altitude, "dose-altitude", "m"},
                        {Code::pour_late, "pour-late", "s"}};
    for (const Row& row : rows) {
        EXPECT_EQ(text_of(row.code), row.text);
        EXPECT_EQ(unit_of(row.code), row.unit) << row.text;
    }
}

TEST(CheckNames, SeveritiesAndFramesAreWords) {
    EXPECT_EQ(text_of(Severity::mend), "mend");
    EXPECT_EQ(text_of(Severity::look), "look");
    EXPECT_EQ(text_of(Severity::note), "note");
    EXPECT_EQ(text_of(CheckFrame::none), "");
    EXPECT_EQ(text_of(CheckFrame::drawer), "drawer");
    EXPECT_EQ(text_of(CheckFrame::mold), "mold");
}

/// In the order they should come.
std::vector<Check> ordered() {
    const auto check = [](Code code, Severity severity, std::vector<std::string> subjects, double value,
                          bool left) {
        return Check{code, severity, std::move(subjects), value, 10, CheckFrame::drawer, shape::Vec{1, 2},
                     {},   left};
    };
    std::vector<Check> checks{check(Code::overlap, Severity::mend, {"i9#1"}, 3, false),
                              check(Code::wall_thin, Severity::look, {"i1#1", "i2#1"}, 7, false),
                              check(Code::wall_thin, Severity::look, {"i1#1", "i3#1"}, 6, false),
                              check(Code::edge_thin, Severity::look, {"i1#1"}, 5, false),
                              check(Code::edge_thin, Severity::look, {"i1#1"}, 6, false),
                              check(Code::notch_apart, Severity::note, {"i1#1"}, 0, false),
                              check(Code::wall_thin, Severity::look, {"i1#1"}, 1, true)};
    checks.push_back(checks.back()); // one that differs in its place only
    checks.back().at = shape::Vec{1, 3};
    checks.push_back(checks.back());
    checks.back().to = shape::Vec{0, 0};
    return checks;
}

TEST(CheckOrder, IsTotalAndThatOfTheList) {
    const auto checks = ordered();
    for (std::size_t i = 0; i < checks.size(); ++i)
        for (std::size_t j = 0; j < checks.size(); ++j)
            EXPECT_EQ(comes_before(checks[i], checks[j]), i < j) << i << " " << j;
}

} // namespace
} // namespace drawercast::layout
