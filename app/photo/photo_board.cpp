// SPDX-License-Identifier: GPL-3.0-or-later
#include "photo/photo_board.h"

#include "outline/outline_acts.h"
#include "theme/arrow_keys.h"

#include <QDragEnterEvent>
#include <QKeyEvent>
#include <QMimeData>
#include <QMouseEvent>
#include <QScreen>
#include <QTimer>
#include <QUrl>
#include <QWheelEvent>

#include <cmath>

namespace drawercast::app::photo {

namespace {

constexpr double reach_px = 9;     ///< how near a click must be
constexpr double one_point_px = 4; ///< points nearer than this look like one
constexpr double room_px = 8;
constexpr double share_of_screen = 0.56; ///< what stands beside and below it has room too
constexpr int level_least_px = 500;      ///< a picture copied smaller than this is not halved again
constexpr double closest = 120;          ///< px per mm
constexpr double wheel_factor = 1.0015, key_factor = 1.25;
constexpr double nudge_mm = 0.5, small_nudge_mm = 0.1;

double distance(QPointF a, QPointF b) { return std::hypot(a.x() - b.x(), a.y() - b.y()); }

} // namespace

Board::Board(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAcceptDrops(true);
    setAccessibleName(tr("Photo with the outlines"));
}

QSize Board::sizeHint() const {
    return minimumSizeHint().expandedTo(screen()->availableSize() * share_of_screen);
}

bool Board::set_picture_if_other(const Flat& flat) {
    if (flat == flat_) return false;
    const bool same_picture = flat && flat_ && flat->bgr == flat_->bgr; // of another camera's distance
    flat_ = flat;
    if (same_picture) return true;
    levels_.clear();
    if (flat_) {
        const QImage whole(flat_->bgr.data(), flat_->width_px, flat_->height_px, 3 * flat_->width_px,
                           QImage::Format_BGR888);
        levels_.push_back(whole.convertToFormat(QImage::Format_RGB32));
        while (levels_.back().width() > level_least_px && levels_.back().height() > level_least_px)
            levels_.push_back(levels_.back().scaled(levels_.back().size() / 2, Qt::IgnoreAspectRatio,
                                                    Qt::SmoothTransformation));
    }
    chosen_ = corner_ = -1;
    drop_drag();
    fit();
    return true;
}

void Board::set_outlines(std::vector<Shown> outlines, const std::vector<Stroke>& strokes, int chosen) {
    outlines_ = std::move(outlines);
    strokes_ = strokes;
    dragged_.reset();
    if (grip_ == Grip::corner) grip_ = Grip::none;
    if (chosen >= static_cast<int>(outlines_.size())) chosen = -1;
    if (chosen != chosen_) corner_ = -1;
    chosen_ = chosen;
    const auto* polygon = seen();
    if (!polygon || corner_ >= static_cast<int>(polygon->corners.size())) corner_ = -1;
    setAccessibleDescription(tr("Outlines: %1").arg(outlines_.size()));
    update();
}

void Board::set_waiting(const QString& words) {
    waiting_ = words;
    update();
}

void Board::set_tool(Tool tool) {
    tool_ = tool;
    corner_ = -1; // a stroke makes other points
    drop_drag();
    setCursor(tool == Tool::points ? Qt::ArrowCursor : Qt::CrossCursor);
}

void Board::set_brush_radius(double mm) {
    radius_mm_ = mm;
    update();
}

void Board::choose(int outline) {
    const int now = outline >= 0 && outline < static_cast<int>(outlines_.size()) ? outline : -1;
    if (now == chosen_) return;
    chosen_ = now;
    corner_ = -1;
    update();
    emit chose(chosen_);
}

void Board::choose_corner(int corner) {
    corner_ = corner;
    update();
}

const shape::Polygon* Board::seen() const {
    if (dragged_) return &*dragged_;
    return chosen_ >= 0 ? &outlines_[static_cast<std::size_t>(chosen_)].outline.seen : nullptr;
}

double Board::least_scale() const {
    if (!flat_) return 1;
    const double w = flat_->width_px / flat_->px_per_mm, h = flat_->height_px / flat_->px_per_mm;
    return std::min((width() - 2 * room_px) / w, (height() - 2 * room_px) / h);
}

void Board::fit() {
    if (flat_) {
        const double mm_per_px = 1 / flat_->px_per_mm;
        center_ = {flat_->width_px * mm_per_px / 2, flat_->height_px * mm_per_px / 2};
        scale_ = least_scale();
    }
    fitted_ = true;
    update();
}

void Board::zoom(double factor) { zoom_about(QRectF(rect()).center(), factor); }

void Board::zoom_about(QPointF px, double factor) {
    if (!flat_) return;
    const shape::Vec under = to_mm(px);
    scale_ = std::clamp(scale_ * factor, least_scale() / 2, closest);
    center_ = center_ + (under - to_mm(px));
    fitted_ = false;
    update();
}

QPointF Board::to_px(shape::Vec mm) const {
    return {width() / 2.0 + (mm.x - center_.x) * scale_, height() / 2.0 - (mm.y - center_.y) * scale_};
}

shape::Vec Board::to_mm(QPointF px) const {
    return {center_.x + (px.x() - width() / 2.0) / scale_, center_.y - (px.y() - height() / 2.0) / scale_};
}

int Board::corner_at(QPointF px) const {
    const auto* polygon = seen();
    if (!polygon) return -1;
    int best = -1;
    double least = reach_px;
    for (std::size_t i = 0; i < polygon->corners.size(); ++i)
        if (const double d = distance(px, to_px(polygon->corners[i].at)); d <= least)
            least = d, best = static_cast<int>(i);
    return best;
}

/// The side of the chosen outline that a double click is on.
int Board::side_at(QPointF px) const {
    const auto* polygon = seen();
    if (!polygon) return -1;
    int best = -1;
    double least = reach_px;
    const auto& corners = polygon->corners;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const QPointF a = to_px(corners[i].at), along = to_px(corners[(i + 1) % corners.size()].at) - a;
        const double long2 = std::max(1e-9, QPointF::dotProduct(along, along));
        const double t = std::clamp(QPointF::dotProduct(px - a, along) / long2, 0.0, 1.0);
        if (const double d = distance(px, a + along * t); d <= least) least = d, best = static_cast<int>(i);
    }
    return best;
}

