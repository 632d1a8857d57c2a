// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/fillet.h"
#include "casting/form_casting.h"

#include "core/casting/builders.h"

#include <gtest/gtest.h>

#include <cmath>

namespace drawercast::casting {
namespace {

using built::cut;
using built::form;
using shape::Capsule;
using shape::Circle;
using shape::Polygon;
using shape::Rectangle;

TEST(Quadrature, gauss_is_exact_up_to_its_degree) {
    for (int count = 1; count <= 24; ++count) {
        const auto nodes = gauss_nodes(count, -1, 2);
        double weights = 0;
        for (const Node& node : nodes) weights += node.weight;
        EXPECT_NEAR(weights, 3, 1e-13);
        const int degree = std::min(2 * count - 1, 17);
        double sum = 0;
        for (const Node& node : nodes) sum += node.weight * std::pow(node.at, degree);
        const double exact = (std::pow(2.0, degree + 1) - std::pow(-1.0, degree + 1)) / (degree + 1);
        EXPECT_NEAR(sum, exact, 1e-12 * std::abs(exact)) << count;
    }
}

TEST(Quadrature, curve_through_points) {
    const auto cubic = [](double x) { return 2 + x - 3 * x * x + 0.5 * x * x * x; };
    std::vector<shape::Vec> points;
    for (const double x : {0.0, 0.2, 0.9, 1.1, 1.7, 2.0}) points.push_back({x, cubic(x)});
    EXPECT_NEAR(integral_through(points), 4 + 2 - 8 + 2, 1e-12);
    EXPECT_DOUBLE_EQ(integral_through(std::vector<shape::Vec>{{1, 0}, {3, 0}}), 0);
    EXPECT_DOUBLE_EQ(integral_through(std::vector<shape::Vec>{{0, 0}, {1, 4}, {2, 0}}),
                     16.0 / 3); // a parabola
}

TEST(Clay, reach_and_height_are_one_curve) {
    EXPECT_DOUBLE_EQ(clay_reach(5, 0), 5);
    EXPECT_DOUBLE_EQ(clay_reach(5, 5), 0);
    EXPECT_DOUBLE_EQ(clay_reach(5, 9), 0);
    for (double z = 0.1; z < 5; z += 0.3) EXPECT_NEAR(clay_height(5, clay_reach(5, z)), z, 1e-12);
}

TEST(Clay, closed_form_grows_with_the_radius_as_it_should) {
    // A·P grows with r², the corners' part with r³
    const shape::Contour square = built::contour(Rectangle{50, 50, 0});
    const double one = fillet_alone(square, 1);
    const double per_area = 1 - 3.14159265358979324 / 4;
    const double corner = one - per_area * 200;
    EXPECT_NEAR(fillet_alone(square, 6), per_area * 36 * 200 + corner * 216, 1e-9);
}

TEST(Clay, finer_heights_converge_to_the_closed_form) {
    struct Row {
        const char* name;
        shape::Given outline;
        double limit = 1e-8; ///< of the error with the nodes we use
    };
    const Row rows[] = {
        {"rectangle", Rectangle{60, 30, 0}},
        {"rounded", Rectangle{60, 30, 8}},
        {"circle", Circle{24}},
        {"capsule", Capsule{60, 20}},
        {"ell", Polygon{{{{0, 0}}, {{60, 0}}, {{60, 25}}, {{25, 25}}, {{25, 50}}, {{0, 50}}}}},
        {"tee",
         Polygon{
             {{{0, 0}}, {{60, 0}}, {{60, 20}}, {{40, 20}}, {{40, 50}}, {{20, 50}}, {{20, 20}}, {{0, 20}}}}},
        {"bulge", Polygon{{{{0, 0}, 6}, {{40, 0}, 0}, {{40, 30}, -5}, {{0, 30}, 0}}},
         1e-6}, // its arcs are chords already
    };
    for (const Row& row : rows) {
        const auto one = form({cut(row.outline, 30)});
        const double exact = fillet_alone(one->cuts[0].outline.contour, 5);
        const auto error = [&](int nodes) {
            return std::abs(fillet_by_areas(one->cuts, 40, 5, nodes) - exact) / exact;
        };
        EXPECT_LT(error(2), 2e-2) << row.name;
        EXPECT_LT(error(4), 5e-5) << row.name;
        EXPECT_LT(error(8), 1e-6) << row.name;
        EXPECT_LT(error(own_clay_nodes), row.limit) << row.name;
    }
}

TEST(Clay, nodes_suffice_where_clay_meets_itself) {
    const auto slot = form({cut(
        Polygon{{{{0, 0}}, {{36, 0}}, {{36, 30}}, {{21, 30}}, {{21, 8}}, {{15, 8}}, {{15, 30}}, {{0, 30}}}},
        25)});
    const double fine = fillet_by_areas(slot->cuts, 40, 5, 400);
    EXPECT_NEAR(fillet_by_areas(slot->cuts, 40, 5, own_clay_nodes), fine, 1e-3 * fine);
    EXPECT_LT(fine, fillet_alone(slot->cuts[0].outline.contour, 5)); // the slot is not filled twice
}

TEST(Clay, is_as_high_as_its_block_where_that_is_lower) {
    const auto low = form({cut(Rectangle{60, 30, 0}, 2)});
    EXPECT_NEAR(casting_of({low, {}, 40, 5}).fillet_mm3, fillet_alone(low->cuts[0].outline.contour, 2), 1e-9);
    const auto both = form({cut(Rectangle{60, 30, 0}, 2), cut(Rectangle{20, 10, 0}, 30, {{70, 0}, 0})});
    EXPECT_NEAR(fillet_by_areas(both->cuts, 40, 5, own_clay_nodes), casting_of({both, {}, 40, 5}).fillet_mm3,
                1e-5);
}

} // namespace
} // namespace drawercast::casting
