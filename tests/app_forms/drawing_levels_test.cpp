// SPDX-License-Identifier: GPL-3.0-or-later
// Outlines of drawings in forms, and the easy shapes that stand in for them.
#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "forms/drawing_file.h"
#include "forms/object_form.h"
#include "forms/outline_form.h"
#include "outline/outline_acts.h"

#include <QFile>
#include <QMenu>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

/// Answers in the maker's place.
class Answers final : public DrawingAsking {
  public:
    QString path;
    std::vector<int> rows;
    QStringList listed;
    QString warned;

    std::optional<QString> drawing_file(QWidget*) override {
        return path.isEmpty() ? std::nullopt : std::optional(path);
    }
    void warn(QWidget*, const QString& title, const QString& words) override { warned = title + words; }
    std::optional<std::vector<int>> outlines(QWidget*, const QString&, const QStringList& names,
                                             bool) override {
        listed = names;
        return rows;
    }
};

struct Drawing {
    explicit Drawing(const char* svg) : path(folder.filePath(QStringLiteral("a.svg"))) {
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(svg);
    }
    QTemporaryDir folder;
    QString path;
};

/// A body of 100 × 60 with a lamp of 30 over its right half.
constexpr const char* mast_head = "<svg width='200mm' height='100mm' viewBox='0 0 200 100'>"
                                  "<rect id='body' x='10' y='20' width='100' height='60'/>"
                                  "<circle id='lamp' cx='85' cy='50' r='15'/></svg>";

FormContext answered_by(DrawingAsking& answers) {
    FormContext context;
    context.drawing_asking = &answers;
    return context;
}

QAbstractButton& starting(QWidget& form, const char* words) {
    for (auto* one : form.findChildren<QAbstractButton*>())
        if (QString(one->text()).remove('&').startsWith(QLatin1String(words))) return *one;
    throw std::runtime_error(words);
}

TEST(DrawnLevels, several_outlines_become_levels_in_their_places) {
    test::dressed_application();
    const Drawing drawing(mast_head);
    Answers answers;
    answers.path = drawing.path;
    answers.rows = {0, 1};
    ObjectForm form(ObjectForm::Purpose::add, blank_object(), answered_by(answers));
    test::open(form);
    test::type(form, "Name", "Mast head");
    starting(form, "Levels from SVG").click();
    EXPECT_EQ(answers.listed.size(), 2);
    EXPECT_TRUE(answers.listed[0].contains("body"));
    EXPECT_FALSE(form.value()) << "depths are still to be told";
    test::type(form, "Height", "50");
    test::type(form, "Depth", "20");
    auto* tabs = form.findChild<QTabBar*>();
    ASSERT_NE(tabs, nullptr);
    ASSERT_EQ(tabs->count(), 2) << "the blank level gave way";
    tabs->setCurrentIndex(1);
    test::type(form, "Depth", "35");
    ASSERT_TRUE(form.value());
    const auto levels = form.value()->levels;
    ASSERT_EQ(levels.size(), 2U);
    EXPECT_EQ(levels[0].pose.at, (shape::Vec{0, 0})) << "the body's middle is the middle of all";
    EXPECT_EQ(levels[1].pose.at, (shape::Vec{25, 0}));
    EXPECT_EQ(std::get<job::Sunk>(levels[1].form).depth_mm, 35);
}

TEST(DrawnLevels, taken_back_and_unreadable_change_nothing) {
    test::dressed_application();
    Answers answers;
    ObjectForm form(ObjectForm::Purpose::add, blank_object(), answered_by(answers));
    test::open(form);
    starting(form, "Levels from SVG").click();
    EXPECT_TRUE(answers.warned.isEmpty());
    const Drawing broken("<svg width='10mm' viewBox='0 0 10 10'>\n<path d='M1 1H9V9Q'/></svg>");
    answers.path = broken.path;
    starting(form, "Levels from SVG").click();
    EXPECT_TRUE(answers.warned.contains("line 2"));
    EXPECT_EQ(form.findChild<QTabBar*>()->count(), 1);
}

TEST(DrawnLevels, one_outline_is_taken_into_its_level) {
    test::dressed_application();
    const Drawing drawing(mast_head);
    Answers answers;
    answers.path = drawing.path;
    answers.rows = {1};
    auto object = blank_object();
    object.name = "Lamp";
    object.height_mm = 20;
    object.levels[0].form = job::Sunk{shape::Polygon{{{{0, 0}, 0}, {{10, 0}, 0}, {{0, 10}, 0}}}, 12};
    ObjectForm form(ObjectForm::Purpose::change, object, answered_by(answers));
    test::open(form);
    starting(form, "From an SVG file").click();
    ASSERT_TRUE(form.value());
    const auto sunk = std::get<job::Sunk>(form.value()->levels[0].form);
    EXPECT_NEAR(outline::box_of(std::get<shape::Polygon>(sunk.outline)).width(), 30, 1e-3);
    EXPECT_EQ(sunk.depth_mm, 12);
}

TEST(EasyShapes, are_offered_with_their_cost_and_taken_as_one_undo) {
    test::dressed_application();
    const shape::Polygon ell{
        {{{0, 0}, 0}, {{100, 0}, 0}, {{100, 30}, 0}, {{40, 32}, 0}, {{38, 80}, 0}, {{0, 80}, 0}}};
    OutlineForm form(ell, {});
    test::open(form);
    test::button(form, "Nearest easy shapes").click();
    QApplication::processEvents();
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    ASSERT_GE(menu->actions().size(), 2);
    EXPECT_TRUE(menu->actions()[0]->text().startsWith("Two rectangles: the pocket grows by"))
        << menu->actions()[0]->text().toStdString();
    menu->actions()[0]->trigger();
    menu->close();
    EXPECT_EQ(form.board().polygon().corners.size(), 6U);
    ASSERT_TRUE(form.value());
    test::button(form, "Undo").click();
    EXPECT_EQ(form.board().polygon(), ell);
}

} // namespace
} // namespace drawercast::app
