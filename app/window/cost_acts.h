// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/desk.h"

#include <QObject>

namespace drawercast::app {

class Actions;
class JobActs;

/// What the job costs, and about what before there is one.
class CostActs final : public QObject {
    Q_OBJECT
  public:
    CostActs(const Desk& desk, JobActs& jobs, Actions& actions, QObject* parent = nullptr);

  signals:
    void said(const QString& sentence);

  private:
    void show_cost();
    void quote_quickly();

    Desk desk_;
    JobActs& jobs_;
};

} // namespace drawercast::app
