// SPDX-License-Identifier: GPL-3.0-or-later
#include "language/say.h"

#include "plan/say.h"

#include "language/spoken.h"

namespace drawercast::language {

using Units = job::DisplayUnits;

QString say_length(double mm, Units units) { return figures(plan::say_length(mm, units)); }
QString say_length_bare(double mm, Units units) { return figures(plan::say_length_bare(mm, units)); }
QString say_mass_g(double g, Units units) { return figures(plan::say_mass_g(g, units)); }
QString say_pressure_kpa(double kpa, Units units) { return figures(plan::say_pressure_kpa(kpa, units)); }
QString say_volume_ml(double ml, Units units) { return figures(plan::say_volume_ml(ml, units)); }
QString say_density_kg_m3(double kg_m3, Units units) {
    return figures(plan::say_density_kg_m3(kg_m3, units));
}
QString say_temperature_c(double c, Units units) { return figures(plan::say_temperature_c(c, units)); }
QString say_altitude_m(double m, Units units) { return figures(plan::say_altitude_m(m, units)); }
QString say_force_n(double n, Units units) { return figures(plan::say_force_n(n, units)); }

QString fixed(double value, int decimals) { return figures(plan::fixed(value, decimals)); }

} // namespace drawercast::language
