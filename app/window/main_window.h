// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/open_job.h"
#include "document/preferences.h"
#include "theme/palette.h"
#include "window/actions.h"
#include "window/desk.h"
#include "window/menus.h"

#include <QMainWindow>

#include <memory>

class QLabel;
class QStackedWidget;

namespace drawercast::app {

class Asking;
class FormActs;
class GuideActs;
class JobActs;
class LeftPane;
class PaneFrame;
class PlaceActs;
class PlacementPane;
class RightPane;
class SheetArea;

/// The window: it owns the open job and what is chosen, puts panes and sheets together, and tells the actions
/// what there is to act on. What they do is told by the Acts, a class for each menu or task.
class MainWindow final : public QMainWindow {
    Q_OBJECT
  public:
    /// `asking` null: by dialogs. `unsaved_folder`: where unsaved work is kept.
    MainWindow(Preferences& preferences, const QString& unsaved_folder, Asking* asking = nullptr);
    /// Around the job another window has handed over.
    MainWindow(Preferences& preferences, std::unique_ptr<OpenJob> taken, const QString& unsaved_folder,
               Asking* asking = nullptr);
    ~MainWindow() override;

    /// Keeps how the window stands and lets go of the job, for the window made next: all this one is good for
    /// after it is to be deleted.
    std::unique_ptr<OpenJob> hand_over();

    Document& document() { return document_; }
    Selection& selection() { return selection_; }
    Actions& actions() { return actions_; }
    SheetArea& sheets() { return *sheets_; }
    JobActs& job_acts() { return *job_acts_; }

    void set_theme(const theme::Theme& theme);

  protected:
    void closeEvent(QCloseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    /// Its parts, told of nothing yet.
    MainWindow(std::unique_ptr<OpenJob> open, Preferences& preferences, const QString& unsaved_folder,
               Asking* asking);
    void assemble();
    void connect_acts();
    void connect_canvas();
    void connect_panes();
    void connect_view();
    void connect_units_and_looks();
    void connect_help();
    void after_change();
    void after_replacement();
    void tell_of_job();
    void drop_what_is_gone();
    void show_middle(int page);
    void refresh_actions();
    void refresh_title();
    void refresh_recent();
    void go_to(const layout::Check& check);
    void tell_building(double done);
    void say(const QString& sentence);
    void say_hint();
    void restore_state();
    void keep_state();

    Preferences& preferences_;
    std::unique_ptr<OpenJob> open_; ///< null once handed over
    Document& document_;
    Selection& selection_;
    Autosave& autosave_;
    QString claims_folder_;
    Actions actions_;
    std::unique_ptr<Asking> dialogs_;
    Desk desk_;
    Menus menus_;
    JobActs* job_acts_ = nullptr;
    PlaceActs* place_acts_ = nullptr;
    FormActs* form_acts_ = nullptr;
    GuideActs* guide_acts_ = nullptr;
    QStackedWidget* middle_ = nullptr;
    SheetArea* sheets_ = nullptr;
    LeftPane* left_ = nullptr;
    PlacementPane* placement_ = nullptr;
    RightPane* right_ = nullptr;
    PaneFrame* panes_ = nullptr;
    QLabel* sentence_ = nullptr;
    bool hinting_ = false; ///< the sentence is the hint, and follows sheet and job
    QLabel* building_ = nullptr;
    QLabel* coordinates_ = nullptr;
};

} // namespace drawercast::app
