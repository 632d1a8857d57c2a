// SPDX-License-Identifier: GPL-3.0-or-later
#include "app_forms/look.h"
#include "forms/length_edit.h"

#include <QTest>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace drawercast::app {
namespace {

FormContext in(job::DisplayUnits units) {
    FormContext context;
    context.units = units;
    return context;
}

struct Typed {
    std::string text;
    job::DisplayUnits units;
    std::optional<double> mm;
    std::string shown_after;
};

TEST(LengthEdit, takes_any_typed_length) {
    test::dressed_application();
    const auto mm = job::DisplayUnits::mm;
    const auto inch = job::DisplayUnits::inch;
    const auto frac = job::DisplayUnits::inch_32;
    const std::vector<Typed> cases{
        {"82.5", mm, 82.5, "82.5"},
        {"82,5", mm, 82.5, "82.5"},
        {"8.25 cm", mm, 82.5, "82.5"},
        {"3 1/4 in", mm, 82.55, "82.6"},
        {"3-1/4\"", mm, 82.55, "82.6"},
        {"3.25", inch, 82.55, "3.25"},
        {"82.55 mm", inch, 82.55, "3.25"},
        {"3 1/4", frac, 82.55, "3 1/4"},
        {"", mm, {}, ""},
        {"1,500", mm, {}, "1,500"},
        {"abc", mm, {}, "abc"},
        {"-4", mm, {}, "-4"},
        {"0", mm, {}, "0"},
        {"10001", mm, {}, "10001"},
        {"400 in", frac, {}, "400 in"},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.text);
        LengthEdit edit(in(c.units), outline_size);
        edit.show();
        QTest::keyClicks(&edit, QString::fromStdString(c.text));
        QTest::keyClick(&edit, Qt::Key_Return);
        EXPECT_EQ(edit.value().has_value(), c.mm.has_value());
        if (c.mm) {
            EXPECT_DOUBLE_EQ(edit.value().value_or(0), *c.mm);
        }
        EXPECT_EQ(edit.problem().isEmpty(), c.mm.has_value());
        EXPECT_EQ(edit.text().toStdString(), c.shown_after);
    }
}

TEST(LengthEdit, keeps_the_stored_value_unless_other_text_is_typed) {
    test::dressed_application();
    const double stored = 82.123456;
    for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch, job::DisplayUnits::inch_32}) {
        LengthEdit edit(in(units), outline_size);
        edit.set_value(stored);
        edit.show();
        EXPECT_EQ(edit.value(), stored);
        const QString shown = edit.text();
        edit.setFocus();
        QTest::keyClick(&edit, Qt::Key_Return); // visited, not changed
        EXPECT_EQ(edit.value(), stored);
        edit.selectAll();
        QTest::keyClicks(&edit, QStringLiteral("7"));
        EXPECT_NE(edit.value(), stored);
        edit.selectAll();
        QTest::keyClicks(&edit, shown); // back to what was shown is back to what was stored
        EXPECT_EQ(edit.value(), stored);
    }
}

TEST(LengthEdit, an_empty_field_may_mean_auto) {
    test::dressed_application();
    LengthEdit edit(in(job::DisplayUnits::mm), job::range_of("/objects/*/fit_mm"));
    EXPECT_FALSE(edit.problem().isEmpty());
    edit.allow_empty(QStringLiteral("auto: -0.5"));
    EXPECT_TRUE(edit.problem().isEmpty());
    EXPECT_FALSE(edit.value().has_value());
    QTest::keyClicks(&edit, QStringLiteral("-1.5"));
    EXPECT_EQ(edit.value(), -1.5);
    edit.selectAll();
    QTest::keyClick(&edit, Qt::Key_Backspace);
    EXPECT_TRUE(edit.problem().isEmpty());
    EXPECT_FALSE(edit.value().has_value());
}

TEST(ValueEdit, quantities_and_ranges_in_the_jobs_units) {
    test::dressed_application();
    ValueEdit warm(quantity_notation(Quantity::temperature_c, in(job::DisplayUnits::inch)),
                   job::range_of("/shop/temperature_c"));
    warm.set_value(23.0);
    EXPECT_EQ(warm.text(), QStringLiteral("73.4"));
    EXPECT_EQ(warm.hint(), QStringLiteral("°F, -4 to 140"));
    warm.selectAll();
    QTest::keyClicks(&warm, QStringLiteral("20 C"));
    EXPECT_EQ(warm.value(), 20.0);
    ValueEdit people(number_notation(in(job::DisplayUnits::mm), {}), job::range_of("/shop/people"));
    people.set_value(2);
    people.selectAll();
    QTest::keyClicks(&people, QStringLiteral("1.5"));
    EXPECT_EQ(people.problem(), QStringLiteral("Use a whole number"));
    EXPECT_FALSE(people.value().has_value());
}

} // namespace
} // namespace drawercast::app
