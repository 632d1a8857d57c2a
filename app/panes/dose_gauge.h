// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractSlider>

namespace drawercast::app {

/// The band of the dose as a dimension line: how full the mold gets at the low end, as expected and at the
/// high end, between the two limits. The middle mark is the overpack, and can be dragged; both ends follow.
/// What is being dragged is only tried: it is chosen at release, and dropped by Escape or loss of focus.
/// Value and range are the overpack in tenths of a percent.
class DoseGauge final : public QAbstractSlider {
    Q_OBJECT
  public:
    explicit DoseGauge(QWidget* parent);

    struct Shown {
        double overpack = 0; ///< 0.2 = 20 %
        double low_fill = 0; ///< 1 just fills
        double high_fill = 0;
        bool operator==(const Shown&) const = default;
    };
    void show(const Shown& shown);
    bool dragging() const { return dragging_; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

  signals:
    void tried(double overpack);
    void chosen(double overpack);
    void dropped(); ///< what was tried is no longer
    void automatic_wanted();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void sliderChange(SliderChange change) override;

  private:
    double x_of(double fill) const;
    double fill_at(double x) const;
    int line_y() const;
    void drop();
    void paint_limit(QPainter& painter, double fill, bool least) const;
    void paint_band(QPainter& painter) const;
    void paint_ends(QPainter& painter) const;

    Shown shown_;
    bool dragging_ = false;
    bool moved_ = false;
    bool showing_ = false; ///< the value comes from show(), not from the maker
};

} // namespace drawercast::app
