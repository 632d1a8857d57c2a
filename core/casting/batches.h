// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include <optional>

namespace drawercast::casting {

/// What stays in each bucket where the shop does not say: the greater of the two (common practice).
inline constexpr double least_left_ml = 40;
inline constexpr double share_left = 0.04; ///< of the batch

struct BatchesIn {
    double liquid_ml = 0;     ///< over all batches, with the reserve for squeeze-out
    double pour_window_s = 0; ///< pot life − mixing, today
    double container_ml = 0;
    double stir_room = 1; ///< free room over the liquid, as a share of it
    std::optional<double> mixer_ml;
    std::optional<double> bucket_left_ml; ///< each; null: max(40 mL, 4 % of the batch), common practice
    std::optional<double> pour_s;         ///< each; null: by pour_l_s
    double pour_l_s = 0.1;
    bool operator==(const BatchesIn&) const = default;
};

/// The most liquid a container takes, mL: room to stir stays free over it, and a mixer may take less.
double room_of(double container_ml, double stir_room, std::optional<double> mixer_ml);

/// How the liquid is split: batches are mixed side by side, each with a person and a mixer.
struct Batches {
    int count = 1;
    double bucket_left_ml = 0; ///< stays behind, each
    double pour_s = 0;         ///< each
    bool in_time = true; ///< false: no number of batches is poured within the pot life; split by volume alone
    bool operator==(const Batches&) const = default;
};

/// The least number of batches that fit their container and mixer and are poured before the foam starts.
/// Refused ("container-small") where not even what stays in the bucket fits, or over `most_batches` are
/// needed.
inline constexpr int most_batches = 1000;
Expected<Batches> batches_of(const BatchesIn& in);

} // namespace drawercast::casting
