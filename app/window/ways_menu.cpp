// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/ways_menu.h"

#include "document/document.h"

#include <QCursor>
#include <QGuiApplication>
#include <QScreen>

namespace drawercast::app {

WaysMenu::WaysMenu(Document& document, const QString& step, QWidget* parent)
    : QMenu(parent), document_(document), step_(step) {
    setToolTipsVisible(true);
    connect(this, &QMenu::aboutToHide, this, [this] { document_.preview(std::nullopt); });
}

void WaysMenu::add(const QString& words, const job::Job& job) {
    const auto* screen = QGuiApplication::screenAt(QCursor::pos());
    const int room = screen != nullptr ? screen->availableSize().width() * 4 / 5 : 800;
    auto* way = addAction(fontMetrics().elidedText(words, Qt::ElideRight, room));
    way->setToolTip(words); // whole where the screen is narrow
    connect(way, &QAction::hovered, this, [this, job] { document_.preview(job); });
    connect(way, &QAction::triggered, this, [this, job, words] {
        document_.commit(step_, job);
        emit said(tr("Done: %1.").arg(words));
    });
}

} // namespace drawercast::app
