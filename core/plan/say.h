// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/length.h"
#include "job/job.h"

#include <string>

/// Quantities in words, in the units the job is shown in. Millimeters go with SI, both inch units with US
/// customary.
namespace drawercast::plan {

/// How lengths are shown and what a bare typed one is in.
LengthUnit length_unit(job::DisplayUnits units);

std::string say_length(double mm, job::DisplayUnits units);           ///< "6.2 mm", "0.244 in", "1/4 in"
std::string say_length_bare(double mm, job::DisplayUnits units);      ///< the same without the unit
std::string say_mass_g(double g, job::DisplayUnits units);            ///< "640 g", "1.41 lb"
std::string say_pressure_kpa(double kpa, job::DisplayUnits units);    ///< "22.9 kPa", "3.32 psi"
std::string say_volume_ml(double ml, job::DisplayUnits units);        ///< "966 mL", "32.7 fl oz"
std::string say_density_kg_m3(double kg_m3, job::DisplayUnits units); ///< "184 kg/m³", "11.5 lb/ft³"
std::string say_temperature_c(double c, job::DisplayUnits units);     ///< "23 °C", "73 °F"
std::string say_altitude_m(double m, job::DisplayUnits units);        ///< "1500 m", "4921 ft"
std::string say_force_n(double n, job::DisplayUnits units);           ///< "318 N", "71.5 lbf"

/// `value` with `decimals` digits behind the point, locale-free: 6.25 → "6.3" at one.
std::string fixed(double value, int decimals);

} // namespace drawercast::plan
