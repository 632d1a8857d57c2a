// SPDX-License-Identifier: GPL-3.0-or-later
// What a template really puts on paper: its vectors are read back from the PDF and measured.
#include "app/ink_jobs.h"
#include "print/tiling.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace drawercast::print {
namespace {

using test::asymmetric_job;
using test::InkPage;
using test::InkPath;
using test::printed;

constexpr double tolerance_mm = 0.05; // what the eye can see of a ruler

/// Boxes of strokes that are this wide and high.
std::vector<shape::Box> of_size(const InkPage& page, double width, double height) {
    std::vector<shape::Box> found;
    for (const InkPath& path : page.paths) {
        const shape::Box box = path.box();
        if (path.stroked && std::abs(box.width() - width) < tolerance_mm &&
            std::abs(box.height() - height) < tolerance_mm)
            found.push_back(box);
    }
    return found;
}

bool has_length(const InkPage& page, double mm, bool upright) {
    return std::any_of(page.paths.begin(), page.paths.end(), [&](const InkPath& path) {
        const shape::Box box = path.box();
        const double along = upright ? box.height() : box.width();
        const double across = upright ? box.width() : box.height();
        return path.stroked && across < 10 && std::abs(along - mm) < tolerance_mm;
    });
}

/// Every paper, portrait and landscape.
class Ink : public ::testing::TestWithParam<std::tuple<Paper, Orientation>> {
  protected:
    static TemplateChoice choice(std::optional<TemplateKind> kind) {
        return {std::get<0>(GetParam()), std::get<1>(GetParam()), kind};
    }
};

TEST_P(Ink, a_hundred_millimeters_and_four_inches_are_that_on_every_tile_both_ways) {
    for (const auto kind : {TemplateKind::pattern_board, TemplateKind::drawer_check}) {
        const auto pages = printed(asymmetric_job(480, 360), choice(kind));
        ASSERT_GT(pages.size(), 1u);
        for (std::size_t i = 1; i < pages.size(); ++i) // the first is the cover
            for (const bool upright : {false, true}) {
                EXPECT_TRUE(has_length(pages[i], 100, upright))
                    << "page " << i << (upright ? " upright" : " level");
                EXPECT_TRUE(has_length(pages[i], 101.6, upright))
                    << "page " << i << (upright ? " upright" : " level");
            }
    }
}

TEST_P(Ink, blocks_are_enlarged_and_pockets_are_not) {
    const job::Job job = asymmetric_job(200, 120);
    const double k = 1 / (1 - job.foam->shrinkage);
    const auto find = [&](TemplateKind kind, double diameter) {
        std::size_t count = 0;
        for (const auto& page : printed(job, choice(kind))) count += of_size(page, diameter, diameter).size();
        return count;
    };
    EXPECT_GT(find(TemplateKind::pattern_board, 50 * k), 0u);
    EXPECT_GT(find(TemplateKind::pattern_board, 30 * k), 0u);
    EXPECT_GT(find(TemplateKind::drawer_check, 50), 0u);
    EXPECT_GT(find(TemplateKind::drawer_check, 30), 0u);
}

/// On one sheet of paper: what lies left in the drawer lies right on the board, and left on the sheet for the
/// drawer.
TEST(InkMirror, the_board_is_mirrored_and_the_drawer_sheet_is_not) {
    const job::Job job = asymmetric_job(200, 120);
    const double k = 1 / (1 - job.foam->shrinkage);
    const auto run = [&](TemplateKind kind, double scale) {
        for (const auto& page : printed(job, {Paper::tabloid, {}, kind})) {
            const auto large = of_size(page, 50 * scale, 50 * scale);
            const auto small = of_size(page, 30 * scale, 30 * scale);
            if (!large.empty() && !small.empty()) return small[0].center().x - large[0].center().x;
        }
        return std::nan("");
    };
    EXPECT_NEAR(run(TemplateKind::drawer_check, 1), 80, tolerance_mm);
    EXPECT_NEAR(run(TemplateKind::pattern_board, k), -80 * k, tolerance_mm);
}

TEST_P(Ink, pages_have_the_papers_size_and_what_is_drawn_stays_off_its_edge) {
    const auto [paper, orientation] = GetParam();
    const auto pages = printed(asymmetric_job(480, 360), choice(TemplateKind::pattern_board));
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const Vec size =
            size_mm(paper, i == 0 ? Orientation::portrait : orientation); // the cover comes first
        EXPECT_NEAR(pages[i].width_mm, size.x, 0.4);                      // whole points
        EXPECT_NEAR(pages[i].height_mm, size.y, 0.4);
    }
    // on the cover nothing is cut off, so all ink can be seen to keep away
    const shape::Box safe = shape::Box{{0, 0}, size_mm(paper, Orientation::portrait)}.grown(-6.35);
    for (const auto& path : pages.front().paths) {
        const shape::Box box = path.box();
        if (!path.stroked && !path.filled) continue;
        EXPECT_GE(box.min.x, safe.min.x);
        EXPECT_GE(box.min.y, safe.min.y);
        EXPECT_LE(box.max.x, safe.max.x);
        EXPECT_LE(box.max.y, safe.max.y);
    }
}

TEST(Tiling, neighbors_overlap_and_cover_everything) {
    const Box area{{0, 0}, {482.4, 361.7}};
    for (const auto orientation : {Orientation::portrait, Orientation::landscape}) {
        const Vec paper = size_mm(Paper::a4, orientation);
        const Vec window{paper.x - 2 * safe_margin_mm, paper.y - 2 * safe_margin_mm};
        const auto tiling = tiled(area, window, orientation, [](const Box&) { return true; });
        shape::Box all;
        for (const auto& tile : tiling.tiles) {
            all.add(tile.area_mm);
            EXPECT_FALSE(tile.empty);
            if (const Tile* right = tiling.at(tile.column + 1, tile.row)) {
                EXPECT_GE(tile.area_mm.max.x - right->area_mm.min.x, 8);
            }
            if (const Tile* behind = tiling.at(tile.column, tile.row + 1)) {
                EXPECT_GE(tile.area_mm.max.y - behind->area_mm.min.y, 8);
            }
        }
        EXPECT_LE(all.min.x, 0);
        EXPECT_LE(all.min.y, 0);
        EXPECT_GE(all.max.x, area.max.x);
        EXPECT_GE(all.max.y, area.max.y);
    }
}

INSTANTIATE_TEST_SUITE_P(
    Papers, Ink,
    ::testing::Combine(::testing::Values(Paper::a4, Paper::letter, Paper::a3, Paper::tabloid),
                       ::testing::Values(Orientation::portrait, Orientation::landscape)));

} // namespace
} // namespace drawercast::print
