// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "arrange/tidy.h"

#include "window/desk.h"
#include "window/ways_menu.h"

#include <QObject>

namespace drawercast::app {

class Actions;

/// Wishes for a layout that fits, in a menu that says what each would cost: pointing at one shows it,
/// choosing it does it as one step of undo, leaving the menu changes nothing.
class TidyActs final : public QObject {
    Q_OBJECT
  public:
    TidyActs(const Desk& desk, Actions& actions, QWidget* window);

    QMenu& menu() { return *menu_; } ///< of the wishes last offered

  signals:
    void said(const QString& sentence);

  private:
    void offer();
    QString words(const arrange::Tidied& tidied) const;

    Desk desk_;
    WaysMenu* menu_; ///< the window's
};

} // namespace drawercast::app
