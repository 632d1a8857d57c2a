// SPDX-License-Identifier: GPL-3.0-or-later
// The panes on a document of their own, driven by mouse and keys.
#include "job/edit.h"
#include "job/store.h"

#include "application.h"
#include "document/document.h"
#include "document/dragged.h"
#include "document/selection.h"
#include "panes/checks_model.h"
#include "panes/checks_pane.h"
#include "panes/dose_gauge.h"
#include "panes/drawers_model.h"
#include "panes/explain_sheet.h"
#include "panes/figure_button.h"
#include "panes/foam_pane.h"
#include "panes/left_pane.h"
#include "panes/objects_model.h"
#include "panes/objects_table.h"
#include "panes/rail.h"
#include "source_dir.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QLabel>
#include <QMimeData>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

/// A demo job with its first drawer shown.
struct Bench {
    Bench() {
        test::application();
        auto job = job::load_job(DRAWERCAST_SOURCE_DIR "/resources/demo/field-service.drawercast.json");
        EXPECT_TRUE(job);
        show(*job);
    }
    void show(const job::Job& job) {
        document.replace(job, {}, true);
        selection.choose_drawer(job.drawers.empty() ? std::string() : job.drawers.front()->id);
    }
    const casting::Dose& dose() const { return *document.plan().drawers.front().dose; }

    Document document;
    Selection selection;
};

struct FoamBench : Bench {
    FoamBench() {
        pane.resize(320, 480);
        pane.show();
        QApplication::processEvents();
    }
    QPoint mark() { return {gauge().width() / 2, gauge().height() / 2}; }
    DoseGauge& gauge() { return pane.dose_gauge(); }
    FoamPane pane{document, selection};
};

TEST(FoamPane, dragging_the_dose_is_tried_and_release_is_one_step) {
    FoamBench bench;
    const auto start = bench.document.job();
    QTest::mousePress(&bench.gauge(), Qt::LeftButton, {}, bench.mark());
    QTest::mouseMove(&bench.gauge(), bench.mark() + QPoint(20, 0));
    QTest::mouseMove(&bench.gauge(), bench.mark() + QPoint(60, 0));
    EXPECT_TRUE(bench.document.previewing());
    EXPECT_EQ(bench.document.job(), start);
    const auto shown = bench.document.shown();
    EXPECT_TRUE(shown.foam->overpack.has_value());
    QTest::mouseRelease(&bench.gauge(), Qt::LeftButton, {}, bench.mark() + QPoint(60, 0));
    EXPECT_FALSE(bench.document.previewing());
    EXPECT_EQ(bench.document.job(), shown) << "what was shown is what is stored";
    EXPECT_EQ(bench.document.undo_stack().count(), 1);
    bench.document.undo_stack().undo();
    EXPECT_EQ(bench.document.job(), start);
}

TEST(FoamPane, escape_and_loss_of_focus_drop_what_was_tried) {
    FoamBench bench;
    const auto start = bench.document.job();
    for (const bool by_key : {true, false}) {
        QTest::mousePress(&bench.gauge(), Qt::LeftButton, {}, bench.mark());
        QTest::mouseMove(&bench.gauge(), bench.mark() + QPoint(50, 0));
        ASSERT_TRUE(bench.document.previewing());
        if (by_key) {
            QTest::keyClick(&bench.gauge(), Qt::Key_Escape);
        } else {
            QFocusEvent out(QEvent::FocusOut);
            QApplication::sendEvent(&bench.gauge(), &out);
        }
        EXPECT_FALSE(bench.document.previewing());
        QTest::mouseRelease(&bench.gauge(), Qt::LeftButton, {}, bench.mark() + QPoint(50, 0));
        EXPECT_EQ(bench.document.job(), start);
        EXPECT_EQ(bench.document.undo_stack().count(), 0);
    }
}

TEST(FoamPane, keys_step_by_one_percent_and_delete_is_automatic) {
    FoamBench bench;
    bench.gauge().setFocus();
    const double before = bench.dose().overpack;
    QTest::keyClick(&bench.gauge(), Qt::Key_Right);
    EXPECT_NEAR(bench.dose().overpack, before + 0.01, 1e-9);
    EXPECT_FALSE(bench.dose().overpack_auto);
    QTest::keyClick(&bench.gauge(), Qt::Key_Left);
    QTest::keyClick(&bench.gauge(), Qt::Key_Left);
    EXPECT_NEAR(bench.dose().overpack, before - 0.01, 1e-9);
    EXPECT_EQ(bench.document.undo_stack().count(), 1) << "steps of the same second are one";
    QTest::keyClick(&bench.gauge(), Qt::Key_Delete);
    EXPECT_TRUE(bench.dose().overpack_auto);
    EXPECT_NEAR(bench.dose().overpack, before, 1e-9);
}

TEST(FoamPane, a_double_click_on_the_gauge_is_automatic) {
    FoamBench bench;
    bench.show(job::with_overpack(bench.document.job(), 0.4));
    QTest::mouseDClick(&bench.gauge(), Qt::LeftButton, {}, bench.mark());
    EXPECT_TRUE(bench.dose().overpack_auto);
}

