// SPDX-License-Identifier: GPL-3.0-or-later
#include "outline/outline_board.h"

#include "theme/arrow_keys.h"
#include "theme/theme_of.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <QWheelEvent>

#include <cmath>

namespace drawercast::app {

namespace {

constexpr double reach_px = 9; ///< how near a click must be
constexpr double room_px = 36;
constexpr double straight_px = 4; ///< an arc pulled less than this is a straight side

double distance(QPointF a, QPointF b) { return std::hypot(a.x() - b.x(), a.y() - b.y()); }

} // namespace

OutlineBoard::OutlineBoard(std::function<QString(double)> length_words, QWidget* parent)
    : QWidget(parent), words_(std::move(length_words)) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(tr("Board with the outline"));
    setToolTip(tr(
        "Drag a corner, pull a ring to an arc, double click a side for a new corner. Ctrl leaves the grid."));
}

void OutlineBoard::set_polygon(const shape::Polygon& polygon) {
    polygon_ = polygon;
    pulled_.reset();
    held_ = {};
    if (chosen_ >= static_cast<int>(polygon_.corners.size())) chosen_ = -1;
    if (!fitted_) fit();
    setAccessibleDescription(tr("%1 corners").arg(polygon_.corners.size()));
    update();
}

void OutlineBoard::choose(int corner) {
    const int now = corner >= 0 && corner < static_cast<int>(polygon_.corners.size()) ? corner : -1;
    if (now == chosen_) return;
    chosen_ = now;
    update();
    emit choice_changed();
}

void OutlineBoard::fit() {
    const shape::Box box = outline::box_of(polygon_);
    if (box.empty()) return;
    center_ = box.center();
    scale_ = std::min((width() - 2 * room_px) / std::max(1.0, box.width()),
                      (height() - 2 * room_px) / std::max(1.0, box.height()));
    scale_ = std::clamp(scale_, 0.05, 40.0);
    update();
}

QPointF OutlineBoard::to_px(shape::Vec mm) const {
    return {width() / 2.0 + (mm.x - center_.x) * scale_, height() / 2.0 - (mm.y - center_.y) * scale_};
}

shape::Vec OutlineBoard::to_mm(QPointF px) const {
    return {center_.x + (px.x() - width() / 2.0) / scale_, center_.y - (px.y() - height() / 2.0) / scale_};
}

OutlineBoard::Hit OutlineBoard::hit(QPointF px) const {
    for (std::size_t i = 0; i < polygon_.corners.size(); ++i)
        if (distance(px, to_px(polygon_.corners[i].at)) <= reach_px) return {Grip::corner, i};
    for (std::size_t i = 0; i < polygon_.corners.size(); ++i)
        if (distance(px, to_px(outline::middle_of(polygon_, i))) <= reach_px) return {Grip::side, i};
    return {Grip::none, 0};
}

void OutlineBoard::commit(const shape::Polygon& next) {
    if (next == polygon_) return update();
    set_polygon(next);
    emit changed(polygon_);
}

/// What the drag comes to with the pointer there.
shape::Polygon OutlineBoard::pulled(QPointF px, Qt::KeyboardModifiers keys) const {
    const double step = keys.testFlag(Qt::ControlModifier) ? 0 : step_mm_;
    const shape::Vec at = to_mm(px);
    if (held_.grip == Grip::corner)
        return outline::with_corner_at(polygon_, held_.index, outline::on_step(at, step));
    double sagitta = outline::sagitta_through(polygon_, held_.index, at, straight_px / scale_);
    if (step > 0) sagitta = std::round(sagitta / step) * step;
    return outline::with_arc(polygon_, held_.index, sagitta);
}

void OutlineBoard::mousePressEvent(QMouseEvent* event) {
    pressed_ = event->position();
    if (event->button() == Qt::LeftButton) {
        held_ = hit(pressed_);
        choose(held_.grip == Grip::corner ? static_cast<int>(held_.index) : -1);
    }
    if (event->button() == Qt::MiddleButton ||
        (event->button() == Qt::LeftButton && held_.grip == Grip::none))
        held_ = {Grip::sheet, 0};
    center_before_ = center_;
}

void OutlineBoard::mouseMoveEvent(QMouseEvent* event) {
    if (held_.grip == Grip::none) {
        setCursor(hit(event->position()).grip == Grip::none ? Qt::ArrowCursor : Qt::SizeAllCursor);
        return;
    }
    const QPointF by = event->position() - pressed_;
    if (held_.grip == Grip::sheet) {
        center_ = {center_before_.x - by.x() / scale_, center_before_.y + by.y() / scale_};
        fitted_ = true;
    } else if (pulled_ || by.manhattanLength() > 2) {
        pulled_ = pulled(event->position(), event->modifiers());
    }
    update();
}

void OutlineBoard::mouseReleaseEvent(QMouseEvent*) {
    const auto next = pulled_;
    drop();
    if (next) commit(*next);
}

void OutlineBoard::drop() {
    pulled_.reset();
    held_ = {};
    update();
}

