// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/sentences.h"

#include "air/pour_map.h"
#include "plan/say.h"

#include <cmath>

namespace drawercast::plan {

using layout::Check;
using layout::Code;

namespace {

double tenth(double mm) { return std::round(mm * 10) / 10; }
double hundredth(double mm) { return std::round(mm * 100) / 100; }

} // namespace

// One sentence a code: a table, however long.
Phrase title(const Check& check, const job::Job& job) { // NOLINT(readability-function-size)
    const auto units = job.display_units;
    const auto length = [units](double mm) { return figure(say_length(mm, units)); };
    switch (check.code) {
    case Code::wall_thin:
        return phrase("Wall %1, needs %2", length(check.value), length(check.limit));
    case Code::edge_thin:
        return phrase("Edge %1, needs %2", length(check.value), length(check.limit));
    case Code::floor_thin:
        return phrase("Floor %1, needs %2", length(check.value), length(check.limit));
    case Code::overlap:
        return phrase("Pockets overlap by %1", length(check.value));
    case Code::outside:
        return phrase("Reaches %1 beyond the insert", length(check.value));
    case Code::too_high:
        return phrase("Needs %1 of height, the drawer has %2", length(check.value), length(check.limit));
    case Code::notch_apart:
        return phrase("Finger notch does not touch its pocket");
    case Code::fit_vanishes:
        return phrase("The fit leaves nothing of a level");
    case Code::insert_split:
        return phrase("The insert is not one piece");
    case Code::obstructed:
        return phrase("Stands where the drawer has an obstruction");
    case Code::overload:
        return phrase("Objects weigh %1, the drawer carries %2",
                      figure(say_mass_g(check.value * 1000, units)),
                      figure(say_mass_g(check.limit * 1000, units)));
    case Code::foot_pressure:
        return phrase("Presses the foam with %1, keep below %2", figure(say_pressure_kpa(check.value, units)),
                      figure(say_pressure_kpa(check.limit, units)));
    case Code::not_placed:
        return phrase("%1 of %2 placed", figure(fixed(check.value, 0)), figure(fixed(check.limit, 0)));
    case Code::no_cup:
        return phrase("Foam figures are by the label");
    case Code::short_if_low:
        return phrase("At the low end the foam fills %1 of the mold, needs %2", figure(fixed(check.value, 2)),
                      figure(fixed(check.limit, 2)));
    case Code::hard_if_high:
        return phrase("At the high end the mold holds %1 fills of foam, keep below %2",
                      figure(fixed(check.value, 2)), figure(fixed(check.limit, 2)));
    case Code::too_many_batches:
        return check.limit == 1 ? phrase("%1 batches side by side, 1 person", figure(fixed(check.value, 0)))
                                : phrase("%1 batches side by side, %2 people", figure(fixed(check.value, 0)),
                                         figure(fixed(check.limit, 0)));
    case Code::dose_altitude:
        return phrase("The dose is for %1", figure(say_altitude_m(check.value, units)));
    case Code::pour_late:
        return phrase("Mixing and pouring take %1 s, the pot life is %2 s", figure(fixed(check.value, 0)),
                      figure(fixed(check.limit, 0)));
    case Code::dose_refused:
        return phrase("The foam can't be worked out");
    case Code::geometry:
        return phrase("An outline could not be worked out");
    case Code::air_pocket_unvented:
        return phrase("%1 of air stay shut in here", figure(say_volume_ml(check.value, units)));
    case Code::vent_on_stiffener:
        return phrase("A vent runs into a stiffener");
    case Code::vent_meat:
        return phrase("Wood beside the vent %1, needs %2", length(check.value), length(check.limit));
    case Code::squeeze_out:
        return phrase("%1 of foam leave through the vents, %2 were mixed for that",
                      figure(say_volume_ml(check.value, units)), figure(say_volume_ml(check.limit, units)));
    case Code::floor_slow:
        return phrase("The floor needs %1 kPa·s to fill, the rise gives %2", figure(fixed(check.value, 0)),
                      figure(fixed(check.limit, 0)));
    case Code::slot_narrow:
        return phrase("Slot between blocks %1, needs %2", length(check.value), length(check.limit));
    case Code::cup_unusable:
        return phrase("A test cup in use can’t be right");
    case Code::cup_far:
        return phrase("By the test cup the foam rises ×%1, by its label ×%2", figure(fixed(check.value, 1)),
                      figure(fixed(check.limit, 1)));
    case Code::drill_none:
        return check.value > 0
                   ? phrase(
                         "No drill in the shop’s list suits it: about %1 into the wall, %2 through the plate",
                         length(tenth(check.value)), length(tenth(check.limit)))
                   : phrase("No drill in the shop’s list suits it: %1 or a little more",
                            length(tenth(check.limit)));
    case Code::vent_outside:
        return phrase("A vent set by hand is not over the foam");
    case Code::pour_outside:
        return phrase("A pour set by hand is not in the mold");
    case Code::volume_doubted:
        return phrase("Dunked, it measured %1; its outlines hold only %2",
                      figure(say_volume_ml(check.value, units)), figure(say_volume_ml(check.limit, units)));
    case Code::pours_over:
        return phrase("The pours set by hand take %1, only %2 are poured",
                      figure(say_volume_ml(check.value, units)), figure(say_volume_ml(check.limit, units)));
    case Code::channel_shut:
        return phrase("Blocks shut off a channel that needs %1", figure(say_volume_ml(check.value, units)));
    case Code::plate_bow:
        return phrase("The plate bows %1, keep below %2", length(tenth(check.value)), length(check.limit));
    case Code::plate_gap:
        return phrase("Under the plate a gap of %1 opens, keep below %2", length(hundredth(check.value)),
                      length(check.limit));
    case Code::plate_stress:
        return phrase("The plate is stressed to %1 MPa, keep below %2", figure(fixed(check.value, 1)),
                      figure(fixed(check.limit, 1)));
    case Code::screw_pull:
        return phrase("A closure is pulled with %1, keep below %2", figure(say_force_n(check.value, units)),
                      figure(say_force_n(check.limit, units)));
    case Code::wall_bow:
        return phrase("A wall of the box bows %1, keep below %2", length(tenth(check.value)),
                      length(check.limit));
    case Code::wall_stress:
        return phrase("A box wall is stressed to %1 MPa, keep below %2", figure(fixed(check.value, 1)),
                      figure(fixed(check.limit, 1)));
    case Code::base_bow:
        return phrase("The base bows %1, keep below %2", length(tenth(check.value)), length(check.limit));
    case Code::base_gap:
        return phrase("Under the box walls a gap of %1 opens, keep below %2", length(hundredth(check.value)),
                      length(check.limit));
    case Code::base_stress:
        return phrase("The base is stressed to %1 MPa, keep below %2", figure(fixed(check.value, 1)),
                      figure(fixed(check.limit, 1)));
    case Code::base_pull:
        return phrase("A screw in a wall’s foot is pulled with %1, keep below %2",
                      figure(say_force_n(check.value, units)), figure(say_force_n(check.limit, units)));
    case Code::cup_warmth:
        return phrase("The test cup was poured at %1, the shop is at %2",
                      figure(say_temperature_c(check.limit, units)),
                      figure(say_temperature_c(check.value, units)));
    case Code::screw_short:
        if (check.value <= 0)
            return phrase("A screw does not reach the box wall, needs %1 in it", length(check.limit));
        return check.value < check.limit ? phrase("A screw goes %1 into the box wall, needs %2",
                                                  length(check.value), length(check.limit))
                                         : phrase("A screw goes %1 into the box wall, which has room for %2",
                                                  length(check.value), length(check.limit));
    case Code::rod_short:
        return phrase("A rod is %1 long; nut to nut it takes %2", length(check.value), length(check.limit));
    case Code::board_thin:
        return phrase("The box wall is %1 thick, its closures need %2", length(check.value),
                      length(check.limit));
    case Code::close_late:
        return phrase("The plate is on at %1 s, must be on by %2 s", figure(fixed(check.value, 0)),
                      figure(fixed(check.limit, 0)));
    case Code::closures_few:
        return check.value == 0 ? phrase("None at hand, %1 needed", figure(fixed(check.limit, 0)))
                                : phrase("%1 at hand, %2 needed", figure(fixed(check.value, 0)),
                                         figure(fixed(check.limit, 0)));
    case Code::closure_none:
        return check.value <= check.limit
                   ? phrase("No closure in the shop’s list fits: a screw has to be %1 to %2 long",
                            figure(say_length_bare(check.value, units)), length(check.limit))
                   : phrase("No closure in the shop’s list fits: the box wall is too low for its screws");
    case Code::head_unchecked:
        return phrase("Whether screw heads pull through a board of %1 is not checked", length(check.value));
    case Code::stock_short:
        return phrase("A part measures %1, its stock only %2", length(check.value), length(check.limit));
    case Code::cut_small:
        return phrase("A piece to saw is only %1 wide; between fence and blade %2 is the least",
                      length(check.value), length(check.limit));
    }
    return verbatim(std::string(layout::text_of(check.code)));
}

Phrase advice(const Check& check, const job::Job& job) { // NOLINT(readability-function-size): as above
    const auto units = job.display_units;
    const auto length = [units](double mm) { return figure(say_length(mm, units)); };
    switch (check.code) {
    case Code::wall_thin:
        return phrase("Move one of them apart by %1", length(check.limit - check.value));
    case Code::edge_thin:
        return phrase("Move it away from the edge by %1", length(check.limit - check.value));
    case Code::floor_thin:
        return phrase("Make the pocket shallower or the insert thicker by %1",
                      length(check.limit - check.value));
    case Code::overlap:
        return phrase("Move them apart");
    case Code::outside:
        return phrase("Move it inside the insert");
    case Code::too_high:
        return phrase("Make the pocket deeper, the insert thicker, or lay the object down");
    case Code::notch_apart:
        return phrase("Move the notch against its pocket, or let it be a pocket of its own");
    case Code::fit_vanishes:
        return phrase("Use a looser fit or a larger outline");
    case Code::insert_split:
        return phrase("Make the gap smaller, or move the obstruction that cuts the drawer in two");
    case Code::obstructed:
        return phrase("Move the pocket off the obstruction");
    case Code::overload:
        return phrase("Take heavy objects to another drawer");
    case Code::foot_pressure:
        return phrase("Give the object a wider foot or use a firmer foam");
    case Code::not_placed:
        return phrase("Place the rest, or lower the count");
    case Code::no_cup:
        return phrase("Pour a test cup and enter it: the pressure to build for comes down with it");
    case Code::short_if_low:
        return phrase("Raise the overpack or pour a test cup");
    case Code::hard_if_high:
        return phrase("Lower the overpack or pour a test cup");
    case Code::too_many_batches:
        return phrase("Use larger containers, more people, or a foam with a longer pot life");
    case Code::dose_altitude:
        return phrase("A sea-level dose would put %1 on the plate here: use this dose",
                      figure(say_pressure_kpa(check.limit, units)));
    case Code::pour_late:
        return phrase("Pour in more batches, use cooler parts, or a foam with a longer pot life");
    case Code::dose_refused:
        return phrase("Less overpack, or a foam that rises more");
    case Code::geometry:
        return phrase("Move the pocket a little, or simplify its outline");
    case Code::air_pocket_unvented:
        return phrase("Add a vent here, or let the vents arrange themselves");
    case Code::vent_on_stiffener:
    case Code::vent_meat:
        return phrase("Move the vent away by %1", length(check.limit - check.value));
    case Code::squeeze_out:
        return phrase("Use a smaller drill or fewer vents, or peg each as soon as foam shows");
    case Code::floor_slow:
        return phrase("Make the pocket shallower, the insert thicker, or split the block");
    case Code::slot_narrow:
        return check.value < air::never_fills_mm ? phrase("Foam does not come through: move the blocks apart")
                                                 : phrase("As the pour begins, brush some of the mixed foam "
                                                          "into the slot, or move the blocks apart");
    case Code::cup_unusable:
        return phrase(
            "Its foam must be lighter than its liquid, and start, half and full rise follow each other: "
            "correct the cup, or do not use it");
    case Code::cup_far:
        return phrase("Check the cup’s diameter, mass and height, in their units, or pour another");
    case Code::drill_none:
        return phrase("Add the drill to the list, or take another closure");
    case Code::vent_outside:
        return phrase("Move it over the mold’s opening, or delete it");
    case Code::pour_outside:
        return phrase("Move it between the blocks, or delete it");
    case Code::volume_doubted:
        return phrase("Dunk it only as far as it sits in the foam, or correct depth and outlines");
    case Code::pours_over:
        return phrase("Lessen or remove a set pour");
    case Code::channel_shut:
        return phrase("Set a pour point in it");
    case Code::plate_bow:
        return phrase("Use a thicker board or one more stiffener");
    case Code::plate_gap:
        return phrase("Set closures closer, add a stiffener, or lay a gasket strip");
    case Code::plate_stress:
        return phrase("Use a thicker board or one more stiffener");
    case Code::screw_pull:
        return phrase("Set closures closer, or take longer or thicker ones");
    case Code::wall_bow:
        return phrase("Use a thicker board for the box");
    case Code::wall_stress:
        return phrase("Use a thicker board for the box");
    case Code::base_bow:
    case Code::base_stress:
        return phrase("Use a thicker board for the box, or put bearers of a stronger piece under it");
    case Code::base_gap:
    case Code::base_pull:
        return phrase("Use a denser or thicker board for the box, or hold base and plate together with rods");
    case Code::cup_warmth:
        return phrase("Pour a new cup today: times are taken shorter until then, never longer");
    case Code::screw_short:
        return check.value < check.limit ? phrase("Take a longer screw") : phrase("Take a shorter screw");
    case Code::board_thin:
        return phrase("Use a thicker board for the box or thinner closures");
    case Code::rod_short:
        return phrase("Take longer rods, or clamps");
    case Code::close_late:
        return phrase(
            "Start closures before the pour, let one more person close, use clamps or rods, or cooler parts");
    case Code::closures_few:
        return phrase("Buy or borrow the rest before the pour");
    case Code::closure_none:
        return check.value <= check.limit ? phrase("Add one to the list, or a rod or clamp")
                                          : phrase("Add a rod, a clamp or a thinner screw to the list");
    case Code::head_unchecked:
        return phrase("There is no published figure for it: lay a washer under each head");
    case Code::stock_short:
        return check.subjects.empty() // a part of box or plate, not a block
                   ? phrase("Use longer stock: a joint in plate, stiffener or box is not in the figures and "
                            "would open")
                   : phrase("Use longer stock, or join it from two");
    case Code::cut_small:
        return phrase("Cut it from a wider piece so that the narrow part falls off the free side of the "
                      "blade; push stick, guard on");
    }
    return {};
}

std::string subject_name(std::string_view subject, const job::Job& job) {
    const auto hash = subject.find('#');
    const auto* object = job::find_object(job, subject.substr(0, hash));
    if (object == nullptr) return std::string(subject);
    const bool several = object->count > 1 && hash != std::string_view::npos;
    return several ? object->name + " " + std::string(subject.substr(hash + 1)) : object->name;
}

std::string subjects_text(const Check& check, const job::Job& job) {
    std::string text;
    for (const auto& subject : check.subjects) {
        if (!text.empty()) text += ", ";
        text += subject_name(subject, job);
    }
    return text;
}

Phrase sentence(const Check& check, const job::Job& job) {
    const std::string whom = subjects_text(check, job);
    const Phrase what = title(check, job), todo = advice(check, job);
    const Phrase told = whom.empty() ? what : phrase("%1 (%2)", what, verbatim(whom));
    return todo.empty() ? phrase("%1.", told) : phrase("%1. %2.", told, todo);
}

} // namespace drawercast::plan
