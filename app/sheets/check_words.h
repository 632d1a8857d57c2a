// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "layout/check.h"
#include "plan/plan.h"

#include "sheets/marks.h"

#include <QString>

#include <optional>
#include <string>

namespace drawercast::sheets {

/// The few words that stand on the drawing beside a check's number: "wall 6.2, needs 8"; empty where the
/// number is enough. In the job's display units.
std::string plate_words(const layout::Check& check, const job::Job& job);

/// "mend", "look", "note".
QString severity_words(layout::Severity severity);

/// Where a check lies on the drawer plan: its own point, else its pocket's middle, else nowhere.
std::optional<Vec> place_of(const layout::Check& check, const plan::DrawerPlan& drawer);

/// The zone of that place, "D6"; empty where there is none.
std::string zone_of(const layout::Check& check, const plan::DrawerPlan& drawer, job::DisplayUnits units);

/// The same for the same check in any job that differs from this one by its figures only.
std::string key_of(const layout::Check& check);

/// What stands on the check's badge and plate; `number` as in the drawer's list, from 1.
CheckTag tag_of(const layout::Check& check, int number, const job::Job& job);

} // namespace drawercast::sheets
