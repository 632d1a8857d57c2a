// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "window/desk.h"

#include <QObject>

#include <vector>

class QMenu;
class QWidget;

namespace drawercast::app {

class Actions;
class SheetCanvas;

/// What menu and keys do to vents, beside what the hand does on the sheet: each act is one step of undo, and
/// the vents that nobody set find their places anew.
class VentActs final : public QObject {
    Q_OBJECT
  public:
    VentActs(const Desk& desk, Actions& actions, SheetCanvas& canvas, QWidget* window);

  signals:
    void said(const QString& sentence);

  private:
    void add();
    bool remove();
    bool lock(bool on);
    void offer_drills();
    void drill(double diameter_mm);
    void place_rest(bool on);
    shape::Vec place_for_another() const; ///< mold mm
    /// The vents of the maker's, and with `all` those of the program too, without one of them.
    std::vector<job::KeptVent> vents(bool all, std::optional<std::size_t> without) const;
    void commit(const QString& what, job::Job job);

    Desk desk_;
    SheetCanvas& canvas_;
    QMenu* drills_; ///< the window's
};

} // namespace drawercast::app