TEST(FoamPane, a_clicked_figure_explains_itself_and_follows) {
    FoamBench bench;
    auto* poured = bench.pane.findChild<FigureButton*>("poured");
    ASSERT_NE(poured, nullptr);
    QTest::mouseClick(poured, Qt::LeftButton);
    EXPECT_EQ(bench.pane.explained(), "poured");
    const QString value = find_figure(bench.pane.figures(), "poured")->value;
    EXPECT_TRUE(bench.pane.explanation().contains(value)) << bench.pane.explanation().toStdString();
    bench.document.commit("more", job::with_overpack(bench.document.job(), 0.35));
    const QString now = find_figure(bench.pane.figures(), "poured")->value;
    EXPECT_NE(now, value);
    EXPECT_TRUE(bench.pane.explanation().contains(now));
    EXPECT_TRUE(bench.pane.explanation().contains("0.35"));
    QTest::keyClick(bench.pane.window()->findChild<ExplainSheet*>(), Qt::Key_Escape);
    EXPECT_TRUE(bench.pane.explained().isEmpty());
    bench.pane.explain("poured");
    bench.show(job::Job{});
    EXPECT_TRUE(bench.pane.explained().isEmpty()) << "no figure, no explanation";
}

TEST(FoamPane, every_figure_has_a_button_with_its_name_and_value) {
    FoamBench bench;
    for (const auto& figure : bench.pane.figures()) {
        const auto* button = bench.pane.findChild<FigureButton*>(figure.id);
        if (figure.id == u"rise") continue; // told in the explanations
        ASSERT_NE(button, nullptr) << figure.id.toStdString();
        EXPECT_EQ(button->accessibleName(), figure.label + ": " + figure.value);
        EXPECT_LE(button->minimumSizeHint().width(), 320);
    }
}

int count_left(const ChecksModel& model) {
    int count = 0;
    for (int row = 0; row < model.rowCount(); ++row) {
        const auto* check = model.check(model.index(row));
        count += check != nullptr && check->left_as_is;
    }
    return count;
}

TEST(ChecksModel, what_is_left_as_is_stands_in_its_own_section) {
    Bench bench;
    auto job = bench.document.job();
    job.minimums.edge_mm = 20; // more than the demo keeps
    bench.show(job);
    ChecksModel model(bench.document, bench.selection);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    int look = -1;
    for (int row = 0; row < model.rowCount(); ++row)
        if (const auto* check = model.check(model.index(row)); check != nullptr &&
                                                               check->severity == layout::Severity::look &&
                                                               !model.is_job_check(model.index(row)))
            look = row;
    ASSERT_GE(look, 0);
    const auto check = *model.check(model.index(look));
    const int looks = model.count(layout::Severity::look), rows = model.rowCount();
    job::LeftAsIs left;
    left.drawer = bench.selection.drawer();
    left.code = std::string(layout::text_of(check.code));
    left.subjects = check.subjects;
    left.value = check.value;
    bench.document.commit("leave", job::with_left_as_is(bench.document.job(), left));
    EXPECT_EQ(model.count(layout::Severity::look), looks - 1);
    EXPECT_EQ(count_left(model), 1);
    EXPECT_EQ(model.rowCount(), rows + 1) << "the row that names the section";
    const auto section = model.index(model.rowCount() - 2);
    EXPECT_TRUE(section.data(ChecksModel::section_role).toBool());
    EXPECT_FALSE(model.flags(section).testFlag(Qt::ItemIsSelectable));
    EXPECT_TRUE(model.index(model.rowCount() - 1).data(ChecksModel::left_role).toBool());
    bench.document.undo_stack().undo();
    EXPECT_EQ(count_left(model), 0);
    EXPECT_EQ(model.rowCount(), rows);
}

TEST(ChecksModel, numbers_are_those_on_the_sheet) {
    Bench bench;
    auto job = job::moved(bench.document.job(),
                          {job::subject_of(bench.document.job().drawers.front()->pockets[0])}, {7, 5});
    bench.show(job);
    ChecksModel model(bench.document, bench.selection);
    const auto& checks = bench.document.plan().drawers.front().checks;
    ASSERT_GT(checks.size(), 1U);
    for (std::size_t i = 0; i < checks.size(); ++i)
        EXPECT_EQ(model.index(model.row_of(checks[i])).data(ChecksModel::number_role).toInt(),
                  static_cast<int>(i) + 1);
}

TEST(ChecksPane, next_goes_round_all_checks_and_never_to_the_section) {
    Bench bench;
    ChecksPane pane(bench.document, bench.selection);
    const int rows = pane.model().rowCount();
    ASSERT_GT(rows, 0);
    QSignalSpy chosen(&pane, &ChecksPane::check_chosen);
    for (int i = 0; i < rows + 2; ++i) pane.choose_next();
    EXPECT_EQ(chosen.count(), rows + 2);
    EXPECT_TRUE(bench.selection.check().has_value());
}

