// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/cost.h"

#include "forms/chart_view.h"

namespace drawercast::app {

/// What each set costs in runs of one to `most_sets`, and the run that is looked at.
class RunPlot final : public ChartView {
    Q_OBJECT
  public:
    explicit RunPlot(const plan::CostBasis& basis, QWidget* parent = nullptr);
    void set_run(int sets);

    static constexpr int most_sets = 20; ///< more than one mold of board may not last for (our guess)

  protected:
    void draw(sheets::ChartPen& pen, sheets::Vec size_mm) const override;

  private:
    std::vector<double> each_; ///< of one set, two, …
    int sets_ = 1;
};

} // namespace drawercast::app
