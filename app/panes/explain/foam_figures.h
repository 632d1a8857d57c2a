// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "panes/explain/answer.h"

#include <vector>

namespace drawercast::app {

/// All figures of one drawer's foam answer; empty where there is no dose.
std::vector<FoamFigure> foam_figures(const job::Job& job, const plan::Plan& plan,
                                     const plan::DrawerPlan& drawer, DosingUnit unit);

/// The figure of that id, or nullptr.
const FoamFigure* find_figure(const std::vector<FoamFigure>& figures, const QString& id);

} // namespace drawercast::app
