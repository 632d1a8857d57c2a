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
    QString seen;
    QString act;
    QString never;
};

std::vector<Rescue> rescues() {
    return {
        {language::tr("You are late: foam is at the plate’s height before the plate is on."),
         language::tr("Leave the plate off and let it rise open. Once cured, cut it flat with a long blade "
                      "along the walls’ tops."),
         language::tr("Never force the plate down on foam that rises: closures tear out one after another.")},
        {language::tr("It stays short: foam does not reach the plate everywhere."),
         language::tr("Leave it closed and let it cure. Make a test cup, take its figures, and cast again."),
         language::tr("Do not pour a second batch on cured foam: it does not bind well.")},
        {language::tr("A joint leaks."),
         language::tr("In gloves and goggles, from the side: press clay on it with a stick of wood, not the "
                      "palm, and hold it until the foam has set there."),
         language::tr("Do not loosen closures to get at it.")},
        {language::tr("A corner of the plate lifts."),
         language::tr("Stand aside, at arm’s length: tighten only what is not tight yet, or set a clamp. If "
                      "a closure pulls out, step back and leave it. What has set under the gap is cut off."),
         language::tr("Nobody leans over the mold: it is under pressure.")},
        {language::tr("The insert is stuck."),
         language::tr("Give it another hour. Take the blocks’ screws out from below; blow air under an edge, "
                      "gently, goggles on, nobody opposite; peel from the edges."),
         language::tr("Do not pry with metal: it tears the foam and the sealer.")},
        {language::tr("Foam on skin or in eyes."),
         language::tr("Stop. Eyes: rinse with running water at once for 15 minutes, lids open, then a "
                      "doctor. Skin: wipe off, wash "
                      "with soap and water. More in the safety data sheet, which lies ready."),
         language::tr("Do not use solvent on skin.")},
        {language::tr("Cough, tight chest, wheezing, even hours later."),
         language::tr(
             "Into fresh air, all stop. Call a doctor or the emergency services; show the safety data "
             "sheet."),
         language::tr("Do not go back in.")},
    };
}

} // namespace

std::vector<Composed> rescue_card(const Summary& summary, const plan::Plan& plan) {
    Column column(summary, {language::tr("all drawers"), {}, false});
    column.head(language::tr("Rescue card"), 400);
    constexpr theme::Lettering seen{theme::Face::bold, 19}, act{theme::Face::regular, 17};
    for (std::size_t i = 0; i < std::min(plan.drawers.size(), summary.job.drawers.size()); ++i)
        if (const auto latest = plan::latest_plate_on_s(plan.drawers[i]))
            column.lines(language::tr("%1: past %2 s from the start of mixing the plate stays off.")
                             .arg(sheets::text(summary.job.drawers[i]->name))
                             .arg(std::floor(*latest)),
                         {theme::Face::bold, 17}, 25, 0);
    column.down(6);
    for (const Rescue& one : rescues()) {
        column.down(14);
        column.lines(one.seen, seen, 28, 0);
        column.lines(one.act, act, 25, 18);
        column.lines(one.never, act, 25, 18);
    }
    column.down(10);
    column.lines(language::tr("This is common practice, not the maker of your foam speaking: the material's "
                              "own data and safety sheets come first."),
                 {theme::Face::regular, 11.5}, 15, 0);
    return column.take();
}

} // namespace drawercast::summary
