// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/drop_target.h"

#include <QDropEvent>
#include <QMimeData>
#include <QTimer>
#include <QUrl>
#include <QWidget>

namespace drawercast::app {

namespace {

/// The one local file that is dragged; empty where it is none, or more than one.
QString file_of(const QMimeData& data) {
    const auto urls = data.urls();
    return urls.size() == 1 ? urls.front().toLocalFile() : QString();
}

} // namespace

DropTarget::DropTarget(QWidget* window) : QObject(window) {
    window->setAcceptDrops(true);
    window->installEventFilter(this);
}

bool DropTarget::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::DragEnter || event->type() == QEvent::Drop) {
        auto* drag = static_cast<QDropEvent*>(event); // a drag that enters is one, too
        const QString path = file_of(*drag->mimeData());
        if (path.isEmpty()) return QObject::eventFilter(watched, event);
        drag->acceptProposedAction();
        if (event->type() == QEvent::Drop) // questions are asked once the drag is over
            QTimer::singleShot(0, this, [this, path] { emit dropped(path); });
        return true;
    }
    return QObject::eventFilter(watched, event);
}

} // namespace drawercast::app
