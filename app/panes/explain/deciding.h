// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "panes/explain/answer.h"

namespace drawercast::app::explain {

/// Which limit the dose is nearest to, or furthest past.
struct Deciding {
    enum class What { low_end, high_end, pour, room };
    What what = What::low_end;
    double share = 0; ///< of the limit; over 1 is past it
    QString sentence;
};

Deciding deciding(const Answer& answer);

/// Share of the pot life that mixing and pouring take; over 1 is too late.
double pour_share(const Answer& answer);

} // namespace drawercast::app::explain
