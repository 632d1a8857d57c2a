// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/problem_words.h"

#include "language/in_words.h"
#include "language/spoken.h"

namespace drawercast::app {

namespace {

using language::tr;

} // namespace

QString problem_words(const Problem& problem) {
    const auto is = [&problem](const char* code) { return problem.code == code; };
    if (is("length")) return tr("Not a length. Type it like 82.5, 8.25 cm or 3 1/4 in");
    if (is("length-ambiguous") || is("number-ambiguous"))
        return tr("Can be read in two ways. Type it without a thousands mark");
    if (is("length-range")) return tr("Longer than any workshop. Check the unit");
    if (is("number")) return tr("Not a number. Type it like 82.5 or 3 1/4");
    if (is("outline-few-corners"))
        return tr("Encloses no area. Give at least three corners that are not in line");
    QString words = in_words(problem.what);
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    if (!problem.fix.empty()) words += QStringLiteral(". ") + in_words(problem.fix);
    return words;
}

} // namespace drawercast::app
