// SPDX-License-Identifier: GPL-3.0-or-later
#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "forms/drawing_file.h"
#include "forms/outline_form.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>

#include <numbers>

namespace drawercast::app {
namespace {

using shape::Polygon;

Polygon square() { return {{{{0, 0}}, {{40, 0}}, {{40, 30}}, {{0, 30}}}}; }

void drag(OutlineBoard& board, shape::Vec from, shape::Vec to, Qt::Key before_release = Qt::Key_unknown) {
    const auto a = board.to_px(from).toPoint(), b = board.to_px(to).toPoint();
    QTest::mousePress(&board, Qt::LeftButton, {}, a);
    QTest::mouseMove(&board, (a + b) / 2);
    QTest::mouseMove(&board, b);
    if (before_release != Qt::Key_unknown) QTest::keyClick(&board, before_release);
    QTest::mouseRelease(&board, Qt::LeftButton, {}, b);
}

TEST(OutlineActs, a_pulled_arc_passes_its_point_and_both_mirrors_come_back) {
    const auto arc = outline::with_arc(square(), 1, 12);
    EXPECT_EQ(outline::middle_of(arc, 1), (shape::Vec{52, 15}));
    EXPECT_NEAR(outline::sagitta_through(arc, 1, {47, 15}, 0.5), 7, 1e-9);
    EXPECT_EQ(outline::sagitta_through(arc, 1, {40.2, 15}, 0.5), 0);
    for (const auto way : {outline::Mirror::left_right, outline::Mirror::front_back}) {
        const auto once = outline::mirrored(arc, way);
        EXPECT_NEAR(shape::area(*shape::contour_of(once)), shape::area(*shape::contour_of(arc)), 1e-3);
        EXPECT_EQ(outline::mirrored(once, way), arc);
    }
}

/// A half circle parted anywhere is the same half circle: its area is π·r²/2 (Archimedes).
TEST(OutlineActs, a_corner_on_an_arc_keeps_the_circle) {
    const auto half = outline::with_arc(square(), 1, 15);
    const auto parted = outline::with_corner_on_side(half, 1, {53, 22});
    EXPECT_EQ(parted.corners.size(), 5U);
    EXPECT_NEAR(shape::area(*shape::contour_of(parted)), 1200 + std::numbers::pi * 225 / 2, 0.1);
}

TEST(OutlineActs, what_looks_like_one_point_moves_as_one) {
    const auto near = outline::with_corner_on_side(square(), 1, {40, 0.5}); // beside the lower right corner
    const auto moved = outline::with_point_at(near, 1, {46, -6}, 1);
    EXPECT_EQ(moved.corners[1].at, (shape::Vec{46, -6}));
    EXPECT_EQ(moved.corners[2].at, (shape::Vec{46, -5.5}));
    EXPECT_EQ(outline::with_point_at(near, 2, {46, -5.5}, 1), moved) << "whichever of the two is taken";
    EXPECT_EQ(moved.corners[3], near.corners[3]);
    EXPECT_EQ(outline::with_point_at(near, 1, {46, -6}, 0.1), outline::with_corner_at(near, 1, {46, -6}));
    const auto all = outline::with_point_at(square(), 0, {5, 5}, 1000);
    auto moved_once = square();
    for (auto& corner : moved_once.corners) corner.at = corner.at + shape::Vec{5, 5};
    EXPECT_EQ(all, moved_once) << "each once, though all are near";
    EXPECT_EQ(outline::with_point_at(square(), 9, {1, 1}, 1), square());
}

TEST(OutlineActs, sizes_as_typed) {
    const auto wide = outline::with_size(square(), 80, 30);
    EXPECT_DOUBLE_EQ(outline::box_of(wide).width(), 80);
    EXPECT_EQ(outline::with_side_length(square(), 0, 25).corners[1].at, (shape::Vec{25, 0}));
    EXPECT_EQ(outline::without_corner({{{{0, 0}}, {{1, 0}}, {{0, 1}}}}, 1).corners.size(), 3U);
}

TEST(OutlineForm, corners_are_dragged_on_the_grid_and_each_act_is_one_undo) {
    test::dressed_application();
    OutlineForm form(square(), {});
    test::open(form);
    auto& board = form.board();
    drag(board, {40, 30}, {50.3, 34.6});
    EXPECT_EQ(board.polygon().corners[2].at, (shape::Vec{50, 35}));
    drag(board, outline::middle_of(board.polygon(), 0), {20, -8});
    EXPECT_EQ(board.polygon().corners[0].sagitta_mm, 8);
    QTest::mouseDClick(&board, Qt::LeftButton, {}, board.to_px({0, 20}).toPoint());
    EXPECT_EQ(board.polygon().corners.size(), 5U);
    const auto end = board.polygon();
    for (int i = 0; i < 3; ++i) test::button(form, "Undo").click();
    EXPECT_EQ(board.polygon(), square());
    EXPECT_FALSE(test::button(form, "Undo").isEnabled());
    for (int i = 0; i < 3; ++i) test::button(form, "Redo").click();
    EXPECT_EQ(board.polygon(), end);
}

TEST(OutlineForm, in_inches_the_grid_is_of_sixteenths) {
    test::dressed_application();
    FormContext context;
    context.units = job::DisplayUnits::inch;
    OutlineForm form(square(), context);
    test::open(form);
    drag(form.board(), {40, 30}, {50.3, 34.6});
    EXPECT_EQ(form.board().polygon().corners[2].at, (shape::Vec{50.8, 34.925}));
}

TEST(OutlineForm, what_is_given_can_be_taken_as_it_is) {
    test::dressed_application();
    OutlineForm form(square(), {});
    test::open(form);
    EXPECT_EQ(form.value(), square());
    EXPECT_TRUE(test::take_button(form).isEnabled());
}

TEST(OutlineForm, escape_takes_a_drag_back_and_leaves_the_form_open) {
    test::dressed_application();
    OutlineForm form(square(), {});
    test::open(form);
    form.board().setFocus();
    drag(form.board(), {40, 30}, {60, 50}, Qt::Key_Escape);
    EXPECT_EQ(form.board().polygon(), square());
    EXPECT_TRUE(form.isVisible());
}

TEST(OutlineForm, a_crossing_is_told_while_it_is_drawn_and_not_taken) {
    test::dressed_application();
    OutlineForm form(square(), {});
    test::open(form);
    drag(form.board(), {40, 30}, {-10, 10});
    EXPECT_FALSE(form.value());
    EXPECT_FALSE(test::take_button(form).isEnabled());
    EXPECT_TRUE(test::to_mend_button(form).text().contains(QStringLiteral("crosses itself at")));
    test::button(form, "Undo").click();
    EXPECT_TRUE(form.value());
}

TEST(OutlineForm, typed_figures_of_the_chosen_corner) {
    test::dressed_application();
    OutlineForm form(square(), {});
    test::open(form);
    form.board().choose(1);
    test::type(form, "x", "44.5");
    EXPECT_EQ(form.board().polygon().corners[1].at, (shape::Vec{44.5, 0}));
    test::type(form, "x", "4.6 cm"); // shown otherwise than typed
    EXPECT_EQ(form.board().polygon().corners[1].at, (shape::Vec{46, 0}));
    test::type(form, "Arc height", "5");
    EXPECT_EQ(form.board().polygon().corners[1].sagitta_mm, 5);
    test::type(form, "Width, along y", "60");
    EXPECT_NEAR(outline::box_of(form.board().polygon()).height(), 60, 1e-5);
    test::expect_named_and_reached_by_tab(form);
}

TEST(DrawingFile, says_where_a_file_is_wrong) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a.svg"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("<svg width='10mm' viewBox='0 0 10 10'>\n<path d='M1 1H9V9Q'/></svg>");
    file.close();
    const auto read = read_drawing_file(path);
    ASSERT_FALSE(read);
    EXPECT_EQ(english(read.error().where), "line 2, column 1");
    EXPECT_FALSE(read_drawing_file(folder.filePath(QStringLiteral("none.svg"))));
}

} // namespace
} // namespace drawercast::app
