// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/desk.h"

#include <QFileSystemWatcher>
#include <QObject>
#include <QTimer>

namespace drawercast::app {

/// Notices that the open job's file is changed or taken away by something else, and asks what to do. A save
/// of ours says nothing, since the file then holds the job.
class DiskWatch final : public QObject {
    Q_OBJECT
  public:
    explicit DiskWatch(const Desk& desk, QObject* parent = nullptr);

  signals:
    void said(const QString& sentence);

  private:
    void follow();
    void look();

    Desk desk_;
    QFileSystemWatcher watcher_;
    QTimer soon_;
};

} // namespace drawercast::app
