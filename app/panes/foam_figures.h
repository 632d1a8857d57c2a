// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include <QCoreApplication>
#include <QString>

#include <vector>

namespace drawercast::app {

/// One dosing unit at a time: what is on the scale, or what is in the cup.
enum class DosingUnit { mass, volume };

/// How a figure comes about.
struct Explanation {
    QString formula; ///< in words
    QString numbers; ///< the same with today's numbers
    QString source;
    QString limits;
};

/// A figure of the foam answer. Rows of the pane keep their places: a figure that can't be worked out has no
/// value.
struct FoamFigure {
    QString id; ///< "a", "b", "mixed", …: stays the same
    QString label;
    QString value;
    Explanation why;
};

/// All figures of one drawer's foam, in the order of the pane; empty where there is no dose.
std::vector<FoamFigure> foam_figures(const job::Job& job, const plan::Plan& plan,
                                     const plan::DrawerPlan& drawer, DosingUnit unit);

/// An explanation as rich text, every part escaped.
QString explanation_html(const FoamFigure& figure);

} // namespace drawercast::app