/// The smallest one there: an object on top of a larger one can be reached.
int Board::outline_at(shape::Vec mm) const {
    int best = -1;
    double least = 1e300;
    for (std::size_t i = 0; i < outlines_.size(); ++i) {
        const auto contour = shape::contour_of(outlines_[i].outline.seen);
        if (!contour || !shape::contains(*contour, mm)) continue;
        if (const double here = shape::area(*contour); here < least) least = here, best = static_cast<int>(i);
    }
    return best;
}

/// A traced corner is often two points; one that stayed behind would make a spike.
shape::Polygon Board::point_at(const shape::Polygon& polygon, shape::Vec at) const {
    return outline::with_point_at(polygon, static_cast<std::size_t>(corner_), at, one_point_px / scale_);
}

void Board::commit(const shape::Polygon& next) {
    if (chosen_ < 0 || next == outlines_[static_cast<std::size_t>(chosen_)].outline.seen) return update();
    emit changed(chosen_, next);
}

void Board::drop_drag() {
    dragged_.reset();
    drawn_.reset();
    grip_ = Grip::none;
    update();
}

void Board::mousePressEvent(QMouseEvent* event) {
    if (!flat_) return;
    pressed_ = event->position();
    center_before_ = center_;
    grip_ = Grip::picture;
    if (event->button() != Qt::LeftButton) return;
    if (tool_ != Tool::points) {
        grip_ = Grip::brush;
        drawn_ = Stroke{tool_ == Tool::add, radius_mm_, {to_mm(pressed_)}};
        return update();
    }
    choose_corner(corner_at(pressed_));
    if (corner_ >= 0)
        grip_ = Grip::corner;
    else if (const int there = outline_at(to_mm(pressed_)); there >= 0)
        choose(there);
}

