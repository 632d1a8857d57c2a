// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/preferences.h"
#include "language/in_words.h"
#include "language/spoken.h"

#include <QCoreApplication>
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

TEST(Spoken, GermanLastsAsLongAsItIsHeld) {
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

TEST(Spoken, FiguresGetTheDecimalMark) {
    const Application application;
    EXPECT_EQ(figures("12.5 mm × 0.25 mm. V1.2"), "12.5 mm × 0.25 mm. V1.2");
    const Spoken german(Language::german);
    EXPECT_EQ(figures("12.5 mm × 0.25 mm"), "12,5 mm × 0,25 mm");
    EXPECT_EQ(figures("Fix it. 3 of 4. See A.1"), "Fix it. 3 of 4. See A.1"); // full stops stay
    EXPECT_EQ(figures(".5 5. ."), ".5 5. .");
    EXPECT_EQ(figures(""), "");
}

TEST(Spoken, SentencesOfTheCoreWithTheirValues) {
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

TEST(Spoken, LanguagesByTheirCode) {
    EXPECT_EQ(named(u"de"), Language::german);
    EXPECT_EQ(named(u"en"), Language::english);
    for (const auto one : {Language::english, Language::german}) EXPECT_EQ(named(code_of(one)), one);
    EXPECT_FALSE(named(u"De_at"));
    EXPECT_FALSE(named(u""));
}

TEST(Spoken, EnglishUnlessTheSettingsSayElse) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("settings.ini");
    EXPECT_EQ(app::Preferences(file).language(), Language::english);
    QSettings(file, QSettings::IniFormat).setValue("language", "de");
    EXPECT_EQ(app::Preferences(file).language(), Language::german);
    QSettings(file, QSettings::IniFormat).setValue("language", "nonsense");
    EXPECT_EQ(app::Preferences(file).language(), Language::english);
}

} // namespace

} // namespace drawercast::language
