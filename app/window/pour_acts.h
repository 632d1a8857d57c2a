// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/desk.h"

#include <QObject>

namespace drawercast::job {
struct Job;
}

namespace drawercast::app {

class Actions;

/// What the menu of the pour day does: its forms, each taken as one step of undo, and its views.
class PourActs final : public QObject {
    Q_OBJECT
  public:
    PourActs(const Desk& desk, Actions& actions, QObject* parent = nullptr);

  signals:
    void said(const QString& sentence);

  private:
    void connect_forms(Actions& actions);
    void depths_from_boards();
    void commit(const QString& what, job::Job job);

    Desk desk_;
};

} // namespace drawercast::app
