// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/sentences.h"

#include "plan/say.h"

#include <cmath>

namespace drawercast::plan {

using layout::Check;
using layout::Code;

namespace {

double tenth(double mm) { return std::round(mm * 10) / 10; }
double hundredth(double mm) { return std::round(mm * 100) / 100; }

/// "Wall 6.2 mm, needs 8 mm"
std::string measured(const char* what, const Check& check, const job::Job& job) {
    return std::string(what) + " " + say_length(check.value, job.display_units) + ", needs " +
           say_length(check.limit, job.display_units);
}

} // namespace

// One sentence a code: a table, however long.
std::string title(const Check& check, const job::Job& job) { // NOLINT(readability-function-size)
    const auto units = job.display_units;
    switch (check.code) {
    case Code::wall_thin:
        return measured("Wall", check, job);
    case Code::edge_thin:
        return measured("Edge", check, job);
    case Code::floor_thin:
        return measured("Floor", check, job);
    case Code::overlap:
        return "Pockets overlap by " + say_length(check.value, units);
    case Code::outside:
        return "Reaches " + say_length(check.value, units) + " beyond the insert";
    case Code::too_high:
        return "Needs " + say_length(check.value, units) + " of height, the drawer has " +
               say_length(check.limit, units);
    case Code::notch_apart:
        return "Finger notch does not touch its pocket";
    case Code::fit_vanishes:
        return "The fit leaves nothing of a level";
    case Code::insert_split:
        return "The insert is not one piece";
    case Code::obstructed:
        return "Stands where the drawer has an obstruction";
    case Code::overload:
        return "Objects weigh " + say_mass_g(check.value * 1000, units) + ", the drawer carries " +
               say_mass_g(check.limit * 1000, units);
    case Code::foot_pressure:
        return "Presses the foam with " + say_pressure_kpa(check.value, units) + ", keep below " +
               say_pressure_kpa(check.limit, units);
    case Code::not_placed:
        return fixed(check.value, 0) + " of " + fixed(check.limit, 0) + " placed";
    case Code::no_cup:
        return "Foam figures are by the label";
    case Code::short_if_low:
        return "At the low end the foam fills " + fixed(check.value, 2) + " of the mold, needs " +
               fixed(check.limit, 2);
    case Code::hard_if_high:
        return "At the high end the mold holds " + fixed(check.value, 2) + " fills of foam, keep below " +
               fixed(check.limit, 2);
    case Code::too_many_batches:
        return fixed(check.value, 0) + " batches side by side, " + fixed(check.limit, 0) +
               (check.limit == 1 ? " person" : " people");
    case Code::dose_altitude:
        return "The dose is for " + say_altitude_m(check.value, units);
    case Code::pour_late:
        return "Mixing and pouring take " + fixed(check.value, 0) + " s, the pot life is " +
               fixed(check.limit, 0) + " s";
    case Code::dose_refused:
        return "The foam can't be worked out";
    case Code::geometry:
        return "An outline could not be worked out";
    case Code::air_pocket_unvented:
        return say_volume_ml(check.value, units) + " of air stay shut in here";
    case Code::vent_on_stiffener:
        return "A vent runs into a stiffener";
    case Code::vent_meat:
        return measured("Wood beside the vent", check, job);
    case Code::squeeze_out:
        return say_volume_ml(check.value, units) + " of foam leave through the vents, " +
               say_volume_ml(check.limit, units) + " were mixed for that";
    case Code::floor_slow:
        return "The floor needs " + fixed(check.value, 0) + " kPa·s to fill, the rise gives " +
               fixed(check.limit, 0);
    case Code::slot_narrow:
        return measured("Slot between blocks", check, job);
    case Code::channel_shut:
        return "Blocks shut off a channel that needs " + say_volume_ml(check.value, units);
    case Code::plate_bow:
        return "The plate bows " + say_length(tenth(check.value), units) + ", keep below " +
               say_length(check.limit, units);
    case Code::plate_gap:
        return "Under the plate a gap of " + say_length(hundredth(check.value), units) +
               " opens, keep below " + say_length(check.limit, units);
    case Code::plate_stress:
        return "The plate is stressed to " + fixed(check.value, 1) + " MPa, keep below " +
               fixed(check.limit, 1);
    case Code::screw_pull:
        return "A closure is pulled with " + say_force_n(check.value, units) + ", keep below " +
               say_force_n(check.limit, units);
    case Code::wall_bow:
        return "A wall of the box bows " + say_length(tenth(check.value), units) + ", keep below " +
               say_length(check.limit, units);
    case Code::screw_short:
        if (check.value <= 0)
            return "A screw does not reach the wall, needs " + say_length(check.limit, units) + " in it";
        return check.value < check.limit
                   ? "A screw goes " + say_length(check.value, units) + " into the wall, needs " +
                         say_length(check.limit, units)
                   : "A screw goes " + say_length(check.value, units) +
                         " into the wall, which has room for " + say_length(check.limit, units);
    case Code::board_thin:
        return "The wall is " + say_length(check.value, units) + " thick, a screw in its edge needs " +
               say_length(check.limit, units);
    case Code::close_late:
        return "The plate is on at " + fixed(check.value, 0) + " s, must be on by " + fixed(check.limit, 0) +
               " s";
    case Code::closures_few:
        return (check.value == 0 ? std::string("None") : fixed(check.value, 0)) + " at hand, " +
               fixed(check.limit, 0) + " needed";
    case Code::closure_none:
        return check.value <= check.limit
                   ? "No closure in the shop’s list fits: a screw has to be " +
                         say_length_bare(check.value, units) + " to " + say_length(check.limit, units) +
                         " long"
                   : "No closure in the shop’s list fits: the wall is too low for its screws";
    case Code::head_unchecked:
        return "Whether screw heads pull through a board of " + say_length(check.value, units) +
               " is not checked";
    case Code::stock_short:
        return "A part of " + say_length(check.value, units) + " is longer than its stock, " +
               say_length(check.limit, units);
    case Code::cut_small:
        return "A part is only " + say_length(check.value, units) + " wide, a fence holds " +
               say_length(check.limit, units);
    }
    return std::string(layout::text_of(check.code));
}

std::string advice(const Check& check, const job::Job& job) { // NOLINT(readability-function-size): as above
    const auto units = job.display_units;
    switch (check.code) {
    case Code::wall_thin:
        return "Move one of them apart by " + say_length(check.limit - check.value, units);
    case Code::edge_thin:
        return "Move it away from the edge by " + say_length(check.limit - check.value, units);
    case Code::floor_thin:
        return "Make the pocket shallower or the insert thicker by " +
               say_length(check.limit - check.value, units);
    case Code::overlap:
        return "Move them apart";
    case Code::outside:
        return "Move it inside the insert";
    case Code::too_high:
        return "Make the pocket deeper, the insert thicker, or lay the object down";
    case Code::notch_apart:
        return "Move the notch against its pocket, or let it be a pocket of its own";
    case Code::fit_vanishes:
        return "Use a looser fit or a larger outline";
    case Code::insert_split:
        return "Make the gap smaller, or move the obstruction that cuts the drawer in two";
    case Code::obstructed:
        return "Move the pocket off the obstruction";
    case Code::overload:
        return "Take heavy objects to another drawer";
    case Code::foot_pressure:
        return "Give the object a wider foot or use a firmer foam";
    case Code::not_placed:
        return "Place the rest, or lower the count";
    case Code::no_cup:
        return "Pour a test cup and enter it: the pressure to build for comes down with it";
    case Code::short_if_low:
        return "Raise the overpack or pour a test cup";
    case Code::hard_if_high:
        return "Lower the overpack or pour a test cup";
    case Code::too_many_batches:
        return "Use larger containers, more people, or a foam with a longer pot life";
    case Code::dose_altitude:
        return "A sea-level dose would put " + say_pressure_kpa(check.limit, units) +
               " on the plate here: use this dose";
    case Code::pour_late:
        return "Pour in more batches, use cooler parts, or a foam with a longer pot life";
    case Code::dose_refused:
        return "Less overpack, or a foam that rises more";
    case Code::geometry:
        return "Move the pocket a little, or simplify its outline";
    case Code::air_pocket_unvented:
        return "Add a vent here, or let the vents arrange themselves";
    case Code::vent_on_stiffener:
    case Code::vent_meat:
        return "Move the vent away by " + say_length(check.limit - check.value, units);
    case Code::squeeze_out:
        return "Use a smaller drill or fewer vents, or peg each as soon as foam shows";
    case Code::floor_slow:
        return "Make the pocket shallower, the insert thicker, or split the block";
    case Code::slot_narrow:
        return check.value < 6 ? "Foam does not come through: move the blocks apart"
                               : "Coat the slot by brush before the pour, or move the blocks apart";
    case Code::channel_shut:
        return "Set a pour point in it";
    case Code::plate_bow:
        return "Use a thicker board or another stiffener";
    case Code::plate_gap:
        return "Set closures closer, add a stiffener, or lay a gasket strip";
    case Code::plate_stress:
        return "Use a thicker board or another stiffener";
    case Code::screw_pull:
        return "Set closures closer, or take longer or thicker ones";
    case Code::wall_bow:
        return "Use a thicker board for the box";
    case Code::screw_short:
        return check.value < check.limit ? "Take a longer screw" : "Take a shorter screw";
    case Code::board_thin:
        return "Use a thicker board for the box or a thinner screw";
    case Code::close_late:
        return "Start closures before the pour, let another driver help, use clamps or rods, or cooler parts";
    case Code::closures_few:
        return "Buy or borrow the rest before the pour";
    case Code::closure_none:
        return check.value <= check.limit ? "Add one to the list, or a rod or clamp"
                                          : "Add a rod, a clamp or a thinner screw to the list";
    case Code::head_unchecked:
        return "There is no published figure for it: lay a washer under each head";
    case Code::stock_short:
        return "Use a longer board or bar, or join it from two";
    case Code::cut_small:
        return "Saw it off the edge of a wider piece, never between fence and blade";
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

std::string sentence(const Check& check, const job::Job& job) {
    std::string text = title(check, job);
    const std::string whom = subjects_text(check, job);
    if (!whom.empty()) text += " (" + whom + ")";
    const std::string todo = advice(check, job);
    return todo.empty() ? text + "." : text + ". " + todo + ".";
}

} // namespace drawercast::plan
