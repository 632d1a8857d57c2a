// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/layout/random_layout.h"

#include <boost/geometry.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#include <gtest/gtest.h>

#include <algorithm>

/// Walls and edges once more, by a library that shares no code with ours, over outlines drawn as chords.
namespace drawercast::layout {
namespace {

using namespace testing;
namespace bg = boost::geometry;
using BgPoint = bg::model::d2::point_xy<double>;
using BgPolygon = bg::model::polygon<BgPoint>;
using BgLine = bg::model::linestring<BgPoint>;

BgPolygon polygon_of(const shape::Contour& contour) {
    BgPolygon polygon;
    for (const shape::Vec p : shape::traced(contour)) bg::append(polygon.outer(), BgPoint(p.x, p.y));
    bg::correct(polygon);
    return polygon;
}

BgLine boundary_of(const shape::Contour& contour) {
    const BgPolygon polygon = polygon_of(contour);
    return BgLine(polygon.outer().begin(), polygon.outer().end());
}

struct Hollow {
    BgPolygon polygon;
    bg::model::box<BgPoint> box;
    double depth_mm;
};

std::vector<Hollow> hollows_of(const PlacedPocket& pocket) {
    std::vector<Hollow> hollows;
    for (const auto& cut : pocket.cuts) {
        const BgPolygon polygon = polygon_of(cut.outline.contour);
        hollows.push_back({polygon, bg::return_envelope<bg::model::box<BgPoint>>(polygon), cut.depth_mm});
    }
    return hollows;
}

/// Least value over limit of all pairs of hollows that miss their limit; 0 where any overlap.
std::optional<double> thinnest_wall(const std::vector<Hollow>& a, const std::vector<Hollow>& b,
                                    const Minimums& minimums) {
    std::optional<double> thinnest;
    double ratio = 1;
    for (const auto& p : a) {
        for (const auto& q : b) {
            const double limit = minimums.wall(std::min(p.depth_mm, q.depth_mm));
            if (bg::distance(p.box, q.box) > limit) continue; // the library takes its time over the far ones
            const double mm = bg::distance(p.polygon, q.polygon);
            if (!(mm < limit - slack_mm) || !(mm / limit < ratio)) continue;
            ratio = mm / limit;
            thinnest = mm;
        }
    }
    return thinnest;
}

std::optional<double> thinnest_edge(const PlacedPocket& pocket, const Insert& insert,
                                    const Minimums& minimums) {
    std::optional<double> thinnest;
    double ratio = 1;
    for (const auto& cut : pocket.cuts) {
        const double limit = minimums.edge(cut.depth_mm);
        for (const auto& edge : insert.edges) {
            const double mm = bg::distance(polygon_of(cut.outline.contour), boundary_of(edge.contour));
            if (!(mm < limit - slack_mm) || !(mm / limit < ratio)) continue;
            ratio = mm / limit;
            thinnest = mm;
        }
    }
    return thinnest;
}

constexpr double chords_mm = 3 * shape::chord_sagitta_mm; // two outlines, and the one of ours that is exact

TEST(DistanceTwin, WallsAreTheLibrarysDistances) {
    int walls = 0;
    for (std::uint64_t seed = 100; seed < 400; ++seed) {
        const Scene scene = any_scene(seed, 12);
        const auto pockets = scene.standing();
        std::vector<std::vector<Hollow>> hollows;
        for (const Standing& standing : pockets) hollows.push_back(hollows_of(*standing.pocket));
        const Minimums minimums = scene.limits().minimums;
        for (std::size_t i = 0; i < pockets.size(); ++i) {
            for (std::size_t j = i + 1; j < pockets.size(); ++j) {
                const auto check = pair_check(*pockets[i].pocket, *pockets[j].pocket, minimums);
                const auto twin = thinnest_wall(hollows[i], hollows[j], minimums);
                ASSERT_EQ(check.has_value(), twin.has_value()) << "seed " << seed << ", " << i << " " << j;
                if (!check) continue;
                if (check->code == Code::overlap) {
                    EXPECT_NEAR(*twin, 0, chords_mm);
                } else {
                    EXPECT_NEAR(check->value, *twin, chords_mm) << "seed " << seed << ", " << i << " " << j;
                    ++walls;
                }
            }
        }
    }
    EXPECT_GT(walls, 200);
}

TEST(DistanceTwin, EdgesAreTheLibrarysDistances) {
    int edges = 0;
    for (std::uint64_t seed = 100; seed < 130; ++seed) {
        const Scene scene = any_scene(seed, 24);
        const DrawerLimits limits = scene.limits();
        for (const Standing& standing : scene.standing()) {
            std::vector<Check> checks;
            add_edge_checks(*standing.pocket, *limits.insert, limits.minimums, checks);
            if (!only(checks, Code::outside).empty() || !only(checks, Code::obstructed).empty()) continue;
            const auto twin = thinnest_edge(*standing.pocket, *limits.insert, limits.minimums);
            ASSERT_EQ(!checks.empty(), twin.has_value())
                << "seed " << seed << ", " << standing.pocket->subject;
            if (!twin) continue;
            EXPECT_NEAR(checks[0].value, *twin, chords_mm)
                << "seed " << seed << ", " << standing.pocket->subject;
            ++edges;
        }
    }
    EXPECT_GT(edges, 50);
}

} // namespace
} // namespace drawercast::layout
