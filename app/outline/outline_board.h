// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "outline/outline_acts.h"

#include <QWidget>

#include <functional>

namespace drawercast::app {

/// A free outline to be changed by mouse and keys: corners are dragged, sides are pulled to arcs by the ring
/// in their middle, a double click on a side makes a corner there, Delete takes the chosen one away, arrows
/// move it. A drag is shown and becomes one change at release; Escape takes it back. Ctrl leaves the grid.
class OutlineBoard final : public QWidget {
    Q_OBJECT
  public:
    explicit OutlineBoard(std::function<QString(double)> length_words, QWidget* parent = nullptr);

    void set_polygon(const shape::Polygon& polygon);
    const shape::Polygon& polygon() const { return polygon_; }
    void set_step(double mm) { step_mm_ = mm; }
    int chosen() const { return chosen_; } ///< corner; −1: none
    void choose(int corner);
    void take_chosen_away();
    void fit();
    QPointF to_px(shape::Vec mm) const;
    shape::Vec to_mm(QPointF px) const;

    QSize sizeHint() const override { return {520, 400}; }
    QSize minimumSizeHint() const override { return {300, 240}; }

  signals:
    void changed(const shape::Polygon& polygon); ///< by the maker, once for each act
    void choice_changed();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

  private:
    enum class Grip { none, corner, side, sheet };
    struct Hit {
        Grip grip = Grip::none;
        std::size_t index = 0;
    };
    Hit hit(QPointF px) const;
    shape::Polygon pulled(QPointF px, Qt::KeyboardModifiers keys) const;
    void drop();
    void commit(const shape::Polygon& next);
    const shape::Polygon& shown() const { return pulled_ ? *pulled_ : polygon_; }
    void paint_grid(QPainter& painter) const;
    void paint_handles(QPainter& painter) const;

    std::function<QString(double)> words_;
    shape::Polygon polygon_;
    std::optional<shape::Polygon> pulled_; ///< while a drag goes on
    Hit held_;
    QPointF pressed_;
    shape::Vec center_before_;
    int chosen_ = -1;
    double step_mm_ = 1;
    double scale_ = 2; ///< px per mm
    shape::Vec center_;
    bool fitted_ = false;
};

} // namespace drawercast::app
