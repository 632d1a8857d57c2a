// SPDX-License-Identifier: GPL-3.0-or-later
// The guide: every check and every figure has its paragraph with source and formula, no link leads nowhere,
// and it can be read, searched and left by keyboard.
#include "layout/check.h"
#include "plan/planner.h"

#include "app_window/hand.h"
#include "guide/guide_text.h"
#include "guide/guide_window.h"
#include "guide/pictures.h"
#include "panes/explain/foam_figures.h"
#include "panes/explain_sheet.h"
#include "panes/foam_pane.h"
#include "source_dir.h"
#include "window/guide_acts.h"

#include <QFile>
#include <QRegularExpression>
#include <QTextBlock>
#include <QTextBrowser>
#include <QTreeWidget>
#include <gtest/gtest.h>

#include <set>

namespace drawercast::app::guide {
namespace {

using test::Desktop;

/// What matches the first group in a source file: codes and ids are told there and nowhere else.
QStringList in_source(const QString& path, const QString& pattern) {
    QFile file(QStringLiteral(DRAWERCAST_SOURCE_DIR "/") + path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QStringList found;
    const QString text = QString::fromUtf8(file.readAll());
    const QRegularExpression expression(pattern);
    for (auto all = expression.globalMatch(text); all.hasNext();) found << all.next().captured(1);
    return found;
}

QStringList check_codes() {
    return in_source("core/layout/check.cpp", R"re(Name\{Code::\w+, "([a-z-]+)")re");
}

QStringList figure_ids() {
    QStringList ids;
    for (const char* part : {"plate", "vents", "closing"})
        for (const QString& id : in_source(QStringLiteral("app/panes/explain/%1.cpp").arg(part),
                                           R"re((?:put|one_stress)\(\s*"([a-z_]+)")re"))
            ids << QStringLiteral("%1.%2").arg(part, id);
    const auto job = demo_job(job::DisplayUnits::mm);
    const auto plan = plan::Planner().fast(job);
    for (const auto& figure : foam_figures(job, plan, plan.drawers.front(), DosingUnit::mass))
        ids << figure.id;
    return ids;
}

bool has_line(const Section& section, const QString& start) {
    return std::any_of(section.lines.begin(), section.lines.end(),
                       [&](const QString& line) { return line.startsWith(start); });
}

TEST(Guide, every_check_has_a_paragraph_with_formula_and_source) {
    test::application();
    const auto book = Book::in("en");
    const auto codes = check_codes();
    EXPECT_GE(codes.size(), 39);
    for (const QString& code : codes) {
        const auto known = layout::code_of(code.toStdString());
        ASSERT_TRUE(known) << code.toStdString();
        const auto place = book.find(code);
        ASSERT_NE(place.section, nullptr) << code.toStdString();
        EXPECT_TRUE(has_line(*place.section, "> ")) << code.toStdString() << " says no source";
        if (!layout::unit_of(*known).empty()) {
            EXPECT_TRUE(has_line(*place.section, "    ")) << code.toStdString() << " has no formula";
        }
    }
}

TEST(Guide, every_figure_has_a_paragraph_with_formula_and_source) {
    test::application();
    const auto book = Book::in("en");
    const auto ids = figure_ids();
    EXPECT_GE(ids.size(), 36) << ids.join(' ').toStdString();
    for (const QString& id : ids) {
        const auto place = book.find(id);
        ASSERT_NE(place.section, nullptr) << id.toStdString();
        EXPECT_TRUE(has_line(*place.section, "> ")) << id.toStdString() << " says no source";
        EXPECT_TRUE(has_line(*place.section, "    ")) << id.toStdString() << " has no formula";
    }
}

TEST(Guide, no_link_leads_nowhere) {
    Desktop desk;
    const auto book = Book::in("en");
    std::set<QString> ids;
    for (const auto& chapter : book.chapters()) {
        for (const auto& section : chapter.sections)
            for (const QString& id : section.ids)
                EXPECT_TRUE(ids.insert(id).second) << id.toStdString() << " is there twice";
        const auto found = references_of(chapter);
        for (const QString& id : found.links)
            EXPECT_NE(book.find(id).chapter, nullptr)
                << chapter.name.toStdString() << ": " << id.toStdString();
        for (const QString& id : found.actions)
            EXPECT_TRUE(desk.window.actions().has(id.toStdString()))
                << chapter.name.toStdString() << ": " << id.toStdString();
        for (const QString& name : found.pictures)
            EXPECT_TRUE(picture_names().contains(name))
                << chapter.name.toStdString() << ": " << name.toStdString();
        for (const QString& name : found.lists)
            EXPECT_TRUE(name == "keys" || name == "cautions") << name.toStdString();
        for (const QString& words : found.quantities)
            EXPECT_FALSE(quantity(words, job::DisplayUnits::inch).isEmpty())
                << chapter.name.toStdString() << ": {" << words.toStdString() << "}";
    }
}

TEST(Guide, every_picture_is_in_a_chapter_and_is_drawn) {
    Desktop desk;
    test::open_with_plate_chosen(desk, {{100, 150}, {220, 150}, {320, 100}});
    QStringList shown;
    const auto book = Book::in("en");
    for (const auto& chapter : book.chapters()) shown += references_of(chapter).pictures;
    Demo demo(desk.window.document().job());
    const PictureLook look{400, 1, theme::dark_theme()};
    for (const QString& name : picture_names()) {
        EXPECT_EQ(shown.count(name), 1) << name.toStdString();
        EXPECT_TRUE(name == "thin-wall" || picture(name, demo, look)) << name.toStdString() << ", at once";
    }
    demo.wait();
    ASSERT_TRUE(demo.built());
    for (const QString& name : picture_names()) {
        if (name == "thin-wall") continue; // these three pockets are far apart
        const auto drawn = picture(name, demo, look);
        ASSERT_TRUE(drawn) << name.toStdString();
        EXPECT_LE(drawn->width(), look.width_px);
        std::set<QRgb> colors;
        for (int y = 0; y < drawn->height(); y += 2)
            for (int x = 0; x < drawn->width(); x += 2) colors.insert(drawn->pixel(x, y));
        EXPECT_GE(colors.size(), 8u) << name.toStdString() << " is blank";
    }
}

TEST(Guide, the_demo_has_a_thin_wall_to_show) {
    test::application();
    const Demo demo(demo_job(job::DisplayUnits::mm));
    ASSERT_TRUE(demo.thin());
    EXPECT_LT(demo.thin()->check.value, demo.thin()->check.limit);
    EXPECT_TRUE(picture("thin-wall", demo, {400, 1, theme::light_theme()}));
}

/// A guide without a job beside it.
struct Open {
    Open() {
        test::application();
        Answers answers;
        answers.action = [](const QString& id) { return id; };
        answers.list = [](const QString& name) { return name; };
        window = std::make_unique<GuideWindow>(answers);
    }
    QString line() const { return window->text().textCursor().block().text(); }
    std::unique_ptr<GuideWindow> window;
};

TEST(Guide, goes_back_and_forth) {
    Open guide;
    guide.window->open({});
    EXPECT_EQ(guide.window->text().chapter().name, "start");
    guide.window->open("too-high");
    EXPECT_EQ(guide.window->text().chapter().name, "lay-out");
    EXPECT_EQ(guide.window->contents().currentItem()->text(0), "Too high for the drawer");
    QTest::keyClick(&guide.window->text(), Qt::Key_Left, Qt::AltModifier);
    EXPECT_EQ(guide.window->text().chapter().name, "start");
    QTest::keyClick(&guide.window->text(), Qt::Key_Right, Qt::AltModifier);
    EXPECT_EQ(guide.window->text().chapter().name, "lay-out");
    QTest::keyClick(guide.window.get(), Qt::Key_Escape);
    EXPECT_FALSE(guide.window->isVisible());
}

TEST(Guide, finds_in_all_chapters_and_around_once) {
    Open guide;
    guide.window->open("safety");
    auto& field = guide.window->find_field();
    QTest::keyClicks(&field, "sensitize"); // in a list that is not the guide's own text
    guide.window->open("foam");
    field.setText("poiseuille");
    QTest::keyClick(&field, Qt::Key_Return);
    EXPECT_EQ(guide.window->text().chapter().name, "air");
    EXPECT_EQ(guide.window->text().textCursor().selectedText().toLower(), "poiseuille");
    EXPECT_EQ(guide.window->text().toPlainText().count("poiseuille", Qt::CaseInsensitive), 1);
    QTest::keyClick(&field, Qt::Key_Return);
    EXPECT_EQ(guide.window->text().chapter().name, "air") << "the only one is found again";
    EXPECT_FALSE(guide.window->found().isEmpty());
    field.setText("no such words");
    QTest::keyClick(&field, Qt::Key_Return);
    EXPECT_EQ(guide.window->found(), "“no such words” is not in the guide");
}

TEST(Guide, speaks_the_units_of_the_job) {
    Open guide;
    guide.window->open("edge-thin");
    EXPECT_TRUE(guide.window->text().toPlainText().contains("15 mm"));
    guide.window->set_units(job::DisplayUnits::inch_32);
    QApplication::processEvents();
    EXPECT_TRUE(guide.window->text().toPlainText().contains("19/32 in"));
    EXPECT_EQ(guide.window->text().chapter().name, "lay-out");
}

TEST(Guide, a_check_and_a_figure_lead_to_their_paragraphs) {
    Desktop desk;
    auto& window = desk.window;
    test::open_pockets(desk, {{100, 150}, {165, 150}}); // a wall of 5 mm
    window.actions()["check.next"]->trigger();
    ASSERT_TRUE(window.selection().check());
    ASSERT_TRUE(window.actions()["check.guide"]->isEnabled());
    window.actions()["check.guide"]->trigger();
    auto* acts = window.findChild<GuideActs*>();
    ASSERT_NE(acts->window(), nullptr);
    EXPECT_EQ(acts->window()->text().source().fragment().toStdString(),
              layout::text_of(window.selection().check()->code));

    auto& foam = *window.findChild<FoamPane*>();
    foam.explain("closed");
    auto* sheet = window.findChild<ExplainSheet*>()->findChild<QTextBrowser*>();
    EXPECT_TRUE(sheet->toPlainText().endsWith("More in the guide"));
    emit sheet->anchorClicked(QUrl("guide:closed"));
    EXPECT_EQ(acts->window()->text().source().fragment(), "closed");
    EXPECT_EQ(acts->window()->text().chapter().name, "foam");
}

TEST(Guide, links_do_what_they_name) {
    Desktop desk;
    desk.window.actions()["help.guide"]->trigger();
    auto* acts = desk.window.findChild<GuideActs*>();
    ASSERT_NE(acts->window(), nullptr);
    emit acts->window()->text().anchorClicked(QUrl("action:objects.add"));
    EXPECT_EQ(desk.asking.asked, 1);
    emit acts->window()->text().anchorClicked(QUrl("action:job.templates")); // there is no drawer
    EXPECT_EQ(desk.asking.asked, 1);
    EXPECT_FALSE(acts->window()->found().isEmpty());
}

TEST(GuideMarkup, takes_blocks_and_words_apart) {
    test::application();
    const auto chapter =
        chapter_of("x", "# Head\n\nOne\ntwo **bold** <b>.\n\n- a\n- b\n\n    {mm 10} × 2\n\n> From there.\n");
    Answers answers;
    answers.units = job::DisplayUnits::mm;
    const QString html = html_of(chapter, Book::in("en"), answers);
    EXPECT_TRUE(html.contains("<p>One two <b>bold</b> &lt;b&gt;.</p>")) << html.toStdString();
    EXPECT_TRUE(html.contains("<ul><li>a</li><li>b</li></ul>")) << html.toStdString();
    EXPECT_TRUE(html.contains("10&nbsp;mm × 2")) << html.toStdString();
    EXPECT_TRUE(html.contains("From there.")) << html.toStdString();
}

} // namespace
} // namespace drawercast::app::guide
