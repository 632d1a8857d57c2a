// SPDX-License-Identifier: GPL-3.0-or-later
// How the canvas takes mouse, wheel and keys.
#include "job/edit.h"
#include "plan/say.h"
#include "plan/sentences.h"

#include "canvas/hit.h"
#include "canvas/sheet_canvas.h"
#include "canvas/vent_live.h"
#include "document/document.h"
#include "document/selection.h"
#include "language/in_words.h"
#include "language/spoken.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QNativeGestureEvent>
#include <QPointingDevice>

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

constexpr double wheel_zoom_per_notch = 1.2;
constexpr double wheel_pan_per_notch = 60; ///< px
constexpr double notch = 120;              ///< eighths of a degree in one click of a wheel (Qt's unit)
constexpr double nudge_mm = 1;
constexpr double fine_nudge_mm = 0.1;
constexpr double key_pan_px = 40;

/// Two fingers on a trackpad; a wheel of fine steps is still a wheel.
bool by_fingers(const QWheelEvent& event) {
    if (event.pixelDelta().isNull()) return false;
    return event.phase() != Qt::NoScrollPhase ||
           event.pointingDevice()->type() == QInputDevice::DeviceType::TouchPad;
}

Qt::CursorShape cursor_of(SelectTool::Grip grip) {
    switch (grip) {
    case SelectTool::Grip::ring:
        return Qt::PointingHandCursor;
    case SelectTool::Grip::notch:
    case SelectTool::Grip::pocket:
        return Qt::SizeAllCursor;
    case SelectTool::Grip::none:
        break;
    }
    return Qt::ArrowCursor;
}

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
    if (event->button() == Qt::RightButton) return right_press(*event);
    if (event->button() == Qt::LeftButton && (press_vent(*event) || press_turn(*event))) return;
    if (event->button() != Qt::LeftButton || !arranging()) return;
    nudged_.clear();
    if (measuring_) {
        ruler_.press(event->position(), keys(event->modifiers()));
        return redraw_live();
    }
    const auto* check = check_at(event->position());
    if (check != nullptr && tool_.grip(event->position()) != SelectTool::Grip::ring)
        return selection_.choose_check(layout::Check(*check));
    tool_.press(event->position(), keys(event->modifiers()));
    redraw_live();
}

void SheetCanvas::mouseMoveEvent(QMouseEvent* event) {
    const auto mm = view_.to_mm(event->position());
    emit pointer_at({mm.x, mm.y});
    pointer_mm_ = mm;
    if (panning_from_) {
        pan(event->position() - *panning_from_);
        panning_from_ = event->position();
        return;
    }
    if (venting()) return point_at_vent(event->position());
    if (turning_from_) return drag_turn(event->position());
    if (turning() && !space_held_) setCursor(Qt::OpenHandCursor);
    if (!arranging()) return;
    if (measuring_) {
        ruler_.move(event->position(), keys(event->modifiers()));
        return redraw_live();
    }
    if (tool_.busy()) return tool_.move(event->position(), keys(event->modifiers()));
    point_at(event->position());
}

/// On a sheet with vents a press chooses one and takes hold of it.
bool SheetCanvas::press_vent(const QMouseEvent& event) {
    if (!venting() || !air()) return false;
    vent_tool_.press(event.position());
    redraw_live();
    return true;
}

void SheetCanvas::point_at_vent(QPointF px) {
    if (vent_tool_.busy()) {
        vent_tool_.move(px, QApplication::keyboardModifiers().testFlag(Qt::ControlModifier));
        if (const auto& trial = vent_tool_.trial())
            say(trial_words(*trial->tried, trial->index, document_.job().display_units));
        return redraw_live();
    }
    const auto under = vent_tool_.hovered(px);
    if (!space_held_) setCursor(under ? Qt::SizeAllCursor : Qt::ArrowCursor);
    if (under == hovered_vent_) return;
    hovered_vent_ = under;
    if (under)
        say(tr("V%1: drag it to lock it elsewhere, right-click for more.").arg(static_cast<int>(*under) + 1));
    redraw_live();
}

