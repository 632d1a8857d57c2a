// SPDX-License-Identifier: GPL-3.0-or-later
#include "language/in_words.h"

#include "language/spoken.h"

#include <QCoreApplication>

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

QString problem_line(const Problem& problem) {
    return QString::fromStdString(one_line({problem.code,
                                            {problem.where.name, in_language(problem.where.spot)},
                                            in_language(problem.what),
                                            in_language(problem.fix)}));
}

} // namespace drawercast
