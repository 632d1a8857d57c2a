// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <QElapsedTimer>
#include <QString>
#include <QUndoCommand>

namespace drawercast::app {

class Document;

/// The one undo command: the job before and the job after, by value (parts are shared, so steps stay small).
class JobEdit final : public QUndoCommand {
  public:
    JobEdit(Document& document, const QString& what, job::Job before, job::Job after, QString merge_key);

    void undo() override;
    void redo() override;
    int id() const override;
    bool mergeWith(const QUndoCommand* next) override;

  private:
    Document& document_;
    job::Job before_;
    job::Job after_;
    QString merge_key_;
    QElapsedTimer age_; ///< since the last act in this step
};

} // namespace drawercast::app
