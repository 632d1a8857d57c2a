// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/disk_watch.h"

#include "job/store.h"

#include "document/document.h"
#include "window/asking.h"

#include <QApplication>
#include <QFileInfo>

namespace drawercast::app {

namespace {

constexpr int settled_ms = 300; ///< whoever writes is done by then

} // namespace

DiskWatch::Stamp DiskWatch::stamp_of(const QString& path) {
    const QFileInfo file(path);
    return {path, file.lastModified(), file.exists() ? file.size() : -1};
}

DiskWatch::DiskWatch(const Desk& desk, QObject* parent) : QObject(parent), desk_(desk) {
    soon_.setSingleShot(true);
    soon_.setInterval(settled_ms);
    connect(&soon_, &QTimer::timeout, this, &DiskWatch::look);
    connect(&watcher_, &QFileSystemWatcher::fileChanged, &soon_, qOverload<>(&QTimer::start));
    connect(&desk_.document, &Document::state_changed, this, &DiskWatch::follow);
    connect(&desk_.document, &Document::written, this, [this] { ours_ = stamp_of(desk_.document.path()); });
    follow();
}

/// A file that was replaced by another of its name is not watched any more, so it is asked for anew.
void DiskWatch::follow() {
    const QString path = desk_.document.path();
    const auto watched = watcher_.files();
    if (watched.contains(path)) return;
    if (!watched.isEmpty()) watcher_.removePaths(watched);
    if (!path.isEmpty()) watcher_.addPath(path);
}

void DiskWatch::look() {
    // Not under a dialog or a hand that is at work on the job there is.
    if (QApplication::activeModalWidget() != nullptr || desk_.document.previewing()) return soon_.start();
    follow();
    auto& document = desk_.document;
    const QString path = document.path();
    if (path.isEmpty() || stamp_of(path) == ours_) return;
    const QString name = QFileInfo(path).fileName();
    if (!QFileInfo::exists(path)) {
        document.lost_on_disk();
        return emit said(tr("“%1” is no longer on disk; saving writes it again.").arg(name));
    }
    const auto there = job::load_job(path.toStdString());
    if (!there)
        return emit said(
            tr("“%1” was changed by another program and can’t be read now; the job here is whole.")
                .arg(name));
    if (document.saved_as(*there) || *there == document.job()) return;
    const QString question = document.unsaved()
                                 ? tr("“%1” was changed by another program. Open that version? The changes "
                                      "made here since the last save would be lost.")
                                 : tr("“%1” was changed by another program. Open that version?");
    if (!desk_.asking.yes(tr("Changed on disk"), question.arg(name))) {
        ours_ = stamp_of(path); // not asked about again
        document.differs_on_disk(*there);
        return emit said(tr("Kept as it is here; saving replaces the version on disk."));
    }
    document.replace(*there, path, true);
    emit said(tr("The version on disk is open."));
}

} // namespace drawercast::app
