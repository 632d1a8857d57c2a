// SPDX-License-Identifier: GPL-3.0-or-later
// How the canvas takes mouse, wheel, keys and drops; what it draws is in sheet_canvas.cpp.
#include "job/edit.h"
#include "plan/sentences.h"

#include "canvas/hit.h"
#include "canvas/sheet_canvas.h"
#include "document/document.h"
#include "document/selection.h"
#include "panes/objects_model.h"

#include <QContextMenuEvent>
#include <QDragEnterEvent>
#include <QKeyEvent>
#include <QMimeData>
#include <QNativeGestureEvent>

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

constexpr double wheel_zoom_per_notch = 1.2;
constexpr double notch = 120; ///< eighths of a degree in one click of a wheel (Qt's unit)
constexpr double nudge_mm = 1;
constexpr double fine_nudge_mm = 0.1;
constexpr double key_pan_px = 40;

} // namespace

SelectTool::Keys SheetCanvas::keys(Qt::KeyboardModifiers modifiers) const {
    return {modifiers.testFlag(Qt::ShiftModifier), modifiers.testFlag(Qt::ControlModifier)};
}

void SheetCanvas::mousePressEvent(QMouseEvent* event) {
    const bool pan =
        event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && space_held_);
    if (pan) {
        panning_from_ = event->position();
        setCursor(Qt::ClosedHandCursor);
        return;
    }
    if (event->button() == Qt::RightButton) {
        if (tool_.cancel()) return; // gives up a drag; else it opens the menu of what is under it
        const std::string subject = tool_.hovered(event->position());
        if (!subject.empty() && !selection_.holds(subject)) selection_.choose_pockets({subject});
        emit context_menu_wanted(event->globalPosition().toPoint());
        return;
    }
    if (event->button() != Qt::LeftButton || shown_ != Shown::drawer_plan) return;
    tool_.press(event->position(), keys(event->modifiers()));
}

void SheetCanvas::mouseMoveEvent(QMouseEvent* event) {
    const auto mm = view_.to_mm(event->position());
    emit pointer_at({mm.x, mm.y});
    if (panning_from_) {
        pan(event->position() - *panning_from_);
        panning_from_ = event->position();
        return;
    }
    if (shown_ != Shown::drawer_plan) return;
    if (tool_.busy()) return tool_.move(event->position(), keys(event->modifiers()));
    const std::string under = tool_.hovered(event->position());
    if (under == hovered_) return;
    hovered_ = under;
    if (!hovered_.empty()) say(QString::fromStdString(plan::subject_name(hovered_, document_.shown())));
    update();
}

void SheetCanvas::mouseReleaseEvent(QMouseEvent* event) {
    if (panning_from_) {
        panning_from_.reset();
        unsetCursor();
        return;
    }
    if (event->button() == Qt::LeftButton && shown_ == Shown::drawer_plan)
        tool_.release(event->position(), keys(event->modifiers()));
}

void SheetCanvas::leaveEvent(QEvent*) {
    emit pointer_left();
    if (hovered_.empty()) return;
    hovered_.clear();
    update();
}

/// A wheel zooms about the pointer, a trackpad pans with two fingers and zooms with Ctrl or a pinch.
void SheetCanvas::wheelEvent(QWheelEvent* event) {
    const bool trackpad = !event->pixelDelta().isNull() && !event->modifiers().testFlag(Qt::ControlModifier);
    if (trackpad) return pan(event->pixelDelta());
    fitted_ = false;
    set_view(
        view_.zoomed(std::pow(wheel_zoom_per_notch, event->angleDelta().y() / notch), event->position()));
}

bool SheetCanvas::event(QEvent* event) {
    if (event->type() == QEvent::NativeGesture) {
        const auto* gesture = static_cast<QNativeGestureEvent*>(event);
        if (gesture->gestureType() == Qt::ZoomNativeGesture) {
            fitted_ = false;
            set_view(view_.zoomed(1 + gesture->value(), gesture->position()));
            return true;
        }
    }
    if (event->type() == QEvent::KeyPress) { // before Qt makes Tab leave the canvas
        auto* key = static_cast<QKeyEvent*>(event);
        const bool next = key->key() == Qt::Key_Tab && key->modifiers() == Qt::NoModifier;
        if ((next || key->key() == Qt::Key_Backtab) && shown_ == Shown::drawer_plan) {
            const auto before = selection_.pockets();
            choose_next(next ? 1 : -1);
            if (selection_.pockets() != before) return true;
        }
    }
    return QWidget::event(event);
}

