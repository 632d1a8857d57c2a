// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/part_words.h"

#include "base/number.h"
#include "plan/stock_checks.h"

#include "language/spoken.h"

#include <algorithm>
#include <array>

namespace drawercast::sheets {

namespace {

/// The names that are words; the others are signs.
QString in_words(const QString& name) {
    static constexpr std::array words{
        QT_TRANSLATE_NOOP("", "base"),       QT_TRANSLATE_NOOP("", "plate"),
        QT_TRANSLATE_NOOP("", "wall front"), QT_TRANSLATE_NOOP("", "wall right"),
        QT_TRANSLATE_NOOP("", "wall back"),  QT_TRANSLATE_NOOP("", "wall left")};
    const auto at = std::find_if(words.begin(), words.end(),
                                 [&](const char* word) { return name == QLatin1String(word); });
    if (at != words.end()) return language::tr(*at);
    const QString stiffener = QStringLiteral("stiffener ");
    if (name.startsWith(stiffener)) return language::tr("stiffener %1").arg(name.mid(stiffener.size()));
    const QString bearer = QStringLiteral("bearer ");
    if (name.startsWith(bearer)) return language::tr("bearer %1").arg(name.mid(bearer.size()));
    return name;
}

} // namespace

QString part_name(const std::string& label) {
    return in_words(QString::fromStdString(label.substr(label.find(' ') + 1)));
}

QString fence_words(double fence_mm, const QString& said) {
    return fence_mm < plan::least_rip_mm ? language::tr("free side, %1").arg(said) : said;
}

QString part_words(const std::string& label) {
    return QString::fromStdString(label.substr(0, label.find(' ') + 1)) + part_name(label);
}

QString screw_size(const job::Job& job, double diameter_mm, double length_mm) {
    const QString size = QStringLiteral("%1 × %2").arg(language::figures(number_text(diameter_mm)),
                                                       language::figures(number_text(length_mm)));
    return job.display_units == job::DisplayUnits::mm ? size : size + QStringLiteral(" mm");
}

QString pieces_of(int count, const QString& thing) {
    return count == 1 ? language::tr("1 pc %1").arg(thing) : language::tr("%1 pcs %2").arg(count).arg(thing);
}

} // namespace drawercast::sheets
