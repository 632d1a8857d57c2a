// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/stock_stage.h"

#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "core/plan/sample_job.h"
#include "forms/as_built_form.h"
#include "forms/as_cast_form.h"
#include "forms/number_table.h"

#include <QCheckBox>
#include <QComboBox>
#include <QTableView>
#include <gtest/gtest.h>

#include <algorithm>

namespace drawercast::app {
namespace {

using test::type;

struct Shop {
    job::Job job = plan::testing::worked_job();
    plan::Plan plan = plan::compute(job);
    AsCastForm form(const FormContext& context = {}) const {
        return {job, plan, "d1", "2031-03-05", context};
    }
};

QCheckBox& box(QWidget& form, const char* begin) {
    for (auto* one : form.findChildren<QCheckBox*>())
        if (one->isVisible() && QString(one->text()).remove('&').startsWith(QLatin1String(begin)))
            return *one;
    throw std::runtime_error(std::string("no box ") + begin);
}

TEST(AsCastForm, gives_back_what_it_was_given) {
    test::dressed_application();
    Shop shop;
    job::Cast cast;
    cast.drawer = "d1", cast.foam = "x", cast.mixed_g = 1234.56789, cast.bow_mm = 0.123456;
    cast.new_holes = true, cast.fits = {{"R1#1", 0.25, {{"k", "1"}}}}, cast.unknown = {{"x", "1"}};
    auto other = cast;
    other.drawer = "gone";
    shop.job.casts = {other, cast, other, cast};
    for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch, job::DisplayUnits::inch_32}) {
        FormContext context;
        context.units = units;
        auto form = shop.form(context);
        test::open(form);
        EXPECT_EQ(form.value(), shop.job);
    }
}

TEST(AsCastForm, pockets_are_known_by_number_and_name) {
    test::dressed_application();
    Shop shop;
    job::Cast cast;
    cast.drawer = "d1", cast.fits = {{"R1#1", 0.25, {}}};
    shop.job.casts = {cast};
    const auto board = plan::pattern_board(shop.job, shop.plan.drawers.front());
    ASSERT_TRUE(board);
    const auto& blocks = board->blocks;
    const auto words = [](const casting::Block& block) {
        return QString::number(block.number) + ' ' + QString::fromStdString(block.name);
    };
    const auto block = std::find_if(blocks.begin(), blocks.end(),
                                    [](const casting::Block& one) { return one.subject == "R1#1"; });
    ASSERT_NE(block, blocks.end());
    auto form = shop.form();
    test::open(form);
    auto* table = form.findChild<QTableView*>();
    ASSERT_NE(table, nullptr);
    auto& model = *table->model();
    const auto first = model.index(0, 0);
    EXPECT_EQ(first.data().toString(), words(*block));
    table->setCurrentIndex(first);
    table->edit(first);
    auto* box = table->findChild<QComboBox*>();
    ASSERT_NE(box, nullptr);
    EXPECT_EQ(box->count(), static_cast<int>(blocks.size()));
    QTest::keyClicks(box, QString::number(blocks.back().number));
    QTest::keyClick(box, Qt::Key_Return);
    QApplication::processEvents(); // the editor sees the key first
    ASSERT_TRUE(form.value());
    EXPECT_EQ(form.value()->casts.front().fits.front().pocket, blocks.back().subject);
    model.setData(first, QString::fromStdString(block->name).toUpper(), Qt::EditRole);
    EXPECT_EQ(form.value()->casts.front().fits.front().pocket, "R1#1");
    model.setData(first, QStringLiteral("a bar"), Qt::EditRole);
    EXPECT_EQ(form.value()->casts.front().fits.front().pocket, "a bar");
}

TEST(AsCastForm, an_added_row_that_nobody_filled_in_is_no_measure) {
    test::dressed_application();
    Shop shop;
    job::Cast cast;
    cast.drawer = "d1", cast.fits = {{"R1#1", 0.25, {}}};
    shop.job.casts = {cast};
    auto form = shop.form();
    auto* table = form.findChild<app::NumberTable*>();
    ASSERT_NE(table, nullptr);
    table->insert_row(1, table->new_row());
    ASSERT_TRUE(form.value());
    EXPECT_EQ(form.value()->casts.front().fits, cast.fits);
    table->setData(table->index(1, 1), QStringLiteral("0.4"), Qt::EditRole);
    ASSERT_TRUE(form.value());
    EXPECT_EQ(form.value()->casts.front().fits.size(), 2u);
}

TEST(AsCastForm, compares_and_teaches_only_where_asked) {
    test::dressed_application();
    const Shop shop;
    auto form = shop.form();
    test::open(form);
    type(form, "Mixed", "1166");
    type(form, "Insert", "1100");
    type(form, "Length in the mold", "300");
    type(form, "The same, cured", "298.5");
    EXPECT_TRUE(test::words_seen(form).contains("45 mL")) << test::words_seen(form).toStdString();
    ASSERT_TRUE(form.value());
    ASSERT_EQ(form.value()->casts.size(), 1U);
    EXPECT_EQ(form.value()->casts[0].day, "2031-03-05");
    EXPECT_EQ(form.value()->foam, shop.job.foam); // nothing was asked for
    EXPECT_EQ(form.value()->shop, shop.job.shop);
    EXPECT_TRUE(box(form, "Shrinks").text().contains(QStringLiteral("± ? (1)"))) << "one cast has no spread";
    QTest::mouseClick(&box(form, "Shrinks"), Qt::LeftButton, {}, {8, 8});
    ASSERT_TRUE(box(form, "Shrinks").isChecked());
    EXPECT_DOUBLE_EQ(form.value()->foam->shrinkage, 0.005);
    EXPECT_EQ(form.value()->shop, shop.job.shop);
    QTest::mouseClick(&box(form, "Left in a bucket"), Qt::LeftButton, {}, {8, 8});
    EXPECT_DOUBLE_EQ(*form.value()->shop->bucket_left_ml, 45);
}

