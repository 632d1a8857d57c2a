// SPDX-License-Identifier: GPL-3.0-or-later
// The print dialog, what it remembers, and what its orders put on paper.
#include "job/edit.h"

#include "app/pdf_reader.h"
#include "app_window/hand.h"
#include "app_window/scripted.h"
#include "document/preferences.h"
#include "window/page_preview.h"
#include "window/print_acts.h"
#include "window/print_dialog.h"
#include "window/title_strip.h"
#include "window/to_printer.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFile>
#include <QListWidget>
#include <QPrinter>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace drawercast {
namespace {

using app::PrintDialog;
using app::PrintOrder;
using test::application;
using test::Desktop;

const print::Printing today{QStringLiteral("Drawercast"), QStringLiteral("today")};

template <class W>
W* named(const QWidget& in, const QString& name) {
    for (auto* widget : in.findChildren<W*>())
        if (widget->accessibleName() == name) return widget;
    ADD_FAILURE() << "no " << name.toStdString();
    return nullptr;
}

/// The dialog over the demo job.
struct Scene {
    explicit Scene(const PrintOrder& usual = {}) {
        desk.open_demo();
        dialog = std::make_unique<PrintDialog>(usual, desk.window.document().job(),
                                               desk.window.document().plan(), today);
        dialog->show();
        QApplication::processEvents();
    }
    void choose(const QString& box, int index) {
        if (auto* combo = named<QComboBox>(*dialog, box)) combo->setCurrentIndex(index);
        QApplication::processEvents();
    }
    QListWidget& pages() { return *named<QListWidget>(*dialog, QStringLiteral("Pages")); }
    QPushButton* take() {
        for (auto* button : dialog->findChildren<QPushButton*>())
            if (button->isDefault() || button->text().startsWith("Write") || button->text() == "Print")
                return button;
        return nullptr;
    }

