// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "panes/explain/answer.h"

/// One function per figure of the foam answer: what it is called, what it reads, and how it comes about.
namespace drawercast::app::explain {

// ---- dose.cpp ----
FoamFigure part_a(const Answer& answer);
FoamFigure part_b(const Answer& answer);
FoamFigure mixed(const Answer& answer);
FoamFigure poured(const Answer& answer);
FoamFigure insert_mass(const Answer& answer);

// ---- filling.cpp ----
FoamFigure holds(const Answer& answer);
FoamFigure rise(const Answer& answer);
FoamFigure overpack(const Answer& answer);
FoamFigure band(const Answer& answer);

// ---- mixing.cpp ----
FoamFigure batches(const Answer& answer);
FoamFigure pour_time(const Answer& answer);
std::optional<FoamFigure>
kits(const Answer& answer); ///< absent where none are listed, or a drawer has no dose

// ---- pressure.cpp ----
FoamFigure closed(const Answer& answer);
FoamFigure build_for(const Answer& answer);

// ---- rising.cpp ----
FoamFigure touch(const Answer& answer);
FoamFigure contact(const Answer& answer);

} // namespace drawercast::app::explain
