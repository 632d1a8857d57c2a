// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/squeeze.h"
#include "job/ranges.h"
#include "plan/as_cast.h"

#include "core/plan/sample_job.h"

#include <gtest/gtest.h>

#include <cmath>

namespace drawercast::plan {
namespace {

struct Shop {
    job::Job job = testing::worked_job();
    Plan plan = compute(job);
    const DrawerPlan& drawer() const { return plan.drawers.front(); }
    /// Of what is mixed: the reserve for squeeze-out.
    double unpoured_share() const {
        const casting::Dose& dose = *drawer().dose;
        return (dose.mixed_ml - dose.poured_ml - dose.batches * dose.bucket_left_ml) / dose.mixed_ml;
    }
    job::Cast cast() const { return blank_cast(job, drawer(), "2031-03-05"); }
};

TEST(AsCast, a_blank_record_shows_nothing) {
    const Shop shop;
    const auto cast = shop.cast();
    EXPECT_EQ(cast.drawer, "d1");
    EXPECT_EQ(cast.foam, shop.job.foam->name);
    EXPECT_EQ(cast.batches, shop.drawer().dose->batches);
    EXPECT_EQ(cast_figures(shop.job, shop.drawer(), cast), CastFigures{});
}

TEST(AsCast, what_is_missing_from_the_scale_stuck_to_the_buckets) {
    const Shop shop;
    auto cast = shop.cast();
    cast.mixed_g = 1200, cast.cast_g = 1100, cast.trimmed_g = 20, cast.plugs_g = 5, cast.batches = 2;
    const auto figures = cast_figures(shop.job, shop.drawer(), cast);
    EXPECT_DOUBLE_EQ(*figures.wasted_g, 75);
    // (1 × 1.20 + 1 × 1.00)/2 g/mL of the worked job, two buckets; less what was mixed and not to be poured
    const double unpoured_ml = shop.unpoured_share() * 1200 / 1.10;
    EXPECT_GT(unpoured_ml, 1);
    EXPECT_NEAR(*figures.bucket_left_ml, (75 / 1.10 - unpoured_ml) / 2, 1e-9);
    cast.mixed_g = 1100; // less than came out: weighed wrong, and nothing to go by
    const auto wrong = cast_figures(shop.job, shop.drawer(), cast);
    EXPECT_LT(*wrong.wasted_g, 0);
    EXPECT_FALSE(wrong.bucket_left_ml);
}

TEST(AsCast, a_cast_as_planned_teaches_the_plan) {
    const Shop shop;
    const casting::Dose& dose = *shop.drawer().dose;
    auto cast = shop.cast();
    cast.mixed_g = 1.10 * dose.mixed_ml, cast.cast_g = 1.10 * dose.poured_ml;
    cast.trimmed_g = cast.plugs_g = 0;
    EXPECT_NEAR(*cast_figures(shop.job, shop.drawer(), cast).bucket_left_ml, dose.bucket_left_ml, 1e-6);
}

TEST(AsCast, the_planned_mass_stands_at_the_planned_pressure) {
    const Shop shop;
    auto cast = shop.cast();
    cast.cast_g = shop.drawer().dose->insert_g;
    EXPECT_NEAR(*cast_figures(shop.job, shop.drawer(), cast).closed_kpa, shop.drawer().pressure->closed_kpa,
                1e-6);
    *cast.cast_g *= 1.1; // all that was mixed went in
    EXPECT_GT(*cast_figures(shop.job, shop.drawer(), cast).closed_kpa,
              1.1 * shop.drawer().pressure->closed_kpa);
    *cast.cast_g *= 100; // more than liquid has room: no pressure to speak of
    EXPECT_FALSE(cast_figures(shop.job, shop.drawer(), cast).closed_kpa);
}

TEST(AsCast, plugs_give_back_the_viscosity_that_makes_them) {
    const Shop shop;
    air::Vent vent;
    vent.diameter_mm = 3;
    const std::vector<air::Vent> vents(8, vent);
    auto cast = shop.cast();
    cast.viscosity_pa_s = 200;
    cast.plugs_planned_ml = air::squeezed_out_mm3(vents, 3000, 200, 16) / 1000;
    cast.cast_g = 1000;
    const double net_ml = shop.drawer().cavity->net_mm3 / 1000;
    for (const double real : {80.0, 200.0, 730.0}) {
        cast.plugs_g = air::squeezed_out_mm3(vents, 3000, real, 16) / 1000 * 1000 / net_ml;
        EXPECT_NEAR(*cast_figures(shop.job, shop.drawer(), cast).viscosity_pa_s, real, 1e-6 * real);
    }
    cast.plugs_g = 0; // pegged at once: nothing to go by
    EXPECT_FALSE(cast_figures(shop.job, shop.drawer(), cast).viscosity_pa_s);
}

TEST(AsCast, a_bar_shows_the_shrinkage) {
    const Shop shop;
    auto cast = shop.cast();
    cast.bar_mm = 300, cast.bar_cured_mm = 298.8;
    EXPECT_NEAR(*cast_figures(shop.job, shop.drawer(), cast).shrinkage, 0.004, 1e-12);
}

/// NIST Statistical Reference Datasets, Univariate Summary Statistics, NumAcc1 (average difficulty): three
/// values with the certified mean 10000002 and standard deviation 1.
TEST(Spread, certified_mean_and_deviation) {
    const auto spread = spread_of({10000001, 10000003, 10000002});
    EXPECT_EQ(spread->count, 3);
    EXPECT_DOUBLE_EQ(spread->mean, 10000002);
    EXPECT_DOUBLE_EQ(spread->deviation, 1);
    EXPECT_EQ(spread_of({5})->deviation, 0);
    EXPECT_FALSE(spread_of({}));
}

TEST(Calibration, is_of_this_foam_and_taken_only_where_asked) {
    Shop shop;
    auto cast = shop.cast();
    cast.mixed_g = 1166, cast.cast_g = 1100, cast.bar_mm = 300, cast.bar_cured_mm = 298.5;
    shop.job.casts = {cast, cast, cast};
    shop.job.casts[1].mixed_g = 1188; // 60 and 80 mL left
    shop.job.casts[2].foam = "another";
    shop.job.casts[1].bar_cured_mm = 297.9; // 0.005 and 0.007
    const auto learned = calibration_of(shop.job, shop.plan);
    ASSERT_TRUE(learned.bucket_left_ml && learned.shrinkage);
    EXPECT_EQ(learned.bucket_left_ml->count, 2);
    const double left = std::round((70 - shop.unpoured_share() * 1177 / 1.10) / double(cast.batches));
    EXPECT_NEAR(learned.bucket_left_ml->mean, left, 0.5);
    EXPECT_NEAR(learned.shrinkage->mean, 0.006, 1e-12);
    EXPECT_NEAR(learned.shrinkage->deviation, std::sqrt(2e-6), 1e-9);
    EXPECT_FALSE(learned.viscosity_pa_s);

    EXPECT_EQ(with_calibration(shop.job, learned, {}), shop.job);
    const auto taken = with_calibration(shop.job, learned, {true, true, true});
    EXPECT_DOUBLE_EQ(*taken.shop->bucket_left_ml, left);
    EXPECT_DOUBLE_EQ(taken.foam->shrinkage, 0.006);
    EXPECT_EQ(taken.foam->viscosity_pa_s, shop.job.foam->viscosity_pa_s);
    EXPECT_EQ(taken.foam->expansion, shop.job.foam->expansion); // a closed cast can't give it
}

TEST(Calibration, a_mean_that_no_job_may_hold_is_not_offered) {
    Shop shop;
    auto cast = shop.cast();
    cast.bar_mm = 300, cast.bar_cured_mm = 301; // grew
    shop.job.casts = {cast};
    EXPECT_FALSE(calibration_of(shop.job, shop.plan).shrinkage);
    shop.job.casts[0].bar_cured_mm = 200;
    EXPECT_FALSE(calibration_of(shop.job, shop.plan).shrinkage);
}

TEST(MoldLog, counts_what_a_mold_went_through) {
    job::Cast cast;
    cast.drawer = "d1", cast.wax_g = 10, cast.clay_g = 4;
    std::vector<job::Cast> casts(5, cast);
    casts[1].drawer = "d2";
    EXPECT_EQ(mold_log(casts, "d1"), (MoldLog{4, 40, 16, 4}));
    casts[3].new_holes = true; // shifted before the third cast of d1
    EXPECT_EQ(mold_log(casts, "d1").on_these_holes, 2);
    EXPECT_EQ(mold_log(casts, "none"), MoldLog{});
}

} // namespace
} // namespace drawercast::plan
