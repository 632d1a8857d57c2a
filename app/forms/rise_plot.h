// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/profile.h"

#include "forms/chart_view.h"

#include <optional>

namespace drawercast::app {

/// Expansion over time: the two guesses by the label, dashed, and the curve through the cups' times.
class RisePlot final : public ChartView {
    Q_OBJECT
  public:
    explicit RisePlot(QWidget* parent = nullptr);
    void set_profiles(std::optional<casting::Profile> label, std::optional<casting::Profile> cup);

  protected:
    void draw(sheets::ChartPen& pen, sheets::Vec size_mm) const override;

  private:
    std::optional<casting::Profile> label_;
    std::optional<casting::Profile> cup_;
};

} // namespace drawercast::app
