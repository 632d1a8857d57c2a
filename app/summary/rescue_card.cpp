// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/rescue_card.h"

#include "plan/pour_steps.h"

#include "language/spoken.h"
#include "sheets/text.h"
#include "summary/column.h"

#include <cmath>

namespace drawercast::summary {

namespace {

struct Rescue {
    const char* seen;
    const char* act;
    const char* never;
};

const Rescue rescues[] = {
    {QT_TRANSLATE_NOOP("Paper", "You are late: foam is at the plate's height before the plate is on"),
     QT_TRANSLATE_NOOP("Paper", "Leave the plate off and let it rise open. Once cured, cut it flat with a "
                                "long blade along the walls' tops."),
     QT_TRANSLATE_NOOP(
         "Paper", "Never force the plate down on foam that rises: closures tear out one after another.")},
    {QT_TRANSLATE_NOOP("Paper", "It stays short: foam does not reach the plate everywhere"),
     QT_TRANSLATE_NOOP("Paper",
                       "Leave it closed and let it cure. Make a test cup, take its figures, and cast again."),
     QT_TRANSLATE_NOOP("Paper", "Do not pour a second batch on cured foam: it does not bind well.")},
    {QT_TRANSLATE_NOOP("Paper", "A joint leaks"),
     QT_TRANSLATE_NOOP(
         "Paper",
         "Press clay on it with a gloved hand, from the side, and hold it until the foam has set there."),
     QT_TRANSLATE_NOOP("Paper", "Do not loosen closures to get at it.")},
    {QT_TRANSLATE_NOOP("Paper", "A corner of the plate lifts"),
     QT_TRANSLATE_NOOP("Paper", "Drive the closures beside it from the side, or add clamps there. What has "
                                "set under the gap is cut off."),
     QT_TRANSLATE_NOOP("Paper", "Nobody leans over the mold: it is under pressure.")},
    {QT_TRANSLATE_NOOP("Paper", "The insert is stuck"),
     QT_TRANSLATE_NOOP("Paper", "Give it another hour. Take the blocks' screws out from below, blow air "
                                "under an edge, peel from the edges."),
     QT_TRANSLATE_NOOP("Paper", "Do not pry with metal: it tears the foam and the sealer.")},
    {QT_TRANSLATE_NOOP("Paper", "Foam on skin or in eyes"),
     QT_TRANSLATE_NOOP(
         "Paper", "Stop, and do what the material's safety sheet says. Have it at hand before the pour."),
     QT_TRANSLATE_NOOP("Paper", "Do not use solvent on skin.")},
};

} // namespace

std::vector<Composed> rescue_card(const Summary& summary, const plan::Plan& plan) {
    Column column(summary, {language::tr("all drawers"), {}, false});
    column.head(language::tr("Rescue card"), 400);
    constexpr theme::Lettering seen{theme::Face::bold, 17}, act{theme::Face::regular, 15};
    for (std::size_t i = 0; i < std::min(plan.drawers.size(), summary.job.drawers.size()); ++i)
        if (const auto latest = plan::latest_plate_on_s(plan.drawers[i]))
            column.lines(language::tr("%1: past %2 s from the start of mixing the plate stays off.")
                             .arg(sheets::text(summary.job.drawers[i]->name))
                             .arg(std::floor(*latest)),
                         {theme::Face::bold, 15}, 22, 0);
    column.down(6);
    for (const Rescue& one : rescues) {
        column.down(8);
        column.lines(language::tr(one.seen) + QStringLiteral("."), seen, 24, 0);
        column.lines(language::tr(one.act), act, 21, 18);
        column.lines(language::tr(one.never), act, 21, 18);
    }
    column.down(10);
    column.lines(language::tr("This is common practice, not the maker of your foam speaking: the material's "
                              "own data and safety sheets come first."),
                 {theme::Face::regular, 11.5}, 15, 0);
    return column.take();
}

} // namespace drawercast::summary
