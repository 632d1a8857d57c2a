// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/phrase.h"
#include "plan/plan.h"

#include <optional>
#include <string>
#include <vector>

namespace drawercast::plan {

/// One thing to do at the pour, to be marked as done.
struct PourStep {
    std::string id; ///< as the log keeps it
    Phrase what;    ///< a few words, readable from two meters
    std::vector<Phrase> details;
    std::optional<double> due_s;   ///< done by then, stopwatch from A meeting B
    std::optional<double> limit_s; ///< past it this is not done any more: let it rise open
    std::size_t on_card = 0;       ///< so many of the details stand on the pour card too
    bool operator==(const PourStep&) const = default;
};

/// From the gates to opening the mold. Doses are those of the mold as built where it was measured, in the
/// steps of the shop's scale; seconds are the plan's. Empty where the drawer has no dose. Order and gates:
/// common practice, no source.
std::vector<PourStep> pour_steps(const job::Job& job, const DrawerPlan& drawer);

/// Of these, what hands do against the clock, as a dry run takes them.
std::vector<PourStep> rehearsal_steps(const job::Job& job, const DrawerPlan& drawer);

/// The dose to weigh: of the mold as it was measured last, else the plan's. Absent where there is none.
std::optional<casting::Dose> dose_to_pour(const job::Job& job, const DrawerPlan& drawer);

enum class Component { a, b, pigment };
Phrase words_of(Component part); ///< "part A"

/// What the scale shows while one batch is weighed out, set to zero before each part: part B into the bucket,
/// part A into a cup of its own, since the clock starts when they meet. Rounded to the scale's step. Pigment
/// goes by volume.
struct ScaleReading {
    Component part = Component::b;
    double shown_g = 0; ///< 0: by volume alone
    double ml = 0;
    bool zero_first = false;
    bool operator==(const ScaleReading&) const = default;
};
std::vector<ScaleReading> scale_readings(const casting::Dose& dose, double scale_step_g);

/// The earliest moment to open, minutes from A meeting B: the usual time to cure in a shop as warm, never
/// sooner than the label says (common practice).
double open_after_min(const job::Job& job, const casting::Times& times);

/// Closures to drive, which the plate's sheet numbers in driving order; 0 until worked out.
int closure_count(const DrawerPlan& drawer);

/// The latest moment for the plate to be on: foam reaches it, or it could not be closed in time any more.
std::optional<double> latest_plate_on_s(const DrawerPlan& drawer);

} // namespace drawercast::plan
