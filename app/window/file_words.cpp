// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/file_words.h"

namespace drawercast::app {

QString file_words(const QString& name) {
    QString words;
    for (const QChar c : name.toLower()) words += c.isLetterOrNumber() ? c : QLatin1Char('-');
    while (words.contains(QStringLiteral("--"))) words.replace(QStringLiteral("--"), QStringLiteral("-"));
    return words.isEmpty() ? QStringLiteral("job") : words;
}

} // namespace drawercast::app
