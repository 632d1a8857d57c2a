// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"

#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "forms/foam_form.h"

#include <QTabWidget>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

using test::field;
using test::type;

job::Foam own_foam() {
    job::Foam foam = job::builtin_foams().back();
    foam.name = "Ours, batch 12";
    foam.expansion = 6.123456789;
    foam.overpack = 0.1834;
    foam.activation_kj_mol = 35;
    foam.unknown = {{"lot", "\"12\""}};
    foam.kits.front().unknown = {{"shelf", "4"}};
    foam.cup = job::Cup{};
    foam.cup->use = true;
    return foam;
}

TEST(FoamForm, gives_back_what_it_was_given) {
    test::dressed_application();
    for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch}) {
        FormContext context;
        context.units = units;
        FoamForm form(own_foam(), {}, context);
        EXPECT_TRUE(form.problems().empty());
        EXPECT_EQ(form.value(), own_foam());
        for (const auto& builtin : job::builtin_foams())
            EXPECT_EQ(FoamForm(builtin, {}, context).value(), builtin);
    }
}

TEST(FoamForm, what_has_no_unit_is_not_told_one) {
    test::dressed_application();
    FoamForm form(job::builtin_foams().front(), {}, {});
    test::open(form);
    EXPECT_EQ(field(form, "Parts A").accessibleDescription(), QString("The isocyanate; by volume"));
    EXPECT_EQ(field(form, "Mixing").accessibleDescription(), QString("s. Data sheet"));
}

TEST(FoamForm, a_builtin_profile_is_chosen_as_it_is) {
    test::dressed_application();
    FoamForm form(own_foam(), {}, {});
    test::open(form);
    auto& choice = dynamic_cast<QComboBox&>(field(form, "Start from"));
    ASSERT_EQ(choice.count(), 1 + int(job::builtin_foams().size()));
    choice.setFocus();
    QTest::keyClick(&choice, Qt::Key_Down);
    job::Foam expected = job::builtin_foams().front();
    expected.cup = own_foam().cup; // what was measured stays, and tells nothing of another foam
    if (expected.cup) expected.cup->use = false;
    EXPECT_EQ(form.value(), expected);
    QTest::keyClick(&choice, Qt::Key_Up);
    EXPECT_EQ(form.value(), own_foam());
}

TEST(FoamForm, a_changed_profile_becomes_the_makers_own) {
    test::dressed_application();
    const job::Foam firm = job::builtin_foams().back();
    FoamForm form(firm, {}, {});
    test::open(form);
    type(form, "Expansion", "5.5");
    ASSERT_TRUE(form.value().has_value());
    EXPECT_EQ(form.value()->expansion, 5.5);
    EXPECT_EQ(form.value()->name, firm.name + ", own");
    EXPECT_TRUE(
        field(form, "Expansion").accessibleDescription().contains(QStringLiteral("The profile has 7")));
    type(form, "Name", "Ours");
    type(form, "Overpack", "18");
    EXPECT_EQ(form.value()->name, "Ours");
    EXPECT_NEAR(*form.value()->overpack, 0.18, 1e-12);
    type(form, "Overpack", "");
    EXPECT_FALSE(form.value()->overpack.has_value());
    type(form, "Pot life", "0");
    EXPECT_FALSE(form.value().has_value());
}

TEST(FoamForm, a_cup_that_did_not_rise_is_told) {
    test::dressed_application();
    FoamForm form(own_foam(), {}, {});
    test::open(form);
    form.findChild<QTabWidget*>()->setCurrentIndex(3);
    type(form, "Risen to", "5");
    EXPECT_FALSE(form.value().has_value());
    EXPECT_FALSE(form.problems().front().words.isEmpty());
    test::button(form, "Use this cup in place of the label").click();
    ASSERT_TRUE(form.value().has_value());
    EXPECT_FALSE(form.value()->cup->use);
}

TEST(FoamForm, kits_are_typed_in_a_table) {
    test::dressed_application();
    FoamForm form(own_foam(), {}, {});
    test::open(form);
    form.findChild<QTabWidget*>()->setCurrentIndex(2);
    auto* view = form.findChild<QAbstractItemView*>();
    for (auto* one : form.findChildren<QAbstractItemView*>())
        if (one->accessibleName() == QStringLiteral("Kits")) view = one;
    test::type_cell(*view, 0, 0, "2 L set");
    test::type_cell(*view, 0, 1, "2 L");
    test::type_cell(*view, 0, 3, "1");
    ASSERT_TRUE(form.value().has_value());
    const job::Kit kit = form.value()->kits.front();
    EXPECT_EQ(kit.name, "2 L set");
    EXPECT_EQ(kit.volume_ml, 2000);
    EXPECT_EQ(kit.at_hand, 1);
    EXPECT_EQ(kit.unknown, own_foam().kits.front().unknown);
}

TEST(FoamForm, every_field_has_a_name_and_is_reached_by_tab) {
    test::dressed_application();
    FoamForm form(own_foam(), {}, {});
    test::open(form);
    for (int page = 0; page < 4; ++page) {
        form.findChild<QTabWidget*>()->setCurrentIndex(page);
        test::expect_named_and_reached_by_tab(form);
    }
}

TEST(FoamForm, is_seen_whole_in_each_theme_and_unit) {
    for (const bool dark : {false, true}) {
        const auto theme = dark ? theme::dark_theme() : theme::light_theme();
        test::dressed_application(theme);
        for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch_32}) {
            FormContext context;
            context.units = units;
            FoamForm form(job::builtin_foams().back(), {}, context);
            test::open(form);
            EXPECT_LE(form.height(), 730);
            for (int page = 0; page < 4; ++page) {
                form.findChild<QTabWidget*>()->setCurrentIndex(page);
                test::expect_seen(
                    form, theme,
                    QStringLiteral("foam%1-%2-%3").arg(page).arg(dark ? "dark" : "light").arg(int(units)));
            }
        }
    }
}

} // namespace
} // namespace drawercast::app
