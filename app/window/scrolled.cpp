// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/scrolled.h"

#include <QScrollArea>

namespace drawercast::app {

QScrollArea* scrolled(QWidget* pane) {
    auto* area = new QScrollArea;
    area->setWidget(pane);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    return area;
}

} // namespace drawercast::app
