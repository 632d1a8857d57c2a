// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/check_words.h"

#include "language/say.h"
#include "language/spoken.h"
#include "sheets/zones.h"

namespace drawercast::sheets {

using layout::Code;

std::string plate_words(const layout::Check& check, const job::Job& job) {
    const auto say = [&](double mm) { return language::say_length_bare(mm, job.display_units); };
    const auto with_both = [&](const QString& words) {
        return words.arg(say(check.value), say(check.limit)).toStdString();
    };
    switch (check.code) {
    case Code::wall_thin:
        return with_both(language::tr("wall %1, needs %2"));
    case Code::edge_thin:
        return with_both(language::tr("edge %1, needs %2"));
    case Code::floor_thin:
        return with_both(language::tr("floor %1, needs %2"));
    case Code::overlap:
        return language::tr("overlap %1").arg(say(check.value)).toStdString();
    case Code::outside:
        return language::tr("outside by %1").arg(say(check.value)).toStdString();
    case Code::too_high:
        return with_both(language::tr("needs %1, has %2"));
    case Code::notch_apart:
        return language::tr("notch apart").toStdString();
    case Code::obstructed:
        return language::tr("obstructed").toStdString();
    default:
        return {};
    }
}

QString severity_words(layout::Severity severity) {
    switch (severity) {
    case layout::Severity::mend:
        return language::tr("mend", "severity");
    case layout::Severity::look:
        return language::tr("look", "severity");
    case layout::Severity::note:
        return language::tr("note", "severity");
    }
    return {};
}

std::optional<Vec> place_of(const layout::Check& check, const plan::DrawerPlan& drawer) {
    if (check.frame == layout::CheckFrame::drawer && check.at)
        return check.to ? (*check.at + *check.to) * 0.5 : *check.at;
    for (const auto& subject : check.subjects)
        if (const auto* pocket = find_pocket(drawer, subject)) return pocket->box.center();
    return std::nullopt;
}

std::string zone_of(const layout::Check& check, const plan::DrawerPlan& drawer, job::DisplayUnits units) {
    const auto place = place_of(check, drawer);
    if (!place || !drawer.insert) return {};
    return zone_of(shape::Point<shape::InDrawer>::of(*place), shape::bounds(drawer.insert->drawer.contour),
                   units);
}

std::string key_of(const layout::Check& check) {
    std::string key(layout::text_of(check.code));
    for (const auto& subject : check.subjects) key += ' ' + subject;
    return key;
}

CheckTag tag_of(const layout::Check& check, int number, const job::Job& job) {
    return {number, check.severity, check.left_as_is, plate_words(check, job), key_of(check)};
}

} // namespace drawercast::sheets
