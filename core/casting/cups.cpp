// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/cups.h"

#include "base/demand.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::casting {

double cup_density_g_ml(const job::Cup& cup) {
    return 4000 * cup.liquid_g / (std::numbers::pi * cup.diameter_mm * cup.diameter_mm * cup.risen_mm);
}

Expected<double> cup_expansion(const job::Cup& cup, double liquid_g_ml) {
    const double risen = liquid_g_ml / cup_density_g_ml(cup);
    if (!(risen > 1))
        return Problem{"cup-unusable", "/foam/cup", phrase("the cup's foam is not lighter than its liquid"),
                       phrase("check its diameter, liquid and risen height, or do not use the cup")};
    if (!(cup.start_s < cup.half_s && cup.half_s < cup.full_s))
        return Problem{"cup-unusable", "/foam/cup",
                       phrase("the cup's start, half and full rise are not in this order"),
                       phrase("check its times, or do not use the cup")};
    return risen;
}

std::vector<job::Cup> cups_in_use(const job::Foam& foam) {
    std::vector<job::Cup> cups;
    if (foam.cup && foam.cup->use) cups.push_back(*foam.cup);
    std::copy_if(foam.cups.begin(), foam.cups.end(), std::back_inserter(cups),
                 [](const job::Cup& cup) { return cup.use; });
    return cups;
}

Expected<CupMean> mean_of_cups(const std::vector<job::Cup>& cups, double liquid_g_ml) {
    DRAWERCAST_DEMAND(!cups.empty(), "a cup to take the mean of");
    std::vector<double> risen;
    CupMean mean;
    mean.count = static_cast<int>(cups.size());
    const auto n = static_cast<double>(cups.size());
    for (const job::Cup& cup : cups) {
        const auto one = cup_expansion(cup, liquid_g_ml);
        if (!one) return one.error();
        risen.push_back(*one);
        mean.expansion += *one / n;
        mean.start_s += cup.start_s / n;
        mean.half_s += cup.half_s / n;
        mean.full_s += cup.full_s / n;
        mean.parts_c += cup.parts_c / n;
    }
    if (cups.size() == 1) {
        mean.expansion = risen.front(); // to the last bit
        return mean;
    }
    const auto [least, most] = std::minmax_element(risen.begin(), risen.end());
    mean.spread = (*most - *least) / 2 / mean.expansion;
    double squares = 0;
    for (const double one : risen) squares += (one - mean.expansion) * (one - mean.expansion);
    mean.deviation = std::sqrt(squares / (n - 1));
    return mean;
}

} // namespace drawercast::casting
