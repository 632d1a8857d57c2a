// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <QMenu>

namespace drawercast::app {

class Document;

/// Ways to change the job, each ready: pointing at one shows it, choosing it does it as one step of undo,
/// leaving the menu changes nothing.
class WaysMenu final : public QMenu {
    Q_OBJECT
  public:
    /// `step`: what undo calls it.
    WaysMenu(Document& document, const QString& step, QWidget* parent);

    void add(const QString& words, const job::Job& job);

  signals:
    void said(const QString& sentence); ///< of the way that was chosen

  private:
    Document& document_;
    QString step_;
};

} // namespace drawercast::app
