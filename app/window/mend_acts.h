// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/mends.h"

#include "window/desk.h"
#include "window/ways_menu.h"

#include <QObject>

class QWidget;

namespace drawercast::app {

class Actions;

/// Ways to put the chosen check right, in a menu: pointing at one shows what it would do, choosing it does it
/// as one step of undo, leaving the menu changes nothing.
class MendActs final : public QObject {
    Q_OBJECT
  public:
    MendActs(const Desk& desk, Actions& actions, QWidget* window);

    QMenu& menu() { return *menu_; } ///< of the ways last offered

  signals:
    void said(const QString& sentence);

  private:
    void offer();
    QString words(const plan::Mend& mend) const;

    Desk desk_;
    WaysMenu* menu_; ///< the window's
};

} // namespace drawercast::app
