// SPDX-License-Identifier: GPL-3.0-or-later
// The templates of the plate and the base, measured in the PDF: every hole on every tile that shows it.
#include "mold/plate_judge.h"
#include "plan/stock_stage.h"

#include "app/ink_jobs.h"
#include "core/plan/whole_plan.h"
#include "print/template_sheet.h"
#include "sheets/drilling.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace drawercast::print {
namespace {

using test::InkPage;
using test::InkPath;

constexpr double tolerance_mm = 0.05; // what the eye can see of a ruler

struct Built {
    job::Job job = test::asymmetric_job(200, 120);
    plan::Plan plan = plan::whole(job);
};
const Built& built() {
    static const Built one;
    return one;
}

bool same(double a, double b) { return std::abs(a - b) < tolerance_mm; }

bool has_length(const InkPage& page, double mm, bool upright) {
    return std::any_of(page.paths.begin(), page.paths.end(), [&](const InkPath& path) {
        const Box box = path.box();
        return path.stroked && (upright ? box.width() : box.height()) < 10 &&
               same(upright ? box.height() : box.width(), mm);
    });
}

/// Centers of the circles of a size on a tile, in the drawing's millimeters.
std::vector<Vec> circles(const InkPage& page, const Tile& tile, double diameter_mm) {
    const Vec window{tile.area_mm.width(), tile.area_mm.height()};
    std::optional<Vec> corner;
    for (const InkPath& path : page.paths)
        if (path.stroked && same(path.box().width(), window.x) && same(path.box().height(), window.y))
            corner = path.box().min;
    EXPECT_TRUE(corner);
    std::vector<Vec> out;
    for (const InkPath& path : page.paths) {
        const Box box = path.box();
        if (corner && path.stroked && same(box.width(), diameter_mm) && same(box.height(), diameter_mm))
            out.push_back(box.center() - *corner + tile.area_mm.min);
    }
    return out;
}

class PlateInk : public ::testing::TestWithParam<std::tuple<Paper, Orientation>> {
  protected:
    std::vector<InkPage> pages(TemplateKind kind) const {
        const auto [paper, orientation] = GetParam();
        return test::printed(built().job, built().plan, {paper, orientation, kind});
    }
    Tiling tiling(const Box& area) const {
        const auto [paper, orientation] = GetParam();
        const Box window = tile_window_mm(paper, orientation);
        return tiled(area, {window.width(), window.height()}, orientation, [](const Box&) { return true; });
    }
    /// The tiles come last; before them the cover, and more of it where the table is long.
    static const InkPage& page_of(const std::vector<InkPage>& pages, const Tiling& tiling, std::size_t tile) {
        return pages.at(pages.size() - tiling.tiles.size() + tile);
    }
    void expect_holes(TemplateKind kind, const Box& area, const std::vector<Vec>& holes, double diameter_mm) {
        const auto printed = pages(kind);
        const Tiling tiles = tiling(area);
        ASSERT_GT(printed.size(), tiles.tiles.size());
        for (std::size_t i = 0; i < tiles.tiles.size(); ++i) {
            const Tile& tile = tiles.tiles[i];
            const InkPage& page = page_of(printed, tiles, i);
            for (const bool upright : {false, true}) {
                EXPECT_TRUE(has_length(page, 100, upright)) << tile.name();
                EXPECT_TRUE(has_length(page, 101.6, upright)) << tile.name();
            }
            const auto found = circles(page, tile, diameter_mm);
            const Box well_inside = tile.area_mm.grown(-1);
            for (const Vec hole : holes) {
                if (!shape::near(Box{hole, hole}, well_inside)) continue;
                EXPECT_TRUE(std::any_of(found.begin(), found.end(),
                                        [&](Vec at) { return shape::length(at - hole) < tolerance_mm; }))
                    << tile.name() << " lacks a hole at " << hole.x << ", " << hole.y;
            }
        }
    }
};

TEST_P(PlateInk, every_closures_hole_has_its_drills_size_and_its_place_on_all_tiles) {
    const auto& answer = built().plan.drawers.front();
    ASSERT_TRUE(answer.plate);
    const auto& design = answer.plate->answer.design;
    std::vector<Vec> holes;
    for (const auto& closure : design.closures)
        if (!closure.stiffener_end) holes.push_back(closure.at.vec());
    ASSERT_GT(holes.size(), 4u);
    const double drill = mold::holes_of(design.closure, built().job.shop->drills_mm).clearance_mm;
    ASSERT_GT(drill, 0);
    expect_holes(TemplateKind::pressure_plate, sheets::plate_drilling(built().job, answer).area, holes,
                 drill);
}

TEST_P(PlateInk, every_screw_of_the_base_is_on_all_tiles) {
    const auto& answer = built().plan.drawers.front();
    const auto board = plan::pattern_board(built().job, answer);
    ASSERT_TRUE(board);
    ASSERT_FALSE(built().plan.stock->drawers.empty());
    std::vector<Vec> holes;
    for (const auto& block : board->blocks)
        for (const auto& point : block.fixing)
            if (point.by != casting::Holder::pin) holes.push_back(point.at.vec());
    ASSERT_FALSE(holes.empty());
    constexpr double ring_mm = 10 * 25.4 / 96;
    expect_holes(TemplateKind::base_drilling,
                 sheets::base_drilling(built().job, answer, *board, built().plan.stock->drawers.front()).area,
                 holes, ring_mm);
}

INSTANTIATE_TEST_SUITE_P(
    Papers, PlateInk,
    ::testing::Combine(::testing::Values(Paper::a4, Paper::letter, Paper::a3, Paper::tabloid),
                       ::testing::Values(Orientation::portrait, Orientation::landscape)));

TEST(Drilling, the_table_names_every_hole_once_in_driving_order) {
    const auto& answer = built().plan.drawers.front();
    const auto table = sheets::drilling_table(built().job, answer);
    const auto& design = answer.plate->answer.design;
    ASSERT_EQ(table.rows.size(), design.closures.size() + answer.air->vented.vents.size());
    for (std::size_t i = 0; i < design.order.size(); ++i) {
        EXPECT_EQ(table.rows[i][0].text, QString::number(static_cast<int>(i) + 1));
        const auto& at = design.closures[static_cast<std::size_t>(design.order[i])].at;
        EXPECT_NEAR(table.rows[i][1].text.toDouble(), at.x_mm, 0.051);
        EXPECT_NEAR(table.rows[i][2].text.toDouble(), at.y_mm, 0.051);
    }
    EXPECT_EQ(table.rows[design.order.size()][0].text, QStringLiteral("V1"));
}

} // namespace
} // namespace drawercast::print
