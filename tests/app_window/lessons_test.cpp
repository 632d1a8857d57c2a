// SPDX-License-Identifier: GPL-3.0-or-later
// Twelve promises of the drawing part, each held to here by the test of its number. Most are tried further
// where they belong; the table says where.
//
//  1  one to one is one to one                   app/ink_test.cpp, app/plate_ink_test.cpp, print_test.cpp
//  2  no scale is remembered by accident         here
//  3  margins eat nothing                        app/ink_test.cpp, print_test.cpp
//  4  tiles can be joined                        app/rejoin_test.cpp
//  5  no line vanishes on paper or dense screens app_theme/style_test.cpp
//  6  snapping is predictable                    core/layout/snap_test.cpp
//  7  the drop is the picture                    canvas_test.cpp
//  8  one key frees every tool of snapping       canvas_test.cpp, app_forms/outline_form_test.cpp
//  9  one act is one undo, and all of it         canvas_test.cpp, hand_acts_test.cpp, core/job/edit_test.cpp
// 10  units are a way of showing                 core/base/length_test.cpp, app_forms/value_edit_test.cpp
// 11  large text, dense screens, many pockets    canvas_paint_test.cpp, app_theme/icons_test.cpp
// 12  unsaved work outlives the program          autosave_test.cpp, killed_test.cpp, core/job/store_test.cpp
#include "job/read.h"
#include "job/write.h"

#include "app/pdf_reader.h"
#include "app_window/hand.h"
#include "document/autosave.h"
#include "document/dragged.h"
#include "panes/checks_model.h"
#include "panes/objects_model.h"
#include "print/pdf.h"
#include "print/templates.h"
#include "print/tiling.h"
#include "sheets/paint.h"
#include "theme/pens.h"
#include "window/appearance.h"

