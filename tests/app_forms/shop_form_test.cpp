// SPDX-License-Identifier: GPL-3.0-or-later
#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "forms/minimums_form.h"
#include "forms/shop_form.h"

#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

using test::field;
using test::type;

TEST(ShopForm, gives_back_what_it_was_given) {
    test::dressed_application();
    job::Shop shop;
    shop.temperature_c = 21.123456789;
    shop.altitude_m = 1609.344;
    shop.mixer_ml = 5000;
    shop.pour_s = 40;
    shop.drills_mm = {2, 2.123456, 3};
    shop.scale_step_g = 0.123456, shop.opens_h = 7.123456, shop.closes_h = 15.5;
    shop.hour_price = 48.123456, shop.margin = 0.123456;
    shop.boards = {{}};
    shop.unknown = {{"x", "1"}};
    for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch, job::DisplayUnits::inch_32}) {
        FormContext context;
        context.units = units;
        EXPECT_EQ(ShopForm(shop, context).value(), shop);
    }
}

TEST(ShopForm, is_typed_in_the_jobs_units_or_others) {
    test::dressed_application();
    FormContext context;
    context.units = job::DisplayUnits::inch;
    ShopForm form({}, context);
    test::open(form);
    type(form, "Temperature", "68");
    type(form, "Altitude", "1000 m");
    type(form, "People who mix", "2");
    type(form, "Mixer takes", "5 gal");
    type(form, "Drills at hand, in", "1/8; 3/16; 4 mm");
    ASSERT_TRUE(form.value().has_value());
    EXPECT_NEAR(form.value()->temperature_c, 20, 1e-9);
    EXPECT_EQ(form.value()->altitude_m, 1000);
    EXPECT_EQ(form.value()->people, 2);
    EXPECT_NEAR(*form.value()->mixer_ml, 18927.05892, 1e-6); // 5 gal of 231 in³
    EXPECT_EQ(form.value()->drills_mm, (std::vector<double>{3.175, 4.7625, 4}));
    type(form, "Mixer takes", "");
    EXPECT_FALSE(form.value()->mixer_ml.has_value());
    type(form, "Opens at", "17");
    type(form, "Closes at", "9");
    EXPECT_FALSE(form.value().has_value()); // closes before it opens
    type(form, "Opens at", "6.5");
    type(form, "Margin", "25");
    type(form, "An hour costs", "52");
    type(form, "Scale's step", "5");
    ASSERT_TRUE(form.value().has_value());
    EXPECT_EQ(form.value()->opens_h, 6.5);
    EXPECT_EQ(form.value()->closes_h, 9);
    EXPECT_EQ(form.value()->margin, 0.25);
    EXPECT_EQ(form.value()->hour_price, 52);
    EXPECT_EQ(form.value()->scale_step_g, 5);
    type(form, "Drills at hand, in", "1/8; x");
    EXPECT_FALSE(form.value().has_value());
    EXPECT_EQ(form.problems().front().field, &field(form, "Drills at hand, in"));
    type(form, "Drills at hand, in", "1/8; 0");
    EXPECT_FALSE(form.value().has_value()); // the reader's range
}

TEST(MinimumsForm, empty_goes_by_the_firmness) {
    test::dressed_application();
    MinimumsForm form({}, {});
    test::open(form);
    EXPECT_EQ(form.value(), job::Minimums{});
    type(form, "Wall at least", "8.5");
    type(form, "Floor at least", "1/2 in");
    ASSERT_TRUE(form.value().has_value());
    EXPECT_EQ(form.value()->wall_mm, 8.5);
    EXPECT_EQ(form.value()->floor_mm, 12.7);
    type(form, "Wall at least depth over", "0");
    EXPECT_FALSE(form.value().has_value());
}

TEST(SmallForms, every_field_has_a_name_and_is_reached_by_tab) {
    test::dressed_application();
    ShopForm shop({}, {});
    test::open(shop);
    test::expect_named_and_reached_by_tab(shop);
    MinimumsForm minimums({}, {});
    test::open(minimums);
    test::expect_named_and_reached_by_tab(minimums);
}

TEST(SmallForms, pictures) {
    for (const bool dark : {false, true}) {
        test::dressed_application(dark ? theme::dark_theme() : theme::light_theme());
        for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch_32}) {
            FormContext context;
            context.units = units;
            const QString end = QStringLiteral("-%1-%2").arg(dark ? "dark" : "light").arg(int(units));
            ShopForm shop({}, context);
            test::open(shop);
            EXPECT_LE(shop.height(), 730);
            EXPECT_LE(shop.width(), 1366);
            test::picture(shop, QStringLiteral("shop") + end);
            MinimumsForm minimums({}, context);
            test::open(minimums);
            test::picture(minimums, QStringLiteral("minimums") + end);
        }
    }
}

} // namespace
} // namespace drawercast::app
