// SPDX-License-Identifier: GPL-3.0-or-later
#include "language/in_words.h"

#include "language/spoken.h"

#include <QCoreApplication>

namespace drawercast {

namespace {

std::string told(const Phrase& phrase) {
    if (phrase.kind == Phrase::Kind::verbatim) return phrase.text;
    if (phrase.kind == Phrase::Kind::figure) return language::figures(phrase.text).toStdString();
    std::vector<std::string> values;
    values.reserve(phrase.values.size());
    for (const auto& value : phrase.values) values.push_back(told(value));
    return filled(QCoreApplication::translate("core", phrase.text.c_str()).toStdString(), values);
}

} // namespace

QString in_words(const Phrase& phrase) { return QString::fromStdString(told(phrase)); }

QString problem_line(const Problem& problem) {
    QString line = problem.where.empty() ? QString() : QString::fromStdString(problem.where + ": ");
    line += in_words(problem.what) + QLatin1Char('.');
    if (!problem.fix.empty()) line += QLatin1Char(' ') + in_words(problem.fix) + QLatin1Char('.');
    return line.replace(QLatin1Char('\n'), QLatin1Char(' ')).replace(QLatin1Char('\r'), QLatin1Char(' '));
}

} // namespace drawercast
