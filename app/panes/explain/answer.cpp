// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/explain/answer.h"

#include "plan/foam_in_mold.h"
#include "plan/say.h"

namespace drawercast::app::explain {

std::optional<Answer> Answer::of(const job::Job& job, const plan::Plan& plan, const plan::DrawerPlan& drawer,
                                 DosingUnit unit) {
    if (!drawer.dose || !drawer.cavity) return std::nullopt;
    auto profile = plan::profile_today(job);
    if (!profile) return std::nullopt;
    return Answer{job, plan, drawer, unit, std::move(*profile)};
}

Result Answer::said_ml(double ml) const { return result_of(plan::say_volume_ml(ml, units())); }
Result Answer::said_g(double g) const { return result_of(plan::say_mass_g(g, units())); }
Result Answer::said_kpa(double kpa) const { return result_of(plan::say_pressure_kpa(kpa, units())); }
Result Answer::said_n(double n) const { return result_of(plan::say_force_n(n, units())); }

Term Answer::overpack() const {
    return {"overpack", tr("overpack"), dose().overpack, {}, Input::figure, "overpack"};
}

Term Answer::rise() const { return {"rise", tr("rise"), dose().expansion, {}, Input::figure, "rise"}; }

Term Answer::holds(const Scale& volume) const {
    return {
        "holds", tr("what the mold holds"), volume.of(cavity().net_mm3 / 1000), volume.unit, Input::figure,
        "holds"};
}

Term Answer::poured(const Scale& volume) const {
    return {"poured", tr("poured"), volume.of(dose().poured_ml), volume.unit, Input::figure, "poured"};
}

Term Answer::shut_in(const Scale& volume) const {
    return {"shut_in",   tr("air shut in"), volume.of(mold().air_ml),
            volume.unit, Input::mold,       tr("left by the vents")};
}

casting::BandIn Answer::mold() const {
    return plan::mold_with(profile, foam(), cavity(), dose().poured_ml, plan::air_left_ml(drawer));
}

bool Answer::has_air() const {
    constexpr double told_ml = 0.5;
    return mold().air_ml >= told_ml;
}

Term Answer::area() const {
    const Scale scale = area_scale(units());
    return {
        "area",        tr("area of the insert in the mold"), scale.of(cavity().insert_area_mm2), scale.unit,
        Input::drawer, tr("enlarged by the shrinkage")};
}

Term Answer::ambient(const Scale& pressure) const {
    return {"air",         tr("air pressure"), pressure.of(profile.ambient_kpa),
            pressure.unit, Input::shop,        tr("at the shop’s altitude, by ISO 2533")};
}

Term Answer::liquid_density(const Scale& density) const {
    return {"density",   tr("density of the mixed parts"),  density.of(dose().liquid_g_ml), density.unit,
            Input::foam, tr("of both parts by their ratio")};
}

Term rule(const QString& key, const QString& name, double value, const QString& unit, const QString& note) {
    return {key, name, value, unit, Input::constant, note};
}

Result fixed_result(double value, int decimals, const QString& unit, const QString& prefix) {
    return {QString::fromStdString(plan::fixed(value, decimals)), unit, prefix};
}

} // namespace drawercast::app::explain
