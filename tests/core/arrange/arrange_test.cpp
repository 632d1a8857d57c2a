// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/coarse.h"
#include "arrange/drawer.h"
#include "arrange/need.h"
#include "arrange/pair_table.h"
#include "arrange/room.h"
#include "arrange/skyline.h"
#include "arrange/standing.h"
#include "job/edit.h"
#include "layout/checks.h"
#include "shape/gap.h"
#include "shape/segments.h"

#include "core/arrange/strip.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <set>

namespace drawercast::arrange {
namespace {

Figure rectangle(double width, double height) {
    return {{{*shape::contour_of(shape::Rectangle{width, height, 0}), 10}}, {0, 90}};
}

void expect_none_overlaps(const std::vector<Figure>& figures, const Strip& strip) {
    const auto at = [&](std::size_t k) {
        return shape::placed(figures[k].parts[0].outline,
                             {strip.stands[k].at, figures[k].turns_deg[strip.stands[k].turn]});
    };
    for (std::size_t i = 0; i < figures.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) EXPECT_GT(shape::gap_between(at(i), at(j)).mm, 0);
}

TEST(Strip, IsNoShorterThanTheAreaAndNothingOverlaps) {
    // A sheet of 20 × 18.05 cut in seven: laid, they need no more than one row more.
    std::vector<Figure> figures;
    for (const auto& [w, h] : {std::pair{8, 12}, {12, 5}, {6, 7}, {6, 7}, {5, 8}, {7, 8}, {8, 8}})
        figures.push_back(rectangle(w, h));
    double area = 0;
    for (const Figure& figure : figures) area += shape::area(figure.parts[0].outline);
    const Strip strip = shortest_strip(figures, 20, {60'000, 1}, never_stop);
    EXPECT_GE(strip.length, area / 20);
    EXPECT_LE(strip.length, 1.2 * area / 20);
    expect_none_overlaps(figures, strip);
    const Strip again = shortest_strip(figures, 20, {60'000, 1}, never_stop);
    EXPECT_EQ(again.length, strip.length);
    EXPECT_EQ(again.stands, strip.stands);
}

TEST(Strip, OfEllsIsShorterThanTheirBoxesAndNothingOverlaps) {
    const auto ell = shape::contour_of(
        shape::Polygon{{{{0, 0}}, {{30, 0}}, {{30, 10}}, {{10, 10}}, {{10, 30}}, {{0, 30}}}});
    const std::vector<Figure> figures(6, Figure{{{*ell, 1}}, {0, 90, 180, 270}});
    const Strip strip = shortest_strip(figures, 61, {60'000, 1}, never_stop);
    EXPECT_GT(strip.length, 6 * 500 / 61.0);
    EXPECT_LT(strip.length, 0.9 * 3 * 30); // two boxes high, three long
    expect_none_overlaps(figures, strip);
    EXPECT_EQ(shortest_strip(figures, 61, {60'000, 1}, never_stop).stands, strip.stands);
}

TEST(TooNear, AgreesWithTheExactDistance) {
    const auto ell = shape::contour_of(
        shape::Polygon{{{{0, 0}}, {{30, 0}}, {{30, 10}}, {{10, 10}}, {{10, 30}}, {{0, 30}}}});
    const auto capsule = shape::contour_of(shape::Capsule{20, 8});
    const auto a = turned({{{*ell, 1}}, {0}});
    const auto b = turned({{{*capsule, 1}}, {0, 90, 180, 270}});
    Random random(7);
    for (int k = 0; k < 3000; ++k) {
        const std::size_t quarters = random.below(4);
        const double turn = 90.0 * static_cast<double>(quarters);
        const shape::Vec by{random.between(-30, 50), random.between(-30, 50)};
        const double wall = random.between(0.01, 6);
        const double gap = shape::gap_between(*ell, shape::placed(*capsule, {by, turn})).mm;
        if (std::abs(gap - wall) < 1e-6) continue;
        EXPECT_EQ(too_near(a[0].parts[0], b[quarters].parts[0], by, wall), gap < wall) << k;
    }
}

/// What is remembered says the same of every way as the sides do, and nearly as much.
TEST(PairTable, KnowsExactlyWhatIsTooNear) {
    const auto ell = shape::contour_of(
        shape::Polygon{{{{0, 0}}, {{30, 0}}, {{30, 10}}, {{10, 10}}, {{10, 30}}, {{0, 30}}}});
    const auto a = turned({{{*ell, 1}}, {0}});
    const auto b = turned({{{*shape::contour_of(shape::Capsule{20, 8}), 1}}, {30}});
    Room room;
    room.wall_mm = [](double, double) { return 3.0; };
    PairTable table(room, a[0], b[0], 0.3);
    Random random(7);
    int near = 0;
    for (int k = 0; k < 3000; ++k) {
        const shape::Vec by{random.between(-30, 50), random.between(-30, 50)};
        const double said = table.overlap(room, by);
        const double asked = overlap(room, a[0], b[0], by, 0.3, 1e9);
        EXPECT_EQ(said > 0, asked > 0) << k;
        if (asked > 0) {
            EXPECT_NEAR(said, asked, 0.1 * asked + 0.1) << k;
        }
        near += asked > 0 ? 1 : 0;
    }
    EXPECT_GT(near, 300);
}

/// Four quarters of a sheet and a bar beside them fit exactly; a fifth finds no place and is said.
TEST(Skyline, LaysWhatFitsAndSaysWhatDoesNot) {
    std::vector<std::vector<Side>> boxes(4, {{10, 10, 0}});
    boxes.push_back({{20, 5, 0}, {5, 20, 1}});
    Random random(1);
    auto order = large_first(boxes);
    EXPECT_EQ(laid(boxes, 20, 25, order).left, 0);
    boxes.push_back({{10, 10, 0}});
    order = large_first(boxes);
    int looks = 0;
    const Layout layout = best_laid(boxes, 20, 25, order, random, [&] { return ++looks > 50; });
    EXPECT_EQ(layout.left, 100);
    EXPECT_LE(layout.length, 25);
}

/// That object and a drawer of 400 × 300 that its insert fills.
job::Job with_whole_drawer(job::Job job, const job::Object& object) {
    job::Drawer drawer;
    drawer.id = "d1";
    drawer.gap_mm = 0;
    drawer.outline = shape::Rectangle{400, 300, 0};
    return job::with_drawer(job::with_object(std::move(job), object), drawer);
}

/// By hand: walls of 10 and edges of 12 leave 400 - 14 by 300 - 14; half a wall is about each of two bars.
TEST(Need, IsAreaByArea) {
    job::Job job;
    job.minimums.wall_mm = 10;
    job.minimums.edge_mm = 12;
    job::Object object;
    object.id = "i1";
    object.count = 2;
    object.fit_mm = 1;
    object.levels.push_back({job::Sunk{shape::Rectangle{100, 50, 0}, 20}, {}, {}});
    job = with_whole_drawer(job, object);
    const Need need = need_of(job);
    const double room = 386 * 286;
    EXPECT_NEAR(need.objects, 2 * 100 * 50 / room, 1e-9);
    EXPECT_NEAR(need.with_fit, 2 * 102 * 52 / room, 1e-9);
    EXPECT_NEAR(need.with_walls, 2 * (112 * 62 - (4 - 3.141592653589793) * 25) / room, 1e-9);
}

/// A wavy ring of five thousand corners, and one of few.
TEST(Coarse, IsNeverSmallerAndHasFewCorners) {
    shape::Polygon polygon;
    constexpr int corners = 5000;
    for (int k = 0; k < corners; ++k) {
        const double turn = 2 * 3.141592653589793 * k / corners;
        const double radius = 80 + 15 * std::sin(5 * turn) + 0.02 * std::sin(900 * turn);
        polygon.corners.push_back({{radius * std::cos(turn), radius * std::sin(turn)}});
    }
    const auto fine = *shape::contour_of(polygon);
    const auto rough = coarse(fine);
    EXPECT_LE(rough.core.size(), 96U);
    EXPECT_LT(rough.round_mm, 0.005 * 190);
    double farthest = 0;
    for (const shape::Vec p : fine.core) {
        if (shape::holds(rough.core, p)) continue;
        double squared = 1e9;
        for (std::size_t i = 0, j = rough.core.size() - 1; i < rough.core.size(); j = i++)
            squared = std::min(squared, distance_to_segment_squared(p, rough.core[j], rough.core[i]));
        farthest = std::max(farthest, std::sqrt(squared));
    }
    EXPECT_LE(farthest, rough.round_mm);
    EXPECT_GT(farthest, 0);
    const auto few = *shape::contour_of(shape::Rectangle{30, 20, 2});
    EXPECT_EQ(coarse(few), few);
}

job::Job drawer_of(int count) {
    job::Job job;
    job::Object object;
    object.id = "i1";
    object.count = count;
    object.levels.push_back({job::Sunk{shape::Rectangle{60, 40, 3}, 30}, {}, {}});
    job = job::with_object(job, object);
    job::Drawer drawer;
    drawer.id = "d1";
    drawer.outline = shape::Rectangle{400, 300, 0};
    drawer.obstructions.push_back({shape::Rectangle{60, 60, 0}, {{380, 280}, 0}, {}});
    return job::with_drawer(job, drawer);
}

TEST(Drawer, NothingIsToMendAndLockedPocketsStay) {
    job::Job job = job::placed(drawer_of(12), "d1", "i1", {{200, 150}, 30});
    job = job::locked(job, {"i1#1"}, true);
    const Arranged done = arranged(job, Moving::unlocked_if_needed, {400'000, 1}, never_stop);
    EXPECT_EQ(done.placed, 11);
    EXPECT_EQ(done.left, 0);
    EXPECT_EQ(job::find_pocket(done.job, "i1#1").pocket->pose, (shape::Pose{{200, 150}, 30}));
    const job::Drawer& drawer = *job::find_drawer(done.job, "d1");
    ASSERT_EQ(drawer.pockets.size(), 12U);
    const auto insert = std::make_shared<const layout::Insert>(
        *layout::insert_of(drawer, layout::gap_of(drawer, job.foam->firmness)));
    const job::Object& object = *job::find_object(job, "i1");
    const auto form = std::make_shared<const layout::PocketForm>(
        *layout::pocket_form(object, {}, layout::fit_of(object, job.foam->firmness), drawer.insert_mm));
    std::vector<layout::Standing> standing;
    for (const auto& pocket : drawer.pockets)
        standing.push_back({std::make_shared<const layout::PlacedPocket>(layout::place(pocket, form)),
                            std::make_shared<const layout::ObjectFacts>(layout::facts_of(object))});
    for (const auto& check : layout::layout_checks(standing, layout::limits_of(job, drawer, insert)))
        ADD_FAILURE() << layout::text_of(check.code) << " " << check.value << " of " << check.limit;
}

job::Object random_object(Random& random, int number) {
    job::Object object;
    object.id = "i" + std::to_string(number);
    object.count = 2;
    object.turns = std::array{job::Turns::quarter, job::Turns::free, job::Turns::none,
                              job::Turns::half}[random.below(4)];
    const double size = random.between(20, 90);
    const double depth = random.between(8, 45);
    const shape::Given outline = std::array<shape::Given, 4>{
        shape::Rectangle{size, random.between(15, 70), random.between(0, 5)}, shape::Circle{size},
        shape::Capsule{size + 30, size / 2},
        shape::Polygon{
            {{{0, 0}}, {{size, 0}}, {{size, 18}}, {{18, 18}}, {{18, size}}, {{0, size}}}}}[random.below(4)];
    object.levels.push_back({job::Sunk{outline, depth}, {}, {}});
    if (random() < 0.3)
        object.levels.push_back({job::Sunk{shape::Circle{24}, depth / 2}, {{size / 2, 8}, 0}, {}});
    return object;
}

/// Whatever the objects, their turns, obstructions and what stands locked: no wall, edge or obstruction is
/// spoiled, and everything is either placed or said to be left.
TEST(Drawer, NothingIsToMendInRandomJobs) {
    Random random(3);
    int between = 0; ///< at any angle, not at one of those thrown
    for (int k = 0; k < 12; ++k) {
        job::Job job;
        for (int n = 1; n <= 6; ++n) job = job::with_object(job, random_object(random, n));
        job::Drawer drawer;
        drawer.id = "d1";
        drawer.outline = k % 2 == 0 ? shape::Given(shape::Rectangle{380, 260, 12})
                                    : shape::Given(shape::Polygon{
                                          {{{0, 0}}, {{380, 0}}, {{380, 180}}, {{250, 260}}, {{0, 260}}}});
        drawer.obstructions.push_back({shape::Rectangle{50, 40, 0}, {{190, 20}, 0}, {}});
        job = job::with_drawer(job, drawer);
        job = job::placed(job, "d1", "i1", {{80, 130}, 20});
        job = job::locked(job, {"i1#1"}, true);
        const Moving moving = k % 3 == 0 ? Moving::unlocked : Moving::unlocked_if_needed;
        const auto about = [](const job::Job& of) {
            const job::Drawer& in = *job::find_drawer(of, "d1");
            const auto insert = std::make_shared<const layout::Insert>(
                *layout::insert_of(in, layout::gap_of(in, of.foam->firmness)));
            std::set<std::string> found;
            for (const auto& check :
                 layout::layout_checks(standing_in(of, in), layout::limits_of(of, in, insert)))
                if (about_place(check)) found.insert(check.subjects.begin(), check.subjects.end());
            return found;
        };
        const auto before = about(job);
        const Arranged done = arranged(job, "d1", moving, {150'000, 1}, never_stop);
        for (const auto& subject : about(done.job))
            EXPECT_EQ(before.count(subject), 1U) << k << " " << subject;
        EXPECT_GT(done.placed, 0) << k;
        EXPECT_EQ(done.placed + done.left, 11) << k;
        EXPECT_EQ(job::find_pocket(done.job, "i1#1").pocket->pose, (shape::Pose{{80, 130}, 20}));
        for (const auto& pocket : job::find_drawer(done.job, "d1")->pockets) {
            const job::Turns turns = job::find_object(done.job, pocket.object)->turns;
            if (pocket.locked) continue;
            if (turns == job::Turns::free) {
                if (std::fmod(pocket.pose.turn_deg, 15) != 0) ++between;
                continue;
            }
            const double step = turns == job::Turns::none ? 360 : turns == job::Turns::half ? 180 : 90;
            EXPECT_EQ(std::fmod(pocket.pose.turn_deg, step), 0) << k;
        }
    }
    EXPECT_GT(between, 0);
}

/// Aslant only, and by no step of fifteen degrees: the bar is nearly as long as the drawer's diagonal.
TEST(Drawer, WhatFitsAslantAloneIsPutAslant) {
    job::Job job;
    job.minimums.wall_mm = 5;
    job.minimums.edge_mm = 5;
    job::Object object;
    object.id = "i1";
    object.turns = job::Turns::free;
    object.fit_mm = 0;
    // Inside 390 × 290: at atan(290 / 390) = 36.6° the diagonal is 486; at 30° and 45° a bar of 20 × 455 is
    // out.
    object.levels.push_back({job::Sunk{shape::Rectangle{455, 20, 0}, 15}, {}, {}});
    job = with_whole_drawer(job, object);
    const Arranged done = arranged(job, Moving::none, {100'000, 1}, never_stop);
    ASSERT_EQ(done.placed, 1);
    const double turn = std::fmod(job::find_drawer(done.job, "d1")->pockets[0].pose.turn_deg, 15);
    EXPECT_GT(std::min(turn, 15 - turn), 0.01);
}

TEST(Drawer, WhatFindsNoRoomIsSaid) {
    job::Job job = drawer_of(60); // 60 × 2400 mm² is more than the drawer has
    const Arranged done = arranged(job, Moving::unlocked_if_needed, {60'000, 1}, never_stop);
    EXPECT_GT(done.placed, 8);
    EXPECT_EQ(done.placed + done.left, 60);
    EXPECT_EQ(job::find_drawer(done.job, "d1")->pockets.size(), static_cast<std::size_t>(done.placed));
}

TEST(Origins, MayLieBesideTheFigure) {
    const auto aside = shape::contour_of(
        shape::Polygon{{{{300, 0}}, {{500, 0}}, {{500, 50}}, {{300, 50}}}}); // its origin is far to the left
    const auto figure = turned({{{*aside, 10}}, {0}});
    Room room;
    room.box = {{0, 0}, {400, 300}};
    const shape::Box at = origins(room, figure[0]);
    EXPECT_LE(at.min.x, at.max.x);
    EXPECT_GE(at.min.x, -300);
    EXPECT_LE(at.max.x, 400 - 500);
}

} // namespace
} // namespace drawercast::arrange
