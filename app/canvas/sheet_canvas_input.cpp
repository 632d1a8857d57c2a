// SPDX-License-Identifier: GPL-3.0-or-later
// How mouse, wheel and keys reach the view and the tools.
#include "canvas/sheet_canvas.h"
#include "document/dragged.h"
#include "theme/arrow_keys.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QDragEnterEvent>
#include <QKeyEvent>
#include <QMimeData>
#include <QNativeGestureEvent>
#include <QPointingDevice>

#include <cmath>

namespace drawercast::app {

namespace {

constexpr double wheel_zoom_per_notch = 1.2;
constexpr double wheel_pan_per_notch = 60; ///< px
constexpr double notch = 120;              ///< eighths of a degree in one click of a wheel (Qt's unit)
constexpr double key_pan_px = 40;

/// Two fingers on a trackpad; a wheel of fine steps is still a wheel.
bool by_fingers(const QWheelEvent& event) {
    if (event.pixelDelta().isNull()) return false;
    return event.phase() != Qt::NoScrollPhase ||
           event.pointingDevice()->type() == QInputDevice::DeviceType::TouchPad;
}

CanvasTool::Keys keys_of(Qt::KeyboardModifiers modifiers) {
    return {modifiers.testFlag(Qt::ShiftModifier), modifiers.testFlag(Qt::ControlModifier)};
}

} // namespace

CanvasTool& SheetCanvas::sheet_tool() {
    const auto& spec = contents_.spec();
    if (spec.tool == SheetTool::arrange) return arrange_;
    if (spec.tool == SheetTool::vents) return vents_;
    if (spec.tool == SheetTool::turn) return turn_;
    return look_on_;
}

CanvasTool& SheetCanvas::tool() {
    if (measuring_) return ruler_;
    return sheet_tool();
}

void SheetCanvas::set_measuring(bool on) {
    on = on && arranging();
    if (on == measuring_) return;
    arrange_.cancel();
    arrange_.leave();
    ruler_.cancel();
    measuring_ = on;
    show_cursor();
    if (on)
        say(tr("Drag from one corner or edge to another. Shift keeps it level, Ctrl lets go of edges, Esc "
               "ends."));
    redraw_live();
    emit measuring_changed(on);
}

// ---- pointer ----

void SheetCanvas::point(QPointF px) {
    const auto mm = view_.to_mm(px);
    pointer_mm_ = mm;
    emit pointer_at({mm.x, mm.y});
}

void SheetCanvas::show_cursor() {
    setCursor(panning_from_ ? Qt::ClosedHandCursor : space_held_ ? Qt::OpenHandCursor : tool().cursor());
}

void SheetCanvas::mousePressEvent(QMouseEvent* event) {
    const bool left = event->button() == Qt::LeftButton;
    if (event->button() == Qt::RightButton) return open_menu(event->position());
    if (event->button() == Qt::MiddleButton || (left && space_held_))
        panning_from_ = event->position(), panning_with_ = event->button();
    else if (left)
        tool().press(event->position(), keys_of(event->modifiers()));
    show_cursor();
}

void SheetCanvas::mouseMoveEvent(QMouseEvent* event) {
    point(event->position());
    if (panning_from_) {
        pan(event->position() - *panning_from_);
        panning_from_ = event->position();
        return;
    }
    tool().move(event->position(), keys_of(event->modifiers()));
    show_cursor();
}

void SheetCanvas::mouseReleaseEvent(QMouseEvent* event) {
    if (panning_from_ && event->button() == panning_with_)
        panning_from_.reset();
    else if (event->button() == Qt::LeftButton) // a drag ends with its button, whatever moves the sheet
        tool().release(event->position(), keys_of(event->modifiers()));
    show_cursor();
}

void SheetCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && !space_held_) {
        point(event->position());
        if (tool().double_click(event->position())) return;
    }
    mousePressEvent(event);
}

void SheetCanvas::leaveEvent(QEvent*) {
    emit pointer_left();
    tool().leave();
    if (QApplication::activePopupWidget() == nullptr) pointer_mm_.reset();
    redraw_live();
}

/// A right press gives up a drag; else it opens the menu of what is under it.
void SheetCanvas::open_menu(QPointF px) {
    if (sheet_tool().cancel()) return redraw_live();
    pointer_mm_ = view_.to_mm(px);
    const MenuOf of = sheet_tool().menu_at(px);
    emit context_menu_wanted(mapToGlobal(px.toPoint()), of);
}

/// By the menu key, at what is chosen; the mouse has had its menu already.
void SheetCanvas::contextMenuEvent(QContextMenuEvent* event) {
    event->accept();
    if (event->reason() != QContextMenuEvent::Keyboard) return;
    const auto menu = sheet_tool().menu_of_chosen();
    const QPointF at = menu.at.value_or(QPointF(rect().center()));
    emit context_menu_wanted(mapToGlobal(at.toPoint()), menu.of);
}

