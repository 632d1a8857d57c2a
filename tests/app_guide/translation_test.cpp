// SPDX-License-Identifier: GPL-3.0-or-later
// A translated guide says what the English one says: the same paragraphs in the same order, leading to the
// same places, with the same pictures, quantities and figures, and none left in English.
#include "app_window/hand.h"
#include "guide/guide_text.h"
#include "guide/guide_window.h"
#include "language/spoken.h"
#include "window/guide_acts.h"

#include <QRegularExpression>
#include <QSettings>
#include <QTreeWidget>
#include <gtest/gtest.h>

namespace drawercast::app::guide {
namespace {

using test::Desktop;

/// "words", "item", …, one a line, in order: what kind of lines a section has.
QStringList kinds(const Section& section) {
    static const QRegularExpression item(QStringLiteral("^(-|\\d+\\.) "));
    QStringList found;
    for (const QString& line : section.lines) {
        if (line.trimmed().isEmpty())
            found << "blank";
        else if (line.startsWith("    "))
            found << "formula";
        else if (line.startsWith("> "))
            found << "source";
        else if (line.startsWith("!["))
            found << "picture";
        else if (const auto match = item.match(line); match.hasMatch())
            found << match.captured(1);
        else
            found << (line.startsWith("{list ") ? line : "words");
    }
    return found;
}

/// All that the expression finds in the section, in no order: another language has another one.
QStringList all(const Section& section, const QString& expression) {
    const QRegularExpression wanted(expression);
    QStringList found;
    const QString text = section.lines.join(u'\n');
    for (auto matches = wanted.globalMatch(text); matches.hasNext();) found << matches.next().captured(0);
    found.sort();
    return found;
}

/// The figures, with whatever decimal sign.
QStringList figures(const Section& section) {
    QStringList found = all(section, QStringLiteral("[0-9]+([.,][0-9]+)?"));
    for (QString& figure : found) figure.replace(u',', u'.');
    found.sort();
    return found;
}

std::string joined(const QStringList& words) { return words.join(" | ").toStdString(); }

struct Pair {
    const Section& english;
    const Section& german;
};

std::vector<Pair> pairs(const Book& english, const Book& german) {
    std::vector<Pair> found;
    EXPECT_EQ(english.chapters().size(), german.chapters().size());
    for (std::size_t i = 0; i < english.chapters().size(); ++i) {
        const auto& from = english.chapters()[i];
        const auto& to = german.chapters()[i];
        EXPECT_EQ(from.name, to.name);
        EXPECT_EQ(from.sections.size(), to.sections.size()) << from.name.toStdString();
        for (std::size_t k = 0; k < std::min(from.sections.size(), to.sections.size()); ++k)
            found.push_back({from.sections[k], to.sections[k]});
    }
    return found;
}

TEST(GuideInGerman, has_the_same_paragraphs_links_pictures_and_figures) {
    test::application();
    const auto english = Book::in("en");
    const auto german = Book::in("de");
    const auto all_pairs = pairs(english, german);
    EXPECT_GE(all_pairs.size(), 100u);
    for (const auto& [from, to] : all_pairs) {
        const auto where = from.title.toStdString() + " / " + to.title.toStdString();
        EXPECT_EQ(joined(from.ids), joined(to.ids)) << where;
        EXPECT_EQ(from.level, to.level) << where;
        EXPECT_EQ(joined(kinds(from)), joined(kinds(to))) << where;
        for (const char* what : {R"(\]\([^)]+\))", R"(\{\w+ [^}]+\})", "`[^`]+`"})
            EXPECT_EQ(joined(all(from, what)), joined(all(to, what))) << where;
        EXPECT_EQ(joined(figures(from)), joined(figures(to))) << where;
        EXPECT_EQ(all(from, R"(\*\*.+?\*\*)").size(), all(to, R"(\*\*.+?\*\*)").size()) << where;
    }
}

/// Formulas keep their symbols, so that their terms can be looked up in either language.
TEST(GuideInGerman, has_the_same_signs_in_formulas) {
    test::application();
    const auto english = Book::in("en");
    const auto german = Book::in("de");
    for (const auto& [from, to] : pairs(english, german)) {
        Section from_formulas = from, to_formulas = to;
        for (auto* section : {&from_formulas, &to_formulas})
            section->lines = section->lines.filter(QRegularExpression(QStringLiteral("^    ")));
        const auto signs = QStringLiteral("[≤≥<×√π²⁴φ^±]");
        EXPECT_EQ(joined(all(from_formulas, signs)), joined(all(to_formulas, signs)))
            << from.title.toStdString();
    }
}

TEST(GuideInGerman, leaves_nothing_in_english) {
    test::application();
    const auto english = Book::in("en");
    const auto german = Book::in("de");
    static const QRegularExpression english_word(
        QStringLiteral("\\b(the|and|of|is|are|with|or|by|from|our|than|its|not|to|at)\\b"));
    static const QRegularExpression no_words(QStringLiteral("\\{[^}]*\\}|\\]\\([^)]*\\)|`[^`]*`"));
    const auto words_of = [](QString line) { return line.remove(no_words); };
    for (const auto& [from, to] : pairs(english, german)) {
        EXPECT_NE(from.title, to.title);
        for (const QString& line : QStringList{to.title} + to.lines)
            EXPECT_FALSE(english_word.match(words_of(line)).hasMatch()) << line.toStdString();
        for (const QString& line : from.lines) {
            static const QRegularExpression word(QStringLiteral("\\p{L}{3}"));
            if (word.match(words_of(line)).hasMatch()) {
                EXPECT_FALSE(to.lines.contains(line)) << line.toStdString();
            }
        }
    }
}

/// A decimal point in German is a slip; in braces it is ours, and figures of a unit are set by the program.
TEST(GuideInGerman, has_decimal_commas) {
    test::application();
    static const QRegularExpression asked(QStringLiteral("\\{[^}]*\\}"));
    static const QRegularExpression point(QStringLiteral("[0-9]\\.[0-9]"));
    const auto german = Book::in("de");
    for (const auto& chapter : german.chapters())
        for (const auto& section : chapter.sections)
            for (QString line : section.lines)
                EXPECT_FALSE(point.match(line.remove(asked)).hasMatch()) << line.toStdString();
}

TEST(GuideInGerman, is_shown_and_found) {
    test::application();
    Answers answers;
    answers.action = [](const QString& id) { return id; };
    GuideWindow window(answers, "de");
    window.open("too-high");
    EXPECT_EQ(window.contents().currentItem()->text(0), "Zu hoch für die Schublade");
    EXPECT_TRUE(window.text().toPlainText().contains("Anordnen lassen"));
    window.find_next("topfzeit");
    EXPECT_EQ(window.text().chapter().name, "foam");
    EXPECT_EQ(window.text().textCursor().selectedText(), "Topfzeit");
}

TEST(GuideInGerman, is_opened_by_a_window_in_german_with_its_decimal_mark) {
    Desktop desk;
    const language::Spoken german(language::Language::german);
    QSettings(desk.folder.filePath("settings.ini"), QSettings::IniFormat).setValue("language", "de");
    desk.window.actions()["help.guide"]->trigger();
    auto* guide = desk.window.findChild<GuideActs*>()->window();
    ASSERT_NE(guide, nullptr);
    EXPECT_EQ(guide->text().chapter().title(), "Der Weg durch einen Auftrag");
    guide->open("plate.gap");
    EXPECT_TRUE(guide->text().toPlainText().contains("0,3 mm"));
}

TEST(GuideInGerman, is_english_for_a_language_there_is_none) {
    test::application();
    EXPECT_EQ(Book::in("xx").chapters().front().title(), Book::in("en").chapters().front().title());
}

} // namespace
} // namespace drawercast::app::guide