/// Nothing pressed: what is under the pointer is told and outlined.
void SheetCanvas::point_at(QPointF px) {
    const auto* check = check_at(px);
    const auto grip = tool_.grip(px);
    if (!space_held_)
        setCursor(check != nullptr && grip != SelectTool::Grip::ring ? Qt::PointingHandCursor
                                                                     : cursor_of(grip));
    const std::string under = check != nullptr ? std::string() : tool_.hovered(px);
    if (check != nullptr) say(in_words(plan::sentence(*check, document_.shown())));
    if (grip == SelectTool::Grip::ring) say(tr("Drag to turn in steps of 15°; hold Ctrl to turn freely."));
    if (under == hovered_) return;
    hovered_ = under;
    if (!hovered_.empty()) say(QString::fromStdString(plan::subject_name(hovered_, document_.shown())));
    redraw_live();
}

void SheetCanvas::mouseReleaseEvent(QMouseEvent* event) {
    if (panning_from_) {
        panning_from_.reset();
        setCursor(space_held_ ? Qt::OpenHandCursor : measuring_ ? Qt::CrossCursor : Qt::ArrowCursor);
        return;
    }
    if (turning_from_) {
        turning_from_.reset();
        return setCursor(Qt::OpenHandCursor);
    }
    if (event->button() == Qt::LeftButton && vent_tool_.busy()) {
        vent_tool_.release();
        return redraw_live();
    }
    if (event->button() != Qt::LeftButton || !arranging()) return;
    if (measuring_) {
        ruler_.release(event->position(), keys(event->modifiers()));
        return redraw_live();
    }
    tool_.release(event->position(), keys(event->modifiers()));
    point_at(event->position());
    redraw_live();
}

/// On a notch its sizes are asked for, on a pocket its object's.
void SheetCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && venting() && air() && !space_held_) {
        pointer_mm_ = view_.to_mm(event->position());
        if (vent_tool_.hovered(event->position()))
            emit vent_drill_wanted();
        else
            emit vent_wanted();
        return;
    }
    if (event->button() != Qt::LeftButton || !arranging() || space_held_ || measuring_)
        return mousePressEvent(event);
    const auto grip = tool_.grip(event->position());
    const std::string subject = tool_.hovered(event->position());
    if (grip == SelectTool::Grip::notch && selection_.notch()) {
        emit notch_form_wanted();
    } else if (grip == SelectTool::Grip::pocket && !subject.empty()) {
        selection_.choose_pockets({subject});
        emit object_form_wanted(QString::fromStdString(selection_.object()));
    }
}

void SheetCanvas::leaveEvent(QEvent*) {
    emit pointer_left();
    hovered_.clear();
    hovered_vent_.reset();
    if (QApplication::activePopupWidget() == nullptr) pointer_mm_.reset();
    redraw_live();
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
    fitted_ = false;
    set_view(view_.zoomed(std::pow(wheel_zoom_per_notch, turned.y()), event->position()));
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
        if ((next || key->key() == Qt::Key_Backtab) && venting() && !vent_tool_.busy()) {
            const auto before = selection_.vent();
            choose_next_vent(next ? 1 : -1);
            if (selection_.vent() != before) return true;
        }
        if ((next || key->key() == Qt::Key_Backtab) && arranging() && !tool_.busy()) {
            const auto before = selection_.pockets();
            choose_next(next ? 1 : -1);
            if (selection_.pockets() != before) return true;
        }
    }
    if (event->type() == QEvent::ShortcutOverride && (tool_.busy() || vent_tool_.busy())) {
        event->accept(); // no menu entry while something hangs on the pointer: Esc or let go first
        return true;
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
    } else {
        const auto next = (at - order.begin()) + step;
        if (next < 0 || next >= static_cast<std::ptrdiff_t>(order.size())) return;
        selection_.choose_pockets({order[static_cast<std::size_t>(next)]->subject});
    }
    say(QString::fromStdString(plan::subject_name(selection_.pockets().front(), document_.shown())));
}

/// The vents by their numbers; past the last one the focus goes on to the next pane.
void SheetCanvas::choose_next_vent(int step) {
    const auto now = air();
    const auto* plan = built_plan();
    if (!now || plan == nullptr || now->vented.vents.empty()) return;
    const auto count = static_cast<std::ptrdiff_t>(now->vented.vents.size());
    const auto chosen = vent_tool_.chosen();
    const std::ptrdiff_t next = chosen     ? static_cast<std::ptrdiff_t>(*chosen) + step
                                : step > 0 ? 0
                                           : count - 1;
    if (next < 0 || next >= count) return;
    const auto& vent = now->vented.vents[static_cast<std::size_t>(next)];
    selection_.choose_vent(vent_in_drawer(document_.job(), *plan, vent.at));
    const auto units = document_.job().display_units;
    const auto mm = [&](double value) { return language::figures(plan::say_length(value, units)); };
    say((vent.why == air::VentFor::kept ? tr("V%1 at %2, %3, locked") : tr("V%1 at %2, %3"))
            .arg(static_cast<int>(next) + 1)
            .arg(mm(vent.at.x), mm(vent.at.y)));
}

