// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "plan/pour_steps.h"
#include "plan/run_sheet.h"
#include "stock/tubes.h"

#include "core/plan/sample_job.h"
#include "document/preferences.h"
#include "language/goods.h"
#include "language/in_words.h"
#include "language/spoken.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace drawercast::language {

namespace {

/// An application object of the test's own, where none is there yet.
struct Application {
    int count = 1;
    char name[5] = "test";
    char* arguments[2] = {name, nullptr};
    QCoreApplication* own = QCoreApplication::instance() ? nullptr : new QCoreApplication(count, arguments);
    ~Application() { delete own; }
};

QString words(const char* text, const char* comment = nullptr, int n = -1) {
    return QCoreApplication::translate("wherever", text, comment, n);
}

TEST(Spoken, german_lasts_as_long_as_it_is_held) {
    const Application application;
    {
        const Spoken german(Language::german);
        EXPECT_EQ(words("Drawers"), "Schubladen"); // whatever the context
        EXPECT_EQ(words("%1, %2, %n to mend", nullptr, 3).arg("a", "b"), "a, b, 3 zu beheben");
        EXPECT_EQ(words("nobody wrote this"), "nobody wrote this");
    }
    EXPECT_EQ(words("Drawers"), "Drawers");
    const Spoken english(Language::english);
    EXPECT_EQ(words("Drawers"), "Drawers");
}

TEST(Spoken, figures_get_the_decimal_mark) {
    const Application application;
    EXPECT_EQ(figures("12.5 mm × 0.25 mm. V1.2"), "12.5 mm × 0.25 mm. V1.2");
    const Spoken german(Language::german);
    EXPECT_EQ(figures("12.5 mm × 0.25 mm"), "12,5 mm × 0,25 mm");
    EXPECT_EQ(figures("Fix it. 3 of 4. See A.1"), "Fix it. 3 of 4. See A.1"); // full stops stay
    EXPECT_EQ(figures(".5 5. ."), ".5 5. .");
    EXPECT_EQ(figures(""), "");
}

TEST(Spoken, sentences_of_the_core_with_their_values) {
    const Application application;
    const Phrase thin = phrase("Wall %1, needs %2", figure("6.2 mm"), figure("8 mm"));
    EXPECT_EQ(in_words(thin), "Wall 6.2 mm, needs 8 mm");
    const Spoken german(Language::german);
    EXPECT_EQ(in_words(thin), "Steg 6,2 mm, nötig 8 mm");
    EXPECT_EQ(in_words(phrase("%1 (%2)", thin, verbatim("Sensor 1.5 %1"))),
              "Steg 6,2 mm, nötig 8 mm (Sensor 1.5 %1)");
    EXPECT_EQ(problem_line(
                  {"file", "a.json", phrase("could not be opened"), phrase("Check the name and the folder")}),
              "a.json: ließ sich nicht öffnen. Name und Ordner prüfen.");
}

TEST(Spoken, languages_by_their_code) {
    EXPECT_EQ(named(u"de"), Language::german);
    EXPECT_EQ(named(u"en"), Language::english);
    for (const auto one : {Language::english, Language::german}) EXPECT_EQ(named(code_of(one)), one);
    EXPECT_FALSE(named(u"De_at"));
    EXPECT_FALSE(named(u""));
}

TEST(Spoken, as_the_system_unless_the_maker_chose) {
    EXPECT_EQ(first_spoken({"fr-FR", "de-AT", "en"}), Language::german);
    EXPECT_EQ(first_spoken({"en-US", "de"}), Language::english);
    EXPECT_EQ(first_spoken({"fr", "C"}), Language::english);
    EXPECT_EQ(first_spoken({}), Language::english);
    const QTemporaryDir folder;
    const QString file = folder.filePath("settings.ini");
    app::Preferences preferences(file);
    EXPECT_EQ(preferences.chosen_language(), std::nullopt);
    EXPECT_EQ(preferences.language(), first_spoken(QLocale::system().uiLanguages()));
    preferences.set_chosen_language(Language::german);
    EXPECT_EQ(app::Preferences(file).language(), Language::german);
    preferences.set_chosen_language(std::nullopt);
    EXPECT_EQ(app::Preferences(file).chosen_language(), std::nullopt);
    QSettings(file, QSettings::IniFormat).setValue("language", "nonsense");
    EXPECT_EQ(app::Preferences(file).chosen_language(), std::nullopt);
}

TEST(Spoken, knows_what_it_speaks) {
    const Application application;
    EXPECT_EQ(spoken_now(), Language::english);
    const Spoken german(Language::german);
    EXPECT_EQ(spoken_now(), Language::german);
}

TEST(Spoken, every_step_of_the_run_sheet_and_of_the_pour_in_german) {
    auto job = plan::testing::worked_job();
    job::Foam foam = *job.foam;
    foam.pigment_of_b = 0.02;
    foam.crush = true;
    job.foam = foam;
    const plan::Plan plan = plan::compute(job);
    std::vector<Phrase> said;
    for (const auto& task : plan::run_sheet(job, plan).tasks) {
        said.push_back(task.what);
        said.insert(said.end(), task.gates.begin(), task.gates.end());
        said.insert(said.end(), task.materials.begin(), task.materials.end());
    }
    for (const auto steps : {plan::pour_steps, plan::rehearsal_steps})
        for (const auto& step : steps(job, plan.drawers.front())) {
            said.push_back(step.what);
            said.insert(said.end(), step.details.begin(), step.details.end());
        }
    ASSERT_GT(said.size(), 50U);
    const Application application;
    for (const Phrase& one : said) EXPECT_EQ(in_words(one).toStdString(), english(one));
    const Spoken german(Language::german);
    for (const Phrase& one : said) EXPECT_NE(in_words(one).toStdString(), english(one));
}

TEST(Goods, what_the_catalog_names_is_said_in_german_and_found_again) {
    std::vector<std::string> names;
    for (const auto& one : job::builtin_boards()) names.push_back(one.name);
    for (const auto& one : job::builtin_closures()) names.push_back(one.name);
    for (const auto& one : stock::usual_tubes()) names.push_back(one.name);
    for (const auto& one : job::builtin_foams()) {
        names.push_back(one.name);
        for (const auto& kit : one.kits) names.push_back(kit.name);
    }
    for (const auto& one : job::standard_objects()) names.insert(names.end(), {one.name, one.note});
    const Application application;
    for (const auto& name : names) EXPECT_EQ(goods_name(name).toStdString(), name);
    const Spoken german(Language::german);
    for (const auto& name : names) {
        EXPECT_NE(goods_name(name).toStdString(), name);
        EXPECT_EQ(goods_key(goods_name(name)), name);
    }
    for (const char* own : {"base", "Plywood 18 from the shed", ""}) {
        EXPECT_EQ(goods_name(own).toStdString(), own);
        EXPECT_EQ(goods_key(own), own);
    }
}

} // namespace

} // namespace drawercast::language
