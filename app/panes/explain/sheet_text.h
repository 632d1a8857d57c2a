// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "panes/explain/foam_figures.h"

#include <QString>

namespace drawercast::app::explain {

/// A figure's explanation as rich text, every part escaped: its formula in words and with its numbers, the
/// terms with where each is changed, source and limits. Links: "figure:holds" to the explanation of another
/// figure, "action:job.foam" to the form where a term is changed, "guide:holds" to the figure's paragraph of
/// the guide. `figures`: those there are to link to.
QString sheet_html(const FoamFigure& figure, const std::vector<FoamFigure>& figures);

} // namespace drawercast::app::explain
