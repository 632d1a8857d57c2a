// SPDX-License-Identifier: GPL-3.0-or-later
#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "forms/number_table.h"
#include "forms/paste_dialog.h"
#include "forms/paste_model.h"

#include <QAbstractItemModelTester>
#include <QClipboard>
#include <QSignalSpy>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

using test::field;

const QString list = QStringLiteral("Object;Length (cm);Width;Height;Weight (kg);Shelf\n"
                                    "Data logger;14,5;90;45;0,64;B4\n"
                                    "Mast clamp;about 12;80;30;0,5;B5\n"
                                    "Wind vane;8,25;30;20;0,12;B4\n"
                                    "Spares;;;;;C1\n");

struct Opened {
    PasteDialog dialog{FormContext{}};
    std::vector<std::vector<job::Object>> given;
    Opened() {
        QObject::connect(&dialog, &PasteDialog::added, &dialog,
                         [this](const std::vector<job::Object>& objects) { given.push_back(objects); });
        test::open(dialog);
    }
};

QPushButton& add_button(PasteDialog& dialog) {
    for (auto* one : dialog.findChildren<QPushButton*>())
        if (one->text().startsWith(QStringLiteral("Add"))) return *one;
    throw std::runtime_error("no button to add");
}

TEST(PasteDialog, adds_what_can_be_read_and_keeps_the_rest_in_view) {
    test::dressed_application();
    Opened o;
    EXPECT_FALSE(add_button(o.dialog).isEnabled());
    QGuiApplication::clipboard()->setText(list);
    QTest::mouseClick(&test::button(o.dialog, "Paste from clipboard"), Qt::LeftButton);
    EXPECT_EQ(add_button(o.dialog).text(), QStringLiteral("Add 2 objects"));
    QTest::mouseClick(&add_button(o.dialog), Qt::LeftButton);
    ASSERT_EQ(o.given.size(), 1U);
    ASSERT_EQ(o.given[0].size(), 2U);
    EXPECT_EQ(o.given[0][0].name, "Data logger");
    EXPECT_EQ(o.given[0][0].mass_g, 640);
    EXPECT_EQ(o.given[0][0].note, "Shelf: B4");
    EXPECT_TRUE(o.dialog.isVisible());
    EXPECT_EQ(o.dialog.text(), QStringLiteral("Object;Length (cm);Width;Height;Weight (kg);Shelf\n"
                                              "Mast clamp;about 12;80;30;0,5;B5\n"
                                              "Spares;;;;;C1"));
    EXPECT_FALSE(add_button(o.dialog).isEnabled());
    // put right by hand, in the paste area
    auto& text = dynamic_cast<QPlainTextEdit&>(field(o.dialog, "Pasted list"));
    text.setPlainText(o.dialog.text().replace(QStringLiteral("about 12"), QStringLiteral("12")));
    EXPECT_EQ(add_button(o.dialog).text(), QStringLiteral("Add 1 object"));
    QTest::mouseClick(&add_button(o.dialog), Qt::LeftButton);
    ASSERT_EQ(o.given.size(), 2U);
    EXPECT_EQ(o.given[1][0].mass_g, 500);
    EXPECT_EQ(std::get<shape::Rectangle>(std::get<job::Sunk>(o.given[1][0].levels[0].form).outline).width_mm,
              120);
    EXPECT_TRUE(o.dialog.text().contains(QStringLiteral("Spares")));
}

TEST(PasteDialog, begins_with_a_list_that_was_copied) {
    test::dressed_application();
    Opened o;
    QGuiApplication::clipboard()->setText(QStringLiteral("bring the long tape"));
    o.dialog.take_copied();
    EXPECT_EQ(o.dialog.text(), QString()) << "no list";
    QGuiApplication::clipboard()->setText(list);
    o.dialog.take_copied();
    EXPECT_EQ(o.dialog.text(), list);
    EXPECT_EQ(add_button(o.dialog).text(), QStringLiteral("Add 2 objects"));
    ASSERT_NE(o.dialog.focusWidget(), nullptr);
    QTest::keyClick(o.dialog.focusWidget(), Qt::Key_Return);
    EXPECT_EQ(o.given.size(), 1U) << "Enter adds them";
}