#include <QDragEnterEvent>
#include <QLabel>
#include <QListView>
#include <QMimeData>
#include <QPainter>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <QToolButton>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace drawercast::app {
namespace {

using shape::Vec;
using test::Desktop;
using test::Hand;

const print::Printing today{QStringLiteral("Drawercast"), QStringLiteral("today")};

std::vector<test::InkPage> printed(const Document& document, print::Orientation orientation) {
    return test::read_pdf(print::pdf_of(
        print::template_pages(document.job(), document.plan(),
                              {print::Paper::a4, orientation, print::TemplateKind::pattern_board}, today),
        QStringLiteral("Field service"), today.program));
}

bool has_length(const test::InkPage& page, double mm, bool upright) {
    return std::any_of(page.paths.begin(), page.paths.end(), [&](const test::InkPath& path) {
        const auto box = path.box();
        const double along = upright ? box.height() : box.width(),
                     across = upright ? box.width() : box.height();
        return path.stroked && across < 10 && std::abs(along - mm) < 0.05;
    });
}

class Lesson : public testing::Test {
  protected:
    Desktop desk;
    Document& document = desk.window.document();
    SheetCanvas& canvas = desk.window.sheets().canvas();
    Hand hand{desk};
    Vec at(const std::string& subject) { return test::pocket(desk, subject)->pose.at; }
};

TEST_F(Lesson, l01_one_to_one_is_one_to_one_in_both_orientations_of_one_run) {
    desk.open_demo();
    using print::Orientation;
    for (const auto orientation : {Orientation::portrait, Orientation::landscape, Orientation::portrait}) {
        const auto pages = printed(document, orientation);
        const auto ruled = std::count_if(pages.begin(), pages.end(), [](const auto& page) {
            return has_length(page, 100, false) && has_length(page, 100, true) &&
                   has_length(page, 101.6, false) && has_length(page, 101.6, true);
        });
        const auto covers = static_cast<std::ptrdiff_t>(document.job().drawers.size());
        EXPECT_EQ(ruled, static_cast<std::ptrdiff_t>(pages.size()) - covers) << "every tile has its rulers";
        EXPECT_GT(ruled, 4);
    }
}

TEST_F(Lesson, l02_what_is_printed_reads_the_job_and_the_paper_alone) {
    desk.open_demo();
    const auto pages = [&] {
        std::vector<Vec> points;
        for (const auto& page : printed(document, print::Orientation::portrait))
            for (const auto& path : page.paths)
                points.insert(points.end(), path.points.begin(), path.points.end());
        return points;
    };
    const auto before = pages();
    ASSERT_FALSE(before.empty());
    canvas.zoom_by(3.7);
    canvas.pan({120, 40});
    desk.preferences.set_grid_mm(7);
    desk.preferences.set_text_scale(2);
    desk.window.sheets().show_sheet(SheetId::pattern_board);
    desk.window.actions()["job.save_as"]->trigger();
    ASSERT_TRUE(desk.window.job_acts().open(document.path()));
    const auto after = pages();
    ASSERT_EQ(after.size(), before.size());
    for (std::size_t i = 0; i < after.size(); ++i) ASSERT_EQ(after[i], before[i]) << i;
    desk.preferences.set_text_scale(1);
}

TEST_F(Lesson, l03_nothing_lies_in_a_printers_margin_of_the_pages_the_preview_shows) {
    desk.open_demo();
    constexpr double margin_mm = 4.9; // what common printers can't reach
    const auto pages = print::template_pages(
        document.job(), document.plan(), {print::Paper::a4, {}, print::TemplateKind::pattern_board}, today);
    ASSERT_GT(pages.size(), 3U);
    for (const auto& page : pages) { // as it is painted, clipped parts and all
        constexpr int px_per_mm = 4;
        QImage image(static_cast<int>(page.size_mm.x * px_per_mm),
                     static_cast<int>(page.size_mm.y * px_per_mm), QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.scale(px_per_mm / theme::px_per_mm, px_per_mm / theme::px_per_mm);
        sheets::paint(page.inks, painter);
        painter.end();
        const int edge = static_cast<int>(margin_mm * px_per_mm);
        const QRect safe = image.rect().adjusted(edge, edge, -edge, -edge);
        int outside = 0, inside = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                if (qGray(image.pixel(x, y)) < 200) ++(safe.contains(x, y) ? inside : outside);
        EXPECT_EQ(outside, 0) << page.name.toStdString();
        EXPECT_GT(inside, 1000);
    }
}

TEST_F(Lesson, l04_tiles_overlap_carry_joints_and_empty_ones_are_left_out) {
    const auto only_left = [](const print::Box& box) { return box.min.x < 200; };
    const auto tiling =
        print::tiled({{0, 0}, {700, 500}}, {190, 277}, print::Orientation::portrait, only_left);
    ASSERT_GT(tiling.columns, 2);
    EXPECT_LT(tiling.printed(), tiling.columns * tiling.rows);
    for (const auto& tile : tiling.tiles)
        if (const auto* next = tiling.at(tile.column + 1, tile.row)) {
            EXPECT_GE(tile.area_mm.max.x - next->area_mm.min.x, 8) << tile.name();
            EXPECT_GT(tiling.joint_x(tile.column), next->area_mm.min.x);
            EXPECT_LT(tiling.joint_x(tile.column), tile.area_mm.max.x);
        }
}

TEST_F(Lesson, l05_lines_have_a_width_on_paper_and_grow_with_the_screens_pixels) {
    const auto theme = theme::light_theme();
    for (int i = 0; i <= static_cast<int>(theme::LineRole::rule); ++i) {
        const auto role = static_cast<theme::LineRole>(i);
        const double one = theme::pen_of(role, theme, theme::Medium::screen, 1).width;
        const double two = theme::pen_of(role, theme, theme::Medium::screen, 2).width;
        EXPECT_GE(one, 0.5) << i;
        EXPECT_NEAR(two, 2 * one, 1e-9) << i;
        const double paper_px = theme::pen_of(role, theme, theme::Medium::paper, 1).width;
        EXPECT_GE(paper_px / theme::px_per_mm, 0.125) << i;
    }
    desk.open_demo();
    for (const auto& page : printed(document, print::Orientation::portrait))
        for (const auto& path : page.paths)
            if (path.stroked) {
                EXPECT_GE(path.width_mm, 0.12);
            }
}

TEST_F(Lesson, l06_snapping_reaches_as_far_on_the_screen_at_any_zoom_and_in_a_fixed_order) {
    test::open_pockets(desk, {{100, 150}, {300, 153}});
    desk.preferences.set_snapping(true);
    for (const bool grid : {true, false}) { // what is only drawn attracts no less and no more
        desk.preferences.set_grid_shown(grid);
        desk.preferences.set_grid_mm(1000);
        for (const double zoom : {1.0, 2.0, 0.4}) {
            canvas.fit();
            canvas.zoom_by(zoom);
            const double px = 1 / canvas.view().px_per_mm();
            for (const double off : {7.0, -7.0, 9.5, -9.5}) { // px beside the line of the other's middle
                const Vec from = at("i1#2");
                document.commit("move", job::moved(document.job(), {"i1#2"}, Vec{300, 153} - from));
                hand.press({300, 153});
                hand.drag_on({300, 153}, {300, 190});
                hand.move({300, 150 + off * px});
                hand.release({300, 150 + off * px});
                EXPECT_EQ(std::abs(at("i1#2").y - 150) < 1e-6, std::abs(off) < 8) << zoom << ' ' << off;
            }
        }
    }
    EXPECT_LT(layout::SnapReason::edge, layout::SnapReason::wall);
    EXPECT_LT(layout::SnapReason::wall, layout::SnapReason::equal_walls);
    EXPECT_LT(layout::SnapReason::equal_walls, layout::SnapReason::centers_in_line);
    EXPECT_LT(layout::SnapReason::centers_in_line, layout::SnapReason::sides_in_line);
    EXPECT_LT(layout::SnapReason::sides_in_line, layout::SnapReason::grid);
}

TEST_F(Lesson, l07_what_is_stored_is_what_was_shown_and_the_shape_snaps_not_the_pointer) {
    test::open_pockets(desk, {{103.3, 151.7}, {300, 150}});
    desk.preferences.set_snapping(true);
    desk.preferences.set_grid_shown(true);
    desk.preferences.set_grid_mm(10);
    for (const Vec grabbed : {Vec{103.3, 151.7}, Vec{81, 130}, Vec{127.9, 176}}) {
        hand.press(grabbed);
        hand.drag_on(grabbed, grabbed + Vec{31.3, -41.1});
        const auto shown = document.shown();
        hand.release(grabbed + Vec{31.3, -41.1});
        EXPECT_EQ(document.job(), shown);
        const auto box = test::pocket(desk, "i1#1")->box;
        EXPECT_NEAR(std::remainder(box.min.y, 10), 0, 1e-6) << "its front edge is on the grid";
        document.undo_stack().undo();
    }
}

TEST_F(Lesson, l08_control_frees_every_tool_of_snapping) {
    test::open_pockets(desk, {{100, 150}, {300, 150}});
    desk.preferences.set_snapping(true);
    hand.held = Qt::ControlModifier;
    hand.drag({300, 150}, {306, 151.3}); // dragging
    EXPECT_NEAR(at("i1#2").y, 151.3, 1e-6);
    const Vec ring = hand.mm(hand.px({at("i1#2").x, test::pocket(desk, "i1#2")->box.max.y}) -
                             QPointF(0, SelectTool::ring_distance_px));
    hand.drag(ring, ring + Vec{7, -3}); // turning
    EXPECT_GT(std::abs(std::remainder(test::pocket(desk, "i1#2")->pose.turn_deg, 15)), 0.01);
    document.undo_stack().undo();
    desk.window.selection().choose_pockets({"i1#1"});
    hand.hover({100, 118});                          // at the front
    desk.window.actions()["place.notch"]->trigger(); // sliding a notch, a little off the middle of its side
    hand.drag({100, 115}, {103, 115});
    EXPECT_NEAR(job::find_pocket(document.job(), "i1#1").pocket->notches[0].pose.at.x, 3, 0.2);
    desk.window.actions()["place.measure"]->trigger(); // measuring
    hand.drag({130, 200}, {200, 201});
    EXPECT_EQ(canvas.measured_distance()->from.on, MeasurePoint::On::nothing);
    desk.window.actions()["place.measure"]->trigger();
    QMimeData data; // dropping an object
    data.setData(dragged_object, "i1");
    const QPoint px = hand.px({200, 151.2}).toPoint();
    QDragEnterEvent enter(px, Qt::CopyAction, &data, Qt::LeftButton, Qt::ControlModifier);
    QApplication::sendEvent(&canvas, &enter);
    QDragMoveEvent over(px, Qt::CopyAction, &data, Qt::LeftButton, Qt::ControlModifier);
    QApplication::sendEvent(&canvas, &over);
    const double free_y = hand.mm(px).y;
    EXPECT_NEAR(at("i1#3").y, free_y, 1e-5);
    QDragLeaveEvent leave;
    QApplication::sendEvent(&canvas, &leave);
    hand.held = Qt::NoModifier;
    desk.window.selection().choose_pockets({"i1#2"}); // and what was free is put on the grid by a command
    desk.preferences.set_grid_mm(10);
    desk.window.actions()["place.grid"]->trigger();
    EXPECT_NEAR(std::remainder(test::pocket(desk, "i1#2")->box.min.x, 10), 0, 1e-6);
    EXPECT_NEAR(std::remainder(test::pocket(desk, "i1#2")->box.min.y, 10), 0, 1e-6);
}

TEST_F(Lesson, l09_one_act_is_one_undo_and_all_of_it) {
    desk.open_demo();
    int tried = 0;
    for (const char* id : {"place.turn", "place.turn_15", "place.align_left", "place.align_front",
                           "place.center_x", "place.spread_x", "place.walls_x", "place.grid", "place.row",
                           "place.replace", "place.other_drawer", "edit.duplicate", "edit.delete", "edit.cut",
                           "edit.paste", "edit.lock", "objects.delete", "drawers.delete", "place.notch"}) {
        desk.open_demo();
        const auto start = document.job();
        const auto& pockets = start.drawers.front()->pockets;
        job::Subjects some;
        for (std::size_t i = 0; i < 4; ++i) some.push_back(job::subject_of(pockets[i]));
        if (std::string(id) == "place.row" || std::string(id) == "place.notch") some.resize(1);
        desk.window.selection().choose_pockets(some);
        if (!desk.window.actions()[id]->isEnabled()) continue;
        desk.window.actions()[id]->trigger();
        if (document.undo_stack().count() == 0) continue; // it was so already
        ++tried;
        EXPECT_EQ(document.undo_stack().count(), 1) << id;
        document.undo_stack().undo();
        EXPECT_EQ(document.job(), start) << id;
        EXPECT_FALSE(document.unsaved()) << id << ": what is saved is known by content";
    }
    EXPECT_GT(tried, 14);
}

TEST_F(Lesson, l10_units_are_a_way_of_showing) {
    desk.open_demo();
    const auto text = job::write_job(document.job());
    for (int i = 0; i < 50; ++i)
        for (const char* id : {"view.inch", "view.inch_32", "view.mm"}) desk.window.actions()[id]->trigger();
    EXPECT_EQ(job::write_job(document.job()), text);
    const auto read = job::read_job(text);
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(job::write_job(*read), text) << "nothing drifts by being saved";
}

TEST_F(Lesson, l11_large_text_is_not_clipped_and_a_drag_changes_rows_not_lists) {
    desk.open_demo();
    QStringList clipped;
    const auto nothing_clipped = [&] {
        clipped.clear();
        for (auto* label : desk.window.findChildren<QLabel*>())
            if (label->isVisible() && !label->wordWrap() && !label->text().isEmpty() &&
                label->height() + 1 < label->minimumSizeHint().height())
                clipped << label->text();
        for (auto* button : desk.window.findChildren<QToolButton*>())
            if (button->isVisible() && !button->text().isEmpty() &&
                (button->height() + 1 < button->fontMetrics().height() ||
                 (button->toolButtonStyle() == Qt::ToolButtonTextBesideIcon &&
                  button->width() + 1 < button->sizeHint().width())))
                clipped << button->text();
        return clipped.isEmpty();
    };
    constexpr int patience_ms = 20000; // layouts settle in several rounds, slowly on a busy machine
    for (const double scale : {1.0, 2.0}) {
        wear(theme::light_theme(), scale);
        desk.window.resize(static_cast<int>(1366 * scale), static_cast<int>(740 * scale));
        EXPECT_TRUE(QTest::qWaitFor(nothing_clipped, patience_ms))
            << scale << ": " << clipped.join(QStringLiteral(" | ")).toStdString();
    }
    wear(theme::light_theme(), 1);
    desk.window.resize(1366, 740);
    QApplication::processEvents();
    std::vector<std::unique_ptr<QSignalSpy>> resets;
    for (auto* view : desk.window.findChildren<QAbstractItemView*>())
        if (view->model() != nullptr)
            resets.push_back(std::make_unique<QSignalSpy>(view->model(), &QAbstractItemModel::modelReset));
    ASSERT_GE(resets.size(), 3U);
    const Vec middle = document.plan().drawers.front().pockets.front()->box.center();
    const auto* objects = desk.window.findChild<ObjectsModel*>();
    ASSERT_NE(objects, nullptr);
    QSignalSpy rows(objects, &QAbstractItemModel::dataChanged);
    hand.press(middle);
    hand.drag_on(middle, middle + Vec{15, 8});
    QApplication::processEvents();
    for (const auto& spy : resets) EXPECT_EQ(spy->count(), 0);
    EXPECT_EQ(rows.count(), 0) << "no object became another by being moved";
    hand.key(Qt::Key_Escape);
    hand.release(middle);
}

TEST_F(Lesson, l12_untitled_work_is_kept_by_content_and_comes_back) {
    QTemporaryDir folder;
    job::Job left;
    {
        Document work;
        Autosave kept(work, folder.path());
        auto job = job::new_job({});
        work.replace(job, {}, true);
        job.title = "Untitled work";
        work.commit("title", job);
        work.preview(job::new_job({200, 100, 50, 30})); // never kept
        kept.write_now();
        kept.wait();
        left = job;
    }
    Document next;
    Autosave kept(next, folder.path());
    const auto found = kept.leftovers();
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].job, left);
    EXPECT_EQ(kept.leftovers().size(), 1U) << "looking at it takes nothing away";
}

} // namespace
} // namespace drawercast::app
