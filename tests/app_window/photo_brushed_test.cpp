// SPDX-License-Identifier: GPL-3.0-or-later
// What becomes of outlines under a brush stroke and after another look, as values. Areas by hand: a stroke's
// end is half a disc.
#include "photo/brushed.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numbers>

namespace drawercast::app::photo {
namespace {

Outline box(std::string name, double x0, double y0, double x1, double y1, bool by_hand) {
    Outline out;
    out.seen.corners = {{{x0, y0}}, {{x1, y0}}, {{x1, y1}}, {{x0, y1}}};
    out.name = std::move(name);
    out.by_hand = by_hand;
    return out;
}

double area(const Outline& outline) { return shape::area(*shape::contour_of(outline.seen)); }

/// What the trace says of it: about its middle, and where that is.
capture::Traced found(const std::vector<Outline>& outlines) {
    capture::Traced out;
    for (const Outline& one : outlines) out.outlines.push_back({one.seen, {}, 0.2});
    return out;
}

const Stroke outward{true, 4, {{38, 20}, {50, 20}, {60, 20}}};

TEST(Brushed, adding_keeps_the_points_that_the_hand_made) {
    auto bent = box("Bent", 0, 0, 40, 40, true);
    bent.seen.corners.insert(bent.seen.corners.begin() + 1, shape::Corner{{20, -7.3}});
    const auto after = brushed({bent}, outward);
    ASSERT_EQ(after.size(), 1U);
    EXPECT_NEAR(area(after[0]), area(bent) + 20 * 8 + std::numbers::pi * 16 / 2, 1);
    for (const shape::Corner& made : bent.seen.corners)
        EXPECT_NE(std::find(after[0].seen.corners.begin(), after[0].seen.corners.end(), made),
                  after[0].seen.corners.end());
    EXPECT_LT(after[0].seen.corners.size(), 24U) << "few enough to be dragged";
}

TEST(Brushed, taking_away_cuts_in_two_and_the_larger_keeps_its_name) {
    auto one = box("One", 0, 0, 40, 40, true);
    one.height_mm = 12;
    one.number = 7;
    const auto after = brushed({one}, {false, 2, {{30, -10}, {30, 50}}});
    ASSERT_EQ(after.size(), 2U);
    EXPECT_EQ(after[0].name, "One");
    EXPECT_EQ(after[0].number, 7);
    EXPECT_NEAR(area(after[0]), 28 * 40, 0.1);
    EXPECT_EQ(after[1].name, "");
    EXPECT_EQ(after[1].height_mm, 12);
    EXPECT_NEAR(area(after[1]), 8 * 40, 0.1);
    EXPECT_TRUE(brushed({one}, {false, 30, {{20, 20}}}).empty()) << "wiped out";
}

TEST(Brushed, adding_joins_what_it_bridges) {
    const auto after = brushed({box("Small", 60, 15, 70, 25, true), box("Large", 0, 0, 40, 40, false),
                                box("Far", 0, 60, 10, 70, true)},
                               outward);
    ASSERT_EQ(after.size(), 2U);
    EXPECT_EQ(after[0].name, "Large");
    EXPECT_TRUE(after[0].by_hand);
    EXPECT_NEAR(area(after[0]), 1600 + 20 * 8 + 100, 0.1);
    EXPECT_EQ(after[1], box("Far", 0, 60, 10, 70, true));
}

TEST(Brushed, outlines_no_hand_changed_wait_for_the_next_look) {
    const std::vector<Outline> before{box("As found", 0, 0, 40, 40, false)};
    EXPECT_EQ(brushed(before, outward), before);
    EXPECT_EQ(brushed(before, {false, 4, {{38, 20}}}), before);
}

TEST(LookedAgain, what_was_cut_in_two_keeps_the_name_of_the_larger_part) {
    const auto after = looked_again({box("Small", 0, 0, 10, 40, false), box("Large", 14, 0, 50, 40, false)},
                                    found({box("", 0, 0, 50, 40, false)}));
    ASSERT_EQ(after.size(), 1U);
    EXPECT_EQ(after[0].name, "Large");
}

TEST(LookedAgain, what_the_hand_made_stays_and_is_not_found_twice) {
    const auto by_hand = box("By hand", 0, 0, 50, 40, true);
    auto said = box("Said", 100, 0, 120, 20, false);
    said.height_mm = 9;
    const auto halves = found({box("", 0, 0, 20, 40, false), box("", 24, 0, 50, 40, false),
                               box("", 100, 0, 190, 20, false), box("", 0, 100, 10, 110, false)});
    const auto after = looked_again({said, by_hand}, halves);
    ASSERT_EQ(after.size(), 3U);
    EXPECT_EQ(after[0].name, "Said") << "in the order they had";
    EXPECT_EQ(after[0].height_mm, 9) << "though it is much longer now";
    EXPECT_NEAR(area(after[0]), 90 * 20, 0.1);
    EXPECT_EQ(after[1], by_hand);
    EXPECT_NEAR(area(after[2]), 100, 0.1);
}

} // namespace
} // namespace drawercast::app::photo
