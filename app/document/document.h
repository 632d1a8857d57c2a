// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/job.h"
#include "plan/plan.h"
#include "plan/planner.h"

#include "document/building.h"

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <optional>
#include <utility>

namespace drawercast::app {

/// The open job: the committed value, what is being tried (a preview during a drag), the plan of what is
/// shown, undo, and where it is kept. Every change passes through commit(), so one act of the maker is one
/// step of undo.
class Document : public QObject {
    Q_OBJECT
  public:
    explicit Document(QObject* parent = nullptr);

    const job::Job& job() const { return job_; }                          ///< committed
    const job::Job& shown() const { return preview_ ? *preview_ : job_; } ///< with the preview, if any
    /// Of what is shown. What takes longer to work out is in it once that is done for the committed job, and
    /// while nothing is being tried.
    const plan::Plan& plan() const { return plan_; }
    /// The last answer with its long parts, be it of an older job; nothing before the first one is there.
    const std::optional<plan::Plan>& last_built() const { return built_; }
    const job::Job& last_built_job() const { return built_job_; } ///< the one last_built() is of
    /// Another number whenever last_built() or its job is another value, so that nobody need compare them.
    int built_number() const { return built_number_; }
    /// Whether last_built() is of what is shown.
    bool built_is_current() const { return built_is_current_ && !preview_; }
    Building& building() { return building_; }
    const Building& building() const { return building_; }
    bool previewing() const { return preview_.has_value(); }

    /// Shows another job without committing it; nothing drops the preview. Autosave and undo never see
    /// previews.
    void preview(std::optional<job::Job> job);

    /// How a commit joins the one before it: nudges of the same pockets within a second become one step.
    struct Merge {
        QString key; ///< empty: never joined
    };
    /// Makes `job` the committed one and drops the preview. A job equal to the committed one leaves no step
    /// behind.
    void commit(const QString& what, job::Job job, const Merge& merge = {});

    /// Answers with this planner from now on: one that knows much of the job that comes. Answers stay the
    /// same.
    void plan_with(plan::Planner planner) { planner_ = std::move(planner); }

    /// Another job altogether: undo is emptied. `path` empty: untitled. `saved`: equal to what is on disk.
    void replace(job::Job job, const QString& path, bool saved);

    /// Reads a job and shows it; on failure the open job stays as it is and the problems are returned.
    Problems open(const QString& path);
    /// Saves to `path` (the transaction of job/store.h). The backup's trouble, if any, comes back as a
    /// Problem of code "backup"; any other means nothing was written.
    std::optional<Problem> save(const QString& path);

    /// Saves the log alone to path(), which must be there: what else was edited stays unsaved.
    std::optional<Problem> save_log();

    QUndoStack& undo_stack() { return undo_; }
    const QUndoStack& undo_stack() const { return undo_; }
    const QString& path() const { return path_; }
    bool unsaved() const {
        return !(job_ == saved_job_);
    } ///< by content, so undoing back to the saved job is clean
    /// Whether `job` is what was last opened or saved.
    bool saved_as(const job::Job& job) const { return job == saved_job_; }
    /// The file holds another job now, which the maker chose not to open: what is here is not saved.
    void differs_on_disk(job::Job there);
    void lost_on_disk() { differs_on_disk({}); } ///< there is no file any more
    void tell();                  ///< says what is shown and its state anew, for those who came after the job
    QString display_name() const; ///< job title, else file name, else "Untitled job"

  signals:
    void shown_changed(); ///< shown() or plan() is another value
    void committed();     ///< job() is another value (autosave listens)
    void replaced();      ///< another job was opened or made
    void written();       ///< the committed job was, or its log, to path()
    void state_changed(); ///< path, unsaved or title

  private:
    friend class JobEdit;
    void set_committed(job::Job job);
    void show();
    void take_built(const plan::Plan& plan);

    job::Job job_;
    std::optional<job::Job> preview_;
    job::Job saved_job_;
    plan::Planner planner_;
    plan::Plan plan_;
    std::optional<plan::Plan> built_;
    job::Job built_job_;
    int built_number_ = 0;
    bool built_is_current_ = false; ///< of the committed job
    Building building_;
    QUndoStack undo_;
    QString path_;
};

} // namespace drawercast::app