void SheetCanvas::nudge(shape::Vec by) {
    if (venting())
        if (auto nudged = vent_tool_.nudged(by)) {
            const auto key = QStringLiteral("nudge vent %1").arg(nudged->kept);
            document_.commit(tr("Move vent"), std::move(nudged->job), {key});
            return selection_.choose_vent(nudged->at);
        }

    job::Subjects free;
    for (const auto& subject : selection_.pockets()) {
        const auto found = job::find_pocket(document_.job(), subject);
        if (found.pocket != nullptr && !found.pocket->locked) free.push_back(subject);
    }
    if (selection_.pockets().empty()) return pan({-by.x * key_pan_px, by.y * key_pan_px});
    if (free.empty()) return say(tr("Locked: unlock it to move it."));
    if (selection_.notch()) return nudge_notch(by);
    QString key = "nudge";
    for (const auto& subject : free) key += " " + QString::fromStdString(subject);
    nudged_ = free;
    nudged_for_.start();
    document_.commit(tr("Nudge"), job::moved(document_.job(), free, by), {key});
}

/// Along the edge, whichever way leads toward the arrow.
void SheetCanvas::nudge_notch(shape::Vec by) {
    const auto* plan = drawer_plan();
    const std::string subject = selection_.pockets().front();
    const auto* pocket = plan == nullptr ? nullptr : find_pocket(*plan, subject);
    if (pocket == nullptr) return;
    const auto gesture = NotchGesture::begin({document_.job(), subject, *selection_.notch(), {}}, *pocket);
    if (!gesture) return;
    constexpr double across = 0.2; // such an arrow points into the pocket or out of it
    const double toward = shape::dot(gesture->way(), by) / shape::length(by);
    if (std::abs(toward) < across) return say(tr("A notch slides along its pocket’s edge."));
    const double step = std::copysign(shape::length(by), toward);
    const QString key =
        QStringLiteral("slide %1 %2").arg(QString::fromStdString(subject)).arg(*selection_.notch());
    document_.commit(tr("Slide notch"), gesture->slid(step).job, {key});
}

void SheetCanvas::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && measuring_) return end_measuring();
    if (event->key() == Qt::Key_Escape) {
        if (venting()) {
            if (!vent_tool_.cancel()) selection_.choose_vent(std::nullopt);
            return redraw_live();
        }
        if (!tool_.cancel()) selection_.choose_pockets({});
        return redraw_live();
    }
    if (event->key() == Qt::Key_Control || event->key() == Qt::Key_Shift) {
        auto now = keys(event->modifiers());
        now.no_snap = now.no_snap || event->key() == Qt::Key_Control;
        return tool_.keys_changed(now);
    }
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        space_held_ = true;
        setCursor(Qt::OpenHandCursor);
        return;
    }
    if (tool_.busy() || vent_tool_.busy()) return;
    if (turning() && event->modifiers() == Qt::NoModifier && turn_key(event->key())) return;
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
        if (!panning_from_) measuring_ ? setCursor(Qt::CrossCursor) : unsetCursor();
        return;
    }
    if (event->key() == Qt::Key_Control) {
        auto now = keys(event->modifiers());
        now.no_snap = false; // X11 still counts the key let go of
        return tool_.keys_changed(now);
    }
    QWidget::keyReleaseEvent(event);
}

void SheetCanvas::focusInEvent(QFocusEvent* event) {
    update_frame();
    QWidget::focusInEvent(event);
}

void SheetCanvas::focusOutEvent(QFocusEvent* event) {
    vent_tool_.cancel();
    tool_.cancel(); // whoever looks away in mid-drag finds everything as it was
    panning_from_.reset();
    turning_from_.reset();
    space_held_ = false;
    measuring_ ? setCursor(Qt::CrossCursor) : unsetCursor();
    update_frame();
    redraw_live();
    QWidget::focusOutEvent(event);
}

} // namespace drawercast::app
