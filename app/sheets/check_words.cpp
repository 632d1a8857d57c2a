// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/check_words.h"

#include "plan/say.h"

#include "sheets/zones.h"

namespace drawercast::sheets {

using layout::Code;

std::string plate_words(const layout::Check& check, const job::Job& job) {
    const auto say = [&](double mm) { return plan::say_length_bare(mm, job.display_units); };
    const auto both = [&](const char* what) {
        return what + say(check.value) + ", needs " + say(check.limit);
    };
    switch (check.code) {
    case Code::wall_thin:
        return both("wall ");
    case Code::edge_thin:
        return both("edge ");
    case Code::floor_thin:
        return both("floor ");
    case Code::overlap:
        return "overlap " + say(check.value);
    case Code::outside:
        return "outside by " + say(check.value);
    case Code::too_high:
        return "needs " + say(check.value) + ", has " + say(check.limit);
    case Code::notch_apart:
        return "notch apart";
    case Code::obstructed:
        return "obstructed";
    default:
        return {};
    }
}

std::optional<Vec> place_of(const layout::Check& check, const plan::DrawerPlan& drawer) {
    if (check.frame == layout::CheckFrame::drawer && check.at)
        return check.to ? (*check.at + *check.to) * 0.5 : *check.at;
    for (const auto& subject : check.subjects)
        for (const auto& pocket : drawer.pockets)
            if (pocket->subject == subject) return pocket->box.center();
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
