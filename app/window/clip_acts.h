// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "window/desk.h"

#include <QObject>

#include <optional>

class QMimeData;

namespace drawercast::app {

class Actions;

/// Cut, copy and paste of pockets and objects, within a job and between jobs: what goes on the clipboard is a
/// job file's text, so that it can be looked at, mailed, and read by another program run.
class ClipActs final : public QObject {
    Q_OBJECT
  public:
    ClipActs(const Desk& desk, Actions& actions, QObject* parent = nullptr);

    static constexpr const char* mime_type = "application/x-drawercast-job+json";

  signals:
    void said(const QString& sentence);

  private:
    bool copy();
    void cut();
    void paste();
    void paste_part(const job::Job& part);

    Desk desk_;
    Actions& actions_;
};

/// The part of a job that lies on a clipboard, under our type or as plain text; nothing where it is no job.
std::optional<job::Job> part_on_clipboard(const QMimeData& data);

} // namespace drawercast::app
