// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

namespace drawercast::app {

/// Shift+F10 opens the menu of what is chosen, as the menu key does, which not every keyboard has: Qt knows
/// the menu key alone. Installed as a filter of the application's events.
class MenuKey final : public QObject {
    Q_OBJECT
  public:
    using QObject::QObject;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace drawercast::app
