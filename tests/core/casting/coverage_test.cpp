// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/coverage.h"
#include "shape/dilate.h"
#include "shape/gap.h"
#include "shape/region.h"

#include "core/casting/builders.h"

#include <gtest/gtest.h>

#include <random>

namespace drawercast::casting {
namespace {

using shape::Box;
using shape::Capsule;
using shape::Circle;
using shape::Contour;
using shape::Polygon;
using shape::Rectangle;
using shape::Vec;

Footprint footprint(const Contour& contour, double by_mm = 0) {
    Footprint out;
    out.add(path_around(contour, by_mm, 0.001));
    return out;
}

double area_of(const std::vector<Footprint>& all, Counting counting,
               Field field = {{{-1e3, -1e3}, {1e3, 1e3}}}) {
    std::vector<Placed> placed;
    for (const Footprint& one : all) placed.push_back({&one, {}, {}});
    return Coverage().area(placed, field, counting);
}

Contour at(const shape::Given& given, double x, double y, double turn = 0) {
    return shape::placed(built::contour(given), {{x, y}, turn});
}

TEST(Coverage, pairs_by_hand) {
    struct Row {
        const char* name;
        Contour a, b;
        double any, shared;
    };
    const Row rows[] = {
        {"apart", at(Rectangle{10, 10, 0}, 0, 0), at(Rectangle{10, 10, 0}, 30, 0), 200, 0},
        {"flush", at(Rectangle{10, 10, 0}, 0, 0), at(Rectangle{10, 10, 0}, 10, 0), 200, 0},
        {"flush, turned", at(Rectangle{10, 10, 0}, 0, 0, 30),
         at(Rectangle{10, 10, 0}, 10 * std::cos(0.5235987755982988), 10 * 0.5, 30), 200, 0},
        {"corner to corner", at(Rectangle{10, 10, 0}, 0, 0), at(Rectangle{10, 10, 0}, 10, 10), 200, 0},
        {"doubled", at(Rectangle{10, 10, 0}, 0, 0, 17), at(Rectangle{10, 10, 0}, 0, 0, 17), 100, 100},
        {"half over", at(Rectangle{10, 10, 0}, 0, 0), at(Rectangle{10, 10, 0}, 5, 0), 150, 50},
        {"inside", at(Rectangle{10, 10, 0}, 0, 0), at(Rectangle{4, 4, 0}, 1, 1, 45), 100, 16},
        {"a cross", at(Rectangle{20, 4, 0}, 0, 0, 20), at(Rectangle{20, 4, 0}, 0, 0, 110), 144, 16},
        {"tangent", at(Circle{10}, 0, 0), at(Circle{10}, 10, 0), 157.0796326794897, 0},
    };
    for (const Row& row : rows) {
        const std::vector<Footprint> both{footprint(row.a), footprint(row.b)};
        EXPECT_NEAR(area_of(both, Counting::any), row.any, 1e-3) << row.name;
        EXPECT_NEAR(area_of(both, Counting::shared), row.shared, 1e-3) << row.name;
    }
}

TEST(Coverage, arcs_keep_their_area) {
    for (const double sagitta : {0.001, 0.01, 0.1}) {
        for (const shape::Given& given :
             {shape::Given(Circle{37}), shape::Given(Capsule{50, 12}), shape::Given(Rectangle{40, 20, 7})}) {
            Footprint one;
            one.add(path_around(built::contour(given), 3, sagitta));
            Contour grown = built::contour(given);
            grown.round_mm += 3;
            EXPECT_NEAR(union_area(one), shape::area(grown), 1e-9 * shape::area(grown));
        }
    }
}

/// Random outlines of all kinds, near each other.
class RandomShapes {
  public:
    explicit RandomShapes(unsigned seed) : random_(seed) {}
    double real(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random_);
    }
    Contour next() {
        const auto place = [&](const shape::Given& given) {
            return at(given, real(0, 60), real(0, 60), real(0, 360));
        };
        switch (std::uniform_int_distribution<int>(0, 4)(random_)) {
        case 0:
            return place(Rectangle{real(5, 40), real(5, 40), 0});
        case 1:
            return place(Rectangle{real(12, 40), real(12, 40), real(1, 6)});
        case 2:
            return place(Circle{real(4, 40)});
        case 3:
            return place(Capsule{real(20, 40), real(4, 20)});
        default:
            return place(star());
        }
    }

