// SPDX-License-Identifier: GPL-3.0-or-later
#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "forms/copies_form.h"

#include <QCheckBox>
#include <QLabel>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

const CopyRoom room{{{20, 200}, {80, 240}}, {{0, 0}, {300, 260}}};

QString words(QWidget& form) {
    QString all;
    for (auto* label : form.findChildren<QLabel*>())
        if (label->isVisible()) all += label->text() + u'\n';
    return all;
}

TEST(CopiesForm, says_how_large_they_are_and_whether_they_stay_inside) {
    test::dressed_application();
    CopiesForm form({3, 1, 10, 10, false, false}, room, {});
    test::open(form);
    EXPECT_TRUE(words(form).contains("3 pockets, 200 mm × 40 mm"));
    EXPECT_TRUE(words(form).contains("nearest edge of the insert is 20 mm away"));
    test::type(form, "Columns", "5");
    EXPECT_TRUE(words(form).contains("reach 60 mm past"));
    test::button(form, "To the left instead of to the right").click();
    EXPECT_TRUE(words(form).contains("reach 260 mm past"));
    ASSERT_TRUE(form.value());
    EXPECT_EQ(form.value()->columns, 5);
    EXPECT_TRUE(form.value()->leftward);
    test::expect_named_and_reached_by_tab(form);
}

TEST(CopiesForm, no_copy_and_too_many_are_refused) {
    test::dressed_application();
    CopiesForm form({3, 1, 10, 10, false, false}, room, {});
    test::open(form);
    test::type(form, "Columns", "1");
    EXPECT_FALSE(form.value());
    test::type(form, "Rows", "2");
    EXPECT_TRUE(form.value());
    test::type(form, "Columns", "50");
    test::type(form, "Rows", "50");
    EXPECT_FALSE(form.value());
    test::type(form, "Rows", "1.5");
    EXPECT_FALSE(form.value());
}

} // namespace
} // namespace drawercast::app
