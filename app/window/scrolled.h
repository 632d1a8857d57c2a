// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QScrollArea;
class QWidget;

namespace drawercast::app {

/// `pane` in an area that scrolls where it is higher than its room, without a frame of its own.
QScrollArea* scrolled(QWidget* pane);

} // namespace drawercast::app
