// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/sheet.h"

#include <string>
#include <vector>

namespace drawercast::sheets {

/// The frame of plots: a place on paper and nowhere in a drawer or mold.
struct OnChart;

using ChartPen = Drafter<OnChart>;

/// A step of 1, 2, 2.5 or 5 times a power of ten that divides `most` into no more than `count` parts.
double even_step(double most, int count);

/// One plot over a shared axis: values from 0 to `most` between two heights, mm.
struct Panel {
    double bottom_mm = 0;
    double top_mm = 0;
    double most = 1;

    double y(double value) const { return bottom_mm + (top_mm - bottom_mm) * value / most; }
};

/// Frame, level lines with figures on the left, and what it shows in its upper left corner.
void add_panel(ChartPen& pen, const Panel& panel, double width_mm, double step, int decimals,
               const std::string& caption);

/// Figures under the lower edge at each `tick` from 0 to `most`, and what they are.
void add_axis(ChartPen& pen, double width_mm, double most, double tick, const std::string& caption);

/// What happens at a moment: an upright line through all panels, its words upright above them, kept apart.
struct ChartEvent {
    double x_mm = 0;
    std::string words;
    bool bold = false;
};
void add_events(ChartPen& pen, std::vector<ChartEvent> events, double bottom_mm, double top_mm);

} // namespace drawercast::sheets
