// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/pressure.h"
#include "casting/times.h"
#include "job/catalog.h"
#include "mold/closing.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace drawercast::mold {
namespace {

ClosingIn pour(double plate_on_s, int drivers = 1) {
    job::Foam foam = job::builtin_foams()[2];
    foam.expansion = 6; // it fills this mold and pushes a little
    const auto profile = casting::profile_of({job::Shared<job::Foam>(foam), 23, 0});
    ClosingIn in;
    in.mold = {*profile, 1733, 9042094, 172800, foam.mold_hotter_k, 0};
    in.band = casting::band_of(in.mold);
    in.times = casting::times_of({*profile, 1733, 20, 9042094, 60, 13.46});
    in.pressure_factor = 1.5;
    in.height_mm = 60;
    in.plate_on_s = plate_on_s;
    in.drivers = drivers;
    return in;
}

const Pattern pattern{28, 3, 1.0 / 60};

/// The condition itself, moment by moment.
bool holds_throughout(const ClosingIn& in, const Pattern& p) {
    for (const Moment& now : moments_of(in, p, 0.05, 200))
        if (now.in < p.count * p.worst_share_per_kpa * now.build_for_kpa - 1e-6) return false;
    return true;
}

TEST(Closing, EndsAtThePressureToBuildFor) {
    const ClosingIn in = pour(40);
    const auto pressure = casting::pressure_of({in.mold, in.band, in.pressure_factor});
    const auto moments = moments_of(in, pattern, 1, 200);
    EXPECT_NEAR(moments.back().build_for_kpa, pressure.build_for_kpa, 1e-9);
    EXPECT_NEAR(moments.back().expected_kpa, pressure.closed_kpa, 1e-9);
    EXPECT_EQ(moments.front().needed, 0);
    EXPECT_TRUE(std::is_sorted(moments.begin(), moments.end(), [](const Moment& a, const Moment& b) {
        return a.build_for_kpa < b.build_for_kpa;
    }));
}

TEST(Closing, TheMarginIsTheLatestMoment) {
    // A weak pattern, slowly driven, so that the pull and not the touch decides.
    const Pattern slow{28, 4, 1.0 / 50};
    const Closing closing = closing_of(pour(40), slow);
    EXPECT_FALSE(closing.by_touch);
    EXPECT_NEAR(closing_of(pour(45), slow).close_margin_s, closing.close_margin_s - 5, 1e-4);
    const double latest = 40 + closing.close_margin_s;
    EXPECT_TRUE(holds_throughout(pour(latest - 0.1), slow));
    // The quicker foam may be what decides; then the usual one still holds a little later.
    EXPECT_FALSE(holds_throughout(pour(latest + 60), slow));
}

TEST(Closing, NeverLaterThanTheFoamTouches) {
    const Pattern strong{28, 0.1, 1.0 / 1000};
    const ClosingIn in = pour(40);
    const Closing closing = closing_of(in, strong);
    EXPECT_TRUE(closing.by_touch);
    EXPECT_LT(40 + closing.close_margin_s, in.times.touch_s); // the quicker foam touches sooner
    EXPECT_NEAR(40 + closing.close_margin_s, quick_foam * in.times.touch_s, 1e-6);
    EXPECT_LE(closing.in_by_contact, 1); // the high end may push by then
}

TEST(Closing, AnotherDriverHelps) {
    const Pattern slow{28, 4, 1.0 / 50};
    const Closing one = closing_of(pour(40, 1), slow);
    const Closing two = closing_of(pour(40, 2), slow);
    EXPECT_GT(two.close_margin_s, one.close_margin_s);
    EXPECT_DOUBLE_EQ(one.close_s, 28 * 4);
    EXPECT_DOUBLE_EQ(two.close_s, 14 * 4);
    EXPECT_LE(two.in_by_contact, one.in_by_contact);
}

TEST(Closing, ThoseInByContactAreJustEnough) {
    const Pattern slow{28, 4, 1.0 / 50};
    const ClosingIn in = pour(40);
    const int by_contact = closing_of(in, slow).in_by_contact;
    ASSERT_GT(by_contact, 0);
    const auto enough = [&](int start) {
        for (const Moment& now : moments_of(in, slow, 0.05, 200)) {
            if (now.t_s < in.times.contact_s) continue;
            const int driven = static_cast<int>(std::floor((now.t_s - in.times.contact_s) / slow.seconds));
            if (std::min(slow.count, start + driven) < now.needed) return false;
        }
        return true;
    };
    EXPECT_TRUE(enough(by_contact));
    EXPECT_FALSE(enough(by_contact - 1));
}

TEST(Closing, ADriversClosureCountsOnceItIsDone) {
    const Pattern clamps{8, 8, 1.0 / 50};
    for (const Moment& now : moments_of(pour(40, 4), clamps, 0.5, 60)) {
        const int expected = now.t_s < 48 ? 0 : now.t_s < 56 ? 4 : 8; // four at once, eight seconds each
        EXPECT_EQ(now.in, expected) << now.t_s;
    }
    EXPECT_DOUBLE_EQ(closing_of(pour(40, 3), clamps).close_s, 3 * 8);
}

TEST(Closing, AClosureThatTakesNoTimeIsInAtOnce) {
    const Pattern at_once{28, 0, 1.0 / 60};
    EXPECT_EQ(moments_of(pour(40), at_once, 1, 41).back().in, 28);
    EXPECT_EQ(moments_of(pour(40), at_once, 1, 39).back().in, 0);
    EXPECT_DOUBLE_EQ(closing_of(pour(40), at_once).close_s, 0);
}

TEST(Closing, AirShutInMustBeHeldSooner) {
    const Pattern slow{28, 4, 1.0 / 50};
    ClosingIn in = pour(40);
    const double without = closing_of(in, slow).close_margin_s;
    in.mold.air_ml = 500;
    in.band = casting::band_of(in.mold);
    in.times = casting::times_of({in.mold.profile, 1733, 20, 9042094, 60, 13.46, 500});
    EXPECT_LT(closing_of(in, slow).close_margin_s, without);
}

} // namespace
} // namespace drawercast::mold
