// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/pour_steps.h"

#include "window/desk.h"

#include <QObject>
#include <QPointer>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace drawercast::app {

class Actions;
class PourView;

/// What the menu of the pour day does: its forms, each taken as one step of undo, and the view of the pour,
/// each mark of which is saved at once.
class PourActs final : public QObject {
    Q_OBJECT
  public:
    PourActs(const Desk& desk, Actions& actions, QObject* parent = nullptr);

    PourView* view() const; ///< the one that is open; nullptr: none

  signals:
    void said(const QString& sentence);

  private:
    void connect_forms(Actions& actions);
    void depths_from_boards();

    void pour();
    void rehearse();
    std::optional<plan::DrawerPlan> pourable(); ///< the chosen drawer's plan; nothing, and told, where not
    bool begun(const std::string& drawer, const QString& what, std::string_view beginning);
    bool wants_a_new_run(const std::string& drawer) const;
    bool may_rehearse(const std::string& drawer) const;
    bool may_pour(const plan::DrawerPlan& drawer) const;
    bool has_a_file();
    void caution_once();
    void open_pour(const std::string& drawer);
    void open_rehearsal(const std::string& drawer);
    using StepsOf = std::vector<plan::PourStep> (*)(const job::Job&, const plan::DrawerPlan&);
    PourView* open_view(const std::string& drawer, StepsOf steps_of);
    void take_up_running(); ///< a pour that was going on when the job was last open
    QString keep(const QString& what, job::Job job);
    QString save_log();
    void keep_log(); ///< undo and redo of a mark reach the file like the mark itself
    void offer_times(const std::string& drawer);

    Desk desk_;
    Actions& actions_;
    QPointer<PourView> view_;
    std::vector<job::Mark> log_in_file_;
};

} // namespace drawercast::app
