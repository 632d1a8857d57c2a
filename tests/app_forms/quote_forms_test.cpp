// SPDX-License-Identifier: GPL-3.0-or-later
#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "core/plan/sample_job.h"
#include "forms/cost_dialog.h"
#include "forms/cup_form.h"
#include "forms/quick_quote_form.h"

#include <QCheckBox>
#include <gtest/gtest.h>

#include <cmath>

namespace drawercast::app {
namespace {

using test::type;

plan::CostBasis basis() {
    plan::CostBasis basis;
    basis.wood = 100, basis.closures = 10, basis.hours = {10, 2}, basis.hour_price = 50, basis.margin = 0.25;
    basis.kits = {{"small", 1000, 40, 0, {}}};
    basis.mixed_ml = 900, basis.days = 5, basis.foam_priced = basis.wood_priced = true;
    return basis;
}

TEST(CostDialog, shows_one_set_beside_a_run) {
    test::dressed_application();
    CostDialog dialog(basis(), "EUR", {});
    test::open(dialog);
    EXPECT_TRUE(test::words_seen(dialog).contains("938 EUR")) << test::words_seen(dialog).toStdString();
    auto& sets = test::field(dialog, "Sets in the run");
    QTest::keySequence(&sets, QKeySequence::SelectAll);
    QTest::keyClicks(&sets, "5");
    QTest::keyClick(&sets, Qt::Key_Tab);
    const double run = plan::cost_of(basis(), 5).total;
    EXPECT_TRUE(test::words_seen(dialog).contains(QString::number(std::lround(run))));
    test::picture(dialog, "cost");
}

TEST(CostDialog, says_what_has_no_price) {
    test::dressed_application();
    auto bare = basis();
    bare.hour_price = 0, bare.foam_priced = false;
    CostDialog dialog(bare, {}, {});
    test::open(dialog);
    EXPECT_EQ(test::words_seen(dialog).count("no price"), 6); // foam, what is used up, work
}

TEST(QuickQuoteForm, answers_while_it_is_typed_and_starts_a_job) {
    test::dressed_application();
    auto job = plan::testing::worked_job();
    job.currency = "EUR";
    QuickQuoteForm form(job, {});
    test::open(form);
    const QString before = test::words_seen(form);
    EXPECT_TRUE(before.contains("The hour has no price"));
    type(form, "Drawers", "3");
    type(form, "An hour costs", "60");
    type(form, "Width", "19 in");
    EXPECT_NE(test::words_seen(form), before);
    EXPECT_FALSE(test::words_seen(form).contains("The hour has no price"));
    ASSERT_TRUE(form.value());
    EXPECT_EQ(form.value()->drawers.size(), 3U);
    EXPECT_EQ(form.value()->shop->hour_price, 60);
    EXPECT_EQ(form.value()->foam, job.foam);
    EXPECT_TRUE(form.value()->objects.empty());
    EXPECT_FALSE(plan::anything_to_mend(plan::compute(*form.value())));
    type(form, "They cover", "95");
    EXPECT_FALSE(form.value());
    test::expect_named_and_reached_by_tab(form);
}

TEST(CupForm, a_cup_counts_once_something_of_it_was_typed) {
    test::dressed_application();
    const auto job = plan::testing::worked_job();
    CupForm form(job, plan::compute(job), {});
    test::open(form);
    EXPECT_EQ(form.value(), *job.foam); // looked at, and kept as it was
    auto& use = test::button(form, "Use this cup in place of the label");
    EXPECT_FALSE(use.isChecked());
    type(form, "Risen to", "115");
    EXPECT_TRUE(use.isChecked());
    ASSERT_TRUE(form.value() && form.value()->cup);
    EXPECT_EQ(form.value()->cup->risen_mm, 115);
    EXPECT_TRUE(form.value()->cup->use);
    EXPECT_TRUE(test::words_seen(form).contains("by the cup"));
    QTest::mouseClick(&use, Qt::LeftButton, {}, {8, 8});
    ASSERT_TRUE(form.value() && form.value()->cup);
    EXPECT_FALSE(form.value()->cup->use);
}

} // namespace
} // namespace drawercast::app
