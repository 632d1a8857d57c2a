// SPDX-License-Identifier: GPL-3.0-or-later
// The front against closed forms, balances and symmetries.
#include "core/air/floors.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>

namespace drawercast::air {
namespace {

double sum(const Values& values) { return std::accumulate(values.begin(), values.end(), 0.0); }

/// A block across the whole width, channels of c on both sides.
constexpr double width = 60;
constexpr double channel = 40;
constexpr double block = 160;
constexpr double high = 60;
constexpr double gap = 12;

Floor across() {
    Floor floor = empty_floor(width, 2 * channel + block, high);
    add_block(floor, 0, channel, width, block, high - gap);
    return floor;
}

TEST(Front, over_a_block_across_the_width_is_at_c_times_E_l0_less_H_over_h) {
    Worked mold(across(), 2, 4);
    Front front = mold.rise.start();
    const double level = mold.liquid.level_mm;
    ASSERT_LT(level, high - gap) << "no liquid over the block";
    for (double expansion = mold.rise.first_touch() + 0.05; expansion < 3.95; expansion += 0.1) {
        front = mold.rise.at(expansion, front);
        double full_mm2 =
            0; // in partly full cells their full share: the front's place to a fraction of a cell
        for_each_cell(mold.cells.mesh, [&](std::size_t cell) {
            if (!mold.cells.channel[cell])
                full_mm2 += mold.cells.area_mm2[cell] *
                            (1 - front.unfilled[cell] * expansion / mold.cells.room_mm3[cell]);
        });
        const double expected_mm = channel * (expansion * level - high) / gap;
        EXPECT_NEAR(full_mm2 / width / 2, expected_mm, 0.01 * block) << "at " << expansion;
    }
}

TEST(Front, keeps_the_liquid_at_every_expansion) {
    Floor floor = empty_floor(300, 200, 60);
    add_block(floor, 20, 30, 90, 120, 45);
    add_body(floor, {{{190, 90}, {230, 110}}, 35}, 50); // a capsule at a slant
    add_block(floor, 260, 20, 30, 30, 60);              // a wall
    Worked mold(std::move(floor), 4, 5.2);
    mold.history.follow(never_stop);
    ASSERT_GT(mold.history.moments().size(), 10u);
    const double liquid = sum(mold.liquid.mm3);
    EXPECT_NEAR(liquid, sum(mold.cells.room_mm3) / 5.2, 1e-9 * liquid);
    for (const Moment& moment : mold.history.moments())
        EXPECT_NEAR(sum(mold.cells.room_mm3) / moment.front.expansion - sum(moment.front.unfilled), liquid,
                    1e-5 * liquid);
}

TEST(Front, what_is_full_stays_full) {
    Floor floor = empty_floor(240, 200, 60);
    add_block(floor, 20, 30, 90, 120, 45);
    add_block(floor, 130, 60, 80, 50, 52);
    Worked mold(std::move(floor), 4, 5.2);
    mold.history.follow(never_stop);
    const auto& moments = mold.history.moments();
    for (std::size_t k = 1; k < moments.size(); ++k) {
        ASSERT_GT(moments[k].front.expansion, moments[k - 1].front.expansion);
        for_each_cell(mold.cells.mesh, [&](std::size_t cell) {
            if (moments[k - 1].dry.piece[cell] == 0) {
                EXPECT_EQ(moments[k].dry.piece[cell], 0);
            }
        });
    }
}

TEST(Front, is_a_mirror_image_in_a_mirrored_mold) {
    const auto make = [](bool mirrored) {
        Floor floor = empty_floor(240, 160, 60);
        const auto add = [&](double x, double y, double w, double d, double h) {
            add_block(floor, mirrored ? 240 - x - w : x, y, w, d, h);
        };
        add(20, 25, 90, 100, 45);
        add(135, 60, 80, 50, 52);
        return floor;
    };
    Worked one(make(false), 4, 5.2);
    Worked two(make(true), 4, 5.2);
    const auto a = one.follow();
    const auto b = two.follow();
    ASSERT_EQ(a.size(), b.size());
    ASSERT_EQ(a.size(), 2u);
    for (std::size_t i = 0; i < a.size(); ++i) {
        EXPECT_NEAR(a[i].at.x, 240 - b[i].at.x, 0.05);
        EXPECT_NEAR(a[i].at.y, b[i].at.y, 0.05);
        EXPECT_NEAR(a[i].expansion, b[i].expansion, 1e-9);
        EXPECT_NEAR(a[i].air_ml, b[i].air_ml, 1e-3 * a[i].air_ml);
    }
}

/// Strip and disc of foam between plates grow as E and √E: the content of full cells is all there is.
TEST(Front, of_a_strip_grows_as_E_and_of_a_disc_as_its_root) {
    Floor strip = empty_floor(300, 20, 20);
    Worked flat(std::move(strip), 2, 4, {});
    // All the liquid in the first 60 mm: it fills them when it has grown by what is missing there.
    Liquid heap = flat.liquid;
    std::fill(heap.mm3.begin(), heap.mm3.end(), 0.0);
    for_each_cell(flat.cells.mesh, [&](std::size_t cell) {
        if (flat.cells.mesh.center(cell).x < 60) heap.mm3[cell] = flat.cells.room_mm3[cell] * 0.999;
    });
    Rise rise(flat.cells, flat.links, heap, 5);
    for (const double expansion : {1.5, 2.0, 3.0, 4.0}) {
        const Front front = rise.at(expansion, rise.start());
        double full_mm = 0;
        for_each_cell(flat.cells.mesh, [&](std::size_t cell) {
            if (flat.cells.mesh.row_of(cell) == 5 && front.push[cell] > 0) full_mm += flat.cells.mesh.dx();
        });
        EXPECT_NEAR(full_mm, 60 * expansion, 2.5);
    }

    Worked square(empty_floor(200, 200, 20), 2, 4, {});
    heap = square.liquid;
    std::fill(heap.mm3.begin(), heap.mm3.end(), 0.0);
    double poured_mm2 = 0;
    for_each_cell(square.cells.mesh, [&](std::size_t cell) {
        if (length(square.cells.mesh.center(cell) - shape::Vec{100, 100}) > 40) return;
        heap.mm3[cell] = square.cells.room_mm3[cell] * 0.999;
        poured_mm2 += square.cells.area_mm2[cell];
    });
    Rise round(square.cells, square.links, heap, 5);
    const double radius = std::sqrt(poured_mm2 / 3.14159265);
    for (const double expansion : {1.5, 2.5, 4.0}) {
        const Front front = round.at(expansion, round.start());
        double least = 1e9;
        double most = 0;
        for_each_cell(square.cells.mesh, [&](std::size_t cell) {
            const double mm = length(square.cells.mesh.center(cell) - shape::Vec{100, 100});
            if (front.push[cell] > 0)
                most = std::max(most, mm);
            else
                least = std::min(least, mm);
        });
        EXPECT_NEAR(most, radius * std::sqrt(expansion), 2.5);
        EXPECT_NEAR(least, radius * std::sqrt(expansion), 2.5);
    }
}

/// While E grows at rate s, p − p_front = 6μs(L² − x²)/h² in a strip and 3μs(R² − r²)/h² in a disc, dE = sE
/// dt: so W at the middle grows by ∫ p/(μE) dt = ∫ 6L₀²E²/h² · dE/E² from there on where the front is at L₀E.
TEST(Front, pushes_as_the_strip_and_the_disc_between_plates_do) {
    Worked strip(empty_floor(400, 8, 10), 1, 4, {});
    Liquid heap = strip.liquid;
    std::fill(heap.mm3.begin(), heap.mm3.end(), 0.0);
    for_each_cell(strip.cells.mesh, [&](std::size_t cell) {
        if (strip.cells.mesh.center(cell).x < 100) heap.mm3[cell] = strip.cells.room_mm3[cell] * 0.9999;
    });
    Values endless(strip.cells.mesh.size(), no_sides); // plates without sides
    const Links links = links_of(strip.cells, endless);
    Rise rise(strip.cells, links, heap, 5);
    const double expansion = 3;
    const Front front = rise.at(expansion, rise.start());
    EXPECT_NEAR(front.push[strip.cells.mesh.at(0, 4)], 6.0 * 100 * 100 / (10 * 10) * (expansion - 1), 20);
}

TEST(Front, a_thin_narrow_floor_is_full_before_a_thick_wide_one) {
    Floor floor = empty_floor(120, 300, 60);
    add_block(floor, 0, 40, 120, 30, 52);   // 8 mm over 30 wide
    add_block(floor, 0, 110, 120, 120, 40); // 20 mm over 120 wide
    Worked mold(std::move(floor), 4, 5);
    const auto& pockets = mold.follow();
    ASSERT_EQ(pockets.size(), 2u);
    EXPECT_GT(pockets[0].at.y, 40);
    EXPECT_LT(pockets[0].at.y, 70);
    EXPECT_GT(pockets[1].at.y, 110);
    EXPECT_LT(pockets[1].at.y, 230);
    EXPECT_LT(pockets[0].expansion, pockets[1].expansion - 0.1);
}

TEST(Front, the_last_air_is_where_least_pushed_when_full) {
    Floor floor = empty_floor(240, 200, 60);
    add_block(floor, 20, 30, 90, 120, 45);
    add_block(floor, 130, 60, 80, 50, 50);
    Worked mold(std::move(floor), 4, 5.2);
    const auto& pockets = mold.follow();
    ASSERT_FALSE(pockets.empty());
    std::size_t least = 0;
    for_each_cell(mold.cells.mesh, [&](std::size_t cell) {
        if (least == 0 || mold.history.push_when_full()[cell] < mold.history.push_when_full()[least])
            least = cell;
    });
    EXPECT_LT(length(mold.cells.mesh.center(least) - pockets.back().at), 6);
    EXPECT_NEAR(pockets.back().expansion, 5.2, 0.01);
}

TEST(Front, places_and_expansions_settle_as_the_mesh_gets_finer) {
    const auto make = [] {
        Floor floor = empty_floor(241, 203, 60.24);
        add_block(floor, 13.3, 21.7, 91.2, 118.9, 45.1);
        add_body(floor, {{{150, 70}, {185, 95}}, 26.3}, 50.2);
        add_block(floor, 131.9, 145.1, 95, 41.7, 40);
        return floor;
    };
    Worked coarse(make(), 4, 5.2);
    Worked fine(make(), 2, 5.2);
    const auto& a = coarse.follow();
    const auto& b = fine.follow();
    ASSERT_EQ(a.size(), 3u);
    ASSERT_EQ(b.size(), 3u);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_LT(length(a[i].at - b[i].at), 3);
        EXPECT_NEAR(a[i].expansion, b[i].expansion, 0.02);
        EXPECT_NEAR(a[i].air_ml, b[i].air_ml, 0.01 * b[i].air_ml);
    }
}

} // namespace
} // namespace drawercast::air
