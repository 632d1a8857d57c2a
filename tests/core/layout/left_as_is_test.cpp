// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/left_as_is.h"

#include <gtest/gtest.h>

namespace drawercast::layout {
namespace {

Check look(Code code, std::vector<std::string> subjects, double value) {
    return {code, Severity::look, std::move(subjects), value, 10, CheckFrame::drawer, {}, {}, false};
}

TEST(LeftAsIs, HoldsWhileTheFigureIsNoWorse) {
    struct Row {
        const char* name;
        Check check;
        job::LeftAsIs left;
        bool holds;
    };
    const Check wall = look(Code::wall_thin, {"a#1", "b#1"}, 9.2);
    const Check foot = look(Code::foot_pressure, {"a#1"}, 7);
    Check mended = wall;
    mended.severity = Severity::mend;
    Check noted = wall;
    noted.severity = Severity::note;
    const std::vector<std::string> both{"a#1", "b#1"};
    const Row rows[] = {
        {"same", wall, {"d1", "wall-thin", both, 9.2, {}}, true},
        {"stored rounded", wall, {"d1", "wall-thin", both, 9.2004, {}}, true},
        {"better since", wall, {"d1", "wall-thin", both, 8.0, {}}, true},
        {"worse since", wall, {"d1", "wall-thin", both, 9.3, {}}, false},
        {"subjects in any order", wall, {"d1", "wall-thin", {"b#1", "a#1"}, 9.2, {}}, true},
        {"other subjects", wall, {"d1", "wall-thin", {"a#1", "c#1"}, 9.2, {}}, false},
        {"one subject", wall, {"d1", "wall-thin", {"a#1"}, 9.2, {}}, false},
        {"other code", wall, {"d1", "edge-thin", both, 9.2, {}}, false},
        {"other drawer", wall, {"d2", "wall-thin", both, 9.2, {}}, false},
        {"a mend can't be left", mended, {"d1", "wall-thin", both, 9.2, {}}, false},
        {"a note need not be", noted, {"d1", "wall-thin", both, 9.2, {}}, false},
        {"pressure, better since", foot, {"d1", "foot-pressure", {"a#1"}, 8, {}}, true},
        {"pressure, worse since", foot, {"d1", "foot-pressure", {"a#1"}, 6.9, {}}, false},
    };
    for (const Row& row : rows) {
        std::vector<Check> checks{row.check};
        mark_left_as_is(checks, {row.left}, "d1");
        EXPECT_EQ(checks[0].left_as_is, row.holds) << row.name;
    }
}

TEST(LeftAsIs, GoesToTheEndOfTheList) {
    Check note = look(Code::notch_apart, {"z#1"}, 0);
    note.severity = Severity::note;
    std::vector<Check> checks{look(Code::wall_thin, {"a#1", "b#1"}, 9), look(Code::edge_thin, {"c#1"}, 9),
                              note};
    mark_left_as_is(checks, {{"d1", "wall-thin", {"a#1", "b#1"}, 9, {}}}, "d1");
    EXPECT_EQ(checks[0].code, Code::edge_thin);
    EXPECT_EQ(checks[1].code, Code::notch_apart);
    EXPECT_EQ(checks[2].code, Code::wall_thin);
    EXPECT_TRUE(checks[2].left_as_is);
}

TEST(LeftAsIs, WorseIsSmallerForMinimumsAndLargerForMaximums) {
    for (const Code code :
         {Code::wall_thin, Code::edge_thin, Code::floor_thin, Code::short_if_low, Code::not_placed}) {
        EXPECT_TRUE(worse(code, 1, 2)) << text_of(code);
        EXPECT_FALSE(worse(code, 2, 1)) << text_of(code);
    }
    for (const Code code :
         {Code::foot_pressure, Code::hard_if_high, Code::overload, Code::too_many_batches}) {
        EXPECT_TRUE(worse(code, 2, 1)) << text_of(code);
        EXPECT_FALSE(worse(code, 1, 2)) << text_of(code);
    }
    EXPECT_FALSE(worse(Code::no_cup, 0, 0));
}

} // namespace
} // namespace drawercast::layout
