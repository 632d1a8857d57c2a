// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/file_claim.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFileInfo>

namespace drawercast::app {

namespace {

/// The same for each way to write a path, links included; of a file that is not there yet by its folder.
QString one_path(const QString& path) {
    const QFileInfo file(path);
    const QString real = file.canonicalFilePath();
    if (!real.isEmpty()) return real;
    const QString folder = QFileInfo(file.absolutePath()).canonicalFilePath();
    return (folder.isEmpty() ? file.absolutePath() : folder) + '/' + file.fileName();
}

} // namespace

std::unique_ptr<QLockFile> FileClaim::lock_on(const QString& path) const {
    const auto name = QCryptographicHash::hash(one_path(path).toUtf8(), QCryptographicHash::Sha256).toHex();
    auto lock = std::make_unique<QLockFile>(folder_ + '/' + QString::fromLatin1(name.left(32)) +
                                            QStringLiteral(".open"));
    lock->setStaleLockTime(0); // only a program that is gone loses its claim, however long it takes
    return lock;
}

bool FileClaim::taken_by_another(const QString& path) const {
    if (lock_ && one_path(path) == path_) return false;
    if (!QDir().exists(folder_)) return false;
    const auto lock = lock_on(path);
    if (lock->tryLock(0)) return false; // free: let go of again as this goes
    return lock->error() == QLockFile::LockFailedError;
}

bool FileClaim::take(const QString& path) {
    const QString wanted = path.isEmpty() ? QString() : one_path(path);
    if (lock_ && wanted == path_) return true;
    lock_.reset();
    path_.clear();
    if (wanted.isEmpty()) return true;
    if (!QDir().mkpath(folder_)) return true; // nowhere to keep a claim: work goes on without
    auto lock = lock_on(path);
    if (!lock->tryLock(0)) return lock->error() != QLockFile::LockFailedError;
    lock_ = std::move(lock);
    path_ = wanted;
    return true;
}

} // namespace drawercast::app
