// SPDX-License-Identifier: GPL-3.0-or-later
#include "outline/outline_acts.h"
#include "photo/photo_board.h"
#include "theme/theme_of.h"

#include <QPainter>
#include <QPainterPath>

namespace drawercast::app::photo {

namespace {

constexpr double corner_px = 3.5, chosen_corner_px = 5;
constexpr double casing_px = 2.5; ///< wider than the line it lies under

} // namespace

QPolygonF Board::line_of(const shape::Polygon& polygon) const {
    QPolygonF line;
    for (const auto p : outline::drawn(polygon)) line << to_px(p);
    return line;
}

void Board::paint_line(QPainter& painter, const shape::Polygon& polygon, const QPen& pen) const {
    const auto& theme = theme::theme_of(this);
    const QPolygonF line = line_of(polygon);
    QColor casing = theme.paper;
    casing.setAlphaF(static_cast<float>(theme.casing));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(casing, pen.widthF() + casing_px));
    painter.drawPolygon(line);
    painter.setPen(pen);
    painter.drawPolygon(line);
}

/// From the smallest copy that still has a pixel for each of the screen's.
void Board::paint_picture(QPainter& painter) {
    std::size_t level = 0;
    const double wanted = scale_ * devicePixelRatioF() / flat_->px_per_mm;
    for (double share = 0.5; level + 1 < levels_.size() && share >= wanted; share /= 2) ++level;
    const double high = flat_->height_px / flat_->px_per_mm, wide = flat_->width_px / flat_->px_per_mm;
    painter.setRenderHint(QPainter::SmoothPixmapTransform, wanted < 4); // near by, pixels are shown as such
    painter.drawImage(QRectF(to_px({0, high}), to_px({wide, 0})), levels_[level]);
}

/// Added: a continuous edge; taken away: a dashed one, the photo paled.
void Board::paint_stroke(QPainter& painter, const Stroke& stroke) const {
    const auto& theme = theme::theme_of(this);
    QPainterPath path(to_px(stroke.points.front()));
    for (const shape::Vec p : stroke.points) path.lineTo(to_px(p) + QPointF(0.01, 0));
    QPainterPathStroker wide;
    wide.setWidth(2 * stroke.radius_mm * scale_);
    wide.setCapStyle(Qt::RoundCap);
    wide.setJoinStyle(Qt::RoundJoin);
    QColor wash = stroke.adds ? theme.blue : theme.paper;
    wash.setAlphaF(stroke.adds ? 0.25F : 0.5F);
    painter.setBrush(wash);
    painter.setPen(QPen(theme.blue, 1, stroke.adds ? Qt::SolidLine : Qt::DashLine));
    painter.drawPath(wide.createStroke(path).simplified());
}

/// Only while there is a brush in the hand: afterwards the outlines say what came of them.
void Board::paint_strokes(QPainter& painter) const {
    if (tool_ != Tool::points)
        for (const Stroke& stroke : strokes_) paint_stroke(painter, stroke);
    if (drawn_) paint_stroke(painter, *drawn_);
}

void Board::paint_outlines(QPainter& painter) const {
    const auto& theme = theme::theme_of(this);
    for (std::size_t i = 0; i < outlines_.size(); ++i) {
        const Shown& one = outlines_[i];
        const bool is_chosen = static_cast<int>(i) == chosen_;
        const shape::Polygon& line = is_chosen && dragged_ ? *dragged_ : one.outline.seen;
        QPen pen(is_chosen ? theme.blue : theme.ink, is_chosen ? 2.2 : 1.6);
        if (!one.outline.taken) pen.setStyle(Qt::DotLine);
        paint_line(painter, line, pen);
        if (!one.measured.corners.empty() && !(is_chosen && dragged_))
            paint_line(painter, one.measured, QPen(is_chosen ? theme.blue : theme.ink, 1, Qt::DashLine));
    }
    QFont bold = font();
    bold.setBold(true);
    painter.setFont(bold);
    const Shown* chosen = chosen_ < 0 ? nullptr : &outlines_[static_cast<std::size_t>(chosen_)];
    for (const Shown& one : outlines_) { // names over all lines
        shape::Box box;
        for (const auto& corner : one.outline.seen.corners) box.add(corner.at);
        const QString name = QString::fromStdString(one.outline.name);
        const QRectF room = painter.fontMetrics().boundingRect(name).adjusted(-5, -2, 5, 2);
        QRectF plate(QPointF(), room.size());
        plate.moveCenter(to_px(box.center()));
        const bool has_room = plate.width() < box.width() * scale_ && plate.height() < box.height() * scale_;
        if (!has_room && &one != chosen) continue; // the list names it
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.paper);
        painter.drawRect(plate);
        painter.setPen(theme.ink);
        painter.drawText(plate, Qt::AlignCenter, name);
    }
}

void Board::paint_points(QPainter& painter) const {
    const auto* polygon = seen();
    if (!polygon || tool_ != Tool::points) return;
    const auto& theme = theme::theme_of(this);
    for (std::size_t i = 0; i < polygon->corners.size(); ++i) {
        const bool is_chosen = static_cast<int>(i) == corner_;
        const double r = is_chosen ? chosen_corner_px : corner_px;
        painter.setPen(QPen(theme.blue, 1.25));
        painter.setBrush(is_chosen ? theme.blue : theme.paper);
        const QPointF at = to_px(polygon->corners[i].at);
        painter.drawRect(QRectF(at.x() - r, at.y() - r, 2 * r, 2 * r));
    }
}

void Board::paint_brush(QPainter& painter) const {
    if (tool_ == Tool::points || !pointer_) return;
    const auto& theme = theme::theme_of(this);
    const double r = radius_mm_ * scale_;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.paper, 3));
    painter.drawEllipse(*pointer_, r, r);
    painter.setPen(QPen(theme.blue, 1.25));
    painter.drawEllipse(*pointer_, r, r);
    painter.drawLine(*pointer_ - QPointF(4, 0), *pointer_ + QPointF(4, 0));
    if (tool_ == Tool::add) painter.drawLine(*pointer_ - QPointF(0, 4), *pointer_ + QPointF(0, 4));
}

void Board::paint_frame(QPainter& painter) const {
    const auto& theme = theme::theme_of(this);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(hasFocus() ? theme.blue : theme.edge, hasFocus() ? 2 : 1));
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
}

void Board::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& theme = theme::theme_of(this);
    painter.fillRect(rect(), theme.bench);
    if (flat_) {
        paint_picture(painter);
        painter.setRenderHint(QPainter::Antialiasing);
        paint_strokes(painter);
        paint_outlines(painter);
        paint_points(painter);
        paint_brush(painter);
    } else {
        painter.setPen(theme.ink2);
        const QString invitation =
            tr("Drop a photo or a scan here, or choose one above.\n\nLay the objects on the "
               "printed measuring sheet (menu Job), apart from each other and inside its field, "
               "and photograph it from above, all of its marks in the picture.");
        painter.drawText(rect().adjusted(40, 40, -40, -40), Qt::AlignCenter | Qt::TextWordWrap,
                         waiting_.isEmpty() ? invitation : waiting_);
    }
    paint_frame(painter);
}

} // namespace drawercast::app::photo
