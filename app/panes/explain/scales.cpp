// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/explain/scales.h"

#include "base/units.h"

namespace drawercast::app::explain {

Scale volume_scale(const QString& unit) {
    if (unit == u"L") return {unit, 1000};
    if (unit == u"fl oz") return {unit, drawercast::units::ml_per_fluid_ounce};
    if (unit == u"qt") return {unit, drawercast::units::ml_per_quart};
    return {QStringLiteral("mL"), 1};
}

Scale mass_scale(const QString& unit) {
    if (unit == u"kg") return {unit, 1000};
    if (unit == u"oz") return {unit, drawercast::units::g_per_ounce};
    if (unit == u"lb") return {unit, drawercast::units::g_per_pound};
    return {QStringLiteral("g"), 1};
}

Scale pressure_scale(const QString& unit) {
    if (unit == u"psi") return {unit, drawercast::units::kpa_per_psi};
    return {QStringLiteral("kPa"), 1};
}

Scale volume_beside(const QString& mass) {
    if (mass == u"kg") return volume_scale(QStringLiteral("L"));
    if (mass == u"oz") return volume_scale(QStringLiteral("fl oz"));
    if (mass == u"lb") return volume_scale(QStringLiteral("qt"));
    return volume_scale(QStringLiteral("mL"));
}

Scale density_beside(const QString& mass) {
    const Scale volume = volume_beside(mass), weight = mass_scale(mass);
    return {weight.unit + u'/' + volume.unit, weight.size / volume.size};
}

bool is_metric(job::DisplayUnits units) { return units == job::DisplayUnits::mm; }

Scale length_scale(job::DisplayUnits units) {
    return is_metric(units) ? Scale{QStringLiteral("mm"), 1}
                            : Scale{QStringLiteral("in"), drawercast::units::mm_per_inch};
}

Scale area_scale(job::DisplayUnits units) {
    return is_metric(units) ? Scale{QStringLiteral("cm²"), 100}
                            : Scale{QStringLiteral("in²"),
                                    drawercast::units::mm_per_inch * drawercast::units::mm_per_inch};
}

double solid_per(const Scale& volume, job::DisplayUnits units) {
    return volume.size * 1000 / (area_scale(units).size * length_scale(units).size);
}

Scale absolute_scale(job::DisplayUnits units) {
    return is_metric(units) ? Scale{QStringLiteral("K"), 1} : Scale{QStringLiteral("°R"), 5.0 / 9};
}

Scale warmer_scale(job::DisplayUnits units) {
    return is_metric(units) ? Scale{QStringLiteral("K"), 1} : Scale{QStringLiteral("°F"), 5.0 / 9};
}

double temperature_in(double celsius, job::DisplayUnits units) {
    return is_metric(units) ? celsius : drawercast::units::fahrenheit(celsius);
}

QString temperature_unit(job::DisplayUnits units) {
    return is_metric(units) ? QStringLiteral("°C") : QStringLiteral("°F");
}

} // namespace drawercast::app::explain
