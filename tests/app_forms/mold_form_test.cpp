// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"

#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "forms/mold_form.h"

#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

void choose(QWidget& form, const char* name, const QString& text) {
    auto& combo = dynamic_cast<QComboBox&>(test::field(form, name));
    const int at = combo.findText(text);
    ASSERT_GE(at, 0) << text.toStdString();
    combo.setFocus();
    while (combo.currentIndex() < at) QTest::keyClick(&combo, Qt::Key_Down);
    while (combo.currentIndex() > at) QTest::keyClick(&combo, Qt::Key_Up);
}

TEST(MoldForm, taken_as_it_came_changes_nothing) {
    test::dressed_application();
    job::Mold fixed;
    fixed.board = job::builtin_boards().front().name;
    fixed.spacing_mm = 70;
    fixed.stiffeners = job::StiffenerChoice{};
    fixed.stiffeners->count = 2;
    fixed.stiffeners->name = job::builtin_stiffeners().front().name;
    fixed.stiffeners->along = job::Along::long_side;
    fixed.stiffeners->glued = true;
    job::Mold none;
    none.stiffeners = job::StiffenerChoice{};
    for (const job::Mold& given : {job::Mold{}, fixed, none}) {
        MoldForm form(given, {}, FormContext{});
        test::open(form);
        ASSERT_TRUE(form.value());
        EXPECT_EQ(*form.value(), given);
    }
}

TEST(MoldForm, each_part_is_automatic_or_fixed) {
    test::dressed_application();
    MoldForm form({}, {}, FormContext{});
    test::open(form);
    const QString board = QString::fromStdString(job::builtin_boards().back().name);
    const QString piece = QString::fromStdString(job::builtin_stiffeners().back().name);
    choose(form, "Board of the plate", board);
    choose(form, "Stiffeners", "fixed by you");
    test::type(form, "Number of them", "3");
    choose(form, "Piece", piece);
    choose(form, "Corners of the box", "pinwheel: each wall runs past the next");
    test::type(form, "Greatest pitch of closures", "55");
    ASSERT_TRUE(form.value());
    const job::Mold made = *form.value();
    EXPECT_EQ(made.board, board.toStdString());
    EXPECT_FALSE(made.box_board);
    EXPECT_EQ(made.stiffeners->count, 3);
    EXPECT_EQ(made.stiffeners->name, piece.toStdString());
    EXPECT_EQ(made.corner, job::BoxCorner::pinwheel);
    EXPECT_EQ(made.spacing_mm, 55);
    choose(form, "Stiffeners", "automatic");
    EXPECT_FALSE(form.value()->stiffeners);
}

TEST(MoldForm, what_cannot_be_built_is_refused_beside_its_field) {
    test::dressed_application();
    MoldForm form({}, {}, FormContext{});
    test::open(form);
    test::type(form, "Margin on the pressure", "0.5");
    EXPECT_FALSE(form.value());
    ASSERT_FALSE(form.problems().empty());
    EXPECT_EQ(form.problems().front().path, "/pressure_factor");
}

TEST(MoldForm, everything_is_named_and_reached_by_tab) {
    test::dressed_application();
    job::Mold fixed;
    fixed.stiffeners = job::StiffenerChoice{};
    fixed.stiffeners->count = 1;
    fixed.stiffeners->name = job::builtin_stiffeners().front().name;
    MoldForm form(fixed, {}, FormContext{});
    test::open(form);
    test::expect_named_and_reached_by_tab(form);
}

} // namespace
} // namespace drawercast::app
