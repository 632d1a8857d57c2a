// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <QString>

namespace drawercast::app::explain {

/// A unit a term is shown in, and how much of the job's own unit (mL, g, kPa, mm) one of it is.
struct Scale {
    QString unit;
    double size = 1;
    double of(double value) const { return value / size; }
};

/// By the unit a result is said in, so that a formula comes out in it without a factor between.
Scale volume_scale(const QString& unit); ///< mL, L, fl oz, qt; in mL
Scale mass_scale(const QString& unit);   ///< g, kg, oz, lb; in g
Scale pressure_scale(const QString& unit);
/// Volume whose mass at 1 g/mL … is told in `mass`: mL with g, L with kg, fl oz with oz, qt with lb.
Scale volume_beside(const QString& mass);
Scale density_beside(const QString& mass); ///< "g/mL", "kg/L", "oz/fl oz", "lb/qt"; in g/mL

/// What is told the same way in all formulas of a job.
bool is_metric(job::DisplayUnits units);
Scale length_scale(job::DisplayUnits units); ///< mm, in; in mm
Scale area_scale(job::DisplayUnits units);   ///< cm², in²; in mm²
/// Area × length as area_scale and length_scale tell them, over this, is a volume in `volume`'s unit.
double solid_per(const Scale& volume, job::DisplayUnits units);
Scale absolute_scale(job::DisplayUnits units); ///< K, °R; in K
Scale warmer_scale(job::DisplayUnits units);   ///< °C, °F as a difference; in K
double temperature_in(double celsius, job::DisplayUnits units);
QString temperature_unit(job::DisplayUnits units);

} // namespace drawercast::app::explain
