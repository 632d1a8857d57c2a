// SPDX-License-Identifier: GPL-3.0-or-later
// Objects measured from a rendered picture by the dialog: keys and mouse, as a maker would.
#include "layout/pocket.h"

#include "app/sheet_picture.h"
#include "app_forms/words_fit.h"
#include "app_window/hand.h"
#include "language/spoken.h"
#include "photo/photo_dialog.h"
#include "window/photo_acts.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QMimeData>
#include <QPushButton>
#include <QWheelEvent>
#include <QtTest>
#include <gtest/gtest.h>

#include <algorithm>

namespace drawercast::app {
namespace {

using photo::PhotoDialog;
using test::Desktop;

const QPolygonF ell({{60, 90}, {130, 90}, {130, 120}, {95, 120}, {95, 170}, {60, 170}});

class PhotoActsTest : public testing::Test {
  protected:
    void SetUp() override {
        if (!capture::available()) GTEST_SKIP() << "built without the measuring of pictures";
        test::open_pockets(desk, {});
        before = document.job();
        desk.window.actions()["objects.photo"]->trigger();
        dialog = desk.window.findChild<PhotoDialog*>();
        ASSERT_NE(dialog, nullptr);
    }
    QString kept(const std::string& bytes, const QString& name) {
        QFile file(desk.folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes.data(), static_cast<qint64>(bytes.size()));
        return file.fileName();
    }
    bool idle() {
        return QTest::qWaitFor([this] { return !dialog->busy(); }, 120'000);
    }
    /// By a drop, as from a file manager. A scan: no perspective to work out, quickly made.
    void drop(const QString& path) {
        QMimeData data;
        data.setUrls({QUrl::fromLocalFile(path)});
        QDragEnterEvent enter({100, 100}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(&dialog->board(), &enter);
        QDropEvent event({100, 100}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(&dialog->board(), &event);
        QTest::qWait(1);
        ASSERT_TRUE(idle());
    }
    void open_scan() {
        box("On")->setCurrentIndex(box("On")->count() - 1);
        auto* dpi = edit("Resolution");
        QTest::keyClicks(dpi, "100");
        QTest::keyClick(dpi, Qt::Key_Tab);
        drop(kept(test::scan_picture(100, ell), "ell.png"));
        ASSERT_FALSE(dialog->state().refusal) << one_line(*dialog->state().refusal);
        ASSERT_EQ(dialog->state().outlines.size(), 1U);
    }
    template <class T>
    T* named(const QString& name) {
        for (auto* one : dialog->findChildren<T*>())
            if (one->accessibleName() == name) return one;
        ADD_FAILURE() << "no " << name.toStdString();
        return nullptr;
    }
    QLineEdit* edit(const QString& name) { return named<QLineEdit>(name); }
    QComboBox* box(const QString& name) { return named<QComboBox>(name); }
    QPushButton* take() { return dialog->findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok); }
    void drag(shape::Vec from, shape::Vec to) {
        auto& board = dialog->board();
        QTest::qWait(20); // what came or went beside the board is laid out
        const QPoint a = board.to_px(from).toPoint(), b = board.to_px(to).toPoint();
        QTest::mousePress(&board, Qt::LeftButton, {}, a);
        for (int i = 1; i <= 8; ++i) QTest::mouseMove(&board, a + (b - a) * i / 8);
        QTest::mouseRelease(&board, Qt::LeftButton, {}, b);
        ASSERT_TRUE(idle());
    }
    void hand(const QString& key) {
        QTest::keySequence(&dialog->board(), QKeySequence(key));
        EXPECT_TRUE(idle());
    }
    double area_seen() { return shape::area(*shape::contour_of(dialog->state().outlines.at(0).seen)); }
    const photo::Outline& first() { return dialog->state().outlines.at(0); }

    Desktop desk;
    Document& document = desk.window.document();
    job::Job before;
    PhotoDialog* dialog = nullptr;
};

constexpr double ell_mm2 = 70 * 30 + 35 * 50;

TEST_F(PhotoActsTest, what_is_found_goes_into_the_list_as_one_step_of_undo) {
    open_scan();
    EXPECT_NEAR(area_seen(), ell_mm2, 25);
    EXPECT_FALSE(take()->isEnabled()) << "it has no height yet";
    QTest::keyClicks(edit("Height"), "18");
    edit("Name")->selectAll();
    QTest::keyClicks(edit("Name"), "Bracket");
    QTest::keyClicks(edit("Depth in foam"), "15");
    dialog->findChild<QCheckBox*>()->setFocus();
    QTest::keyClick(dialog->findChild<QCheckBox*>(), Qt::Key_Space);
    ASSERT_TRUE(take()->isEnabled());
    QTest::mouseClick(take(), Qt::LeftButton);
    ASSERT_EQ(document.job().objects.size(), before.objects.size() + 1);
    const job::Object& object = *document.job().objects.back();
    EXPECT_EQ(object.name, "Bracket");
    EXPECT_EQ(object.height_mm, 18);
    EXPECT_EQ(std::get<job::Sunk>(object.levels.at(0).form).depth_mm, 15);
    const double usual = layout::fit_of({}, before.foam->firmness).side_mm;
    EXPECT_NEAR(object.fit_mm.value_or(-9), usual + 0.25, 0.1) << "the pocket is wider by the band";
    EXPECT_EQ(document.undo_stack().count(), 1);
    document.undo_stack().undo();
    EXPECT_EQ(document.job(), before);
}

TEST_F(PhotoActsTest, each_key_leads_to_one_place) {
    for (const auto spoken : {language::Language::english, language::Language::german}) {
        const language::Spoken held(spoken);
        PhotoDialog fresh(form_context(document.job()));
        fresh.show();
        for (auto* ground : fresh.findChildren<QComboBox*>())
            for (int i = 0; i < ground->count(); ++i) {
                ground->setCurrentIndex(i);
                EXPECT_EQ(test::clashing_keys(fresh).join(" | ").toStdString(), "") << i;
            }
    }
}

TEST_F(PhotoActsTest, points_are_dragged_and_undone) {
    open_scan();
    const photo::Outline found = first();
    auto& board = dialog->board();
    ASSERT_EQ(board.chosen(), 0);
    std::size_t corner = 0; // the one nearest to the ell's lower left
    for (std::size_t i = 0; i < found.seen.corners.size(); ++i) {
        const auto at = [&](std::size_t k) {
            return found.seen.corners[k].at.x + found.seen.corners[k].at.y;
        };
        if (at(i) < at(corner)) corner = i;
    }
    const shape::Vec from = found.seen.corners[corner].at;
    drag(from, from + shape::Vec{-6, -6});
    EXPECT_TRUE(first().by_hand);
    EXPECT_NEAR(first().seen.corners[corner].at.x, from.x - 6, 0.4);
    hand("Ctrl+Z");
    EXPECT_EQ(first(), found);
    hand(QKeySequence(QKeySequence::Redo).toString());
    EXPECT_TRUE(first().by_hand);
}

TEST_F(PhotoActsTest, points_that_look_like_one_are_dragged_as_one) {
    open_scan();
    auto& board = dialog->board();
    const auto corners = first().seen.corners;
    const std::size_t count = corners.size();
    std::size_t lower_left = 0;
    for (std::size_t i = 0; i < count; ++i)
        if (corners[i].at.x + corners[i].at.y < corners[lower_left].at.x + corners[lower_left].at.y)
            lower_left = i;
    const shape::Vec from = corners[lower_left].at, along = corners[(lower_left + 1) % count].at - from;
    const QPointF near = board.to_px(from);
    QWheelEvent closer(near, board.mapToGlobal(near), {}, {0, 1800}, {}, {}, Qt::NoScrollPhase, false);
    QApplication::sendEvent(&board, &closer);
    QTest::mouseDClick(&board, Qt::LeftButton, {},
                       board.to_px(from + along * (0.5 / length(along))).toPoint());
    EXPECT_EQ(first().seen.corners.size(), count + 1) << "set from near, beside it";
    board.fit();
    const double area = area_seen();
    drag(from, from + shape::Vec{-6, -6});
    for (const shape::Corner& corner : first().seen.corners)
        EXPECT_GT(length(corner.at - from), 1.5) << "one was left behind";
    EXPECT_GT(area_seen() - area, 6 * (30 + 30) / 2.0) << "both sides went along";
}

TEST_F(PhotoActsTest, the_brush_adds_and_takes_away_and_an_easy_shape_holds_the_whole) {
    open_scan();
    auto& board = dialog->board();
    const shape::Box box = shape::bounds(*shape::contour_of(first().seen));
    hand("Ctrl+2");
    drag({box.max.x - 2, box.max.y - 15}, {box.max.x + 12, box.max.y - 15});
    EXPECT_NEAR(area_seen(), ell_mm2 + 14 * 4, 40);
    hand("Ctrl+3");
    drag({box.max.x + 14, box.max.y - 15}, {box.max.x + 1, box.max.y - 15});
    EXPECT_LT(area_seen(), ell_mm2 + 30);
    hand("Ctrl+Z");
    hand("Ctrl+Z");
    EXPECT_NEAR(area_seen(), ell_mm2, 25);
    hand("Ctrl+1");
    EXPECT_EQ(board.tool(), photo::Board::Tool::points);
    QTest::mouseClick(named<QPushButton>("Shape"), Qt::LeftButton);
    auto* menu = dialog->findChild<QMenu*>();
    ASSERT_NE(menu, nullptr);
    ASSERT_GE(menu->actions().size(), 3) << "as found, a rectangle, two of them";
    QTest::keyClick(menu, Qt::Key_Up); // around to the last one
    QTest::keyClick(menu, Qt::Key_Return);
    EXPECT_EQ(first().shape, photo::Shape::rectangle);
    QTest::keyClicks(edit("Height"), "9");
    const auto objects = dialog->objects();
    ASSERT_EQ(objects.size(), 1U);
    const auto outline = shape::contour_of(std::get<job::Sunk>(objects[0].levels[0].form).outline);
    EXPECT_NEAR(shape::area(*outline), 70 * 80, 60);
}

TEST_F(PhotoActsTest, a_stroke_keeps_the_points_that_were_dragged) {
    open_scan();
    auto& board = dialog->board();
    EXPECT_TRUE(edit("Height")->hasFocus()) << "what the photo can't tell comes next";
    const auto corners = first().seen.corners;
    const auto lower_left =
        std::min_element(corners.begin(), corners.end(),
                         [](const auto& a, const auto& b) { return a.at.x + a.at.y < b.at.x + b.at.y; });
    drag(lower_left->at, lower_left->at + shape::Vec{-6, -6});
    const double dragged = area_seen();
    const shape::Vec made = first().seen.corners[static_cast<std::size_t>(lower_left - corners.begin())].at;
    const shape::Box box = shape::bounds(*shape::contour_of(first().seen));
    hand("Ctrl+2");
    drag({box.max.x - 2, box.max.y - 15}, {box.max.x + 12, box.max.y - 15});
    EXPECT_NEAR(area_seen(), dragged + 12 * 4 + 6, 4) << "a round end of 2 mm";
    EXPECT_TRUE(std::any_of(first().seen.corners.begin(), first().seen.corners.end(),
                            [made](const shape::Corner& corner) { return corner.at == made; }));
    EXPECT_EQ(board.chosen(), 0);
    hand("Ctrl+Z");
    EXPECT_NEAR(area_seen(), dragged, 0.01);
}

TEST_F(PhotoActsTest, what_can_not_be_measured_is_said_and_nothing_is_taken) {
    drop(desk.folder.path());
    EXPECT_TRUE(dialog->state().refusal) << "a folder";
    drop(kept("no picture at all", "text.jpg"));
    ASSERT_TRUE(dialog->state().refusal);
    EXPECT_FALSE(take()->isEnabled());
    drop(kept(test::scan_picture(100, ell), "scan.png")); // said to be of the measuring sheet
    ASSERT_TRUE(dialog->state().refusal);
    EXPECT_EQ(dialog->state().refusal->code, "capture-no-sheet");
    EXPECT_TRUE(dialog->objects().empty());
    QTest::keyClick(dialog, Qt::Key_Escape);
    EXPECT_EQ(document.job(), before);
}

TEST_F(PhotoActsTest, another_ground_that_does_not_fit_takes_the_outlines_away_until_undone) {
    open_scan();
    box("On")->setCurrentIndex(0); // the scan shows no marks: refused, and the outlines are gone
    ASSERT_TRUE(idle());
    EXPECT_TRUE(dialog->state().refusal);
    EXPECT_FALSE(take()->isEnabled());
    hand("Ctrl+Z"); // and come back
    EXPECT_EQ(dialog->state().outlines.size(), 1U);
}

TEST_F(PhotoActsTest, closed_while_it_measures) {
    auto path = kept(test::scan_picture(100, ell), "scan.png");
    dialog->load(path);
    QTest::keyClick(dialog, Qt::Key_Escape);
    EXPECT_EQ(document.job(), before);
}

} // namespace
} // namespace drawercast::app
