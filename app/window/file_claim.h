// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLockFile>
#include <QString>

#include <memory>

namespace drawercast::app {

/// Which job file a window has open, so that a second window of this user on this machine notices. Kept as a
/// lock in a folder of the user's own, named by the file: nothing is left beside the job, and what a window
/// that crashed had claimed is free again. Two machines on one shared folder do not see each other's claims.
class FileClaim {
  public:
    explicit FileClaim(const QString& folder) : folder_(folder) {} ///< made when first needed

    /// Whether another window that still runs has the file.
    bool taken_by_another(const QString& path) const;
    /// Takes the file, and lets go of the one before; an empty path lets go alone. False where another has
    /// it.
    bool take(const QString& path);

  private:
    std::unique_ptr<QLockFile> lock_on(const QString& path) const;

    QString folder_;
    QString path_;
    std::unique_ptr<QLockFile> lock_;
};

} // namespace drawercast::app