void Board::mouseMoveEvent(QMouseEvent* event) {
    pointer_ = event->position();
    const QPointF by = event->position() - pressed_;
    if (grip_ == Grip::brush && drawn_) {
        const shape::Vec at = to_mm(event->position());
        if (length(at - drawn_->points.back()) > 0.1) drawn_->points.push_back(at);
    } else if (grip_ == Grip::corner && (dragged_ || by.manhattanLength() > 2)) {
        const shape::Polygon& before = outlines_[static_cast<std::size_t>(chosen_)].outline.seen;
        dragged_ = point_at(before, to_mm(*pointer_));
    } else if (grip_ == Grip::picture) {
        center_ = {center_before_.x - by.x() / scale_, center_before_.y + by.y() / scale_};
        fitted_ = false;
    } else if (grip_ == Grip::none && tool_ == Tool::points) {
        setCursor(corner_at(*pointer_) >= 0 ? Qt::SizeAllCursor : Qt::ArrowCursor);
        return;
    }
    update();
}

void Board::mouseReleaseEvent(QMouseEvent*) {
    const auto polygon = dragged_;
    const auto stroke = drawn_;
    drop_drag();
    if (polygon) commit(*polygon);
    if (stroke) emit stroked(*stroke);
}

void Board::mouseDoubleClickEvent(QMouseEvent* event) {
    if (tool_ != Tool::points) return mousePressEvent(event); // the second dab of two
    drop_drag();
    if (corner_at(event->position()) >= 0) return;
    const int side = side_at(event->position());
    if (side < 0) return;
    const shape::Polygon before = *seen();
    commit(outline::with_corner_on_side(before, static_cast<std::size_t>(side), to_mm(event->position())));
    choose_corner(side + 1);
}

void Board::wheelEvent(QWheelEvent* event) {
    zoom_about(event->position(), std::pow(wheel_factor, event->angleDelta().y()));
    event->accept();
}

/// Escape is the drag's while there is one, else the dialog's.
bool Board::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && (dragged_ || drawn_) &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape)
        event->accept();
    return QWidget::event(event);
}

void Board::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    if (key == Qt::Key_Escape && (dragged_ || drawn_)) return drop_drag();
    if (key == Qt::Key_Plus || key == Qt::Key_Equal) return zoom(key_factor);
    if (key == Qt::Key_Minus) return zoom(1 / key_factor);
    const auto* polygon = seen();
    if (!polygon) return QWidget::keyPressEvent(event);
    const int n = static_cast<int>(polygon->corners.size());
    if (key == Qt::Key_PageDown) return choose_corner((corner_ + 1) % n);
    if (key == Qt::Key_PageUp) return choose_corner((corner_ + n - (corner_ < 0 ? 0 : 1)) % n);
    if (corner_ < 0) return QWidget::keyPressEvent(event);
    const auto corner = static_cast<std::size_t>(corner_);
    if (key == Qt::Key_Delete || key == Qt::Key_Backspace)
        return commit(outline::without_corner(*polygon, corner));
    const double step = event->modifiers().testFlag(Qt::ShiftModifier) ? small_nudge_mm : nudge_mm;
    const auto way = way_of(key);
    if (!way) return QWidget::keyPressEvent(event);
    commit(point_at(*polygon, polygon->corners[corner].at + *way * step));
}

void Board::focusOutEvent(QFocusEvent* event) {
    drop_drag();
    QWidget::focusOutEvent(event);
}

void Board::leaveEvent(QEvent* event) {
    pointer_.reset();
    update();
    QWidget::leaveEvent(event);
}

void Board::resizeEvent(QResizeEvent*) {
    if (fitted_) fit();
}

void Board::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->urls().size() == 1 && event->mimeData()->urls().front().isLocalFile())
        event->acceptProposedAction();
}

void Board::dropEvent(QDropEvent* event) {
    const QString path = event->mimeData()->urls().value(0).toLocalFile();
    event->acceptProposedAction();
    // Questions are asked once the drag is over.
    QTimer::singleShot(0, this, [this, path] { emit dropped(path); });
}

} // namespace drawercast::app::photo
