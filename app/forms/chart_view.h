// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/chart.h"

#include <QWidget>

namespace drawercast::app {

/// A plot in a form, drawn as the plots on paper are, in the window's colors.
class ChartView : public QWidget {
    Q_OBJECT
  public:
    explicit ChartView(QWidget* parent = nullptr);
    QSize sizeHint() const override;

  protected:
    /// Puts the plot on a chart of that size, whose lower left corner is (0, 0); nothing: there is none yet.
    virtual void draw(sheets::ChartPen& pen, sheets::Vec size_mm) const = 0;
    void paintEvent(QPaintEvent* event) override;
};

} // namespace drawercast::app
