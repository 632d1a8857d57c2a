// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/explain/formula.h"

#include <gtest/gtest.h>

#include <cmath>

namespace drawercast::app::explain {
namespace {

std::optional<double> value_of(const QString& key) {
    if (key == u"a") return 4;
    if (key == u"two words") return -3;
    return std::nullopt;
}

TEST(Formula, is_worked_out_as_it_reads) {
    struct Row {
        const char* formula;
        double value;
    };
    const Row rows[] = {
        {"1", 1},
        {" 2 + 3 × 4 ", 14},
        {"(2 + 3) × 4", 20},
        {"7 − 2 − 1", 4},
        {"7 - 2", 5},
        {"24 / 4 / 2", 3},
        {"2 ^ 3 ^ 2", 512},
        {"2 × 3 ^ 2", 18},
        {"−2 ^ 2", -4},
        {"2 ^ −1", 0.5},
        {"−{two words} × {a}", 12},
        {"max(1, {a}, 2)", 4},
        {"min(1, 2)", 1},
        {"roundup(1.2) + roundup(2)", 4},
        {"ln(exp(2.5))", 2.5},
        {"sin(asin(0.5))", 0.5},
        {"max(1, min(9, 2 × (1 + 2)))", 6},
    };
    for (const auto& row : rows) {
        const auto value = evaluate(row.formula, value_of);
        ASSERT_TRUE(value) << row.formula;
        EXPECT_NEAR(*value, row.value, 1e-12) << row.formula;
    }
}

TEST(Formula, what_cannot_be_read_has_no_value) {
    for (const char* formula : {"", "1 +", "(1", "1)", "{unknown}", "{a", "min()", "min", "cos(1)", "1 2",
                                "exp(1, 2)", "1 / 0", "ln(−1)", "1..2", "2 × × 3", "mL"})
        EXPECT_FALSE(evaluate(formula, value_of)) << formula;
}

TEST(Formula, terms_are_replaced_in_place) {
    EXPECT_EQ(with_terms("1 + {a} × {b}", [](const QString& key) { return key.toUpper(); }), "1 + A × B");
    EXPECT_EQ(with_terms("none", [](const QString&) { return QString("x"); }), "none");
    EXPECT_EQ(with_terms("{open", [](const QString&) { return QString("x"); }), "{open");
}

} // namespace
} // namespace drawercast::app::explain