/// A wheel zooms about the pointer, with Shift it pans sideways, with Ctrl and Shift up and down; a trackpad
/// pans with two fingers, and zooms with Ctrl or a pinch.
void SheetCanvas::wheelEvent(QWheelEvent* event) {
    const bool shift = event->modifiers().testFlag(Qt::ShiftModifier);
    const bool control = event->modifiers().testFlag(Qt::ControlModifier);
    if (by_fingers(*event) && !control) return pan(event->pixelDelta());
    const QPointF turned = QPointF(event->angleDelta()) / notch;
    const double most = turned.y() != 0 ? turned.y() : turned.x(); // Alt lets some desktops swap them
    if (shift) {
        const double by = most * wheel_pan_per_notch;
        return pan(control ? QPointF(0, by) : QPointF(by, 0));
    }
    if (turned.y() == 0) return pan({turned.x() * wheel_pan_per_notch, 0}); // a wheel that tilts
    zoom_about(event->position(), std::pow(wheel_zoom_per_notch, turned.y()));
}

// ---- objects dragged from the list ----

void SheetCanvas::dragEnterEvent(QDragEnterEvent* event) {
    if (!event->mimeData()->hasFormat(dragged_object) || !arranging()) return;
    arrange_.cancel();
    const auto object = event->mimeData()->data(dragged_object).toStdString();
    if (drop_.enter(object, event->position())) event->acceptProposedAction();
}

void SheetCanvas::dragMoveEvent(QDragMoveEvent* event) {
    if (!drop_.busy()) return;
    event->acceptProposedAction();
    drop_.move(event->position(), keys_of(event->modifiers()));
    point(event->position());
}

void SheetCanvas::dragLeaveEvent(QDragLeaveEvent*) {
    drop_.leave();
    pointer_mm_.reset();
    emit pointer_left();
}

void SheetCanvas::dropEvent(QDropEvent* event) {
    if (!drop_.drop()) return;
    setFocus();
    event->acceptProposedAction();
}

// ---- keys ----

bool SheetCanvas::event(QEvent* event) {
    if (event->type() == QEvent::NativeGesture) {
        const auto* gesture = static_cast<QNativeGestureEvent*>(event);
        if (gesture->gestureType() == Qt::ZoomNativeGesture) {
            zoom_about(gesture->position(), 1 + gesture->value());
            return true;
        }
    }
    if (event->type() == QEvent::KeyPress && !sheet_tool().busy()) { // before Qt makes Tab leave the canvas
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool next = key->key() == Qt::Key_Tab && key->modifiers() == Qt::NoModifier;
        if ((next || key->key() == Qt::Key_Backtab) && sheet_tool().next(next ? 1 : -1)) return true;
    }
    if (event->type() == QEvent::ShortcutOverride && sheet_tool().busy()) {
        event->accept(); // no menu entry while something hangs on the pointer: Esc or let go first
        return true;
    }
    return QWidget::event(event);
}

/// A measurement goes first, then the measuring; else what is tried, then the choice.
void SheetCanvas::escape() {
    if (measuring_ && !ruler_.cancel()) return set_measuring(false);
    if (!measuring_ && !sheet_tool().let_go()) choose({});
    redraw_live();
}

void SheetCanvas::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return escape();
    if (event->key() == Qt::Key_Control || event->key() == Qt::Key_Shift) {
        auto now = keys_of(event->modifiers());
        now.no_snap = now.no_snap || event->key() == Qt::Key_Control;
        return tool().keys_changed(now);
    }
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        space_held_ = true;
        return show_cursor();
    }
    if (sheet_tool().busy()) return;
    if (const auto way = way_of(event->key())) {
        const CanvasTool::ArrowKey key{*way, event->modifiers().testFlag(Qt::ShiftModifier)};
        if (sheet_tool().arrow(key)) return;
        return pan({-key.by_mm().x * key_pan_px, key.by_mm().y * key_pan_px});
    }
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        return zoom_by(wheel_zoom_per_notch);
    case Qt::Key_Minus:
        return zoom_by(1 / wheel_zoom_per_notch);
    default:
        QWidget::keyPressEvent(event);
    }
}

void SheetCanvas::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        space_held_ = false;
        return show_cursor();
    }
    if (event->key() == Qt::Key_Control) {
        auto now = keys_of(event->modifiers());
        now.no_snap = false; // X11 still counts the key let go of
        return tool().keys_changed(now);
    }
    QWidget::keyReleaseEvent(event);
}

void SheetCanvas::focusInEvent(QFocusEvent* event) {
    update_frame();
    QWidget::focusInEvent(event);
}

void SheetCanvas::focusOutEvent(QFocusEvent* event) {
    sheet_tool().cancel(); // whoever looks away in mid-drag finds everything as it was
    panning_from_.reset();
    space_held_ = false;
    show_cursor();
    update_frame();
    redraw_live();
    QWidget::focusOutEvent(event);
}

} // namespace drawercast::app
