// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/push.h"

#include "casting/quadrature.h"

namespace drawercast::casting {
namespace {

constexpr int nodes = 32;

double end_of_rise(const RiseCurve& curve) { return time_of(curve, full_expansion(curve)); }

} // namespace

double push_kpa(const PushIn& in, double t_s) {
    const double contact = full_mold(in.gas);
    const double now = expansion_after(in.curve, t_s);
    if (now <= contact) return 0;
    GasIn gas = in.gas;
    gas.expansion = now;
    gas.hotter_k = in.gas.hotter_k * (now - contact) / (in.gas.expansion - contact);
    return gas_kpa(gas);
}

double push_kpa_s(const PushIn& in) {
    const double contact_s = time_of(in.curve, full_mold(in.gas));
    double sum = 0;
    for (const Node& node : gauss_nodes(nodes, contact_s, end_of_rise(in.curve)))
        sum += node.weight * push_kpa(in, node.at);
    return sum;
}

} // namespace drawercast::casting
