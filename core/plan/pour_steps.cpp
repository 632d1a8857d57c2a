// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/pour_steps.h"

#include "plan/as_built.h"
#include "plan/pour_log.h"
#include "plan/say.h"
#include "runsheet/steps.h"

#include <algorithm>
#include <cmath>

namespace drawercast::plan {

namespace {

constexpr double tools_s = 120; ///< to have the tools clean, after closing (common practice, no source)

double to_step(double g, double step_g) { return std::round(g / step_g) * step_g; }

class Steps {
  public:
    Steps(const job::Job& job, const DrawerPlan& drawer, casting::Dose dose)
        : job_(job), drawer_(drawer), dose_(dose) {}

    void before_the_clock() {
        int n = 0;
        for (const auto& gate : runsheet::pour_gates(
                 {job_.shop->temperature_c, job_.shop->people, job_.display_units != job::DisplayUnits::mm}))
            add("gate-" + std::to_string(++n), gate);
        add("premix",
            phrase(
                "Stir part A and part B, each in its own can with its own dry stick; close the cans again"));
        for (int batch = 1; batch <= dose_.batches; ++batch) weigh(batch);
    }

    void start_clock() {
        add(std::string(clock_step), phrase("A into B: start mixing"),
            {phrase("mark it at the moment they meet")});
    }

    void start_stopwatch() {
        add(std::string(clock_step), phrase("Start the stopwatch"), {phrase("as if A met B now")});
    }

    void against_the_clock() {
        const auto units = job_.display_units;
        const double mixed = job_.foam->mix_s, poured = mixed + dose_.pour_s,
                     plate_on = poured + job_.shop->set_plate_s;
        add("mixed", phrase("Mix"), {phrase("scrape sides and bottom while mixing")}, mixed);
        add("poured", phrase("Pour"),
            {phrase("%1 or %2; %3 stays in the bucket",
                    figure(say_volume_ml(dose_.poured_ml / dose_.batches, units)),
                    figure(say_mass_g(
                        to_step(dose_.liquid_g_ml * dose_.poured_ml / dose_.batches, job_.shop->scale_step_g),
                        units)),
                    figure(say_volume_ml((dose_.mixed_ml - dose_.poured_ml) / dose_.batches, units))),
             phrase("in the order of the numbers on the pour map: slots, over blocks, the widest channel "
                    "last; never scrape out")},
            poured);
        steps_.back().on_card = 1;
        if (narrow_slot()) {
            auto& how = steps_.back().details;
            how.insert(how.begin(), phrase("first brush some of the foam into the narrow slots"));
            ++steps_.back().on_card;
        }
        add("plate-on", phrase("Plate on"), {}, plate_on);
        if (!drawer_.plate)
            steps_.back().details = {
                phrase("the closing is still being worked out: rather sooner than later")};
        steps_.back().limit_s = latest_plate_on_s(drawer_);
        close(plate_on);
    }

    /// By the clock: whether the tools are clean before the foam has risen is a matter of the foam. Who is
    /// alone pegs once the closures are in; else another pegs while they are driven.
    void after_closing() {
        const auto& times = *drawer_.times;
        const auto first = static_cast<std::ptrdiff_t>(steps_.size()) - 1; // from the closures on
        const bool alone = job_.shop->people == 1;
        add("pegged", phrase("Peg or tape each vent as foam shows"),
            {phrase("from the side; nobody leans over the mold")},
            alone ? std::max(times.contact_s, closed_s_) : times.contact_s);
        add("tools", phrase("Wash the tools, in open air"), {}, closed_s_ + tools_s);
        add("risen", phrase("Leave it alone until it has risen"), {}, times.rise_s);
        add(std::string(last_step), phrase("Let it cure, then cut the plugs flush and open"), {},
            60 * open_after_min(job_, times));
        std::stable_sort(steps_.begin() + first, steps_.end(), [](const PourStep& a, const PourStep& b) {
            return a.due_s.value_or(0) < b.due_s.value_or(0);
        });
    }

    std::vector<PourStep> take() { return std::move(steps_); }

  private:
    void add(std::string id, Phrase what, std::vector<Phrase> details = {},
             std::optional<double> due_s = {}) {
        steps_.push_back({std::move(id), std::move(what), std::move(details), due_s, {}, 0});
    }

    /// What is weighed, said with the batch it belongs to where there are several.
    Phrase of_batch(int batch, Phrase what) const {
        if (dose_.batches == 1) return what;
        return phrase("Batch %1 of %2: %3", figure(std::to_string(batch)),
                      figure(std::to_string(dose_.batches)), std::move(what));
    }

