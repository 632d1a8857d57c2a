// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <QLockFile>
#include <QObject>
#include <QString>
#include <QThreadPool>
#include <QTimer>

#include <optional>
#include <vector>

namespace drawercast::app {

class Document;

/// Work that was not saved when a program ended: what it was, and where it came from.
struct Leftover {
    QString file;          ///< where it is kept
    QString original_path; ///< empty: it never had a name
    job::Job job;
};

/// Keeps unsaved work of a document, untitled work too, as a file in a folder of its own. Written on a worker
/// thread some time after an edit, under a name made of this program run and the job's content; taken away
/// once the work is saved, or dropped by the maker. Previews are never written.
class Autosave : public QObject {
    Q_OBJECT
  public:
    /// `folder` is made when first needed. The document must outlive this.
    Autosave(const Document& document, const QString& folder, int delay_ms = 1500, QObject* parent = nullptr);
    ~Autosave() override; ///< waits for the worker; what is kept stays unless the work is saved

    void write_now(); ///< starts the worker at once
    void wait();      ///< until it is done
    void forget();    ///< the maker saved or refused the work: takes the file away
    QString file() const { return kept_; }

    /// What earlier runs left, newest first. Those of programs still running are not leftovers; files that
    /// can't be read any more are left where they are and not offered.
    std::vector<Leftover> leftovers() const;
    /// The maker has saved or refused it.
    static void drop(const Leftover& leftover);

    /// The user's own folder for it.
    static QString usual_folder();

  signals:
    void failed(const QString& why); ///< could not be written; said once until it works again

  private:
    void changed();
    void written(const QString& file, const QString& problem);

    const Document& document_;
    QString folder_;
    QString run_; ///< unique to this program run
    std::optional<QLockFile> lock_;
    QTimer timer_;
    QThreadPool worker_;
    QString kept_;
    bool trouble_ = false;
};

} // namespace drawercast::app