TEST(PasteDialog, adds_from_within_the_text_by_control_and_enter) {
    test::dressed_application();
    Opened o;
    auto& text = field(o.dialog, "Pasted list");
    o.dialog.set_text(list);
    text.setFocus();
    QTest::keyClick(&text, Qt::Key_Return);
    EXPECT_TRUE(o.given.empty()) << "a new row";
    QTest::keyClick(&text, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(o.given.size(), 1U);
}

TEST(PasteDialog, closes_when_nothing_is_left) {
    test::dressed_application();
    Opened o;
    o.dialog.set_text(QStringLiteral("Logger\t140\t90\t45\n"));
    QTest::mouseClick(&add_button(o.dialog), Qt::LeftButton);
    EXPECT_EQ(o.given.size(), 1U);
    EXPECT_FALSE(o.dialog.isVisible());
}

TEST(PasteDialog, columns_can_be_put_right) {
    test::dressed_application();
    Opened o;
    o.dialog.set_text(QStringLiteral("Logger\t45\t140\t90\n")); // height first
    EXPECT_EQ(o.dialog.objects().at(0).height_mm, 90);
    const auto choose = [&](const char* name, const char* words) {
        auto& combo = dynamic_cast<QComboBox&>(field(o.dialog, name));
        combo.setFocus();
        QTest::keyClick(&combo, Qt::Key_Home);
        for (int i = 0; combo.currentText() != QLatin1String(words) && i < combo.count(); ++i)
            QTest::keyClick(&combo, Qt::Key_Down);
    };
    choose("Column 2 holds", "height");
    choose("Column 3 holds", "length");
    choose("Column 4 holds", "width");
    choose("Unit of Column 2", "cm");
    ASSERT_EQ(o.dialog.objects().size(), 1U);
    EXPECT_EQ(o.dialog.objects()[0].height_mm, 450);
    const auto sunk = std::get<job::Sunk>(o.dialog.objects()[0].levels[0].form);
    EXPECT_EQ(sunk.outline, shape::Given(shape::Rectangle{140, 90, 0}));
}

TEST(PasteDialog, header_separator_and_decimal_mark_can_be_put_right) {
    test::dressed_application();
    Opened o;
    o.dialog.set_text(QStringLiteral("Logger;1,500;90;45\n"));
    EXPECT_TRUE(o.dialog.objects().empty());
    auto& mark = dynamic_cast<QComboBox&>(field(o.dialog, "Decimals like"));
    mark.setFocus();
    QTest::keyClick(&mark, Qt::Key_Down);
    ASSERT_EQ(o.dialog.objects().size(), 1U);
    test::button(o.dialog, "First row is a header").click();
    EXPECT_TRUE(o.dialog.objects().empty());
    auto& separator = dynamic_cast<QComboBox&>(field(o.dialog, "Cells separated by"));
    separator.setFocus();
    QTest::keyClick(&separator, Qt::Key_End);
    EXPECT_TRUE(o.dialog.objects().empty());
}

TEST(PasteDialog, models_keep_the_rules) {
    test::dressed_application();
    PasteModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    const auto table = job::paste_table(list.toStdString());
    model.set_list(*table, job::guess_meaning(*table), {});
    EXPECT_EQ(model.rowCount(), 4);
    EXPECT_EQ(model.read_count(), 2);
    model.set_list({}, {}, {});
    EXPECT_EQ(model.rowCount(), 0);

    const FormContext context;
    NumberTable numbers({{QStringLiteral("x"), length_notation(context), {"", -100, 100}},
                         {QStringLiteral("name"), {}, {}, 0, true}});
    const QAbstractItemModelTester second(&numbers, QAbstractItemModelTester::FailureReportingMode::Fatal);
    numbers.insert_row(0, numbers.new_row());
    numbers.insert_row(5, {QStringLiteral("last"), {12.3456, 0}, -1});
    EXPECT_TRUE(numbers.setData(numbers.index(1, 0), QStringLiteral("12.3"), Qt::EditRole));
    EXPECT_EQ(numbers.rows()[1].numbers[0], 12.3456); // as shown: stays
    EXPECT_FALSE(numbers.setData(numbers.index(1, 0), QStringLiteral("101"), Qt::EditRole));
    EXPECT_TRUE(numbers.setData(numbers.index(1, 0), QStringLiteral("1 in"), Qt::EditRole));
    EXPECT_EQ(numbers.rows()[1].numbers[0], 25.4);
    numbers.remove_row(0);
    EXPECT_EQ(numbers.rowCount(), 1);
}

TEST(PasteDialog, every_field_has_a_name_and_is_reached_by_tab) {
    test::dressed_application();
    Opened o;
    o.dialog.set_text(list);
    test::expect_named_and_reached_by_tab(o.dialog);
}

TEST(PasteDialog, is_seen_whole_in_each_theme) {
    for (const bool dark : {false, true}) {
        const auto theme = dark ? theme::dark_theme() : theme::light_theme();
        test::dressed_application(theme);
        Opened o;
        test::expect_seen(o.dialog, theme, QStringLiteral("paste-empty-%1").arg(dark ? "dark" : "light"));
        o.dialog.set_text(list);
        test::expect_seen(o.dialog, theme, QStringLiteral("paste-%1").arg(dark ? "dark" : "light"));
    }
}

} // namespace
} // namespace drawercast::app
