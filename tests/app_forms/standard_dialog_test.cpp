// SPDX-License-Identifier: GPL-3.0-or-later
#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "forms/standard_dialog.h"

#include <QLineEdit>
#include <QListWidget>
#include <gtest/gtest.h>

namespace drawercast::app {

TEST(StandardDialog, the_words_must_all_be_found) {
    test::dressed_application();
    StandardDialog dialog(FormContext{});
    auto& find = *dialog.findChild<QLineEdit*>();
    QTest::keyClicks(&find, "cell r20");
    ASSERT_EQ(dialog.objects().size(), 1U);
    EXPECT_EQ(dialog.objects()[0].name, "Round cell R20 (D)");
    EXPECT_TRUE(dialog.objects()[0].id.empty()) << "the job gives it one";
    find.clear();
    QTest::keyClicks(&find, "no such thing");
    EXPECT_TRUE(dialog.objects().empty());
}

TEST(StandardDialog, several_are_taken_at_once) {
    test::dressed_application();
    StandardDialog dialog(FormContext{});
    auto& list = *dialog.findChild<QListWidget*>();
    list.selectAll();
    EXPECT_EQ(dialog.objects().size(), static_cast<std::size_t>(list.count()));
    for (const auto& object : dialog.objects()) EXPECT_FALSE(object.note.empty()) << object.name;
}

} // namespace drawercast::app
