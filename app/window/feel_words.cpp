// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/feel_words.h"

#include "layout/reach.h"

#include "language/say.h"
#include "language/spoken.h"

#include <algorithm>

namespace drawercast::app {

namespace {

using language::tr;

QString grip_words(layout::Grip grip) {
    switch (grip) {
    case layout::Grip::falls_out:
        return tr("Falls out when turned over: %1 hold it, it weighs %2.");
    case layout::Grip::easy:
        return tr("Comes out easily: %1 hold it, it weighs %2.");
    case layout::Grip::firm:
        return tr("Held firmly: %1 hold it, it weighs %2.");
    case layout::Grip::two_hands:
        return tr("Takes two hands: %1 hold it, it weighs %2.");
    }
    return {};
}

QString reach_words(const layout::Reach& reach, job::DisplayUnits units) {
    const auto length = [units](double mm) { return language::say_length(mm, units); };
    if (reach.fingers >= 2)
        return tr("Two fingers reach it: the notches have room for %1.").arg(reach.fingers);
    if (reach.two_fingers)
        return tr("Two fingers reach it: it stands %1 over the face.").arg(length(reach.proud_mm));
    return tr("Two fingers do not reach it: a finger notch, or %1 over the face, would let them.")
        .arg(length(layout::finger_hold_mm));
}

} // namespace

QString feel_words(const job::Job& job, const plan::DrawerPlan& drawer, const std::string& subject) {
    const auto* pocket = find_pocket(drawer, subject);
    const auto* object = pocket == nullptr ? nullptr : job::find_object(job, pocket->object);
    if (object == nullptr) return {};
    const auto feels = plan::feel_of(job, drawer);
    const auto feel =
        std::find_if(feels.begin(), feels.end(), [&](const auto& one) { return one.subject == subject; });
    if (feel == feels.end()) return {};
    const auto units = job.display_units;
    const auto force = [units](double n) { return language::say_force_n(n, units); };
    return tr("%1 %2", "two sentences")
        .arg(grip_words(feel->grip).arg(force(feel->lift_out_n), force(feel->weight_n)),
             reach_words(layout::reach_of(*pocket->form, *object), units));
}

} // namespace drawercast::app
