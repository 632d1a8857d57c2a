// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/phrase.h"
#include "job/job.h"
#include "layout/insert.h"
#include "layout/pocket.h"

#include <memory>
#include <string>
#include <vector>

namespace drawercast::layout {

/// How a pocket holds its object (engineering estimate, our guess of friction 0.5).
enum class Grip { falls_out, easy, firm, two_hands };
Phrase words_of(Grip grip); ///< "falls out", "easy", "firm", "two hands"

struct Feel {
    std::string subject;
    double lift_out_n = 0; ///< friction force to pull the object out
    double weight_n = 0;
    bool beyond_curve = false; ///< somewhere squeezed past 40 %: the stress was held at its 40 % value
    Grip grip = Grip::easy;
    bool operator==(const Feel&) const = default;
};

inline constexpr double friction = 0.5;        ///< of foam on an object (our guess)
inline constexpr double easy_up_to_n = 20;     ///< lift-out and weight together (our guess)
inline constexpr double one_hand_up_to_n = 60; ///< the same (our guess)

/// Stress of foam squeezed by `strain`, kPa: straight from 0 over 25 % to 40 % (the two figures of data
/// sheets), held at its 40 % value beyond.
double stress_kpa(double strain, const job::Foam& foam);

/// falls_out where friction does not hold the weight upside down, else by what both together ask of a hand.
Grip grip_of(double lift_out_n, double weight_n);

/// How each pocket holds its object, in the order given: F = friction · Σ height · ∮ stress ds over the
/// levels, with strain = (own squeeze + squeeze of the neighbor's object) / thickness of the wall there. The
/// boundary is taken in pieces of at most `step_mm`; the wall of a piece goes straight outward to the next
/// hollow or the insert's edge. Where another hollow opens the wall from above (a notch, an upper level),
/// only the height below it holds. `insert` may be null: then foam without neighbors has no end and does not
/// press. Pockets of objects the job does not have are left out.
std::vector<Feel> feel_of(const std::vector<std::shared_ptr<const PlacedPocket>>& pockets,
                          const job::Job& job, const Insert* insert, double step_mm = 1);

} // namespace drawercast::layout
