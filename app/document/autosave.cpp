// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/autosave.h"

#include "job/read.h"
#include "job/store.h"
#include "job/write.h"

#include "document/beside.h"
#include "document/document.h"
#include "language/in_words.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QStandardPaths>
#include <QUuid>

namespace drawercast::app {

namespace {

constexpr std::size_t largest_file = 64U << 20U;
const QString ending = QStringLiteral(".unsaved");

/// First line: the path the job was opened from, then the job as it would be saved.
std::string kept_text(const std::string& job_text, const QString& path) {
    return path.toStdString() + "\n" + job_text;
}

QString hash_of(const std::string& text) {
    return QString::fromLatin1(
        QCryptographicHash::hash(QByteArray::fromStdString(text), QCryptographicHash::Sha256)
            .toHex()
            .left(16));
}

QString run_of(const QString& file_name) { return file_name.section('-', 0, 0); }

std::optional<Leftover> read_leftover(const QString& file) {
    const auto text = job::read_file(file.toStdString(), largest_file);
    if (!text) return std::nullopt;
    const auto line = text->find('\n');
    if (line == std::string::npos) return std::nullopt;
    auto read = job::read_job(std::string_view(*text).substr(line + 1));
    if (!read) return std::nullopt;
    return Leftover{file, QString::fromStdString(text->substr(0, line)), std::move(*read)};
}

} // namespace

Autosave::Autosave(const Document& document, const QString& folder, int delay_ms, QObject* parent)
    : QObject(parent), document_(document), folder_(folder),
      run_(QUuid::createUuid().toString(QUuid::Id128)) {
    worker_.setMaxThreadCount(1); // one after another: the last edit is the last one written
    timer_.setSingleShot(true);
    timer_.setInterval(delay_ms);
    connect(&timer_, &QTimer::timeout, this, &Autosave::write_now);
    connect(&document, &Document::committed, this, &Autosave::changed);
    connect(&document, &Document::state_changed, this, [this] {
        if (!document_.unsaved()) forget();
    });
    connect(&document, &Document::replaced, this, [this] {
        forget(); // whoever opens another job was asked about this one
        if (document_.unsaved()) changed();
    });
}

Autosave::~Autosave() { worker_.waitForDone(); }

QString Autosave::usual_folder() {
    return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) +
           QStringLiteral("/unsaved");
}

void Autosave::changed() {
    if (document_.unsaved()) timer_.start();
}

void Autosave::write_now() {
    timer_.stop();
    if (!document_.unsaved()) return;
    if (!lock_) {
        QDir().mkpath(folder_);
        lock_.emplace(folder_ + '/' + run_ + QStringLiteral(".lock"));
        lock_->setStaleLockTime(0); // only a program that ended makes it stale, not the time
        lock_->tryLock();
    }
    work_beside_window(worker_, *this, [this, job = document_.job(), path = document_.path()] {
        const std::string text = job::write_job(job);
        const QString file = folder_ + '/' + run_ + '-' + hash_of(text) + ending;
        const auto done = job::write_file(file.toStdString(), kept_text(text, path));
        const QString problem = done ? QString() : problem_line(done.error());
        QMetaObject::invokeMethod(
            this, [this, file, problem] { written(file, problem); }, Qt::QueuedConnection);
    });
}

void Autosave::wait() {
    worker_.waitForDone();
    QCoreApplication::sendPostedEvents(this);
}

void Autosave::written(const QString& file, const QString& problem) {
    if (!problem.isEmpty()) {
        if (!trouble_) emit failed(problem);
        trouble_ = true;
        return;
    }
    trouble_ = false;
    if (!kept_.isEmpty() && kept_ != file) QFile::remove(kept_);
    kept_ = file;
    if (!document_.unsaved()) forget(); // saved while the worker wrote
}

void Autosave::forget() {
    timer_.stop();
    wait();
    if (!kept_.isEmpty()) QFile::remove(kept_);
    kept_.clear();
}

std::vector<Leftover> Autosave::leftovers() const {
    std::vector<Leftover> found;
    const QDir folder(folder_);
    for (const auto& name : folder.entryList({'*' + ending}, QDir::Files, QDir::Time)) {
        const QString run = run_of(name);
        if (run == run_) continue;
        QLockFile lock(folder.filePath(run + QStringLiteral(".lock")));
        lock.setStaleLockTime(0);
        if (!lock.tryLock(0)) continue; // another program is at work on it
        if (auto leftover = read_leftover(folder.filePath(name))) found.push_back(std::move(*leftover));
    }
    return found;
}

void Autosave::drop(const Leftover& leftover) { QFile::remove(leftover.file); }

} // namespace drawercast::app
