// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/units.h"
#include "layout/checks.h"

#include <algorithm>
#include <limits>

namespace drawercast::layout {

namespace {

using PlacedCut = Cut<shape::InDrawer>;

bool is_level(const PlacedCut& cut) { return cut.kind == PlacedCut::Kind::level; }

void add_floor(const PlacedPocket& pocket, const ObjectFacts& object, const DrawerLimits& limits,
               std::vector<Check>& checks) {
    double worst = std::numeric_limits<double>::infinity();
    Check check{Code::floor_thin, Severity::look, {}, 0, 0, CheckFrame::drawer, {}, {}, false};
    for (std::size_t i = 0; i < pocket.cuts.size(); ++i) {
        const PlacedCut& cut = pocket.cuts[i];
        if (cut.through) continue;
        const bool carries = is_level(cut); // nothing rests in a notch
        const bool wide = carries && object.wide.at(static_cast<std::size_t>(cut.index));
        const double limit = limits.minimums.floor(carries && (wide || object.mass_g > heavy_g));
        const double value = limits.insert_mm - cut.depth_mm;
        if (!below(value, limit) || !(value / limit < worst)) continue;
        worst = value / limit;
        check.severity = severity_below(value, limit);
        check.value = value;
        check.limit = limit;
        check.at = pocket.boxes[i].center();
    }
    if (!check.at) return;
    check.subjects = {pocket.subject};
    checks.push_back(std::move(check));
}

/// How high the object's top stands over the drawer's bottom: it can't sink below that.
double top_mm(const PlacedPocket& pocket, const ObjectFacts& object, double insert_mm) {
    double depth = 0;
    for (const PlacedCut& cut : pocket.cuts)
        if (is_level(cut)) depth = std::max(depth, cut.depth_mm);
    return insert_mm - std::min(depth, insert_mm) + object.height_mm;
}

} // namespace

double foot_kpa(const ObjectFacts& object) {
    if (object.foot_mm2 <= 0) return 0;
    return units::standard_gravity * object.mass_g / object.foot_mm2; // g/kg and MPa/kPa cancel
}

double foot_most_kpa(double stress25_kpa) { return stress25_kpa / 2; }

void add_height_checks(const PlacedPocket& pocket, const ObjectFacts& object, const DrawerLimits& limits,
                       std::vector<Check>& checks) {
    add_floor(pocket, object, limits, checks);
    const double top = top_mm(pocket, object, limits.insert_mm);
    if (below(limits.clear_height_mm, top))
        checks.push_back({Code::too_high,
                          Severity::mend,
                          {pocket.subject},
                          top,
                          limits.clear_height_mm,
                          CheckFrame::drawer,
                          pocket.box.center(),
                          std::nullopt,
                          false});
    const double pressure_kpa = foot_kpa(object), limit_kpa = foot_most_kpa(limits.stress25_kpa);
    if (pressure_kpa > limit_kpa)
        checks.push_back({Code::foot_pressure,
                          Severity::look,
                          {pocket.subject},
                          pressure_kpa,
                          limit_kpa,
                          CheckFrame::drawer,
                          pocket.box.center(),
                          std::nullopt,
                          false});
}

} // namespace drawercast::layout
