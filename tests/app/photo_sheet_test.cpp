// SPDX-License-Identifier: GPL-3.0-or-later
// The measuring sheet as it comes from the printer: its ink is read back from the PDF, and a picture of it is
// measured by what it was made for.
#include "capture/measure.h"

#include "app/pdf_reader.h"
#include "app/sheet_picture.h"
#include "print/pdf.h"
#include "print/photo_sheet.h"

#include <QFile>
#include <QImage>
#include <QPainter>
#include <QTransform>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace drawercast::print {
namespace {

const Printing today{QStringLiteral("Drawercast"), QStringLiteral("today")};

QByteArray pdf(Paper paper) {
    return pdf_of({photo_sheet(paper, today)}, QStringLiteral("test"), today.program);
}

class PhotoSheet : public ::testing::TestWithParam<Paper> {
  protected:
    capture::SheetSize sheet() const { return photo_sheet_size(GetParam()); }
};

TEST_P(PhotoSheet, the_marks_are_where_they_are_looked_for) {
    const auto pages = test::read_pdf(pdf(GetParam()));
    ASSERT_EQ(pages.size(), 1U);
    const auto places = capture::target_places(sheet());
    ASSERT_EQ(places.size(), 10U);
    for (std::size_t i = 0; i < places.size(); ++i) {
        const Vec place{places[i].x, pages[0].height_mm - places[i].y}; // the file's y points up
        int here = 0;
        for (const auto& path : pages[0].paths) {
            const Box box = path.box();
            if (!path.filled || std::abs(box.width() - 2 * capture::target_tip_mm) > 0.05) continue;
            const Vec off = box.center() - place;
            if (std::hypot(off.x, off.y) > 0.2) continue; // whole points of the page's height
            ++here;
            const auto rings = std::count(path.kinds.begin(), path.kinds.end(), 'm');
            EXPECT_EQ(rings, capture::target_dotted(sheet(), i) ? 3 : 2);
            EXPECT_NEAR(box.height(), 2 * capture::target_tip_mm, 0.05);
        }
        EXPECT_EQ(here, 1) << "mark " << i;
    }
}

TEST_P(PhotoSheet, its_scales_measure_what_they_say_both_ways) {
    const auto pages = test::read_pdf(pdf(GetParam()));
    for (const double length : {100.0, 101.6})
        for (const bool upright : {false, true})
            EXPECT_TRUE(std::any_of(pages[0].paths.begin(), pages[0].paths.end(), [&](const auto& path) {
                const Box box = path.box();
                return path.stroked && std::abs((upright ? box.height() : box.width()) - length) < 0.02 &&
                       (upright ? box.width() : box.height()) < 0.01;
            })) << length;
}

TEST_P(PhotoSheet, the_field_is_bare_and_the_ink_reaches_no_edge) {
    const auto pages = test::read_pdf(pdf(GetParam()));
    const Box paper{{0, 0}, {sheet().width_mm, sheet().height_mm}};
    const Box field = paper.grown(-capture::field_inset_mm), reach = paper.grown(-5.9);
    for (const auto& path : pages[0].paths) {
        if (!path.stroked && !path.filled) continue;
        const Box box = path.box();
        EXPECT_TRUE(box.max.x < field.min.x || box.min.x > field.max.x || box.max.y < field.min.y ||
                    box.min.y > field.max.y ||
                    (box.min.x < field.min.x && box.max.x > field.max.x && box.min.y < field.min.y &&
                     box.max.y > field.max.y))
            << box.min.x << " " << box.min.y << " " << box.max.x << " " << box.max.y;
        EXPECT_TRUE(box.min.x >= reach.min.x && box.min.y >= reach.min.y && box.max.x <= reach.max.x &&
                    box.max.y <= reach.max.y);
    }
}

TEST_P(PhotoSheet, what_lies_on_its_picture_is_measured) {
    if (!capture::available()) GTEST_SKIP() << "built without the measuring of pictures";
    const QPolygonF thing({{60, 90}, {130, 90}, {130, 120}, {95, 120}, {95, 170}, {60, 170}});
    capture::Shot shot;
    shot.sheet = sheet();
    const std::string picture = test::sheet_picture(GetParam(), thing);
    const auto flat = capture::flattened(picture, shot);
    ASSERT_TRUE(flat) << one_line(flat.error());
    EXPECT_LT(flat->misfit_mm, 0.1);
    const auto traced = capture::traced_objects(*flat, {});
    ASSERT_TRUE(traced) << one_line(traced.error());
    ASSERT_EQ(traced->outlines.size(), 1U);
    const auto contour = shape::contour_of(traced->outlines[0].polygon);
    ASSERT_TRUE(contour);
    EXPECT_NEAR(shape::bounds(*contour).width(), 70, 0.3);
    EXPECT_NEAR(shape::bounds(*contour).height(), 80, 0.3);
    EXPECT_NEAR(shape::area(*contour), 70 * 30 + 35 * 50, 0.15 * 300); // its way around, 0.15 mm off
    const double field_high = sheet().height_mm - 2 * capture::field_inset_mm;
    EXPECT_NEAR(traced->outlines[0].at.x, 95 - capture::field_inset_mm, 0.3);
    EXPECT_NEAR(traced->outlines[0].at.y, field_high - (130 - capture::field_inset_mm), 0.3);
    shot.sheet = GetParam() == Paper::a4 ? capture::sheet_letter : capture::sheet_a4;
    EXPECT_FALSE(capture::flattened(picture, shot)); // the other paper is told apart
}

INSTANTIATE_TEST_SUITE_P(Papers, PhotoSheet, ::testing::Values(Paper::a4, Paper::letter));

} // namespace
} // namespace drawercast::print
