// SPDX-License-Identifier: GPL-3.0-or-later
#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "app_forms/words_fit.h"
#include "core/plan/sample_job.h"
#include "forms/as_built_form.h"
#include "forms/as_cast_form.h"
#include "forms/copies_form.h"
#include "forms/cost_dialog.h"
#include "forms/cup_form.h"
#include "forms/drawer_form.h"
#include "forms/either_mark.h"
#include "forms/foam_form.h"
#include "forms/minimums_form.h"
#include "forms/mold_form.h"
#include "forms/new_job_form.h"
#include "forms/notch_form.h"
#include "forms/object_form.h"
#include "forms/outline_form.h"
#include "forms/paste_dialog.h"
#include "forms/quick_quote_form.h"
#include "forms/shop_form.h"
#include "language/spoken.h"

#include <QTabWidget>
#include <gtest/gtest.h>

#include <functional>
#include <memory>

namespace drawercast::app {
namespace {

using language::Language;
using language::Spoken;

struct Named {
    const char* name;
    std::function<std::unique_ptr<QDialog>()> made;
};

/// Each dialog on a small job.
std::vector<Named> dialogs() {
    static const auto job = plan::testing::worked_job();
    static const auto plan = plan::compute(job);
    const FormContext context = form_context(job);
    const job::Drawer& drawer = *job.drawers.front();
    const auto polygon = shape::Polygon{{{{0, 0}}, {{60, 0}}, {{60, 40}}, {{0, 40}}}};
    return {
        {"shop", [=] { return std::make_unique<ShopForm>(*job.shop, context); }},
        {"minimums", [=] { return std::make_unique<MinimumsForm>(job.minimums, context); }},
        {"mold", [=] { return std::make_unique<MoldForm>(job.mold, *job.shop, context); }},
        {"foam", [=] { return std::make_unique<FoamForm>(*job.foam, *job.shop, context); }},
        {"drawer",
         [=, &drawer] { return std::make_unique<DrawerForm>(DrawerForm::Purpose::change, drawer, context); }},
        {"object",
         [=] {
             return std::make_unique<ObjectForm>(ObjectForm::Purpose::change, *job.objects.front(), context);
         }},
        {"new job", [=] { return std::make_unique<NewJobForm>(job::DrawerSize{}, context); }},
        {"notch", [=] { return std::make_unique<NotchForm>(job::Notch{}, context); }},
        {"copies",
         [=] {
             return std::make_unique<CopiesForm>(CopyOrder{},
                                                 CopyRoom{{{0, 0}, {40, 30}}, {{0, 0}, {400, 300}}}, context);
         }},
        {"cost", [=] { return std::make_unique<CostDialog>(plan::CostBasis{}, "EUR", context); }},
        {"quick quote", [=] { return std::make_unique<QuickQuoteForm>(job, context); }},
        {"cup", [=] { return std::make_unique<CupForm>(job, plan, context); }},
        {"as built", [=] { return std::make_unique<AsBuiltForm>(job, plan.drawers.front(), context); }},
        {"as cast", [=] { return std::make_unique<AsCastForm>(job, plan, "d1", "2031-03-05", context); }},
        {"paste", [=] { return std::make_unique<PasteDialog>(context); }},
        {"outline", [=] { return std::make_unique<OutlineForm>(polygon, context); }},
    };
}

void expect_readable(QDialog& dialog, const std::string& which) {
    QApplication::processEvents();
    EXPECT_LE(dialog.width(), 1366) << which;
    EXPECT_LE(dialog.height(), 730) << which;
    EXPECT_EQ(test::clipped_words(dialog).join(" | ").toStdString(), "") << which;
    EXPECT_EQ(test::clashing_keys(dialog).join(" | ").toStdString(), "") << which;
}

TEST(BothLanguages, words_of_dialogs_have_room_and_keys_lead_to_one_place) {
    test::dressed_application();
    for (const auto spoken : {Language::english, Language::german}) {
        const Spoken held(spoken);
        for (const auto& [name, made] : dialogs()) {
            const auto dialog = made();
            dialog->show();
            const std::string which = std::string(name) + ", " + language::code_of(spoken).toStdString();
            expect_readable(*dialog, which);
            test::picture(*dialog, QString::fromStdString(which));
            for (auto* tabs : dialog->findChildren<QTabWidget*>())
                for (int i = 1; i < tabs->count(); ++i) {
                    tabs->setCurrentIndex(i);
                    expect_readable(*dialog, which + ", tab " + std::to_string(i));
                    test::picture(*dialog, QString::fromStdString(which + std::to_string(i)));
                }
        }
    }
}

TEST(BothLanguages, a_comma_and_a_point_are_typed_alike) {
    test::dressed_application();
    const auto job = plan::testing::worked_job();
    for (const auto spoken : {Language::english, Language::german}) {
        const Spoken held(spoken);
        const FormContext context = form_context(job);
        for (const char* typed : {"8.5", "8,5"}) {
            MinimumsForm minimums(job.minimums, context);
            minimums.show();
            for (auto* edit : minimums.findChildren<QLineEdit*>()) { // lengths and a number
                edit->selectAll();
                QTest::keyClicks(edit, typed);
            }
            ASSERT_TRUE(minimums.value()) << typed;
            EXPECT_EQ(minimums.value()->wall_mm, 8.5);
            EXPECT_EQ(minimums.value()->wall_ratio, 8.5);
            EitherMark box;
            box.setRange(0, 10);
            box.show();
            box.selectAll();
            QTest::keyClicks(&box, typed);
            QTest::keyClick(&box, Qt::Key_Return);
            EXPECT_EQ(box.value(), 8.5) << typed;
            EXPECT_EQ(box.text(), spoken == Language::german ? "8,50" : "8.50");
        }
    }
}

} // namespace
} // namespace drawercast::app
