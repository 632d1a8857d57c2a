// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "panes/explain/answer.h"

#include <QAbstractButton>

namespace drawercast::app {

/// A figure of an answer that explains itself when clicked.
class FigureButton final : public QAbstractButton {
    Q_OBJECT
  public:
    enum class Kind {
        key,   ///< large, under its caption
        row,   ///< label at the left, value at the right
        gauge, ///< the same over a dimension line with its limit
    };
    FigureButton(Kind kind, QWidget* parent);

    void show(const FoamFigure& figure);
    /// For Kind::gauge: the share of its limit, whether that is kept, and whether it decides.
    void show_gauge(double share, bool breached, bool decides);
    void set_open(bool open); ///< its explanation is shown

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void paint_key(QPainter& painter) const;
    void paint_row(QPainter& painter) const;
    void paint_gauge(QPainter& painter) const;
    QFont small() const;
    QFont large() const;
    QFont strong() const;

    Kind kind_;
    QString label_;
    QString value_;
    double share_ = 0;
    bool breached_ = false;
    bool decides_ = false;
    bool open_ = false;
};

} // namespace drawercast::app