  private:
    Polygon star() {
        Polygon out;
        for (int i = 0; i < 14; ++i) {
            const double radius = real(6, 22);
            out.corners.push_back(
                {{radius * std::cos(i * 0.4487989505), radius * std::sin(i * 0.4487989505)}});
        }
        return out;
    }
    std::mt19937 random_;
};

TEST(Coverage, agrees_with_set_operations) {
    for (unsigned seed = 0; seed < 60; ++seed) {
        RandomShapes shapes(seed);
        std::vector<Footprint> feet;
        std::vector<shape::Region> regions;
        for (int i = 0; i < 5; ++i) {
            const Contour contour = shapes.next();
            const double by = i % 2 ? 4 : 0; // stars cross themselves when they grow
            feet.push_back(footprint(contour, by));
            regions.push_back(*shape::dilated(contour, by));
        }
        EXPECT_NEAR(area_of(feet, Counting::any), shape::area(*shape::united(regions)), 0.3)
            << "seed " << seed;
        const auto two = shape::shared(regions[0], regions[1]);
        EXPECT_NEAR(area_of({feet[0], feet[1]}, Counting::shared), shape::area(*two), 0.2) << "seed " << seed;
    }
}

/// Around points within reach the path winds once or more often, around others never; with arcs inward, slots
/// and spikes, and reach from less than a side to more than the whole.
TEST(Coverage, paths_wind_around_what_is_within_reach) {
    const auto windings = [](const shape::Ring& path, Vec p) {
        int sum = 0;
        for (std::size_t i = 0; i < path.size(); ++i) {
            const Vec a = path[i] - p;
            const Vec b = path[(i + 1) % path.size()] - p;
            if ((a.y <= 0) == (b.y <= 0)) continue;
            const bool right_of_p = (cross(a, b) > 0) == (b.y > 0);
            if (right_of_p) sum += b.y > 0 ? 1 : -1;
        }
        return sum;
    };
    const Polygon inlet{{{{0, 0}}, {{50, 0}}, {{50, 20}, -9}, {{30, 22}, -6}, {{28, 40}}, {{0, 40}}}};
    int inside = 0;
    int outside = 0;
    for (unsigned seed = 0; seed < 600; ++seed) {
        RandomShapes shapes(seed);
        const Contour contour = seed % 4 == 0 ? at(inlet, 30, 30, shapes.real(0, 360)) : shapes.next();
        const double by = std::exp(shapes.real(-2, 4));
        const double sagitta = 0.001;
        const shape::Ring path = path_around(contour, by, sagitta);
        for (int i = 0; i < 100; ++i) {
            const auto corner = static_cast<std::size_t>(shapes.real(0, 1) * contour.core.size());
            const double reach = 2.5 * (by + contour.round_mm);
            const Vec p = contour.core[corner] + Vec{shapes.real(-reach, reach), shapes.real(-reach, reach)};
            const double away = shape::gap_between(contour, {{p}, 0}).mm - by;
            if (std::abs(away) < 2 * sagitta) continue;
            (away < 0 ? inside : outside) += 1;
            const int times = windings(path, p);
            EXPECT_TRUE(away < 0 ? times > 0 : times == 0) << times << " of seed " << seed;
        }
    }
    EXPECT_GT(inside, 3000);
    EXPECT_GT(outside, 3000);
}

TEST(Coverage, pairs_and_crowds_put_the_union_right) {
    for (unsigned seed = 0; seed < 40; ++seed) {
        RandomShapes shapes(seed);
        std::vector<Footprint> feet;
        double alone = 0;
        for (int i = 0; i < 7; ++i) {
            feet.push_back(footprint(shapes.next(), 2));
            alone += union_area(feet.back());
        }
        double pairs = 0;
        for (std::size_t i = 0; i < feet.size(); ++i)
            for (std::size_t j = 0; j < i; ++j) pairs += area_of({feet[i], feet[j]}, Counting::shared);
        EXPECT_NEAR(area_of(feet, Counting::shared), pairs, 1e-6);
        EXPECT_NEAR(area_of(feet, Counting::any), alone - pairs + area_of(feet, Counting::crowded), 1e-6);
    }
}

TEST(Coverage, windows_and_openings_divide_an_area) {
    RandomShapes shapes(7);
    std::vector<Footprint> feet;
    for (int i = 0; i < 6; ++i) feet.push_back(footprint(shapes.next(), 1));
    const double whole = area_of(feet, Counting::any);
    double sum = 0;
    for (int x = -3; x < 5; ++x)
        for (int y = -5; y < 8; ++y)
            sum += area_of(feet, Counting::any, {Box{{x * 25., y * 17.}, {x * 25. + 25, y * 17. + 17}}});
    EXPECT_NEAR(sum, whole, 1e-7);

    Footprint opening = footprint(at(Rectangle{50, 40, 0}, 30, 30, 10));
    opening.add(shape::Ring{{20, 20}, {20, 30}, {30, 30}, {30, 20}}); // a hole, clockwise
    const Field inside{Box{{-1e3, -1e3}, {1e3, 1e3}}, &opening, false};
    const Field outside{Box{{-1e3, -1e3}, {1e3, 1e3}}, &opening, true};
    EXPECT_NEAR(area_of(feet, Counting::any, inside) + area_of(feet, Counting::any, outside), whole, 1e-7);
    EXPECT_NEAR(area_of({footprint(at(Rectangle{200, 200, 0}, 0, 0))}, Counting::any, inside), 1900, 1e-9);
}

TEST(Coverage, does_not_depend_on_place_and_turn) {
    RandomShapes shapes(11);
    const Footprint one = footprint(shapes.next(), 2);
    const Footprint two = footprint(shapes.next(), 2);
    const double still = area_of({one, two}, Counting::shared);
    for (const double degrees : {30.0, 90.0, 211.7}) {
        const shape::Turn turn = shape::Turn::of_degrees(degrees);
        const Vec by{310.25, -77.5};
        const Placed placed[] = {{&one, turn, by}, {&two, turn, by}};
        EXPECT_NEAR(Coverage().area(placed, {Box{{-1e3, -1e3}, {1e3, 1e3}}}, Counting::shared), still,
                    1e-9 * still + 1e-9);
    }
}

} // namespace
} // namespace drawercast::casting
