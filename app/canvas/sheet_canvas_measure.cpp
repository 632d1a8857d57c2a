// SPDX-License-Identifier: GPL-3.0-or-later
// The canvas while distances are taken on it, and the menus it asks for.
#include "canvas/hit.h"
#include "canvas/sheet_canvas.h"
#include "document/selection.h"

#include <QContextMenuEvent>

namespace drawercast::app {

void SheetCanvas::set_measuring(bool on) {
    on = on && arranging();
    if (on == measuring_) return;
    tool_.cancel();
    ruler_.cancel();
    measuring_ = on;
    hovered_.clear();
    on ? setCursor(Qt::CrossCursor) : unsetCursor();
    if (on)
        say(tr("Drag from one corner or edge to another. Shift keeps it level, Ctrl lets go of edges, Esc "
               "ends."));
    redraw_live();
    emit measuring_changed(on);
}

/// Escape takes the line away first, then ends the measuring.
void SheetCanvas::end_measuring() {
    if (!ruler_.cancel()) return set_measuring(false);
    redraw_live();
}

/// A right press gives up a drag; else it opens the menu of what is under it.
void SheetCanvas::right_press(const QMouseEvent& event) {
    if (tool_.cancel()) return;
    const QPoint global = event.globalPosition().toPoint();
    if (vent_tool_.cancel()) return redraw_live();
    pointer_mm_ = view_.to_mm(event.position());
    if (venting() && air()) {
        vent_tool_.press(event.position()); // chooses; nothing is to hang on the pointer
        vent_tool_.cancel();
        redraw_live();
        return emit context_menu_wanted(global, About::vent);
    }
    if (!arranging()) return emit context_menu_wanted(global, About::sheet);
    if (const auto* check = check_at(event.position())) {
        selection_.choose_check(layout::Check(*check));
        return emit context_menu_wanted(global, About::check);
    }
    const std::string subject = tool_.hovered(event.position());
    if (!subject.empty() && !selection_.holds(subject)) selection_.choose_pockets({subject});
    emit context_menu_wanted(global, subject.empty() ? About::sheet : About::pocket);
}

/// By the menu key, at what is chosen; the mouse has had its menu already.
void SheetCanvas::contextMenuEvent(QContextMenuEvent* event) {
    event->accept();
    if (event->reason() != QContextMenuEvent::Keyboard) return;
    if (venting() && air()) {
        const auto vent = vent_chosen();
        const QPointF at = vent ? view_.to_px(air()->vented.vents[*vent].at) : QPointF(rect().center());
        return emit context_menu_wanted(mapToGlobal(at.toPoint()), About::vent);
    }
    const auto* plan = arranging() ? drawer_plan() : nullptr;
    const auto box = plan == nullptr ? shape::Box{} : box_of(*plan, selection_.pockets());
    const QPoint at = box.empty() ? rect().center() : view_.to_px(box.center()).toPoint();
    emit context_menu_wanted(mapToGlobal(at), box.empty() ? About::sheet : About::pocket);
}

} // namespace drawercast::app
