// SPDX-License-Identifier: GPL-3.0-or-later
// The answers about the mold in the right pane: there once worked out, marked while they are old, open with
// the sheets they speak of, and each figure gives what its explanation says.
#include "job/catalog.h"
#include "job/edit.h"

#include "app_window/hand.h"
#include "panes/figure_button.h"
#include "panes/mold_pane.h"
#include "panes/plot_view.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace drawercast::app {
namespace {

using test::Desktop;

struct Answered {
    Answered() { test::open_with_plate_chosen(desk, {{100, 150}, {220, 150}, {320, 100}}); }
    void wait() {
        document().building().wait();
        QApplication::processEvents();
    }
    Document& document() { return desk.window.document(); }
    MoldPane& pane() { return *desk.window.findChild<MoldPane*>(); }
    FigureButton& button(const char* id) { return *pane().findChild<FigureButton*>(id); }

    Desktop desk;
};

TEST(MoldPane, nothing_is_there_before_the_answer_and_all_of_it_after) {
    Answered made;
    EXPECT_TRUE(made.pane().figures().empty());
    made.wait();
    std::set<QString> ids;
    for (const auto& one : made.pane().figures()) {
        EXPECT_TRUE(ids.insert(one.figure.id).second) << one.figure.id.toStdString();
        EXPECT_FALSE(one.figure.label.isEmpty());
        EXPECT_FALSE(one.figure.value.isEmpty()) << one.figure.id.toStdString();
        const auto& why = one.figure.why;
        EXPECT_FALSE(why.rule.isEmpty() && why.lines.empty()) << one.figure.id.toStdString();
    }
    for (const char* id : {"plate.board", "plate.stiffeners", "plate.closures", "plate.bow", "plate.gap",
                           "plate.pull", "vents.holes", "vents.pockets", "vents.squeeze", "vents.held",
                           "closing.plate_on", "closing.by_contact", "closing.margin"})
        EXPECT_EQ(ids.count(id), 1u) << id;
}

TEST(MoldPane, every_formula_gives_what_it_says) {
    for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch, job::DisplayUnits::inch_32}) {
        Answered made;
        made.document().replace(job::in_units(made.document().job(), units), {}, true);
        made.wait();
        int formulas = 0;
        for (const auto& one : made.pane().figures())
            for (const auto& line : one.figure.why.lines) {
                ++formulas;
                EXPECT_TRUE(explain::gives(explain::worked_out(line), line.result))
                    << one.figure.id.toStdString() << ": " << explain::in_numbers(line).toStdString() << " = "
                    << line.result.text().toStdString();
            }
        EXPECT_GE(formulas, 5);
    }
}

TEST(MoldPane, an_old_answer_stays_and_says_that_it_is_old) {
    Answered made;
    made.wait();
    EXPECT_FALSE(made.pane().shows_old());
    const auto subject = job::subject_of(made.document().job().drawers.front()->pockets.front());
    made.document().commit("Move", job::moved(made.document().job(), {subject}, {2, 0}));
    EXPECT_TRUE(made.pane().shows_old());
    EXPECT_FALSE(made.pane().figures().empty()) << "the old answer stays in sight";
    made.wait();
    EXPECT_FALSE(made.pane().shows_old());
}

TEST(MoldPane, the_steps_of_a_drag_do_not_make_it_anew) {
    Answered made;
    made.wait();
    auto& document = made.document();
    const auto subject = job::subject_of(document.job().drawers.front()->pockets.front());
    document.preview(job::moved(document.job(), {subject}, {2, 0}));
    EXPECT_TRUE(made.pane().shows_old());
    const auto* shown = made.pane().figures().data();
    document.preview(job::moved(document.job(), {subject}, {4, 0}));
    EXPECT_EQ(made.pane().figures().data(), shown);
    document.preview(std::nullopt);
    EXPECT_FALSE(made.pane().shows_old());
}

TEST(MoldPane, an_answer_that_came_while_it_was_folded_has_its_plots_once_opened) {
    Answered made;
    made.wait();
    const auto plots = made.pane().findChildren<PlotView*>();
    ASSERT_FALSE(plots.empty());
    for (const auto* plot : plots) EXPECT_FALSE(plot->isVisible());
    made.desk.window.sheets().show_sheet(SheetId::pressure_plate);
    EXPECT_TRUE(std::any_of(plots.begin(), plots.end(), [](const auto* plot) { return plot->isVisible(); }));
}

TEST(MoldPane, opens_with_the_sheets_of_the_mold_and_folds_with_the_plan) {
    Answered made;
    made.wait();
    EXPECT_FALSE(made.button("plate.bow").isVisible());
    made.desk.window.sheets().show_sheet(SheetId::pressure_plate);
    EXPECT_TRUE(made.button("plate.bow").isVisible());
    const int plate = made.button("plate.bow").mapTo(&made.pane(), QPoint()).y();
    made.desk.window.sheets().show_sheet(SheetId::air_map);
    QApplication::processEvents();
    EXPECT_TRUE(made.button("vents.holes").isVisible());
    EXPECT_LT(made.button("vents.holes").mapTo(&made.pane(), QPoint()).y(), plate) << "vents first now";
    made.desk.window.sheets().show_sheet(SheetId::drawer_plan);
    EXPECT_FALSE(made.button("vents.holes").isVisible());
}

TEST(MoldPane, a_clicked_figure_explains_itself) {
    Answered made;
    made.wait();
    made.desk.window.sheets().show_sheet(SheetId::pressure_plate);
    made.button("plate.pull").click();
    EXPECT_EQ(made.pane().explained(), "plate.pull");
    made.button("plate.pull").click();
    EXPECT_TRUE(made.pane().explained().isEmpty());
}

} // namespace
} // namespace drawercast::app