    Desktop desk;
    std::unique_ptr<PrintDialog> dialog;
};

TEST(PrintDialog, its_pages_are_those_of_the_choice) {
    Scene scene;
    const int both = scene.pages().count();
    EXPECT_GT(both, 10);
    int together = 0;
    for (int sheet = 1; sheet <= 4; ++sheet) {
        scene.choose("Sheets", sheet);
        together += scene.pages().count();
    }
    EXPECT_EQ(together, both);
    scene.choose("Sheets", 2);
    EXPECT_EQ(scene.dialog->order().choice.only, print::TemplateKind::drawer_check);
    const int check = scene.pages().count();
    scene.choose("Paper", 2);
    EXPECT_LT(scene.pages().count(), check) << "A3 takes fewer tiles";
    scene.choose("Orientation", 2);
    EXPECT_EQ(scene.dialog->order().choice.orientation, print::Orientation::landscape);
    scene.choose("What", 1);
    EXPECT_EQ(scene.dialog->order().what, PrintOrder::What::summary);
    EXPECT_FALSE(named<QComboBox>(*scene.dialog, "Sheets")->isEnabled()) << "a summary has none";
    scene.choose("What", 2);
    EXPECT_EQ(scene.dialog->order().to, PrintOrder::To::svg) << "drawings are files";
    EXPECT_GE(scene.pages().count(), 6);
}

TEST(PrintDialog, pages_are_left_out_by_their_box) {
    Scene scene;
    const auto all = static_cast<std::size_t>(scene.pages().count());
    ASSERT_EQ(scene.dialog->order().pages.size(), all);
    scene.pages().item(1)->setCheckState(Qt::Unchecked);
    const auto pages = scene.dialog->order().pages;
    EXPECT_EQ(pages.size(), all - 1);
    EXPECT_EQ(std::count(pages.begin(), pages.end(), 1u), 0);
    for (int i = 0; i < scene.pages().count(); ++i) scene.pages().item(i)->setCheckState(Qt::Unchecked);
    ASSERT_NE(scene.take(), nullptr);
    EXPECT_FALSE(scene.take()->isEnabled()) << "nothing to print";
}

TEST(PrintDialog, the_chosen_page_is_previewed) {
    Scene scene;
    auto* preview = scene.dialog->findChild<app::PagePreview*>();
    ASSERT_NE(preview, nullptr);
    const auto picture = [&] { return preview->grab().toImage(); };
    const auto cover = picture();
    scene.pages().setCurrentRow(2);
    QApplication::processEvents();
    EXPECT_NE(picture(), cover);
    EXPECT_TRUE(preview->accessibleName().contains(QStringLiteral("Pattern board")));
}

TEST(PrintDialog, what_a_printers_scales_measure_is_put_right_and_kept_for_it) {
    Scene scene;
    auto* side = named<QDoubleSpinBox>(*scene.dialog, "100 mm along the paper’s short side measure");
    ASSERT_NE(side, nullptr);
    scene.pages().item(1)->setCheckState(Qt::Unchecked);
    side->setValue(100.6);
    PrintOrder order = scene.dialog->order();
    EXPECT_EQ(order.corrections.at("PDF"), (print::Correction{100.6, 100}));
    EXPECT_EQ(scene.pages().item(1)->checkState(), Qt::Unchecked) << "what was left out stays so";
    const auto pages = app::order_pages(order, scene.desk.window.document().job(),
                                        scene.desk.window.document().plan(), today);
    EXPECT_NEAR(pages.front().stretch.x, 100 / 100.6, 1e-12);
    EXPECT_EQ(pages.front().stretch.y, 1);
    side->setValue(103);
    EXPECT_FALSE(scene.take()->isEnabled()) << "no printer is off by that much";
    scene.choose("What", 2);
    EXPECT_FALSE(side->isEnabled()) << "drawings are not printed";
    scene.choose("What", 0);
    EXPECT_EQ(side->value(), 103) << "and what was typed is still there";
    order.to = PrintOrder::To::printer;
    order.printer = QStringLiteral("Shop / left");
    EXPECT_EQ(app::correction_of(order), print::Correction{}) << "of the one printer only";
}

TEST(PrintDialog, a_job_without_drawers_has_no_pages_and_says_so) {
    const job::Job job;
    const plan::Plan plan = plan::compute(job);
    application();
    PrintDialog dialog({}, job, plan, today);
    dialog.show();
    EXPECT_TRUE(dialog.order().pages.empty());
    EXPECT_TRUE(
        dialog.findChild<app::PagePreview*>()->accessibleName().startsWith(QStringLiteral("No pages")));
}

TEST(PrintOrder, is_remembered_but_for_its_pages) {
    const QTemporaryDir folder;
    app::Preferences preferences(folder.filePath("settings.ini"));
    EXPECT_EQ(app::remembered_order(preferences, job::DisplayUnits::inch).choice.paper, print::Paper::letter);
    PrintOrder order;
    order.what = PrintOrder::What::summary;
    order.choice = {print::Paper::tabloid, print::Orientation::landscape, print::TemplateKind::drawer_check};
    order.to = PrintOrder::To::printer;
    order.printer = QStringLiteral("Shop");
    order.corrections = {{"Shop", {100.25, 99.5}}, {"Büro / \"2\"", {99.9, 100}}};
    app::remember(order, preferences);
    EXPECT_EQ(app::remembered_order(preferences, job::DisplayUnits::inch), order);
    order.choice = {print::Paper::a4, {}, {}};
    app::remember(order, preferences);
    EXPECT_EQ(app::remembered_order(preferences, job::DisplayUnits::inch), order);
    preferences.set_printing("corrections", R"({"Shop":[100.25],"far":[100,150],"good":[100.5,100]})");
    EXPECT_EQ(app::remembered_corrections(preferences), (print::Corrections{{"good", {100.5, 100}}}));
    preferences.set_printing("paper", "papyrus");
    EXPECT_EQ(app::remembered_order(preferences, job::DisplayUnits::mm).choice.paper, print::Paper::a4);
}

TEST(PrintActs, a_chosen_page_alone_is_written) {
    Desktop desk;
    desk.open_demo();
    desk.asking.to_print = [](const PrintOrder& usual) {
        PrintOrder order = usual;
        order.choice.only = print::TemplateKind::drawer_check;
        order.pages = {0, 2};
        return std::optional(order);
    };
    desk.window.actions()["job.print"]->trigger();
    QFile file(desk.folder.filePath("field-service-drawers-templates.pdf"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(test::read_pdf(file.readAll()).size(), 2u);
    EXPECT_EQ(desk.asking.warned, 0);
    desk.asking.to_print = [](const PrintOrder& usual) {
        EXPECT_EQ(usual.choice.only, print::TemplateKind::drawer_check) << "as the last time";
        PrintOrder order = usual;
        order.to = PrintOrder::To::printer;
        order.printer = QStringLiteral("none of that name");
        order.pages = {0};
        return std::optional(order);
    };
    desk.window.actions()["job.print"]->trigger();
    EXPECT_EQ(desk.asking.warned, 1);
}

std::vector<std::size_t> all_pages(const PrintOrder& order, const app::Document& document) {
    std::vector<std::size_t> pages(app::order_pages(order, document.job(), document.plan(), today).size());
    std::iota(pages.begin(), pages.end(), std::size_t{0});
    return pages;
}

TEST(PrintActs, templates_and_summary_are_looked_at_before_they_are_written) {
    Desktop desk;
    desk.open_demo();
    std::vector<PrintOrder> offered;
    desk.asking.to_print = [&](const PrintOrder& usual) {
        offered.push_back(usual);
        auto order = usual;
        order.choice.only = print::TemplateKind::labels;
        order.choice.paper = print::Paper::a3;
        order.pages = all_pages(order, desk.window.document());
        return std::optional(order);
    };
    for (const char* name : {"job.summary", "job.templates", "job.cards", "job.drawings", "job.templates"})
        desk.window.actions()[name]->trigger();
    ASSERT_EQ(offered.size(), 5u);
    using What = PrintOrder::What;
    EXPECT_EQ(offered[0].what, What::summary);
    EXPECT_EQ(offered[1].what, What::templates);
    EXPECT_EQ(offered[2].what, What::cards);
    EXPECT_EQ(offered[3].what, What::drawings);
    EXPECT_EQ(offered[4].choice.paper, print::Paper::a3) << "as it was printed last";
    EXPECT_FALSE(offered[4].choice.only) << "all of them, unless a part is asked for";
}

TEST(PrintActs, what_was_shown_is_printed_though_the_long_answer_comes_meanwhile) {
    Desktop desk;
    test::open_with_plate_chosen(desk, {{100, 100}});
    auto& document = desk.window.document();
    QSignalSpy whole(desk.window.findChild<app::PrintActs*>(), &app::PrintActs::printed);
    std::size_t shown = 0;
    desk.asking.to_print = [&](const PrintOrder& usual) {
        PrintOrder order = usual;
        order.pages = all_pages(order, document);
        shown = order.pages.size();
        document.building().wait();
        EXPECT_GT(app::order_pages(order, document.job(), document.plan(), today).size(), shown);
        return std::optional(order);
    };
    desk.window.actions()["job.print"]->trigger();
    ASSERT_GT(shown, 0u);
    EXPECT_EQ(whole.count(), 1) << "all that was shown is all there was";
}

TEST(Printed, says_whose_templates_are_of_an_older_job) {
    Desktop desk;
    test::open_with_plate_chosen(desk, {{100, 100}, {250, 180}});
    auto& document = desk.window.document();
    auto two = document.job();
    job::Drawer upper = *two.drawers.front(), lower = upper;
    upper.name = "Upper";
    lower.id = "lower";
    lower.name = "Lower";
    lower.pockets.clear();
    two.drawers = {upper, lower};
    document.replace(std::move(two), desk.folder.filePath("two.drawercast.json"), true);
    QString changed;
    bool write = false;
    desk.asking.to_print = [&](const PrintOrder& usual) {
        changed = usual.changed;
        auto order = usual;
        order.pages = all_pages(order, document);
        return write ? std::optional(order) : std::nullopt;
    };
    auto& print = *desk.window.actions()["job.print"];
    print.trigger();
    EXPECT_TRUE(changed.isEmpty()) << "nothing was printed";
    write = true;
    desk.window.actions()["job.templates"]->trigger();
    write = false;
    print.trigger();
    EXPECT_TRUE(changed.isEmpty()) << changed.toStdString();
    const auto first = document.job().drawers.front(), second = document.job().drawers.at(1);
    document.commit("Move", job::moved(document.job(), {job::subject_of(first->pockets.front())}, {1, 0}));
    print.trigger();
    EXPECT_TRUE(changed.contains(QString::fromStdString(first->name))) << changed.toStdString();
    EXPECT_FALSE(changed.contains(QString::fromStdString(second->name))) << changed.toStdString();
    EXPECT_EQ(desk.window.sheets().strip().toolTip(), changed);
    for (const int width : {1600, 1024}) {
        desk.window.resize(width, 760);
        QApplication::processEvents();
        EXPECT_TRUE(desk.window.sheets().strip().says_changed()) << width;
    }
    document.undo_stack().undo();
    EXPECT_TRUE(desk.window.sheets().strip().toolTip().isEmpty()) << "as it was printed";
    EXPECT_FALSE(desk.window.sheets().strip().says_changed());
}

/// What a printer's driver gets is as true as the PDF: here Qt's own driver that writes to a file.
TEST(ToPrinter, a_hundred_millimeters_are_that_portrait_and_landscape) {
    Desktop desk;
    desk.open_demo();
    const auto& document = desk.window.document();
    for (const auto orientation : {print::Orientation::portrait, print::Orientation::landscape}) {
        const auto pages =
            print::template_pages(document.job(), document.plan(),
                                  {print::Paper::a4, orientation, print::TemplateKind::pattern_board}, today);
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        const QString path = desk.folder.filePath("printed.pdf");
        printer.setOutputFileName(path);
        ASSERT_TRUE(app::print_pages(pages, printer));
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        const auto printed = test::read_pdf(file.readAll());
        ASSERT_EQ(printed.size(), pages.size());
        for (std::size_t i = 1; i < 3; ++i) {
            EXPECT_NEAR(printed[i].width_mm, pages[i].size_mm.x, 0.4);
            for (const bool upright : {false, true})
                EXPECT_TRUE(std::any_of(printed[i].paths.begin(), printed[i].paths.end(),
                                        [&](const auto& path_) {
                                            const auto box = path_.box();
                                            const double along = upright ? box.height() : box.width();
                                            const double across = upright ? box.width() : box.height();
                                            return path_.stroked && across < 10 &&
                                                   std::abs(along - 100) < 0.05;
                                        }))
                    << "page " << i << (upright ? " upright" : " level");
        }
    }
}

TEST(PrintActs, the_sheet_for_pictures_is_written_from_the_menu) {
    Desktop desk;
    desk.open_demo();
    desk.window.actions()["job.photo_sheet"]->trigger();
    EXPECT_EQ(desk.asking.warned, 0);
    QFile file(desk.folder.filePath(QStringLiteral("field-service-drawers-pictures.pdf")));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const auto pages = test::read_pdf(file.readAll());
    ASSERT_EQ(pages.size(), 1U);
    const auto marks = std::count_if(pages[0].paths.begin(), pages[0].paths.end(), [](const auto& path) {
        return path.filled && std::abs(path.box().width() - 16) < 0.05 &&
               std::abs(path.box().height() - 16) < 0.05;
    });
    EXPECT_EQ(marks, 10);
}

} // namespace
} // namespace drawercast
