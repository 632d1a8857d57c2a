// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "photo/brush.h"
#include "photo/photo_outline.h"
#include "photo/photo_worker.h"

#include <QImage>
#include <QWidget>

#include <optional>

namespace drawercast::app::photo {

/// What the board shows of an outline besides its line in the photo.
struct Shown {
    Outline outline;
    shape::Polygon measured; ///< without parallax, in its shape; empty: the same as seen, or not known
};

/// The photo laid flat, with the outlines over it: chosen by a click, their points dragged (a double click on
/// a side makes one, Delete takes the chosen one away, arrows move it), and a brush that adds to objects or
/// takes away from them. The wheel zooms, the middle button or a drag on bare paper pans. A drag is shown and
/// becomes one change at release; Escape takes it back.
class Board final : public QWidget {
    Q_OBJECT
  public:
    enum class Tool { points, add, take_away };

    explicit Board(QWidget* parent = nullptr);

    /// Null: an invitation to drop one. False: it is shown already, and the view stays as it is.
    bool set_picture_if_other(const Flat& flat);
    void set_outlines(std::vector<Shown> outlines, const std::vector<Stroke>& strokes, int chosen);
    void set_waiting(const QString& words); ///< said while there is no picture; empty: it waits for one
    void set_tool(Tool tool);
    Tool tool() const { return tool_; }
    void set_brush_radius(double mm);
    void choose(int outline); ///< −1: none
    int chosen() const { return chosen_; }
    void fit();
    void zoom(double factor); ///< about the middle
    QPointF to_px(shape::Vec mm) const;
    shape::Vec to_mm(QPointF px) const;

    QSize sizeHint() const override; ///< larger on a larger screen
    QSize minimumSizeHint() const override { return {360, 300}; }

  signals:
    void chose(int outline);
    void changed(int outline, const drawercast::shape::Polygon& seen); ///< once for each act
    void stroked(const drawercast::app::photo::Stroke& stroke);
    void dropped(const QString& path);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    bool event(QEvent* event) override;

  private:
    enum class Grip { none, corner, picture, brush };

    const shape::Polygon* seen() const; ///< of the chosen outline, as dragged
    int corner_at(QPointF px) const;
    int outline_at(shape::Vec mm) const;
    int side_at(QPointF px) const;
    void choose_corner(int corner);
    shape::Polygon point_at(const shape::Polygon& polygon,
                            shape::Vec at) const; ///< with the chosen point there
    void commit(const shape::Polygon& next);
    void drop_drag();
    void zoom_about(QPointF px, double factor);
    double least_scale() const;
    void paint_picture(QPainter& painter);
    void paint_strokes(QPainter& painter) const;
    void paint_stroke(QPainter& painter, const Stroke& stroke) const;
    void paint_outlines(QPainter& painter) const;
    void paint_points(QPainter& painter) const;
    void paint_brush(QPainter& painter) const;
    void paint_frame(QPainter& painter) const;
    void paint_line(QPainter& painter, const shape::Polygon& polygon, const QPen& pen) const;
    QPolygonF line_of(const shape::Polygon& polygon) const;

    Flat flat_;
    std::vector<QImage> levels_; ///< each half as large as the one before
    std::vector<Shown> outlines_;
    std::vector<Stroke> strokes_;
    QString waiting_;
    Tool tool_ = Tool::points;
    double radius_mm_ = 2;
    int chosen_ = -1, corner_ = -1;
    shape::Vec center_; ///< mm in the middle of the view
    double scale_ = 1;  ///< px per mm
    bool fitted_ = true;
    Grip grip_ = Grip::none;
    QPointF pressed_;
    shape::Vec center_before_;
    std::optional<shape::Polygon> dragged_;
    std::optional<Stroke> drawn_;
    std::optional<QPointF> pointer_;
};

} // namespace drawercast::app::photo
