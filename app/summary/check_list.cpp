// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/check_list.h"

#include "plan/sentences.h"

#include "language/in_words.h"
#include "language/spoken.h"
#include "sheets/badge.h"
#include "sheets/check_words.h"
#include "sheets/table.h"
#include "sheets/text.h"

#include <algorithm>

namespace drawercast::summary {

using layout::Severity;
using sheets::Align;
using theme::Face;
using theme::Lettering;

namespace {

constexpr double indent = 24, title_pitch = 14, line_pitch = 12.5;
constexpr Lettering title_face{Face::bold, 11.5}, body_face{Face::regular, 10};

/// "mend: Battery pack 1, Barometer. Move one of them apart by 1.8 mm"
QString body_words(const layout::Check& check, const job::Job& job) {
    const std::string whom = plan::subjects_text(check, job);
    const QString todo = in_words(plan::advice(check, job));
    QString words = check.left_as_is ? language::tr("left as is") : sheets::severity_words(check.severity);
    if (!whom.empty()) words += QStringLiteral(": ") + sheets::text(whom);
    if (!todo.isEmpty() && !check.left_as_is)
        words += (whom.empty() ? QStringLiteral(": ") : QStringLiteral(". ")) + todo;
    return words;
}

/// The title leaves room for the zone at its right end.
std::vector<QString> title_lines(const ListedCheck& listed, double width, const Summary& summary) {
    return sheets::broken(in_words(plan::title(listed.check, summary.job)), title_face, width - indent - 26);
}

std::vector<QString> body_lines(const ListedCheck& listed, double width, const Summary& summary) {
    return sheets::broken(body_words(listed.check, summary.job), body_face, width - indent);
}

} // namespace

std::vector<ListedCheck> listed(const plan::DrawerPlan& drawer, job::DisplayUnits units) {
    std::vector<ListedCheck> list;
    for (const auto& check : drawer.checks)
        list.push_back({check, static_cast<int>(list.size()) + 1, sheets::zone_of(check, drawer, units)});
    return list;
}

std::vector<ListedCheck> listed(const std::vector<layout::Check>& checks) {
    std::vector<ListedCheck> list;
    for (const auto& check : checks) list.push_back({check, static_cast<int>(list.size()) + 1, {}});
    return list;
}

double check_height(const ListedCheck& listed, double width, const Summary& summary) {
    const auto titles = static_cast<double>(title_lines(listed, width, summary).size());
    const auto bodies = static_cast<double>(body_lines(listed, width, summary).size());
    return titles * title_pitch + bodies * line_pitch + 7;
}

double write_check(sheets::Inks& inks, Vec top_left, double width, const ListedCheck& listed,
                   const Summary& summary) {
    const theme::Theme& theme = summary.theme;
    const sheets::CheckTag tag = sheets::tag_of(listed.check, listed.number, summary.job);
    sheets::write_badge(inks, top_left + Vec{9, 10}, 1, tag, {Face::bold, 10.5}, theme);
    const QColor ink = listed.check.left_as_is ? theme.ink2 : theme.ink;
    sheets::write(inks, QString::fromStdString(listed.zone), top_left + Vec{width, 12}, {Face::regular, 11},
                  theme.ink2, Align::right);
    double y = top_left.y - 2;
    for (const QString& line : title_lines(listed, width, summary))
        sheets::write(inks, line, {top_left.x + indent, y += title_pitch}, title_face, ink);
    for (const QString& line : body_lines(listed, width, summary))
        sheets::write(inks, line, {top_left.x + indent, y += line_pitch}, body_face, theme.ink2);
    return check_height(listed, width, summary);
}

void write_state(sheets::Inks& inks, Vec right_middle, const std::vector<ListedCheck>& checks,
                 const Summary& summary) {
    const theme::Theme& theme = summary.theme;
    const auto count = [&](Severity severity) {
        return std::count_if(checks.begin(), checks.end(), [&](const ListedCheck& listed) {
            return listed.check.severity == severity && !listed.check.left_as_is;
        });
    };
    const auto mends = count(Severity::mend), looks = count(Severity::look);
    const Lettering face{Face::bold, 13};
    QString words = language::tr("Nothing to mend");
    if (mends > 0)
        words = language::tr("%1 to mend: do not cast yet").arg(mends);
    else if (looks > 0)
        words += language::tr(", %1 to look at").arg(looks);
    const double width = sheets::written_width(words, face);
    const QColor color = mends > 0 ? theme.red : looks > 0 ? theme.ochre : theme.ink;
    const Vec base = right_middle + Vec{mends + looks > 0 ? -10.0 : 0.0, face.px * theme::capital_share / 2};
    if (mends + looks > 0) {
        const Box plate{right_middle - Vec{width + 20, 14}, right_middle + Vec{0, 14}};
        inks.push_back(sheets::Fill{sheets::path_of(plate), mends > 0 ? theme.red_soft : theme.ochre_soft});
        inks.push_back(sheets::Stroke{sheets::path_of(plate), {color, 1.3, {}}});
    }
    sheets::write(inks, words, base, face, color, Align::right);
}

} // namespace drawercast::summary
