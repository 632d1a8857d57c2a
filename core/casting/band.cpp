// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/band.h"

namespace drawercast::casting {
namespace {

BandEnd end_of(GasIn gas, double expansion, double net_mm3) {
    gas.expansion = expansion;
    gas.net_mm3 = net_mm3;
    return {expansion, net_mm3, expansion * 1000 * gas.poured_ml / net_mm3, gas_kpa(gas)};
}

} // namespace

double deepest_mm3(double net_mm3, double insert_area_mm2) {
    return net_mm3 + cavity_uncertainty_mm * insert_area_mm2;
}

double shallowest_mm3(double net_mm3, double insert_area_mm2) {
    return net_mm3 - cavity_uncertainty_mm * insert_area_mm2;
}

GasIn gas_of(const BandIn& in) {
    GasIn gas;
    gas.ambient_kpa = in.profile.ambient_kpa;
    gas.expansion = in.profile.expansion;
    gas.poured_ml = in.poured_ml;
    gas.net_mm3 = in.net_mm3;
    gas.measured_k = in.profile.measured_k;
    gas.hotter_k = in.hotter_k;
    gas.air_ml = in.air_ml;
    return gas;
}

Band band_of(const BandIn& in) {
    const GasIn gas = gas_of(in);
    Band band;
    band.uncertainty = in.profile.uncertainty;
    band.low = end_of(gas, in.profile.expansion_low, deepest_mm3(in.net_mm3, in.insert_area_mm2));
    band.expected = end_of(gas, in.profile.expansion, in.net_mm3);
    band.high = end_of(gas, in.profile.expansion_high, shallowest_mm3(in.net_mm3, in.insert_area_mm2));
    return band;
}

SeaLevelDose sea_level_dose(const BandIn& in, double overpack) {
    GasIn gas = gas_of(in);
    gas.poured_ml = (1 + overpack) * in.net_mm3 / in.profile.expansion_sea_level / 1000;
    SeaLevelDose out;
    out.poured_ml = gas.poured_ml;
    out.fill = gas.expansion * 1000 * gas.poured_ml / gas.net_mm3;
    if (1000 * gas.poured_ml < gas.net_mm3) out.closed_kpa = gas_kpa(gas);
    return out;
}

} // namespace drawercast::casting