    void weigh(int batch) {
        const auto units = job_.display_units;
        int n = 0;
        for (const auto& one : scale_readings(dose_, job_.shop->scale_step_g)) {
            if (one.part == Component::a) break; // A goes in when the clock starts
            const Phrase by_volume = figure(say_volume_ml(one.ml, units));
            Phrase what = one.shown_g > 0 ? phrase("%1: %2 on the scale", words_of(one.part),
                                                   figure(say_mass_g(one.shown_g, units)))
                                          : phrase("%1: %2", words_of(one.part), by_volume);
            add("weigh-" + std::to_string(batch) + "-" + std::to_string(++n),
                of_batch(batch, std::move(what)),
                {one.shown_g > 0 ? phrase("or %1", by_volume) : phrase("stir it in")});
        }
        const double a_g = to_step(dose_.a_g / dose_.batches, job_.shop->scale_step_g);
        add("weigh-" + std::to_string(batch) + "-a",
            of_batch(batch, phrase("part A, in a cup of its own: %1", figure(say_mass_g(a_g, units)))),
            {phrase("or %1; what sticks to the cup is missing: rinse the cup with part A first and empty it; "
                    "never with water",
                    figure(say_volume_ml(dose_.a_ml / dose_.batches, units)))});
    }

    /// Foam is helped through these; those that it never comes through are to be mended.
    bool narrow_slot() const {
        return std::any_of(drawer_.checks.begin(), drawer_.checks.end(), [](const layout::Check& check) {
            return check.code == layout::Code::slot_narrow;
        });
    }

    void close(double plate_on) {
        const int count = closure_count(drawer_);
        closed_s_ = plate_on + (drawer_.plate ? drawer_.plate->closing.close_s : 0);
        if (count == 0) return add("closed", phrase("Tighten the closures"));
        add("closed", phrase("Tighten the closures, %1 of them", figure(std::to_string(count))),
            {phrase("in the order of their numbers on the plate")}, closed_s_);
    }

    const job::Job& job_;
    const DrawerPlan& drawer_;
    casting::Dose dose_;
    double closed_s_ = 0;
    std::vector<PourStep> steps_;
};

} // namespace

std::optional<casting::Dose> dose_to_pour(const job::Job& job, const DrawerPlan& drawer) {
    if (const auto* built = last_built(job, drawer.id))
        if (const auto figures = built_figures(job, drawer, *built); figures && figures->dose)
            return figures->dose;
    return drawer.dose;
}

Phrase words_of(Component part) {
    switch (part) {
    case Component::a:
        return phrase("part A");
    case Component::b:
        return phrase("part B");
    case Component::pigment:
        return phrase("pigment");
    }
    return {};
}

std::vector<ScaleReading> scale_readings(const casting::Dose& dose, double scale_step_g) {
    const double batches = dose.batches;
    const double b = to_step(dose.b_g / batches, scale_step_g), a = to_step(dose.a_g / batches, scale_step_g);
    std::vector<ScaleReading> all{{Component::b, b, dose.b_ml / batches, true}};
    if (dose.pigment_ml > 0) all.push_back({Component::pigment, 0, dose.pigment_ml / batches, false});
    all.push_back({Component::a, a, dose.a_ml / batches, true});
    return all;
}

double open_after_min(const job::Job& job, const casting::Times& times) {
    const double cure =
        job.shop->temperature_c < runsheet::cool_shop_c ? runsheet::cool_cure_min : runsheet::cure_min;
    return std::max(cure, times.demold_min);
}

int closure_count(const DrawerPlan& drawer) {
    return drawer.plate ? static_cast<int>(drawer.plate->answer.design.order.size()) : 0;
}

std::optional<double> latest_plate_on_s(const DrawerPlan& drawer) {
    if (!drawer.times) return std::nullopt;
    const double touch = drawer.times->touch_s;
    if (!drawer.plate) return touch;
    const mold::Closing& closing =
        drawer.plate->closing; // a margin below 0: it is too late already as planned
    return std::max(0.0, std::min(touch, closing.plate_on_s + closing.close_margin_s));
}

std::vector<PourStep> pour_steps(const job::Job& job, const DrawerPlan& drawer) {
    const auto dose = dose_to_pour(job, drawer);
    if (!dose || !drawer.times) return {};
    Steps steps(job, drawer, *dose);
    steps.before_the_clock();
    steps.start_clock();
    steps.against_the_clock();
    steps.after_closing();
    return steps.take();
}

std::vector<PourStep> rehearsal_steps(const job::Job& job, const DrawerPlan& drawer) {
    const auto dose = dose_to_pour(job, drawer);
    if (!dose || !drawer.times) return {};
    Steps steps(job, drawer, *dose);
    steps.start_stopwatch();
    steps.against_the_clock();
    return steps.take();
}

} // namespace drawercast::plan
