// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/svg_outlines.h"
#include "shape/contour.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace drawercast::job {
namespace {

constexpr double pi = std::numbers::pi;

std::string drawing(const std::string& inside,
                    const std::string& root = "width='100mm' height='100mm' viewBox='0 0 100 100'") {
    return "<?xml version='1.0'?>\n<svg xmlns='http://www.w3.org/2000/svg' " + root + ">\n" + inside +
           "\n</svg>";
}

shape::Contour only(const std::string& text) {
    const auto read = svg_outlines(text);
    if (!read) {
        ADD_FAILURE() << one_line(read.error());
        return {};
    }
    EXPECT_EQ(read->outlines.size(), 1U);
    const auto contour = shape::contour_of(read->outlines.front().polygon);
    EXPECT_TRUE(contour) << (contour ? "" : one_line(contour.error()));
    return contour ? *contour : shape::Contour{};
}

double area_of(const std::string& inside) { return shape::area(only(drawing(inside))); }

TEST(SvgOutlines, sizes_by_width_and_view_box) {
    const auto box =
        shape::bounds(only(drawing("<path d='M10 10h30v20h-30z'/>", "width='5in' viewBox='0 0 100 50'")));
    EXPECT_NEAR(box.width(), 30 * 127.0 / 100, 1e-5);
    EXPECT_NEAR(box.height(), 20 * 127.0 / 100, 1e-5);
    EXPECT_NEAR(box.center().x, 0, 1e-6);
}

TEST(SvgOutlines, without_a_size_96_units_are_an_inch_and_that_is_said) {
    const auto read = svg_outlines(drawing("<rect width='96' height='48'/>", ""));
    ASSERT_TRUE(read);
    EXPECT_FALSE(read->sized);
    ASSERT_FALSE(read->notes.empty());
    EXPECT_NEAR(shape::bounds(*shape::contour_of(read->outlines[0].polygon)).width(), 25.4, 1e-6);
}

/// Areas of the figures themselves: Euclid for circles and rectangles; 2/3 of base by height under a parabola
/// (Archimedes); π·a·b for an ellipse.
TEST(SvgOutlines, areas_of_known_figures) {
    EXPECT_NEAR(area_of("<circle cx='50' cy='50' r='20'/>"), pi * 400, 0.1);
    EXPECT_NEAR(area_of("<ellipse cx='50' cy='50' rx='30' ry='10'/>"), pi * 300, 0.8);
    EXPECT_NEAR(area_of("<rect x='1' y='2' width='40' height='20' rx='5'/>"), 800 - (4 - pi) * 25, 0.05);
    EXPECT_NEAR(area_of("<path d='M10 50 Q 40 10 70 50 Z'/>"), 2.0 / 3 * 60 * 20, 0.6);
    EXPECT_NEAR(area_of("<path d='M10,10 A10 10 0 0 1 30 10 Z'/>"), pi * 50, 0.05);
    EXPECT_NEAR(area_of("<path d='M10,10 A10 10 0 1 0 20 20 L20 10 Z'/>"), pi * 75 + 100, 0.05);
    EXPECT_NEAR(area_of("<polygon points='0,0 10,0 10,10'/>"), 50, 1e-6);
    EXPECT_NEAR(area_of("<path d='m10 10 20 0 0 20-20 0z'/>"), 400, 1e-6);
    EXPECT_NEAR(area_of("<path d='M0 0H10L10 5.5.0 5.5Z'/>"), 55, 1e-6) << "numbers run together";
}

TEST(SvgOutlines, circles_stay_arcs_where_they_stay_round) {
    const auto arcs = [](const std::string& inside) {
        const auto read = svg_outlines(drawing(inside));
        return read ? read->outlines.front().polygon.corners.size() : 0;
    };
    EXPECT_EQ(arcs("<circle cx='5' cy='5' r='4'/>"), 4U);
    EXPECT_EQ(arcs("<g transform='rotate(30) scale(-2 2)'><circle cx='5' cy='5' r='4'/></g>"), 4U);
    EXPECT_GT(arcs("<g transform='scale(2 1)'><circle cx='5' cy='5' r='4'/></g>"), 20U);
}

TEST(SvgOutlines, transforms_multiply_the_area_by_their_determinant) {
    EXPECT_NEAR(area_of("<g transform='translate(3,4) scale(2)'><rect transform='rotate(33 5 5) skewX(20)' "
                        "width='7' height='3'/></g>"),
                84, 1e-4);
    EXPECT_NEAR(area_of("<path transform='matrix(1 2 3 4 5 6)' d='M0 0h4v4h-4z'/>"), 32, 1e-5);
    EXPECT_NEAR(area_of("<path transform='scale(-1 1)' d='M10,10 A10 10 0 0 1 30 10 Z'/>"), pi * 50, 0.05);
}

/// Each point of a chord is within the tolerance of the curve, whose points are (t, by de Casteljau) ours to
/// work out.
TEST(SvgOutlines, a_cubic_is_within_a_hundredth) {
    const auto contour = only(drawing("<path d='M10 50 C 20 10 60 10 80 50 Z'/>"));
    const auto shift = shape::Vec{45, -35};
    double worst = 0;
    for (int i = 0; i <= 2000; ++i) {
        const double t = i / 2000.0, u = 1 - t;
        const shape::Vec on{u * u * u * 10 + 3 * u * u * t * 20 + 3 * u * t * t * 60 + t * t * t * 80,
                            -(u * u * u * 50 + 3 * u * u * t * 10 + 3 * u * t * t * 10 + t * t * t * 50)};
        double nearest = 1e9;
        for (std::size_t k = 0; k < contour.core.size(); ++k) {
            const auto a = contour.core[k] + shift, b = contour.core[(k + 1) % contour.core.size()] + shift;
            const double along = std::clamp(dot(on - a, b - a) / dot(b - a, b - a), 0.0, 1.0);
            nearest = std::min(nearest, length(a + (b - a) * along - on));
        }
        worst = std::max(worst, nearest);
    }
    EXPECT_LE(worst, 0.0101);
}

TEST(SvgOutlines, faults_say_where) {
    const auto fault = [](const std::string& text) {
        const auto read = svg_outlines(text);
        return read ? std::string() : one_line(read.error());
    };
    EXPECT_NE(fault(drawing("<path d='M0 0 L5 x'/>")).find("line 3, column 1"), std::string::npos);
    EXPECT_NE(fault(drawing("<path d='M0 0 L5 x'/>")).find("character 9"), std::string::npos);
    EXPECT_NE(fault(drawing("<path d='L5 5'/>")).find("begins with M"), std::string::npos);
    EXPECT_NE(fault(drawing("<path d='M0 0 A1 1 0 2 0 3 3'/>")).find("0 or 1"), std::string::npos);
    EXPECT_NE(fault(drawing("<g transform='turn(3)'/>")).find("transform"), std::string::npos);
    EXPECT_NE(fault(drawing("<rect width='wide' height='3'/>")).find("width"), std::string::npos);
    EXPECT_NE(fault("hello").find("no drawing"), std::string::npos);
    EXPECT_NE(fault("<html/>").find("<svg>"), std::string::npos);
    EXPECT_NE(fault("<svg><g></svg>").find("not begun"), std::string::npos);
    EXPECT_NE(fault(drawing("<text/>")).find("no closed outline"), std::string::npos);
}

TEST(SvgOutlines, hostile_files_are_refused) {
    EXPECT_FALSE(svg_outlines("<!DOCTYPE svg [<!ENTITY a 'aaaa'>]><svg/>"));
    EXPECT_FALSE(svg_outlines(drawing("<rect width='&a;' height='1'/>")));
    std::string deep = "<svg>";
    for (int i = 0; i < 200; ++i) deep += "<g>";
    EXPECT_FALSE(svg_outlines(deep));
    std::string many = "<path d='M0 0";
    for (int i = 0; i < 6000; ++i) many += " L" + std::to_string(i % 7) + " " + std::to_string(i);
    EXPECT_FALSE(svg_outlines(drawing(many + "'/>")));
    EXPECT_FALSE(svg_outlines(std::string(8'000'001, ' ')));
    EXPECT_FALSE(svg_outlines(drawing("<path d='M0 0 L1e300 0 L0 5z'/>")));
}

TEST(SvgOutlines, what_only_describes_is_left_out_and_the_largest_comes_first) {
    const auto read =
        svg_outlines(drawing("<defs><rect width='90' height='90'/></defs><rect id='small' width='5' "
                             "height='5'/><rect id='large' width='9' height='9'/><text>x</text>"));
    ASSERT_TRUE(read);
    ASSERT_EQ(read->outlines.size(), 2U);
    EXPECT_EQ(read->outlines[0].name, "large");
    ASSERT_EQ(read->notes.size(), 1U);
}

} // namespace
} // namespace drawercast::job
