// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/arranging.h"
#include "window/desk.h"

#include <QObject>
#include <QPointer>

namespace drawercast::app {

class Actions;
class ArrangeDialog;

/// Arranging for the maker: into the shown drawer, or over all of them. The sheet shows the best so far; what
/// is kept is one step of undo.
class ArrangeActs final : public QObject {
    Q_OBJECT
  public:
    ArrangeActs(const Desk& desk, Actions& actions, QWidget* window);

    ArrangeDialog* dialog() const; ///< null: nothing is arranged now

  signals:
    void said(const QString& sentence);

  private:
    using Answered = std::function<void(const arrange::Arranged& found)>;
    void arrange(Arranging::Task task, const QString& need, Answered answered);
    Answered keep(const QString& what, const QString& need); ///< said where something found no room
    void in_drawer(const QString& what, arrange::Moving moving);
    void over_drawers();
    void which_drawer();

    Desk desk_;
    QWidget* window_;
    QPointer<ArrangeDialog> dialog_;
};

} // namespace drawercast::app
