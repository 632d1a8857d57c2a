// SPDX-License-Identifier: GPL-3.0-or-later
// Words on the mold's sheets that look for room find it: none stands on another.
#include "job/catalog.h"

#include "app/ink_jobs.h"
#include "core/plan/whole_plan.h"
#include "sheets/inking.h"
#include "sheets/pattern_board.h"
#include "sheets/pressure_plate.h"
#include "sheets/words_around.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>

namespace drawercast::sheets {
namespace {

constexpr double margin_px = 1;

View fitted(const Box& area, Vec window_px) {
    const double per_mm = std::min(window_px.x / area.width(), window_px.y / area.height());
    return {theme::Medium::screen, per_mm, 1, {-area.min.x * per_mm, area.max.y * per_mm}};
}

int overlaps(const std::vector<Box>& words) {
    int count = 0;
    for (std::size_t i = 0; i < words.size(); ++i)
        for (std::size_t k = 0; k < i; ++k)
            if (shape::near(words[i].grown(-margin_px), words[k])) {
                ++count;
                const auto a = words[i].center(), b = words[k].center();
                std::cout << "words about " << a.x << ", " << a.y << " on those about " << b.x << ", " << b.y
                          << '\n';
            }
    return count;
}

std::vector<Box> words_of(const std::vector<Mark>& marks, const View& view) {
    const theme::Theme theme = theme::light_theme();
    Inking inking(view, theme);
    for (const Mark& mark : marks) inking.ink(mark);
    return inking.taken().words;
}

TextMark words_at(Vec mm, std::vector<Spot> spots, bool or_none) {
    TextMark mark;
    mark.at = {mm};
    mark.text = "V12  345.5, 120";
    mark.elsewhere = {std::move(spots), {}, or_none};
    return mark;
}

TEST(Elsewhere, the_first_spot_that_is_clear_is_taken) {
    const View view = fitted({{0, 0}, {200, 200}}, {200, 200});
    const std::vector<Spot> spots{{{{100, 100}}, Side::center}, {{{100, 150}}, Side::center}};
    std::vector<Mark> marks(2, {Layer::still, {}, words_at({100, 100}, spots, false)});
    const auto words = words_of(marks, view);
    ASSERT_EQ(words.size(), 2u);
    EXPECT_NEAR(words[0].center().y, 100, 2);
    EXPECT_NEAR(words[1].center().y, 50, 2); // y down
}

TEST(Elsewhere, what_is_kept_free_is_kept_free) {
    const View view = fitted({{0, 0}, {200, 200}}, {200, 200});
    const std::vector<Spot> spots{{{{100, 100}}, Side::center}, {{{100, 150}}, Side::center}};
    const auto words = words_of({{Layer::still, {}, KeepFreeMark{{{99, 99}, {101, 101}}}},
                                 {Layer::still, {}, words_at({100, 100}, spots, false)}},
                                view);
    ASSERT_EQ(words.size(), 1u);
    EXPECT_NEAR(words[0].center().y, 50, 2);
}

TEST(Elsewhere, where_nothing_is_clear_words_go_on_a_leader_or_are_left_out) {
    const View view = fitted({{0, 0}, {200, 200}}, {200, 200});
    const std::vector<Spot> one{{{{100, 100}}, Side::center}};
    for (const bool or_none : {false, true}) {
        const std::vector<Mark> marks{{Layer::still, {}, words_at({100, 100}, one, false)},
                                      {Layer::still, {}, words_at({100, 100}, one, or_none)}};
        const auto words = words_of(marks, view);
        ASSERT_EQ(words.size(), or_none ? 1u : 2u);
        EXPECT_EQ(overlaps(words), 0);
    }
}

TEST(Elsewhere, words_around_rings_in_a_heap_do_not_meet) {
    const Box area{{0, 0}, {400, 300}};
    std::vector<Mark> marks;
    for (int i = 0; i < 12; ++i) {
        const Vec at{150.0 + 23 * (i % 4), 120.0 + 19 * (i / 4)};
        marks.push_back({Layer::still, {}, KeepFreeMark{Box{at, at}.grown(3)}});
    }
    for (int i = 0; i < 12; ++i) {
        const Vec at{150.0 + 23 * (i % 4), 120.0 + 19 * (i / 4)};
        marks.push_back({Layer::still, {}, words_around(at, 3, "V10  123.5, 234", {Way::right, area})});
    }
    const auto words = words_of(marks, fitted(area, {560, 420}));
    EXPECT_EQ(words.size(), 12u);
    EXPECT_EQ(overlaps(words), 0);
}

/// Board and no stiffeners chosen, so that no design is searched for.
plan::Plan answered(job::Job& job) {
    job.mold.board = job.mold.box_board = job::builtin_boards().back().name;
    job.mold.stiffeners = job::StiffenerChoice{};
    return plan::whole(job);
}

TEST(MoldSheets, no_words_stand_on_others_on_the_most_crowded_demo) {
    job::Job job = test::demo_job("standard-objects");
    const plan::Plan plan = answered(job);
    for (const auto& drawer : plan.drawers) {
        ASSERT_TRUE(drawer.plate && drawer.air);
        const auto board = plan::pattern_board(job, drawer);
        ASSERT_TRUE(board);
        const auto plate = [&](PlateGround ground) {
            return pressure_plate(job, drawer, Finish::washed, ground);
        };
        for (const auto& sheet : {pour_board(job, *board, drawer.air->model->map().pour),
                                  plate(PlateGround::lift), plate(PlateGround::arrival)})
            for (const Vec window : {Vec{860, 560}, Vec{620, 440}}) {
                const auto words = words_of(sheet.marks, fitted(sheet.area, window));
                EXPECT_GT(words.size(), 10u);
                EXPECT_EQ(overlaps(words), 0) << drawer.id << " " << sheet.name << " " << window.x;
            }
    }
}

} // namespace
} // namespace drawercast::sheets
