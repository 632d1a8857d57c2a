// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <QString>

/// Quantities in words as plan/say.h has them, for the window and for paper: with the language's decimal
/// mark.
namespace drawercast::language {

QString say_length(double mm, job::DisplayUnits units);
QString say_length_bare(double mm, job::DisplayUnits units); ///< without the unit
QString say_mass_g(double g, job::DisplayUnits units);
QString say_pressure_kpa(double kpa, job::DisplayUnits units);
QString say_volume_ml(double ml, job::DisplayUnits units);
QString say_density_kg_m3(double kg_m3, job::DisplayUnits units);
QString say_temperature_c(double c, job::DisplayUnits units);
QString say_altitude_m(double m, job::DisplayUnits units);
QString say_force_n(double n, job::DisplayUnits units);

/// `value` with `decimals` digits behind the mark.
QString fixed(double value, int decimals);

} // namespace drawercast::language