TEST(Models, change_in_place_and_keep_their_promises) {
    Bench bench;
    ObjectsModel objects(bench.document);
    DrawersModel drawers(bench.document);
    ChecksModel checks(bench.document, bench.selection);
    using Mode = QAbstractItemModelTester::FailureReportingMode;
    QAbstractItemModelTester a(&objects, Mode::Fatal), b(&drawers, Mode::Fatal), c(&checks, Mode::Fatal);
    QSignalSpy changed(&objects, &QAbstractItemModel::dataChanged);
    QSignalSpy reset(&objects, &QAbstractItemModel::modelReset);
    auto object = *bench.document.job().objects[2];
    object.mass_g += 1;
    bench.document.commit("heavier", job::with_object(bench.document.job(), object));
    ASSERT_EQ(changed.count(), 1) << "one object changed, one row is repainted";
    EXPECT_EQ(changed.first().at(0).toModelIndex().row(), 2);
    EXPECT_EQ(reset.count(), 0);
    bench.document.commit("fewer", job::without_object(bench.document.job(), object.id));
    bench.document.undo_stack().undo();
    bench.document.commit("inches", job::in_units(bench.document.job(), job::DisplayUnits::inch));
    EXPECT_TRUE(objects.headerData(0, Qt::Horizontal, Qt::DisplayRole).toString().contains("inches"));
    bench.show(job::Job{});
    EXPECT_EQ(objects.rowCount(), 0);
    EXPECT_EQ(drawers.rowCount(), 0);
}

TEST(LeftPane, a_dragged_row_is_the_objects_id) {
    Bench bench;
    ObjectsModel objects(bench.document);
    const auto index = objects.index(1, 0);
    EXPECT_TRUE(objects.flags(index).testFlag(Qt::ItemIsDragEnabled));
    const std::unique_ptr<QMimeData> data(objects.mimeData({index}));
    EXPECT_EQ(data->data(dragged_object).toStdString(), bench.document.job().objects[1]->id);
}

TEST(LeftPane, empty_lists_say_what_to_do_next) {
    Bench bench;
    const auto demo = bench.document.job();
    bench.show(job::Job{});
    QAction add_drawer("Add a drawer"), add_object("Add an object"), paste("Paste");
    add_drawer.setObjectName("drawers.add");
    add_object.setObjectName("objects.add");
    paste.setObjectName("objects.paste_list");
    LeftPane pane(bench.document, bench.selection);
    pane.set_drawer_actions({&add_drawer});
    pane.set_object_actions({&add_object, &paste});
    pane.resize(264, 600);
    pane.show();
    QSignalSpy drawer(&add_drawer, &QAction::triggered), object(&add_object, &QAction::triggered);
    int links = 0;
    for (auto* label : pane.findChildren<QLabel*>()) {
        if (!label->isVisible() || !label->text().contains("href")) continue;
        ++links;
        for (const char* name : {"drawers.add", "objects.add"})
            if (label->text().contains(name)) emit label->linkActivated(name);
    }
    EXPECT_EQ(links, 2);
    EXPECT_EQ(drawer.count(), 1);
    EXPECT_EQ(object.count(), 1);
    auto with_drawer = demo;
    for (const auto& one : demo.objects) with_drawer = job::without_object(with_drawer, one->id);
    bench.show(with_drawer);
    for (auto* label : pane.findChildren<QLabel*>())
        EXPECT_FALSE(label->isVisible() && label->text().contains("drawers.add"));
}

TEST(LeftPane, what_is_added_and_chosen_is_seen) {
    Bench bench;
    LeftPane pane(bench.document, bench.selection);
    pane.resize(264, 600);
    pane.show();
    QApplication::processEvents();
    auto job = bench.document.job();
    auto object = *job.objects.front();
    object.mass_g = 0;
    for (int i = 0; i < 4; ++i) {
        object.id = job::free_object_id(job);
        job = job::with_object(std::move(job), object);
    }
    bench.document.commit("Objects", std::move(job));
    bench.selection.choose_object(object.id);
    QApplication::processEvents();
    auto& table = *pane.findChild<ObjectsTable*>();
    const QModelIndex last = table.model()->index(table.model()->rowCount() - 1, ObjectsModel::mass_column);
    EXPECT_EQ(table.currentIndex().row(), last.row());
    EXPECT_TRUE(table.viewport()->rect().contains(table.visualRect(last)));
    EXPECT_EQ(last.data().toString(), QString("–")) << "nobody has weighed it";
}

TEST(Rail, tells_counts_and_limits_in_words) {
    Bench bench;
    Rail rail(bench.document, bench.selection);
    EXPECT_TRUE(rail.accessibleName().contains("0 to mend")) << rail.accessibleName().toStdString();
    EXPECT_TRUE(rail.accessibleName().contains("pour"));
    const auto subject = job::subject_of(bench.document.job().drawers.front()->pockets[0]);
    bench.document.commit("away", job::moved(bench.document.job(), {subject}, {-400, 0}));
    EXPECT_FALSE(rail.accessibleName().contains(": 0 to mend")) << rail.accessibleName().toStdString();
}

} // namespace
} // namespace drawercast::app
