// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/pour_steps.h"

#include "theme/palette.h"

#include <QRect>
#include <QString>

#include <optional>
#include <vector>

class QPainter;

namespace drawercast::app {

/// What stands on the pour day view at one moment.
struct PourPicture {
    QString title;
    const plan::PourStep* next = nullptr;  ///< nullptr: all is done
    const plan::PourStep* after = nullptr; ///< what follows it
    int done = 0;
    int of = 0;
    std::optional<double> stopwatch_s;
    QString trouble; ///< a mark could not be saved
};

QString step_words(const plan::PourStep& step); ///< "Plate on", begun with a capital

void paint_pour(QPainter& painter, const QRect& room, const PourPicture& picture, const theme::Theme& theme);

/// "1:07", "-0:05", "2:03:00"
QString clock_text(double seconds);

} // namespace drawercast::app
