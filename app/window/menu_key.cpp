// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/menu_key.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QWidget>

namespace drawercast::app {

bool MenuKey::eventFilter(QObject* watched, QEvent* event) {
    auto* widget = QApplication::focusWidget();
    if (event->type() != QEvent::KeyPress || widget == nullptr || watched != widget) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() != Qt::Key_F10 || key->modifiers() != Qt::ShiftModifier) return false;
    const QPoint at = widget->inputMethodQuery(Qt::ImCursorRectangle).toRect().center();
    QContextMenuEvent menu(QContextMenuEvent::Keyboard, at, widget->mapToGlobal(at));
    QApplication::sendEvent(widget, &menu);
    return true;
}

} // namespace drawercast::app
