// SPDX-License-Identifier: GPL-3.0-or-later
// What a maker who gets the plate's parts wrong is told: each mistake with its figures and its words.
#include "job/catalog.h"
#include "plan/plate_stage.h"
#include "plan/sentences.h"

#include "core/plan/sample_job.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace drawercast::plan {
namespace {

using layout::Code;
using layout::Severity;

/// A small drawer whose mold is set whole: plate of 18 mm, walls of 16, screws 4 × 52.
job::Job small_job() {
    job::Job job;
    job::Foam foam = job::builtin_foams()[1];
    foam.shrinkage = 0;
    job.foam = foam;
    job::Drawer drawer;
    drawer.id = "d1";
    drawer.outline = shape::Rectangle{110, 80, 0};
    drawer.gap_mm = 0;
    drawer.insert_mm = 40;
    drawer.pockets.push_back({"box", 1, {{55, 40}, 0}, false, {}, {}});
    job.objects.emplace_back(testing::object("box", shape::Rectangle{50, 30, 0}, 20));
    job.drawers.emplace_back(drawer);

    job::Shop shop;
    job::Board plate = job::builtin_boards().front();
    plate.name = "of the plate", plate.thickness_mm = 18;
    job::Board box = plate;
    box.name = "of the box", box.thickness_mm = 16;
    job::Closure screw;
    screw.name = "4 × 52", screw.diameter_mm = 4, screw.length_mm = 52;
    shop.boards = {plate, box};
    shop.closures = {screw};
    job.shop = shop;
    job.mold.board = plate.name, job.mold.box_board = box.name, job.mold.closure = screw.name;
    job.mold.stiffeners = job::StiffenerChoice{};
    job.mold.spacing_mm = 65;
    return job;
}

template <class Change>
job::Job with_shop(Change change) {
    job::Job job = small_job();
    job::Shop shop = *job.shop;
    change(shop);
    job.shop = shop;
    return job;
}

job::Job with_screw(double diameter_mm, double length_mm, std::optional<int> at_hand = {}) {
    return with_shop([&](job::Shop& shop) {
        shop.closures[0].diameter_mm = diameter_mm;
        shop.closures[0].length_mm = length_mm;
        shop.closures[0].at_hand = at_hand;
    });
}

std::vector<layout::Check> said_of(const job::Job& job) {
    Plan plan = compute(job);
    DrawerPlan& drawer = plan.drawers.front();
    drawer.checks.clear();
    PlateStage stage;
    EXPECT_TRUE(stage.design(job, {}, 0, drawer, never_stop));
    plate_words(job, drawer);
    return drawer.checks;
}

std::optional<layout::Check> of_code(const std::vector<layout::Check>& checks, Code code) {
    const auto at = std::find_if(checks.begin(), checks.end(), [&](const auto& c) { return c.code == code; });
    return at == checks.end() ? std::nullopt : std::optional(*at);
}

struct Said {
    Severity severity;
    double value, limit;
    std::string words;
};

void expect_said(const job::Job& job, Code code, const Said& wanted) {
    const auto check = of_code(said_of(job), code);
    ASSERT_TRUE(check);
    EXPECT_EQ(check->severity, wanted.severity);
    EXPECT_NEAR(check->value, wanted.value, 1e-9);
    EXPECT_NEAR(check->limit, wanted.limit, 1e-9);
    EXPECT_EQ(english(sentence(*check, job)), wanted.words);
}

TEST(PlateMistakes, NoneIsSaidWhereAllFits) {
    EXPECT_TRUE(said_of(small_job()).empty()) << english(sentence(said_of(small_job()).front(), small_job()));
}

TEST(PlateMistakes, AScrewShorterThanNeeded) {
    expect_said(
        with_screw(4, 40), Code::screw_short,
        {Severity::mend, 22, 32, "A screw goes 22 mm into the box wall, needs 32 mm. Take a longer screw."});
    expect_said(with_screw(4, 18), Code::screw_short,
                {Severity::mend, 0, 32,
                 "A screw does not reach the box wall, needs 32 mm in it. Take a longer screw."});
}

TEST(PlateMistakes, AScrewLongerThanTheWallIsDeep) {
    expect_said(with_screw(4, 70), Code::screw_short,
                {Severity::mend, 52, 35,
                 "A screw goes 52 mm into the box wall, which has room for 35 mm. Take a shorter screw."});
}

TEST(PlateMistakes, AWallTooThinForItsScrew) {
    auto job = with_shop([](job::Shop& shop) { shop.boards[1].thickness_mm = 10; });
    expect_said(
        job, Code::board_thin,
        {Severity::mend, 10, 12,
         "The box wall is 10 mm thick, its closures need 12 mm. Use a thicker board for the box or thinner "
         "closures."});
}

TEST(PlateMistakes, ARodThatEndsInTheWood) {
    const auto with_rod = [](double diameter_mm, double length_mm) {
        return with_shop([&](job::Shop& shop) {
            shop.closures[0].kind = job::ClosureKind::rod;
            shop.closures[0].diameter_mm = diameter_mm;
            shop.closures[0].length_mm = length_mm;
            shop.closures[0].capacity_n = 6000;
        });
    };
    EXPECT_TRUE(said_of(with_rod(8, 110)).empty());
    expect_said(with_rod(8, 100), Code::rod_short, // plate 18, mold 40, base 16, ends of 16
                {Severity::mend, 100, 106,
                 "A rod is 100 mm long; nut to nut it takes 106 mm. Take longer rods, or clamps."});
    expect_said(with_rod(10, 200), Code::board_thin,
                {Severity::mend, 16, 18,
                 "The box wall is 16 mm thick, its closures need 18 mm. Use a thicker board for the box or "
                 "thinner closures."});
}

TEST(PlateMistakes, AThinPlateWhoseHeadsNobodyChecked) {
    auto job = with_shop([](job::Shop& shop) {
        shop.boards[0].thickness_mm = 12;
        shop.closures[0].length_mm = 46;
    });
    expect_said(
        job, Code::head_unchecked,
        {Severity::note, 12, 16,
         "Whether screw heads pull through a board of 12 mm is not checked. There is no published figure "
         "for it: lay a washer under each head."});
}

TEST(PlateMistakes, NoneAtHand) {
    const auto few = of_code(said_of(with_screw(4, 52, 3)), Code::closures_few);
    ASSERT_TRUE(few);
    EXPECT_FALSE(of_code(said_of(with_screw(4, 52, static_cast<int>(few->limit))), Code::closures_few));
    expect_said(with_screw(4, 52, 0), Code::closures_few,
                {Severity::note, 0, few->limit,
                 "None at hand, " + std::to_string(static_cast<int>(few->limit)) +
                     " needed (4 × 52). Buy or borrow the rest before the pour."});
}

TEST(PlateMistakes, NothingInTheListFits) {
    auto job = with_screw(4, 30);
    job.mold.closure.reset();
    expect_said(
        job, Code::closure_none,
        {Severity::mend, 50, 53,
         "No closure in the shop’s list fits: a screw has to be 50 to 53 mm long. Add one to the list, "
         "or a rod or clamp."});
    EXPECT_FALSE(of_code(said_of(job), Code::screw_short));
    job = with_screw(6, 60); // eight diameters are more than the wall has
    job.mold.closure.reset();
    expect_said(job, Code::closure_none,
                {Severity::mend, 66, 53,
                 "No closure in the shop’s list fits: the box wall is too low for its screws. Add a rod, a "
                 "clamp or a thinner screw to the list."});
}

TEST(PlateMistakes, AClampThatHoldsNothing) {
    auto job = with_shop([](job::Shop& shop) {
        shop.closures[0].kind = job::ClosureKind::clamp;
        shop.closures[0].capacity_n = 0;
    });
    const auto pull = of_code(said_of(job), Code::screw_pull);
    ASSERT_TRUE(pull);
    EXPECT_GT(pull->value, 0);
    EXPECT_EQ(pull->limit, 0);
}

TEST(PlateMistakes, NoBoardOfTheShopHolds) {
    auto job = with_shop([](job::Shop& shop) {
        shop.boards[0].thickness_mm = 3;
        shop.boards.pop_back();
    });
    job.mold.board.reset();
    job.mold.box_board.reset();
    job.mold.closure.reset();
    job.mold.spacing_mm.reset();
    const auto checks = said_of(job);
    EXPECT_TRUE(of_code(checks, Code::plate_bow));
    EXPECT_TRUE(of_code(checks, Code::board_thin)); // it is the walls', too
}

} // namespace
} // namespace drawercast::plan
