// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"

#include "app_window/hand.h"
#include "window/actions.h"

#include <QTest>
#include <gtest/gtest.h>

namespace drawercast::test {
namespace {

TEST(CostActs, a_quote_starts_a_job_where_the_maker_wants_one) {
    Desktop desk;
    desk.open_demo();
    const auto before = desk.window.document().job();
    desk.window.actions()["job.quick_quote"]->trigger(); // only looked at
    EXPECT_EQ(desk.window.document().job(), before);
    desk.asking.to_quote = [&](const job::Job& given) {
        EXPECT_EQ(given, before); // its foam and prices
        return std::optional(job::new_job({}));
    };
    desk.window.actions()["job.quick_quote"]->trigger();
    EXPECT_EQ(desk.window.document().job(), job::new_job({}));
    EXPECT_TRUE(desk.window.document().path().isEmpty());
}

TEST(CostActs, the_welcome_sheet_offers_it_too) {
    Desktop desk;
    bool asked = false;
    desk.asking.to_quote = [&](const job::Job& given) {
        asked = !given.foam->kits.empty();
        return std::optional<job::Job>();
    };
    desk.window.actions()["job.quick_quote"]->trigger();
    EXPECT_TRUE(asked); // with the foam a new job starts with
}

TEST(CostActs, the_cost_is_shown_once_it_is_worked_out) {
    Desktop desk;
    test::open_with_plate_chosen(desk, {{100, 100}, {250, 180}});
    desk.window.actions()["job.cost"]->trigger();
    EXPECT_EQ(desk.asking.told, 0);
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk.window.document().plan().stock != nullptr; }, 120'000));
    desk.window.actions()["job.cost"]->trigger();
    EXPECT_EQ(desk.asking.told, 1);
}

} // namespace
} // namespace drawercast::test
