// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/band.h"
#include "casting/profile.h"
#include "job/job.h"
#include "plan/plan.h"

#include "panes/explain/explanation.h"
#include "panes/explain/scales.h"

#include <QCoreApplication>

#include <optional>

namespace drawercast::app {

/// One dosing unit at a time: what is on the scale, or what is in the cup.
enum class DosingUnit { mass, volume };

/// A figure of the foam answer.
struct FoamFigure {
    QString id; ///< "a", "b", "mixed", …: stays the same
    QString label;
    QString value;
    explain::Explanation why;
};

namespace explain {

/// A drawer that has a dose, and the terms that several figures share.
class Answer {
    Q_DECLARE_TR_FUNCTIONS(drawercast::app::explain::Answer)

  public:
    /// Absent where the drawer has no dose.
    static std::optional<Answer> of(const job::Job& job, const plan::Plan& plan,
                                    const plan::DrawerPlan& drawer, DosingUnit unit);

    const job::Job& job;
    const plan::Plan& plan;
    const plan::DrawerPlan& drawer;
    DosingUnit unit;
    casting::Profile profile;

    const casting::Dose& dose() const { return *drawer.dose; }
    const casting::Cavity& cavity() const { return *drawer.cavity; }
    const job::Foam& foam() const { return *job.foam; }
    const job::Shop& shop() const { return *job.shop; }
    job::DisplayUnits units() const { return job.display_units; }
    bool by_mass() const { return unit == DosingUnit::mass; }

    /// Of the drawer's mold with its dose and the air that its vents leave.
    casting::BandIn mold() const;
    bool has_air() const; ///< so much shut in that a figure tells of it

    Result said_ml(double ml) const;
    Result said_g(double g) const;
    Result said_kpa(double kpa) const;
    Result said_n(double n) const;

    Term overpack() const;
    Term rise() const;
    Term holds(const Scale& volume) const;
    Term poured(const Scale& volume) const;
    Term shut_in(const Scale& volume) const; ///< air
    Term area() const;
    Term ambient(const Scale& pressure) const;
    Term liquid_density(const Scale& density) const;
};

/// A rule of this program with its source or "our guess".
Term rule(const QString& key, const QString& name, double value, const QString& unit, const QString& note);

/// "1.2", with that many decimals and no unit.
Result fixed_result(double value, int decimals, const QString& unit = {}, const QString& prefix = {});

} // namespace explain
} // namespace drawercast::app
