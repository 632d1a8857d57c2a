// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/tubes.h"

#include "base/number.h"

#include <tuple>

namespace drawercast::stock {

const std::vector<job::Tube>& usual_tubes() {
    static const std::vector<job::Tube> tubes{
        {"Pipe 32", 32, 1.8, 2000, 3.2, 0, {}},    {"Pipe 40", 40, 1.8, 2000, 3.6, 0, {}},
        {"Pipe 50", 50, 1.8, 2000, 4.2, 0, {}},    {"Pipe 75", 75, 1.9, 2000, 6.5, 0, {}},
        {"Pipe 90", 90, 2.2, 2000, 8.5, 0, {}},    {"Pipe 110", 110, 2.7, 2000, 9.8, 0, {}},
        {"Pipe 125", 125, 3.1, 2000, 14.5, 0, {}},
    };
    return tubes;
}

const std::vector<job::Tube>& tubes_of(const job::Shop& shop) {
    return shop.tubes.empty() ? usual_tubes() : shop.tubes;
}

std::optional<TubeUse> tube_for(double diameter_mm, const std::vector<job::Tube>& tubes) {
    constexpr double noise_mm = 0.05; // what a tube's diameter is off anyway
    std::optional<TubeUse> best;
    for (const auto& tube : tubes) {
        if (2 * tube.wall_mm >= tube.outside_mm) continue;
        const double wrap = (diameter_mm - tube.outside_mm) / 2;
        if (wrap < -noise_mm || wrap > most_wrap_mm) continue;
        const TubeUse use{tube, wrap < noise_mm ? 0 : grained(wrap)};
        const auto rank = [](const TubeUse& u) { return std::tuple(u.tube.at_hand <= 0, u.wrap_mm); };
        if (!best || rank(use) < rank(*best)) best = use;
    }
    return best;
}

} // namespace drawercast::stock
