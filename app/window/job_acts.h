// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include "document/autosave.h"
#include "window/desk.h"
#include "window/file_claim.h"

#include <QObject>

namespace drawercast::app {

class Actions;

/// Making, opening and saving jobs.
class JobActs final : public QObject {
    Q_OBJECT
  public:
    /// `claims_folder`: where windows tell each other which files they have open.
    JobActs(const Desk& desk, Autosave& autosave, Actions& actions, const QString& claims_folder,
            QObject* parent = nullptr);

    bool open(const QString& path); ///< asks about unsaved work first; false: the open job stays
    bool may_leave();               ///< asks about unsaved work; false: the maker stays
    void offer_leftovers();         ///< of earlier runs
    void open_demo(const QString& name = QStringLiteral("field-service"));
    void make_new();

  signals:
    void said(const QString& sentence);
    void quit_wanted();
    void made_new(); ///< a job with nothing in it but its drawer

  private:
    bool save();
    bool save_as();
    bool save_to(const QString& path);
    bool open_copy_of(const QString& path);
    void take_up(const Leftover& leftover);

    Desk desk_;
    Autosave& autosave_;
    FileClaim claim_;
};

} // namespace drawercast::app