void OutlineBoard::mouseDoubleClickEvent(QMouseEvent* event) {
    drop();
    const QPointF px = event->position();
    if (hit(px).grip == Grip::corner) return;
    const auto& corners = polygon_.corners;
    std::size_t nearest = 0;
    double best = 1e9;
    const auto ring = outline::drawn(polygon_);
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const auto from = std::find(ring.begin(), ring.end(), corners[i].at);
        const shape::Vec end = corners[(i + 1) % corners.size()].at;
        for (auto p = from; p != ring.end(); ++p) {
            const shape::Vec a = *p, b = p + 1 == ring.end() ? ring.front() : *(p + 1);
            const shape::Vec at = to_mm(px), along = b - a;
            const double part = std::clamp(dot(at - a, along) / std::max(1e-12, dot(along, along)), 0.0, 1.0);
            if (const double d = distance(px, to_px(a + along * part)); d < best) {
                best = d;
                nearest = i;
            }
            if (b == end) break;
        }
    }
    if (best > 2 * reach_px) return;
    const double step = event->modifiers().testFlag(Qt::ControlModifier) ? 0 : step_mm_;
    commit(outline::with_corner_on_side(polygon_, nearest, outline::on_step(to_mm(px), step)));
    choose(static_cast<int>(nearest) + 1);
}

void OutlineBoard::wheelEvent(QWheelEvent* event) {
    const shape::Vec under = to_mm(event->position());
    scale_ = std::clamp(scale_ * std::pow(1.0015, event->angleDelta().y()), 0.05, 60.0);
    const shape::Vec now = to_mm(event->position());
    center_ = center_ + (under - now);
    fitted_ = true;
    event->accept();
    update();
}

void OutlineBoard::take_chosen_away() {
    if (chosen_ < 0) return;
    commit(outline::without_corner(polygon_, static_cast<std::size_t>(chosen_)));
    emit choice_changed();
}

/// Escape is the drag's while there is one, else the dialog's.
bool OutlineBoard::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && pulled_ &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape)
        event->accept();
    return QWidget::event(event);
}

void OutlineBoard::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    if (key == Qt::Key_Escape && pulled_) return drop();
    if (key == Qt::Key_Delete || key == Qt::Key_Backspace) return take_chosen_away();
    const int n = static_cast<int>(polygon_.corners.size());
    if (key == Qt::Key_PageDown) return choose((chosen_ + 1) % n);
    if (key == Qt::Key_PageUp) return choose((chosen_ + n - (chosen_ < 0 ? 0 : 1)) % n);
    const double far_mm = event->modifiers().testFlag(Qt::ShiftModifier) ? 0.1 : 1;
    const auto way = way_of(key);
    if (chosen_ < 0 || !way) return QWidget::keyPressEvent(event);
    const auto corner = static_cast<std::size_t>(chosen_);
    commit(outline::with_corner_at(polygon_, corner, polygon_.corners[corner].at + *way * far_mm));
    emit choice_changed();
}

void OutlineBoard::focusOutEvent(QFocusEvent* event) {
    drop();
    QWidget::focusOutEvent(event);
}

void OutlineBoard::resizeEvent(QResizeEvent*) {
    if (!fitted_) fit();
}

void OutlineBoard::paint_grid(QPainter& painter) const {
    const auto& theme = theme::theme_of(this);
    double step = std::max(step_mm_, 0.1);
    while (step * scale_ < 8) step *= step < 1 ? 10 : 5;
    const shape::Vec low = to_mm({0, double(height())}), high = to_mm({double(width()), 0});
    painter.setPen(QPen(theme.rule, 1));
    for (double x = std::ceil(low.x / step) * step; x <= high.x; x += step) {
        const double px = std::floor(to_px({x, 0}).x()) + 0.5;
        painter.drawLine(QPointF(px, 0), QPointF(px, height()));
    }
    for (double y = std::ceil(low.y / step) * step; y <= high.y; y += step) {
        const double px = std::floor(to_px({0, y}).y()) + 0.5;
        painter.drawLine(QPointF(0, px), QPointF(width(), px));
    }
}

void OutlineBoard::paint_handles(QPainter& painter) const {
    const auto& theme = theme::theme_of(this);
    const auto& corners = shown().corners;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        painter.setPen(QPen(theme.blue, 1.4));
        painter.setBrush(theme.paper);
        painter.drawEllipse(to_px(outline::middle_of(shown(), i)), 4, 4);
        const bool is_chosen = static_cast<int>(i) == chosen_;
        painter.setPen(QPen(is_chosen ? theme.blue : theme.ink, 1.6));
        painter.setBrush(is_chosen ? theme.blue : theme.paper);
        const QPointF at = to_px(corners[i].at);
        painter.drawRect(QRectF(at.x() - 4, at.y() - 4, 8, 8));
    }
}

void OutlineBoard::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& theme = theme::theme_of(this);
    painter.fillRect(rect(), theme.paper);
    paint_grid(painter);
    painter.setRenderHint(QPainter::Antialiasing);
    QPolygonF line;
    for (const auto p : outline::drawn(shown())) line << to_px(p);
    painter.setPen(QPen(theme.ink, 2));
    QColor wash = theme.face;
    wash.setAlphaF(0.6F);
    painter.setBrush(wash);
    painter.drawPolygon(line);
    paint_handles(painter);
    const auto& corners = shown().corners;
    const int now = held_.grip == Grip::corner ? static_cast<int>(held_.index) : chosen_;
    if (now >= 0 && now < static_cast<int>(corners.size())) {
        const auto n = corners.size();
        const auto i = static_cast<std::size_t>(now);
        painter.setPen(theme.blue);
        for (const std::size_t side : {i, (i + n - 1) % n}) { // both sides that meet there
            const auto a = corners[side].at, b = corners[(side + 1) % n].at;
            painter.drawText(to_px((a + b) * 0.5) + QPointF(8, -8), words_(length(b - a)));
        }
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(hasFocus() ? theme.blue : theme.edge, hasFocus() ? 2 : 1));
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
}

} // namespace drawercast::app
