// SPDX-License-Identifier: GPL-3.0-or-later
// Tiles laid on each other so that their marks meet give the whole drawing again: measured in the PDF.
#include "job/catalog.h"
#include "job/edit.h"
#include "plan/plan.h"

#include "app/ink_jobs.h"
#include "print/template_sheet.h"
#include "sheets/edge_words.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <tuple>

namespace drawercast::print {
namespace {

using test::InkPage;
using test::InkPath;

constexpr double tolerance_mm = 0.02;

bool same(double a, double b) { return std::abs(a - b) < tolerance_mm; }

/// The frame around the part of the drawing that a tile shows.
std::optional<Box> frame_of(const InkPage& page, Vec window) {
    for (const InkPath& path : page.paths) {
        const Box box = path.box();
        if (path.stroked && same(box.width(), window.x) && same(box.height(), window.y)) return box;
    }
    return std::nullopt;
}

/// A stroked path in the drawing's millimeters.
struct Drawn {
    InkPath path;
    Box box;
};

/// All of a tile's but its frame and its joint lines: these end with the tile.
std::vector<Drawn> drawn_on(const InkPage& page, const Tile& tile) {
    const Vec window{tile.area_mm.width(), tile.area_mm.height()};
    const auto frame = frame_of(page, window);
    EXPECT_TRUE(frame);
    if (!frame) return {};
    std::vector<Drawn> paths;
    for (InkPath path : page.paths) {
        const Box box = path.box();
        const bool joint =
            path.points.size() == 2 && (same(box.width(), window.x) || same(box.height(), window.y));
        if (!path.stroked || joint || (same(box.width(), window.x) && same(box.height(), window.y))) continue;
        for (Vec& point : path.points) point = point - frame->min + tile.area_mm.min;
        const Box moved = path.box();
        paths.push_back({std::move(path), moved});
    }
    return paths;
}

bool same(const Box& a, const Box& b) {
    return same(a.min.x, b.min.x) && same(a.min.y, b.min.y) && same(a.max.x, b.max.x) &&
           same(a.max.y, b.max.y);
}

bool same(const Drawn& a, const Drawn& b, Vec by) {
    return same(Box{a.box.min + by, a.box.max + by}, b.box) && a.path.kinds == b.path.kinds &&
           std::equal(a.path.points.begin(), a.path.points.end(), b.path.points.begin(),
                      [&](Vec p, Vec q) { return same(p.x + by.x, q.x) && same(p.y + by.y, q.y); });
}

/// How many of the paths that show in `shared` are not on the other tile as well, moved by `by`.
int unmatched(const std::vector<Drawn>& here, const std::vector<Drawn>& there, const Box& shared, Vec by) {
    return static_cast<int>(std::count_if(here.begin(), here.end(), [&](const Drawn& one) {
        return shape::near(one.box, shared) &&
               std::none_of(there.begin(), there.end(),
                            [&](const Drawn& other) { return same(one, other, by); });
    }));
}

class Rejoin : public ::testing::TestWithParam<std::tuple<Paper, Orientation>> {
  protected:
    /// The board's drawing on tiles none of which is empty.
    Rejoin() {
        job::Job job = test::demo_job("field-service");
        job.drawers.resize(1);
        const auto [paper, orientation] = GetParam();
        board = *plan::pattern_board(job, plan::compute(job).drawers.front());
        const Box window = tile_window_mm(paper, orientation);
        tiling = tiled(board.box.grown(sheets::edge_room_mm), {window.width(), window.height()}, orientation,
                       [](const Box&) { return true; });
        const auto pages = test::printed(job, {paper, orientation, TemplateKind::pattern_board});
        const std::size_t tiles = tiling.tiles.size(), covers = pages.size() - std::min(pages.size(), tiles);
        EXPECT_GE(covers, 1U);
        EXPECT_LE(covers, 2U); // where the table of blocks is longer than a page
        for (std::size_t i = 0; i < tiles && covers + i < pages.size(); ++i)
            drawn.push_back(drawn_on(pages[covers + i], tiling.tiles[i]));
    }
    const std::vector<Drawn>& on(const Tile& tile) const {
        return drawn.at(static_cast<std::size_t>(tile.row * tiling.columns + tile.column));
    }

