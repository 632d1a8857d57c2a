// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/answer.h"
#include "job/job.h"

#include "canvas/vent_tool.h"
#include "canvas/view_map.h"
#include "sheets/inking.h"
#include "theme/palette.h"

#include <QString>

#include <optional>

/// The blue pencil on vents. It is only ever on the screen.
namespace drawercast::app {

struct VentScene {
    const air::Answer& air; ///< as drawn on the sheet
    job::DisplayUnits units;
    std::optional<std::size_t> chosen;
    std::optional<std::size_t> hovered;
    const std::optional<VentTrial>& trial;
    const ViewMap& view;
    QSizeF size; ///< of the view
    const theme::Theme& theme;
    const sheets::Taken& taken; ///< what words keep off
};

/// The chosen vent with its distances from the datum; while one is dragged where all would be then, and which
/// air pockets would keep their air.
sheets::Inks vent_ink(const VentScene& scene);

/// What the air would do, in one sentence.
QString trial_words(const air::Answer& tried, std::size_t dragged, job::DisplayUnits units);

} // namespace drawercast::app
