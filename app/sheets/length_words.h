// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "language/say.h"

#include <QStringList>

#include <initializer_list>
#include <string>

namespace drawercast::sheets {

/// "512.5", in the job's unit and the language's figures.
inline std::string length_words(const job::Job& job, double mm) {
    return language::say_length_bare(mm, job.display_units).toStdString();
}

/// "512.5 × 300 × 16", likewise.
inline QString sizes_words(const job::Job& job, std::initializer_list<double> all_mm) {
    QStringList words;
    for (const double mm : all_mm) words.append(QString::fromStdString(length_words(job, mm)));
    return words.join(QStringLiteral(" × "));
}

} // namespace drawercast::sheets