    casting::PatternBoard board;
    Tiling tiling;
    std::vector<std::vector<Drawn>> drawn; ///< tile by tile
};

TEST_P(Rejoin, whatever_shows_in_a_shared_strip_is_on_both_tiles_at_the_same_place) {
    for (const Tile& tile : tiling.tiles)
        for (const Tile* other :
             {tiling.at(tile.column + 1, tile.row), tiling.at(tile.column, tile.row + 1)}) {
            if (!other) continue;
            const auto &here = on(tile), &there = on(*other);
            const Box shared = Box{{std::max(tile.area_mm.min.x, other->area_mm.min.x),
                                    std::max(tile.area_mm.min.y, other->area_mm.min.y)},
                                   {std::min(tile.area_mm.max.x, other->area_mm.max.x),
                                    std::min(tile.area_mm.max.y, other->area_mm.max.y)}}
                                   .grown(-0.5);
            EXPECT_GE(std::min(shared.width(), shared.height()), 8);
            EXPECT_EQ(unmatched(here, there, shared, {}), 0) << tile.name() << " and " << other->name();
            EXPECT_EQ(unmatched(there, here, shared, {}), 0) << other->name() << " and " << tile.name();
            EXPECT_GT(unmatched(here, there, shared, {0.1, 0}), 0) << "a tenth of a millimeter would be seen";
        }
}

TEST_P(Rejoin, every_block_stands_where_the_plan_has_it) {
    for (const auto& block : board.blocks)
        for (const auto& part : block.parts) {
            const Box wanted = shape::bounds(part.cut.outline.contour);
            int seen = 0;
            for (const Tile& tile : tiling.tiles) {
                if (!shape::near(wanted, tile.area_mm.grown(-1))) continue;
                seen += std::any_of(on(tile).begin(), on(tile).end(),
                                    [&](const Drawn& one) { return same(one.box, wanted); });
            }
            EXPECT_GT(seen, 0) << block.name;
        }
}

INSTANTIATE_TEST_SUITE_P(
    Papers, Rejoin,
    ::testing::Combine(::testing::Values(Paper::a4, Paper::letter, Paper::a3, Paper::tabloid),
                       ::testing::Values(Orientation::portrait, Orientation::landscape)));

/// A large drawer with a few pockets at its left end and an edge all round: the tiles in the middle of the
/// rest have nothing to trace.
TEST(EmptyTiles, are_not_printed) {
    const job::Job job = test::asymmetric_job(1400, 1000);
    const Vec size = size_mm(Paper::a4, Orientation::portrait);
    const auto pages = template_pages(job, plan::compute(job),
                                      {Paper::a4, Orientation::portrait, TemplateKind::drawer_check},
                                      {QStringLiteral("p"), QStringLiteral("t")});
    const Box window = tile_window_mm(Paper::a4, Orientation::portrait);
    const auto all =
        tiled(Box{{0, 0}, {1400, 1000}}.grown(sheets::edge_room_mm), {window.width(), window.height()},
              Orientation::portrait, [](const Box&) { return true; });
    const auto inner = static_cast<std::size_t>((all.columns - 2) * (all.rows - 2));
    const std::size_t tiles = pages.size() - 1;
    EXPECT_LT(tiles, all.tiles.size());
    EXPECT_GE(tiles, all.tiles.size() - inner) << "the drawer's edge runs through all outer tiles";
    for (std::size_t i = 1; i < pages.size(); ++i) EXPECT_NEAR(pages[i].size_mm.x, size.x, 1e-9);
}

TEST(EmptyTiles, an_outline_that_only_passes_through_counts) {
    const auto content = [](const Box& part) { return shape::near(part, Box{{0, 50}, {900, 50}}); };
    const auto tiling = tiled(Box{{0, 0}, {900, 500}}, {200, 200}, Orientation::portrait, content);
    for (const Tile& tile : tiling.tiles) EXPECT_EQ(tile.empty, tile.row > 0) << tile.name();
    EXPECT_EQ(tiling.printed(), tiling.columns);
}

TEST(EmptyTiles, signs_and_labels_inside_a_block_are_printed) {
    // A block larger than a page: its screws and its number lie on a tile that no outline crosses.
    job::Job job = job::new_job({700, 340, 90, 60});
    job::Object object;
    object.id = object.name = "large";
    object.fit_mm = 0;
    object.levels = {{job::Sunk{shape::Rectangle{600, 300, 0}, 20}, {}, {}}};
    job = job::with_object(std::move(job), object);
    job = job::placed(std::move(job), "d1", "large", {{350, 170}, 0});
    const auto plan = plan::compute(job);
    const auto pages =
        template_pages(job, plan, {Paper::a4, Orientation::landscape, TemplateKind::pattern_board},
                       {QStringLiteral("p"), QStringLiteral("t")});
    const Box window = tile_window_mm(Paper::a4, Orientation::landscape);
    const auto all =
        tiled(Box{{0, 0}, {700, 340}}.grown(sheets::edge_room_mm), {window.width(), window.height()},
              Orientation::landscape, [](const Box&) { return true; });
    EXPECT_EQ(pages.size() - 1, all.tiles.size());
}

} // namespace
} // namespace drawercast::print
