// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/job_edit.h"

#include "document/document.h"

#include <utility>

namespace drawercast::app {

namespace {
constexpr int mergeable = 1;
constexpr qint64 merge_within_ms = 1000;
} // namespace

JobEdit::JobEdit(Document& document, const QString& what, job::Job before, job::Job after, QString merge_key)
    : QUndoCommand(what), document_(document), before_(std::move(before)), after_(std::move(after)),
      merge_key_(std::move(merge_key)) {
    age_.start();
}

void JobEdit::undo() { document_.set_committed(before_); }
void JobEdit::redo() { document_.set_committed(after_); }

int JobEdit::id() const { return merge_key_.isEmpty() ? -1 : mergeable; }

bool JobEdit::mergeWith(const QUndoCommand* next) {
    const auto* edit = static_cast<const JobEdit*>(next); // same id(): a JobEdit
    if (edit->merge_key_ != merge_key_ || age_.elapsed() > merge_within_ms) return false;
    after_ = edit->after_;
    age_.restart();
    setObsolete(after_ == before_); // there and back again is no step
    return true;
}

} // namespace drawercast::app