TEST(AsCastForm, several_casts_give_mean_and_spread) {
    test::dressed_application();
    Shop shop;
    job::Cast cast;
    cast.drawer = "d1", cast.foam = shop.job.foam->name, cast.bar_mm = 300, cast.bar_cured_mm = 298.5;
    shop.job.casts = {cast, cast, cast};
    auto form = shop.form();
    test::open(form);
    type(form, "The same, cured", "297.9"); // of the last, which is shown
    EXPECT_TRUE(box(form, "Shrinks").text().contains(QStringLiteral("± 0.115 %")))
        << box(form, "Shrinks").text().toStdString();
    EXPECT_TRUE(box(form, "Shrinks").text().contains("0.567 %")) << box(form, "Shrinks").text().toStdString();
    EXPECT_TRUE(test::words_seen(form).contains("3 casts on the same holes"));
    QTest::mouseClick(&test::button(form, "Take this cast away"), Qt::LeftButton);
    ASSERT_TRUE(form.value());
    EXPECT_EQ(form.value()->casts.size(), 2U);
}

TEST(AsCastForm, what_the_reader_refuses_is_said_at_its_field) {
    test::dressed_application();
    const Shop shop;
    auto form = shop.form();
    test::open(form);
    type(form, "Length in the mold", "5");
    EXPECT_FALSE(form.value());
    EXPECT_EQ(form.problems().front().field, &test::field(form, "Length in the mold"));
}

TEST(AsCastForm, every_field_has_a_name_and_is_reached_by_tab) {
    test::dressed_application();
    const Shop shop;
    auto form = shop.form();
    test::open(form);
    test::expect_named_and_reached_by_tab(form);
}

TEST(AsCastForm, is_seen_whole_in_each_theme) {
    for (const bool dark : {false, true}) {
        const auto theme = dark ? theme::dark_theme() : theme::light_theme();
        test::dressed_application(theme);
        Shop shop;
        job::Cast cast;
        cast.drawer = "d1", cast.foam = shop.job.foam->name, cast.mixed_g = 1270, cast.cast_g = 1190;
        cast.trimmed_g = 12, cast.plugs_g = 2, cast.plugs_planned_ml = 18, cast.viscosity_pa_s = 200;
        cast.bow_mm = 1.1, cast.bar_mm = 300, cast.bar_cured_mm = 298.6, cast.wax_g = 20;
        cast.fits = {{"R1#1", 0.4, {}}, {"C1#1", 0.6, {}}};
        shop.job.casts = {cast, cast, cast};
        shop.job.casts[1].bar_cured_mm = 298.9, shop.job.casts[1].mixed_g = 1290;
        auto form = shop.form();
        test::open(form);
        EXPECT_LE(form.height(), 730);
        EXPECT_LE(form.width(), 1366);
        test::expect_seen(form, theme, dark ? "as-cast-dark" : "as-cast-light");
    }
}

TEST(AsBuiltForm, odd_blocks_go_by_their_labels) {
    test::dressed_application();
    const Shop shop;
    AsBuiltForm form(shop.job, shop.plan.drawers[0], {});
    test::open(form);
    const QString planned = test::words_seen(form);
    QAbstractItemView* view = nullptr;
    for (auto* one : form.findChildren<QAbstractItemView*>())
        if (one->accessibleName() == QStringLiteral("Odd blocks")) view = one;
    ASSERT_NE(view, nullptr);
    auto& blocks = *view;
    QTest::mouseClick(&test::button(form, "Add a block (Insert)"), Qt::LeftButton);
    EXPECT_FALSE(form.value().has_value()); // it names none yet
    test::type_cell(blocks, 0, 0, "2A");
    ASSERT_TRUE(form.value() && form.value()->blocks.size() == 1);
    job::BuiltBlock block = form.value()->blocks[0];
    EXPECT_FALSE(block.height_mm.has_value()); // the plan's, until another is typed
    EXPECT_EQ(test::words_seen(form), planned);
    const auto stock = plan::drawer_stock(shop.job, shop.plan.drawers[0]);
    EXPECT_EQ(block.pocket, stock->blocks.at(1).subject);
    test::type_cell(blocks, 0, 1, "10");
    block = form.value()->blocks[0];
    EXPECT_EQ(block.height_mm, 10);
    EXPECT_NE(test::words_seen(form), planned);
    test::type_cell(blocks, 0, 0, "99");
    EXPECT_FALSE(form.value().has_value());
    test::picture(form, "as-built");
    job::Job kept = shop.job;
    job::AsBuilt built;
    built.drawer = "d1", built.walls_mm = {60.123456},
    built.blocks = {block, {"C1#1", 1, {}, 0.25, {{"k", "1"}}}};
    kept.as_built = {built};
    EXPECT_EQ(AsBuiltForm(kept, shop.plan.drawers[0], {}).value(), built);
}

} // namespace
} // namespace drawercast::app
