// SPDX-License-Identifier: GPL-3.0-or-later
// What cells hold, how wide channels are, and how liquid lies, against closed forms.
#include "air/covered.h"
#include "shape/segments.h"

#include "core/air/floors.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <numeric>
#include <random>

namespace drawercast::air {
namespace {

double sum(const Values& values) { return std::accumulate(values.begin(), values.end(), 0.0); }

TEST(Covered, adds_up_to_the_area_of_any_ring) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> anywhere(5, 95);
    const Mesh mesh(100, 100, 3.7);
    for (int i = 0; i < 50; ++i) {
        shape::Contour triangle{{{anywhere(random), anywhere(random)},
                                 {anywhere(random), anywhere(random)},
                                 {anywhere(random), anywhere(random)}},
                                0};
        if (shape::area(triangle.core) < 0) std::swap(triangle.core[0], triangle.core[1]);
        double covered = 0;
        for (const Covered& c : covered_by({&triangle.core, 1}, mesh)) {
            covered += c.share * mesh.cell_mm2();
            EXPECT_LE(c.share, 1);
        }
        EXPECT_NEAR(covered, shape::area(triangle.core), 1e-6) << i;
    }
}

TEST(Covered, of_what_lies_in_part_outside_is_what_lies_inside) {
    const Mesh mesh(100, 50, 4);
    const shape::Ring ring{{-20, 10}, {30, 10}, {30, 70}, {-20, 70}};
    double covered = 0;
    for (const Covered& c : covered_by({&ring, 1}, mesh)) covered += c.share * mesh.cell_mm2();
    EXPECT_NEAR(covered, 30 * 40, 1e-9);
}

TEST(Cells, hold_what_is_left_between_board_blocks_and_plate) {
    Floor floor = empty_floor(201, 151, 60.24);
    add_block(floor, 13.3, 21.7, 61.2, 88.9, 45.1);
    add_body(floor, {{{120, 60}, {155, 95}}, 20}, 50.2);
    const double capsule = 40 * std::hypot(35, 35) + std::numbers::pi * 400;
    const double room = 201 * 151 * 60.24 - 61.2 * 88.9 * 45.1 - capsule * 50.2;
    EXPECT_NEAR(sum(cells_of(floor, 4).room_mm3), room, 1e-4 * room); // chords
}

TEST(Cells, of_levels_with_sides_in_common_count_each_place_once) {
    Floor floor = empty_floor(120, 100, 60);
    add_block(floor, 21, 31, 71, 38, 30);
    add_block(floor, 21, 31, 41, 38, 50); // deeper, the same left, front and back
    const double room = 120 * 100 * 60 - 71 * 38 * 30 - 41 * 38 * 20;
    EXPECT_NEAR(sum(cells_of(floor, 4).room_mm3), room, 1e-3 * room);
}

TEST(Cells, over_a_lying_round_follow_it) {
    Floor floor = empty_floor(120, 100, 60);
    add_block(floor, 20, 30, 80, 40, 50);
    floor.bodies[0].ridge = Ridge{{20, 50}, {1, 0}, 20, 30};
    const double body = 80 * (40 * 30 + std::numbers::pi * 20 * 20 / 2);
    const double room = 120 * 100 * 60 - body;
    EXPECT_NEAR(sum(cells_of(floor, 4).room_mm3), room, 1e-3 * room);
}

TEST(Cells, leave_out_fillers_and_through_blocks) {
    Floor floor = empty_floor(120, 100, 60);
    floor.opening.patches[0].outer = {{0, 0}, {90, 0}, {90, 30}, {120, 30}, {120, 100}, {0, 100}};
    floor.opening_mm2 = 120 * 100 - 30 * 30;
    add_block(floor, 30, 30, 21, 22, 60);
    const Cells cells = cells_of(floor, 4);
    EXPECT_NEAR(sum(cells.area_mm2), 120 * 100 - 900 - 21 * 22, 8);
    EXPECT_FALSE(cells.open(cells.mesh.holding({110, 10})));
    EXPECT_FALSE(cells.open(cells.mesh.holding({40, 40})));
}

TEST(Widths, are_those_of_the_largest_disc_that_covers_the_place) {
    Floor floor = empty_floor(200, 120, 60);
    add_block(floor, 15.5, 20, 60, 80, 45);
    add_block(floor, 92.2, 20, 60, 80, 45);
    const Cells cells = cells_of(floor, 4);
    const Values widths = widths_of(floor, cells);
    EXPECT_NEAR(widths[cells.mesh.holding({84, 60})], 16.7, 1e-3); // between the two
    EXPECT_NEAR(widths[cells.mesh.holding({7, 60})], 15.5, 1e-3);  // along the wall
    EXPECT_NEAR(widths[cells.mesh.holding({176, 60})], 47.8, 1e-3);
    EXPECT_NEAR(widths[cells.mesh.holding({100, 8})], 20, 1e-3);
    EXPECT_EQ(widths[cells.mesh.holding({40, 60})], no_sides); // over a block
}

TEST(Widths, among_many_blocks_are_those_of_discs_that_are_clear) {
    Floor floor = empty_floor(300, 200, 60);
    int number = 0;
    for (int row = 0; row < 5; ++row)
        for (int column = 0; column < 8; ++column) {
            const double x = 8 + 36 * column + 1.3 * (number % 5), y = 7 + 38 * row + 0.9 * (number % 7);
            if (++number % 6 == 0) continue; // a clearing
            add_block(floor, x, y, 12 + number % 9, 16 + number % 11, 45);
            floor.bodies.back().outline.round_mm = number % 4;
        }
    const auto clear_mm = [&](shape::Vec p) {
        double least = std::min({p.x, p.y, floor.width_mm - p.x, floor.depth_mm - p.y});
        for (const Body& body : floor.bodies) {
            if (shape::holds(body.outline.core, p)) return 0.0;
            const shape::Vec on_core = shape::nearest_on_core(body.outline.core, p);
            least = std::min(least, length(p - on_core) - body.outline.round_mm);
        }
        return std::max(least, 0.0);
    };
    constexpr double step_mm = 2;
    std::vector<std::pair<shape::Vec, double>> discs;
    for (double y = step_mm / 2; y < floor.depth_mm; y += step_mm)
        for (double x = step_mm / 2; x < floor.width_mm; x += step_mm)
            if (const double mm = clear_mm({x, y}); mm > 0) discs.push_back({{x, y}, mm});
    const Cells cells = cells_of(floor, 4);
    const Values widths = widths_of(floor, cells);
    int channels = 0;
    for_each_cell(cells.mesh, [&](std::size_t cell) {
        if (!cells.channel[cell] || ++channels % 3 != 0) return;
        const shape::Vec p = cells.mesh.center(cell);
        double widest = 0;
        for (const auto& [center, mm] : discs)
            if (length(center - p) <= mm + 2 * step_mm) widest = std::max(widest, 2 * mm);
        EXPECT_GE(widths[cell], 2 * clear_mm(p) - 1e-6) << p.x << ", " << p.y;
        EXPECT_LE(widths[cell], widest + 2 * step_mm) << p.x << ", " << p.y;
    });
    EXPECT_GT(channels, 900);
}

TEST(Liquid, lies_level_and_is_the_room_over_the_expansion) {
    Floor floor = empty_floor(200, 120, 60);
    add_block(floor, 20, 20, 60, 80, 45);
    add_block(floor, 100, 20, 60, 80, 5); // all under liquid
    const Cells cells = cells_of(floor, 4);
    const Liquid liquid = liquid_of(cells, pieces_of(cells), 4, {});
    const double room = 200 * 120 * 60 - 4800 * 45 - 4800 * 5;
    EXPECT_NEAR(sum(liquid.mm3), room / 4, 1e-6 * room);
    const double level = (room / 4 + 4800 * 5) / (200 * 120 - 4800);
    EXPECT_NEAR(liquid.level_mm, level, 1e-9);
    EXPECT_NEAR(liquid.mm3[cells.mesh.holding({130, 60})], cells.mesh.cell_mm2() * (level - 5), 1e-9);
    EXPECT_EQ(liquid.mm3[cells.mesh.holding({50, 60})], 0);
}

TEST(Liquid, of_a_puddle_stays_over_its_cells) {
    Floor floor = empty_floor(200, 120, 60);
    const Cells cells = cells_of(floor, 4);
    Puddle puddle;
    for_each_cell(cells.mesh, [&](std::size_t cell) {
        if (cells.mesh.center(cell).x < 40) puddle.cells.push_back(cell);
    });
    puddle.share = 0.5;
    const Liquid liquid = liquid_of(cells, pieces_of(cells), 4, {puddle});
    EXPECT_NEAR(sum(liquid.mm3), 200 * 120 * 15, 1e-3);
    EXPECT_NEAR(liquid.level_mm, 7.5, 1e-9);
    EXPECT_NEAR(liquid.mm3[cells.mesh.holding({10, 60})], cells.mesh.cell_mm2() * (7.5 + 7.5 * 5), 1e-6);
}

TEST(Pieces, are_parted_by_through_blocks) {
    Floor floor = empty_floor(200, 120, 60);
    add_block(floor, 80, 0, 40, 120, 60);
    const Cells cells = cells_of(floor, 4);
    EXPECT_EQ(pieces_of(cells).count, 2);
    const Liquid liquid = liquid_of(cells, pieces_of(cells), 4, {});
    EXPECT_NEAR(liquid.level_mm, 15, 1e-9);
}

} // namespace
} // namespace drawercast::air
