// SPDX-License-Identifier: GPL-3.0-or-later
// Lists for spreadsheets, and foams side by side.
#include "job/catalog.h"
#include "job/paste.h"

#include "app_forms/operate.h"
#include "app_window/hand.h"
#include "forms/foams_dialog.h"
#include "summary/csv_lists.h"

#include <QFile>
#include <QLabel>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

using test::Desktop;

QByteArray list_named(const std::vector<summary::CsvList>& lists, const char* name) {
    for (const auto& list : lists)
        if (list.name == QLatin1String(name)) return list.bytes;
    return {};
}

TEST(Lists, are_written_beside_each_other) {
    Desktop desk;
    test::open_with_plate_chosen(desk, {{100, 100}, {170, 100}}); // near enough for a check
    auto job = desk.window.document().job();
    job.title = "Masts";
    desk.window.document().replace(std::move(job), {}, true);
    desk.window.document().building().wait();
    desk.window.actions()["job.lists"]->trigger();
    for (const char* name : {"objects", "pockets", "checks", "cuts", "buy"}) {
        QFile file(desk.folder.filePath(QStringLiteral("masts-%1.csv").arg(name)));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << name;
        EXPECT_GT(file.readAll().count('\n'), 1) << name;
    }
    EXPECT_EQ(desk.asking.warned, 0);
}

TEST(Lists, quotes_commas_and_line_breaks_stay_in_their_field) {
    test::application();
    auto job = job::new_job({});
    job::Object object;
    object.id = "i1";
    object.name = "Level, 12\" long";
    object.note = "two\nlines";
    object.height_mm = 25.4;
    object.mass_g = 453.59237;
    object.levels = {{job::Sunk{shape::Rectangle{304.8, 50.8, 0}, 20}, {}, {}}};
    job = job::with_object(std::move(job), object);
    const auto rows = [&] { return list_named(summary::csv_lists(job, plan::compute(job)), "objects"); };
    EXPECT_TRUE(rows().contains("\"Level, 12\"\" long\",304.8,50.8,25.4,453.6,1,0,\"two\nlines\"\r\n"));
    job.display_units = job::DisplayUnits::inch_32;
    EXPECT_TRUE(rows().contains("length (in)"));
    EXPECT_TRUE(rows().contains("\"Level, 12\"\" long\",12,2,1,1,1,0,"));
}

TEST(Lists, objects_can_be_pasted_back) {
    Desktop desk;
    desk.open_demo();
    const auto& job = desk.window.document().job();
    const auto rows = job::read_pasted(
        list_named(summary::csv_lists(job, desk.window.document().plan()), "objects").toStdString(),
        job::paste_units(job.display_units));
    ASSERT_TRUE(rows.has_value());
    ASSERT_EQ(rows->size(), job.objects.size());
    for (std::size_t i = 0; i < rows->size(); ++i) {
        ASSERT_TRUE((*rows)[i].read.has_value()) << (*rows)[i].text;
        EXPECT_EQ((*rows)[i].read->name, job.objects[i]->name);
        EXPECT_EQ((*rows)[i].read->count, job.objects[i]->count);
        EXPECT_NEAR((*rows)[i].read->height_mm, job.objects[i]->height_mm, 1e-3);
        EXPECT_NEAR((*rows)[i].read->mass_g, job.objects[i]->mass_g, 0.1);
    }
}

TEST(FoamsBeside, are_shown_and_one_is_taken) {
    Desktop desk;
    desk.open_demo();
    auto& document = desk.window.document();
    const auto before = document.job();
    desk.asking.to_foam_beside = [](const std::vector<plan::FoamBeside>& foams) {
        EXPECT_GE(foams.size(), 3U);
        FoamsDialog dialog(foams, job::new_job({}));
        test::open(dialog);
        QString words;
        for (auto* label : dialog.findChildren<QLabel*>()) words += label->text() + u'\n';
        EXPECT_TRUE(words.contains("Foot pressure"));
        EXPECT_TRUE(words.contains("The inserts weigh"));
        EXPECT_FALSE(dialog.taken());
        const auto name = QString("Take the foam “%1”").arg(QString::fromStdString(foams[1].foam.name));
        for (auto* button : dialog.findChildren<QPushButton*>())
            if (button->accessibleName() == name) button->click();
        EXPECT_TRUE(dialog.taken());
        return dialog.taken();
    };
    desk.window.actions()["job.foams"]->trigger();
    EXPECT_FALSE(*document.job().foam == *before.foam);
    document.undo_stack().undo();
    EXPECT_EQ(document.job(), before);
}

} // namespace
} // namespace drawercast::app
