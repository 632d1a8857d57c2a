// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/document.h"

#include "job/store.h"

#include "document/job_edit.h"

#include <QFileInfo>

#include <utility>

namespace drawercast::app {

namespace {

/// What was done and ticked changes no answer: nothing that is worked out reads the log.
bool answered_alike(const job::Job& one, job::Job other) {
    other.log = one.log;
    return one == other;
}

/// A path that holds wherever the program's folder is next time: it is kept with unsaved work.
QString whole_path(const QString& path) { return path.isEmpty() ? path : QFileInfo(path).absoluteFilePath(); }

} // namespace

Document::Document(QObject* parent) : QObject(parent) {
    connect(&building_, &Building::built, this, &Document::take_built);
    show();
}

void Document::show() {
    plan_ = !preview_ && built_is_current_ ? *built_ : planner_.fast(shown());
    emit shown_changed();
}

void Document::take_built(const plan::Plan& plan) {
    built_ = plan;
    built_job_ = job_;
    ++built_number_;
    built_is_current_ = true;
    if (!preview_) show();
}

void Document::preview(std::optional<job::Job> job) {
    if (!job && !preview_) return;
    preview_ = std::move(job);
    show();
}

void Document::set_committed(job::Job job) {
    preview_.reset();
    const bool alike = answered_alike(job, job_);
    built_is_current_ = built_is_current_ && alike;
    job_ = std::move(job);
    if (built_is_current_) {
        built_job_ = job_;
        ++built_number_;
    }
    show();
    const bool on_its_way = alike && building_.busy(); // a mark while it is worked out does not begin it anew
    if (!built_is_current_ && !on_its_way) building_.ask(job_, plan_);
    emit committed();
    emit state_changed();
}

void Document::commit(const QString& what, job::Job job, const Merge& merge) {
    if (job == job_) {
        preview(std::nullopt);
        return;
    }
    undo_.push(
        new JobEdit(*this, what, job_, std::move(job), merge.key)); // the stack owns it, and calls redo()
}

void Document::replace(job::Job job, const QString& path, bool saved) {
    preview_.reset();
    path_ = whole_path(path);
    saved_job_ = saved ? job : job::Job{};
    job_ = std::move(job);
    undo_.clear();
    built_.reset();
    ++built_number_;
    built_is_current_ = false;
    show();
    building_.ask(job_, plan_);
    emit replaced();
    emit state_changed();
}

Problems Document::open(const QString& path) {
    auto read = job::load_job(path.toStdString());
    if (!read) return read.error();
    replace(std::move(*read), path, true);
    return {};
}

std::optional<Problem> Document::save(const QString& path) {
    auto saved = job::save_job(job_, path.toStdString());
    if (!saved) return saved.error();
    path_ = whole_path(path);
    saved_job_ = job_;
    emit written();
    emit state_changed();
    return saved->backup_problem;
}

std::optional<Problem> Document::save_log() {
    const auto there = job::save_log(job_.log, path_.toStdString());
    if (!there) return there.error();
    saved_job_.log = job_.log;
    if (*there == saved_job_)
        emit written(); // else another program wrote it too, and that is still to be told
    emit state_changed();
    return std::nullopt;
}

void Document::differs_on_disk(job::Job there) {
    if (there == saved_job_) return;
    saved_job_ = std::move(there);
    emit committed(); // to be kept aside
    emit state_changed();
}

void Document::tell() {
    emit state_changed();
    emit shown_changed();
}

QString Document::display_name() const {
    if (!job_.title.empty()) return QString::fromStdString(job_.title);
    if (!path_.isEmpty()) {
        const QString name = QFileInfo(path_).fileName();
        const QString ending = QStringLiteral(".drawercast.json");
        return name.size() > ending.size() && name.endsWith(ending) ? name.chopped(ending.size()) : name;
    }
    return tr("Untitled job");
}

} // namespace drawercast::app
