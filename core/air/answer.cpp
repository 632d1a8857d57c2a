// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/answer.h"

#include "shape/in_region.h"

#include <algorithm>

namespace drawercast::air {
namespace {

using layout::Check;
using layout::Code;
using layout::Severity;

constexpr double rounding_ml = 0.5; ///< of what is shown and typed

Check check_at(Code code, Severity severity, double value, double limit, shape::Vec at) {
    Check check = check_of(code, severity, value, limit);
    check.frame = layout::CheckFrame::mold;
    check.at = at;
    return check;
}

void add_pockets(const Answer& answer, std::vector<Check>& checks) {
    const auto& pockets = answer.model->map().pockets;
    for (std::size_t i = 0; i < pockets.size(); ++i)
        if (answer.vented.shares_ml[i] > vented_ml)
            checks.push_back(check_at(Code::air_pocket_unvented, Severity::look, answer.vented.shares_ml[i],
                                      vented_ml, pockets[i].at));
}

/// As after a drawer was made smaller: they would count as if the foam reached them.
void add_outside(const Answer& answer, std::vector<Check>& checks) {
    const Floor& floor = answer.model->in().floor;
    for (const Vent& vent : answer.vents_in.kept)
        if (!shape::holds(floor.opening, vent.at))
            checks.push_back(check_at(Code::vent_outside, Severity::mend, 0, 0, vent.at));
    for (const PourStep& step : answer.model->map().pour.steps)
        if (step.set && !shape::holds(floor.opening, step.at))
            checks.push_back(check_at(Code::pour_outside, Severity::mend, 0, 0, step.at));
}

void add_vents(const Answer& answer, std::vector<Check>& checks) {
    for (const Vent& vent : answer.vented.vents) {
        const double meat = meat_mm(vent.at, vent.diameter_mm, answer.vents_in.clear);
        const double least = meat_diameters * vent.diameter_mm;
        if (on_strip(vent.at, vent.diameter_mm, answer.vents_in.clear))
            checks.push_back(check_at(Code::vent_on_stiffener, Severity::mend, meat, least, vent.at));
        else if (meat < least)
            checks.push_back(check_at(Code::vent_meat, Severity::look, meat, least, vent.at));
    }
    const Squeeze& squeeze = answer.squeeze;
    if (squeeze.out_ml > squeeze.limit_ml)
        checks.push_back(check_of(Code::squeeze_out, Severity::look, squeeze.out_ml, squeeze.limit_ml));
}

void add_floors(const ChecksIn& in, std::vector<Check>& checks) {
    const Model& model = *in.answer.model;
    for (const Slowness& slow : model.map().slow) {
        const double needs_kpa_s = 12 * in.viscosity_pa_s * slow.phi / 1000;
        if (needs_kpa_s <= in.answer.impulse.filling_kpa_s) continue;
        checks.push_back(check_at(Code::floor_slow, Severity::look, needs_kpa_s,
                                  in.answer.impulse.filling_kpa_s, slow.at));
        checks.back().subjects = {model.in().floor.subjects[static_cast<std::size_t>(slow.pocket)]};
    }
}

void add_channels(const Model& model, std::vector<Check>& checks) {
    const auto& subjects = model.in().floor.subjects;
    for (const Slot& slot : model.map().narrow) {
        const auto severity = slot.width_mm < never_fills_mm ? Severity::mend : Severity::look;
        Check check = check_at(Code::slot_narrow, severity, slot.width_mm, slot.least_mm, slot.from);
        check.to = slot.to;
        check.subjects = {subjects[static_cast<std::size_t>(slot.first)]};
        if (slot.second >= 0 && slot.second != slot.first)
            check.subjects.push_back(subjects[static_cast<std::size_t>(slot.second)]);
        std::sort(check.subjects.begin(), check.subjects.end());
        checks.push_back(std::move(check));
    }
    for (const ShutChannel& shut : model.map().shut)
        checks.push_back(check_at(Code::channel_shut, Severity::look, shut.ml, 0, shut.at));
    const double set_ml = model.map().pour.set_ml, poured_ml = model.in().poured_ml;
    if (set_ml > poured_ml + rounding_ml)
        checks.push_back(check_of(Code::pours_over, Severity::mend, set_ml, poured_ml));
}

} // namespace

bool same(const Answer& a, const Answer& b) {
    return a.model->in() == b.model->in() && a.vents_in == b.vents_in && a.vented == b.vented &&
           a.impulse == b.impulse && a.squeeze_in == b.squeeze_in && a.squeeze == b.squeeze;
}

std::vector<DrillChoice> drill_choices(const SqueezeIn& in, std::vector<double> drills_mm, int most) {
    std::sort(drills_mm.begin(), drills_mm.end());
    std::vector<DrillChoice> out;
    for (const double drill : drills_mm) {
        std::vector<Vent> vents;
        for (int count = 1; count <= most; ++count) {
            vents.push_back({{}, drill, VentFor::air});
            out.push_back({drill, count, squeeze_of(in, vents)});
        }
    }
    return out;
}

std::vector<Check> air_checks(const ChecksIn& in) {
    std::vector<Check> checks;
    add_pockets(in.answer, checks);
    add_vents(in.answer, checks);
    add_outside(in.answer, checks);
    add_floors(in, checks);
    add_channels(*in.answer.model, checks);
    return checks;
}

} // namespace drawercast::air