/// The pockets in reading order; past the last one the focus goes on to the next pane.
void SheetCanvas::choose_next(int step) {
    const auto* plan = drawer_plan();
    if (plan == nullptr || plan->pockets.empty()) return;
    auto order = plan->pockets;
    std::stable_sort(order.begin(), order.end(), [](const auto& a, const auto& b) {
        constexpr double row_mm = 40; // centers this close together read as one row
        const auto row = [](const layout::PlacedPocket& p) { return std::floor(p.box.center().y / row_mm); };
        return row(*a) != row(*b) ? row(*a) > row(*b) : a->box.center().x < b->box.center().x;
    });
    const auto& chosen = selection_.pockets();
    auto at = std::find_if(order.begin(), order.end(),
                           [&](const auto& p) { return !chosen.empty() && p->subject == chosen.back(); });
    if (at == order.end()) {
        selection_.choose_pockets({step > 0 ? order.front()->subject : order.back()->subject});
        return;
    }
    const auto next = (at - order.begin()) + step;
    if (next < 0 || next >= static_cast<std::ptrdiff_t>(order.size())) return;
    selection_.choose_pockets({order[static_cast<std::size_t>(next)]->subject});
}

void SheetCanvas::nudge(shape::Vec by) {
    job::Subjects free;
    for (const auto& subject : selection_.pockets()) {
        const auto found = job::find_pocket(document_.job(), subject);
        if (found.pocket != nullptr && !found.pocket->locked) free.push_back(subject);
    }
    if (free.empty()) return pan({-by.x * key_pan_px, by.y * key_pan_px});
    QString key = "nudge";
    for (const auto& subject : free) key += " " + QString::fromStdString(subject);
    document_.commit(tr("Nudge"), job::moved(document_.job(), free, by), {key});
}

void SheetCanvas::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        if (!tool_.cancel()) selection_.choose_pockets({});
        return;
    }
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        space_held_ = true;
        setCursor(Qt::OpenHandCursor);
        return;
    }
    if (tool_.busy()) return;
    const double step = event->modifiers().testFlag(Qt::ShiftModifier) ? fine_nudge_mm : nudge_mm;
    switch (event->key()) {
    case Qt::Key_Left:
        return nudge({-step, 0});
    case Qt::Key_Right:
        return nudge({step, 0});
    case Qt::Key_Up:
        return nudge({0, step});
    case Qt::Key_Down:
        return nudge({0, -step});
    default:
        QWidget::keyPressEvent(event);
    }
}

void SheetCanvas::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        space_held_ = false;
        unsetCursor();
        return;
    }
    QWidget::keyReleaseEvent(event);
}

void SheetCanvas::focusOutEvent(QFocusEvent* event) {
    tool_.cancel(); // whoever looks away in mid-drag finds everything as it was
    space_held_ = false;
    unsetCursor();
    update();
    QWidget::focusOutEvent(event);
}

// ---- objects dropped from the list ----

std::optional<job::Job> SheetCanvas::with_dropped(const QByteArray& object, QPointF px) const {
    const auto* target = drawer();
    if (target == nullptr || shown_ != Shown::drawer_plan) return std::nullopt;
    const auto at = view_.to_mm(px);
    return job::placed(document_.job(), target->id, object.toStdString(),
                       {{std::round(at.x), std::round(at.y)}, 0});
}

void SheetCanvas::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasFormat(ObjectsModel::mime_type) && shown_ == Shown::drawer_plan)
        event->acceptProposedAction();
}

void SheetCanvas::dragMoveEvent(QDragMoveEvent* event) {
    if (!event->mimeData()->hasFormat(ObjectsModel::mime_type)) return;
    event->acceptProposedAction();
    preview(with_dropped(event->mimeData()->data(ObjectsModel::mime_type), event->position()));
}

void SheetCanvas::dragLeaveEvent(QDragLeaveEvent*) { preview(std::nullopt); }

void SheetCanvas::dropEvent(QDropEvent* event) {
    const auto object = event->mimeData()->data(ObjectsModel::mime_type);
    auto job = with_dropped(object, event->position());
    if (!job) return preview(std::nullopt);
    std::string made;
    const auto at = view_.to_mm(event->position());
    commit(tr("Place"), job::placed(document_.job(), selection_.drawer(), object.toStdString(),
                                    {{std::round(at.x), std::round(at.y)}, 0}, &made));
    selection_.choose_pockets({made});
    setFocus();
    event->acceptProposedAction();
}

} // namespace drawercast::app
