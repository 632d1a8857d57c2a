// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/desk.h"

#include <QDateTime>
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
    struct Stamp {
        QString path;
        QDateTime changed;
        qint64 bytes = -1;
        bool operator==(const Stamp&) const = default;
    };
    static Stamp stamp_of(const QString& path);

    Stamp ours_; ///< as the program itself left the file: not to be read again
    void follow();
    void look();

    Desk desk_;
    QFileSystemWatcher watcher_;
    QTimer soon_;
};

} // namespace drawercast::app
