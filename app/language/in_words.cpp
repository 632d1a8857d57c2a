// SPDX-License-Identifier: GPL-3.0-or-later
#include "language/in_words.h"

#include "language/spoken.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace drawercast {

namespace {

/// The same with its sentences looked up and its figures with the language's mark; names stay.
Phrase in_language(Phrase phrase) {
    if (phrase.kind == Phrase::Kind::figure) phrase.text = language::figures(phrase.text).toStdString();
    if (phrase.kind == Phrase::Kind::sentence)
        phrase.text = QCoreApplication::translate("core", phrase.text.c_str()).toStdString();
    for (Phrase& value : phrase.values) value = in_language(std::move(value));
    return phrase;
}

} // namespace

QString in_words(const Phrase& phrase) { return QString::fromStdString(english(in_language(phrase))); }

QString place_words(const std::string& where) {
    static const QRegularExpression line(QStringLiteral("line (\\d+), column (\\d+)")),
        character(QStringLiteral("character (\\d+) of the path"));
    const auto tr = [](const char* words) { return QCoreApplication::translate("Places", words); };
    QString words = QString::fromStdString(where);
    if (const auto at = line.match(words); at.hasMatch())
        words.replace(at.captured(), tr("line %1, column %2").arg(at.captured(1), at.captured(2)));
    if (const auto at = character.match(words); at.hasMatch())
        words.replace(at.captured(), tr("character %1 of the path").arg(at.captured(1)));
    return words;
}

QString problem_line(const Problem& problem) {
    return QString::fromStdString(one_line({problem.code, place_words(problem.where).toStdString(),
                                            in_language(problem.what), in_language(problem.fix)}));
}

} // namespace drawercast
