// SPDX-License-Identifier: GPL-3.0-or-later
#include "language/spoken.h"

#include "base/demand.h"

#include <QCoreApplication>
#include <QLibraryInfo>

static void load_words() { Q_INIT_RESOURCE(words); } // the macro may not stand in a namespace

namespace drawercast::language {

std::optional<Language> named(QStringView code) {
    if (code == QLatin1String("en")) return Language::english;
    if (code == QLatin1String("de")) return Language::german;
    return std::nullopt;
}

QString code_of(Language language) {
    return language == Language::german ? QStringLiteral("de") : QStringLiteral("en");
}

Language first_spoken(const QStringList& listed) {
    for (const QString& one : listed)
        if (const auto language = named(QStringView(one).left(2))) return *language;
    return Language::english;
}

bool FlatTable::isEmpty() const { return QTranslator::isEmpty(); }

QString FlatTable::translate(const char*, const char* source, const char* comment, int n) const {
    return QTranslator::translate("", source, comment, n);
}

Spoken::Spoken(Language language) {
    if (language == Language::english) return;
    load_words();
    const bool loaded = words_.load(QStringLiteral(":/words/de.qm"));
    DRAWERCAST_DEMAND(loaded, "the embedded words are there");
    // Without it, only the words of Qt's own dialogs stay English.
    if (toolkit_.load(QStringLiteral("qtbase_de"), QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QCoreApplication::installTranslator(&toolkit_);
    QCoreApplication::installTranslator(&words_); // asked first: the last one
}

Spoken::~Spoken() {
    QCoreApplication::removeTranslator(&words_);
    QCoreApplication::removeTranslator(&toolkit_);
}

Language spoken_now() {
    return named(QCoreApplication::translate("Language", "en", "code of the language"))
        .value_or(Language::english);
}

QString tr(const char* text, const char* comment) {
    return QCoreApplication::translate("Paper", text, comment);
}

QString figures(std::string_view said) {
    QString words = QString::fromUtf8(said.data(), static_cast<qsizetype>(said.size()));
    const QString mark = QCoreApplication::translate("Figures", ".", "decimal mark");
    if (mark == QLatin1String(".")) return words;
    for (qsizetype i = 1; i + 1 < words.size(); ++i)
        if (words[i] == u'.' && words[i - 1].isDigit() && words[i + 1].isDigit()) words.replace(i, 1, mark);
    return words;
}

} // namespace drawercast::language
