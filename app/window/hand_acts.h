// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/desk.h"
#include "window/placing.h"

#include <QObject>
#include <QTimer>

namespace drawercast::app {

class Actions;
class PlacementPane;

/// What the maker's hand does to chosen pockets beyond dragging: swap, replace, copies in rows, choosing by
/// list, places typed in. Each is one commit, so one step of undo.
class HandActs final : public QObject {
    Q_OBJECT
  public:
    HandActs(const Desk& desk, Actions& actions, PlacementPane& pane, QObject* parent = nullptr);

  signals:
    void said(const QString& sentence);

  private:
    void connect_pane();
    void commit(const QString& what, job::Job job);
    void swap();
    void replace();
    void copies();
    void choose_listed();
    void choose_alike();
    void show_placement();
    void work_out_feel();

    Desk desk_;
    PlacementPane& pane_;
    QTimer rested_; ///< since the last change: only then is the feel worked out
    QString feel_;  ///< of the chosen pocket
};

} // namespace drawercast::app
