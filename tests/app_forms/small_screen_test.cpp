// SPDX-License-Identifier: GPL-3.0-or-later
#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "forms/small_screen.h"

#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

/// A field under a picture of 500 × 400, buttons below.
class Tall final : public QDialog {
  public:
    explicit Tall(QSize screen) {
        auto* column = new QVBoxLayout(this);
        auto* picture = new QLabel;
        picture->setFixedSize(500, 400);
        edit->setAccessibleName("Name");
        column->addWidget(picture);
        column->addWidget(edit);
        column->addWidget(new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel));
        fit_screen(*this, {800, 600}, screen);
    }
    QLineEdit* edit = new QLineEdit;
};

TEST(FitScreen, a_large_screen_changes_nothing) {
    test::dressed_application();
    Tall dialog({1920, 1080});
    EXPECT_EQ(dialog.size(), QSize(800, 600));
    EXPECT_EQ(dialog.findChild<QScrollArea*>(), nullptr);
}

TEST(FitScreen, on_a_small_one_all_but_the_buttons_scrolls) {
    test::dressed_application();
    Tall dialog({683, 384});
    test::open(dialog);
    QApplication::processEvents();
    EXPECT_LE(dialog.height(), 384);
    EXPECT_LE(dialog.width(), 683);
    ASSERT_NE(dialog.findChild<QScrollArea*>(), nullptr);
    auto& ok = test::take_button(dialog);
    EXPECT_TRUE(dialog.rect().contains(QRect(ok.mapTo(&dialog, QPoint(0, 0)), ok.size())));
    test::type(dialog, "Name", "still there");
    EXPECT_EQ(dialog.edit->text(), "still there");
}

} // namespace
} // namespace drawercast::app
