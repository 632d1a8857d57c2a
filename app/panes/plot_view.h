// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/chart.h"

#include <QWidget>

#include <functional>
#include <memory>

namespace drawercast::app {

/// A small plot in a pane, as wide as there is room: drawn for that width, so that its words keep their size.
class PlotView final : public QWidget {
    Q_OBJECT
  public:
    using Chart = sheets::Sheet<sheets::OnChart>;
    /// The plot at a size, mm of the screen; asked again when the room changes.
    using Make = std::function<Chart(shape::Vec size_mm)>;

    /// `height_px` of the plot itself, in 13 px type.
    PlotView(int height_px, QWidget* parent);

    void show_chart(Make make, const QString& spoken); ///< null: nothing to show, and no room taken

    QSize sizeHint() const override;
    bool hasHeightForWidth() const override { return false; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void renew();
    shape::Vec size_mm() const; ///< of the plot itself, beside room_px_

    int height_px_;
    double room_px_ = 0; ///< what its words take of the width: the same at every size
    Make make_;
    std::unique_ptr<Chart> chart_;
};

} // namespace drawercast::app
