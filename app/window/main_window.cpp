// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/main_window.h"

#include "job/edit.h"

#include "canvas/hit.h"
#include "language/say.h"
#include "panes/checks_pane.h"
#include "panes/left_pane.h"
#include "panes/rail.h"
#include "window/arrange_acts.h"
#include "window/asking.h"
#include "window/clip_acts.h"
#include "window/cost_acts.h"
#include "window/disk_watch.h"
#include "window/drop_target.h"
#include "window/form_acts.h"
#include "window/guide_acts.h"
#include "window/hand_acts.h"
#include "window/job_acts.h"
#include "window/mend_acts.h"
#include "window/pane_frame.h"
#include "window/photo_acts.h"
#include "window/place_acts.h"
#include "window/placement_pane.h"
#include "window/pour_acts.h"
#include "window/print_acts.h"
#include "window/right_pane.h"
#include "window/scrolled.h"
#include "window/sheet_area.h"
#include "window/situation.h"
#include "window/tidy_acts.h"
#include "window/vent_acts.h"
#include "window/welcome.h"

#include <QAbstractButton>
#include <QCloseEvent>
#include <QFileInfo>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QScreen>
#include <QScrollArea>
#include <QStackedWidget>
#include <QStatusBar>
#include <QToolBar>

namespace drawercast::app {

namespace {
constexpr int sheets_page = 0, welcome_page = 1; ///< of the middle
}

MainWindow::MainWindow(Preferences& preferences, const QString& unsaved_folder, Asking* asking)
    : MainWindow(std::make_unique<OpenJob>(unsaved_folder), preferences, unsaved_folder, asking) {
    after_replacement();
}

MainWindow::MainWindow(Preferences& preferences, std::unique_ptr<OpenJob> taken,
                       const QString& unsaved_folder, Asking* asking)
    : MainWindow(std::move(taken), preferences, unsaved_folder, asking) {
    tell_of_job();
}

MainWindow::MainWindow(std::unique_ptr<OpenJob> open, Preferences& preferences, const QString& unsaved_folder,
                       Asking* asking)
    : preferences_(preferences), open_(std::move(open)), document_(open_->document),
      selection_(open_->selection), autosave_(open_->autosave),
      claims_folder_(unsaved_folder + QStringLiteral("/open")),
      dialogs_(asking == nullptr ? std::make_unique<Dialogs>(this) : nullptr),
      desk_{document_, selection_, preferences_, asking == nullptr ? *dialogs_ : *asking} {
    assemble();
    connect_acts();
    connect_canvas();
    connect_panes();
    connect_view();
    connect_units_and_looks();
    connect_help();
    for (auto* action : actions_.all())
        addAction(action); // keys work in full screen and without a menu bar, too
    restore_state();
}

/// Panes and sheets go before the job they show; the job's last signals find nobody.
MainWindow::~MainWindow() {
    if (open_) {
        document_.disconnect();
        document_.undo_stack().disconnect();
        selection_.disconnect();
    }
    preferences_.disconnect(this);
    delete takeCentralWidget();
}

void MainWindow::assemble() {
    menus_ = fill_menu_bar(*menuBar(), actions_);
    auto* row = addToolBar(tr("Tools"));
    row->setObjectName("tools");
    row->setMovable(false);
    row->setContextMenuPolicy(Qt::PreventContextMenu);
    row->setIconSize({20, 20});
    fill_tool_row(*row, actions_);

    left_ = new LeftPane(document_, selection_, this);
    left_->set_drawer_actions({actions_["drawers.add"], actions_["drawers.change"]});
    left_->set_object_actions({actions_["objects.add"], actions_["objects.paste_list"]});
    placement_ = new PlacementPane(left_);
    left_->add_below(placement_);
    sheets_ = new SheetArea(document_, selection_, preferences_, this);
    auto* welcome = new Welcome(actions_, preferences_, this);
    middle_ = new QStackedWidget(this);
    middle_->addWidget(sheets_);
    middle_->addWidget(scrolled(welcome));
    right_ = new RightPane(document_, selection_, actions_, this);

    auto* rail = new Rail(document_, selection_, this);
    panes_ = new PaneFrame(scrolled(left_), middle_, right_, rail, this);
    connect(rail, &Rail::clicked, this, [this] { panes_->show_right(!panes_->right_shown()); });
    connect(panes_, &PaneFrame::changed, this, &MainWindow::refresh_actions);
    setCentralWidget(panes_);

    sentence_ = new QLabel(this);
    coordinates_ = new QLabel(this);
    statusBar()->addWidget(sentence_, 1);
    building_ = new QLabel(this);
    building_->setContentsMargins(0, 0, 16, 0);
    statusBar()->addPermanentWidget(building_);
    coordinates_->setContentsMargins(0, 0, 8, 0);
    statusBar()->addPermanentWidget(coordinates_);
    statusBar()->setSizeGripEnabled(false);
    sentence_->setContentsMargins(8, 0, 0, 0); // off the frame of the window
    connect(welcome, &Welcome::recent_wanted, this, [this](const QString& path) { job_acts_->open(path); });
}

void MainWindow::connect_acts() {
    job_acts_ = new JobActs(desk_, autosave_, actions_, claims_folder_, this);
    place_acts_ = new PlaceActs(desk_, actions_, this);
    form_acts_ = new FormActs(desk_, actions_, this);
    auto* hand_acts = new HandActs(desk_, actions_, *placement_, this);
    connect(hand_acts, &HandActs::said, this, &MainWindow::say);
    connect(placement_, &PlacementPane::done, this, [this] { sheets_->canvas().setFocus(); });
    auto* clip_acts = new ClipActs(desk_, actions_, this);
    connect(clip_acts, &ClipActs::said, this, &MainWindow::say);
    auto& canvas = sheets_->canvas();
    auto* print_acts = new PrintActs(desk_, actions_, this);
    connect(print_acts, &PrintActs::said, this, &MainWindow::say);
    connect(print_acts, &PrintActs::printed, sheets_, &SheetArea::show_printed);
    auto* cost_acts = new CostActs(desk_, *job_acts_, actions_, this);
    connect(cost_acts, &CostActs::said, this, &MainWindow::say);
    auto* pour_acts = new PourActs(desk_, actions_, this);
    connect(pour_acts, &PourActs::said, this, &MainWindow::say);
    auto* arrange_acts = new ArrangeActs(desk_, actions_, this);
    connect(arrange_acts, &ArrangeActs::said, this, &MainWindow::say);
    auto* tidy_acts = new TidyActs(desk_, actions_, this);
    connect(tidy_acts, &TidyActs::said, this, &MainWindow::say);
    auto* vent_acts = new VentActs(desk_, actions_, canvas, this);
    connect(vent_acts, &VentActs::said, this, &MainWindow::say);
    guide_acts_ = new GuideActs(desk_, actions_, this);
    connect(right_, &RightPane::guide_wanted, guide_acts_, &GuideActs::open);
    auto* mend_acts = new MendActs(desk_, actions_, this);
    auto* on_disk = new DiskWatch(desk_, this);
    connect(on_disk, &DiskWatch::said, this, &MainWindow::say);
    auto* photo_acts = new PhotoActs(desk_, actions_, this);
    connect(photo_acts, &PhotoActs::said, this, &MainWindow::say);
    auto* drops = new DropTarget(this);
    connect(drops, &DropTarget::dropped, this, [this, photo_acts](const QString& path) {
        if (PhotoActs::is_photo(path))
            photo_acts->open(path);
        else
            job_acts_->open(path);
    });
    connect(mend_acts, &MendActs::said, this, &MainWindow::say);
    connect(form_acts_, &FormActs::said, this, &MainWindow::say);
    connect(job_acts_, &JobActs::said, this, &MainWindow::say);
    connect(job_acts_, &JobActs::quit_wanted, this, &QWidget::close);
    connect(job_acts_, &JobActs::made_new, sheets_, [this] { sheets_->show_sheet(SheetId::drawer_plan); });
    connect(place_acts_, &PlaceActs::said, this, &MainWindow::say);
    connect(&autosave_, &Autosave::failed, this,
            [this](const QString& why) { say(tr("Unsaved work can’t be kept: %1").arg(why)); });
}

void MainWindow::connect_canvas() {
    auto& canvas = sheets_->canvas();
    connect(&canvas, &SheetCanvas::said, this, &MainWindow::say);
    connect(&canvas, &SheetCanvas::pointer_at, this, [this](QPointF mm) {
        const auto units = document_.shown().display_units;
        const auto said = [units](double value) { return language::say_length(value, units); };
        coordinates_->setText(tr("x %1   y %2").arg(said(mm.x()), said(mm.y())));
        if (spec_of(sheets_->shown()).tool == SheetTool::arrange) place_acts_->set_pointer(mm);
    });
    connect(&canvas, &SheetCanvas::pointer_left, this, [this] {
        coordinates_->clear();
        place_acts_->set_pointer(std::nullopt);
    });
    connect(&canvas, &SheetCanvas::context_menu_wanted, this, [this](QPoint at, MenuOf of) {
        (of == MenuOf::pocket  ? menus_.pocket
         : of == MenuOf::check ? menus_.check
         : of == MenuOf::vent  ? menus_.vent
                               : menus_.sheet)
            ->popup(at);
    });
    connect(&canvas, &SheetCanvas::measuring_changed, this, &MainWindow::refresh_actions);
    connect(&canvas, &SheetCanvas::form_wanted, this, [this](CanvasPort::Form form) {
        using Form = CanvasPort::Form;
        actions_[form == Form::object       ? "objects.change"
                 : form == Form::notch      ? "place.notch_sizes"
                 : form == Form::vent_drill ? "vents.drill"
                                            : "vents.add"]
            ->trigger();
    });
    const auto keys = [this](const char* id) {
        // The key's name on it, as the other sentences say it.
        return actions_[id]->shortcut().toString(QKeySequence::NativeText).replace("Return", tr("Enter"));
    };
    canvas.set_invitation({tr("Nothing in this drawer yet"),
                           tr("Drag an object from the list, or press %1").arg(keys("objects.place")),
                           tr("Have all placed for you: %1").arg(keys("arrange.unplaced")),
                           tr("Add an object: %1").arg(keys("objects.add")),
                           tr("Paste a list from a spreadsheet: %1").arg(keys("objects.paste_list"))});
}

void MainWindow::connect_panes() {
    connect(&right_->checks(), &ChecksPane::menu_wanted, this,
            [this](QPoint at) { menus_.check->popup(at); });
    connect(left_, &LeftPane::drawer_menu_wanted, this, [this](QPoint at) { menus_.drawer->popup(at); });
    connect(left_, &LeftPane::menu_wanted, this, [this](QPoint at) { menus_.object->popup(at); });
    connect(left_, &LeftPane::object_activated, this, [this](const QString& id) {
        if (actions_["objects.place"]->isEnabled()) place_acts_->place(id.toStdString());
    });
    connect(&right_->checks(), &ChecksPane::check_chosen, this, &MainWindow::go_to);
    connect(right_, &RightPane::action_wanted, this,
            [this](const QString& id) { actions_[id.toStdString()]->trigger(); });
    connect(&document_.building(), &Building::busy_changed, this, [this] { tell_building(0); });
    connect(&document_.building(), &Building::progressed, this, &MainWindow::tell_building);
    connect(sheets_, &SheetArea::sheet_changed, this, [this] { right_->arrange_for(sheets_->shown()); });
    connect(&document_, &Document::shown_changed, this, &MainWindow::after_change);
    connect(&document_, &Document::replaced, this, &MainWindow::after_replacement);
    connect(&document_, &Document::state_changed, this, &MainWindow::refresh_title);
    connect(&document_.undo_stack(), &QUndoStack::indexChanged, this, &MainWindow::refresh_actions);
    connect(&selection_, &Selection::changed, this, &MainWindow::refresh_actions);
    connect(sheets_, &SheetArea::sheet_changed, this, &MainWindow::refresh_actions);
    connect(&preferences_, &Preferences::changed, this, [this] {
        refresh_recent();
        refresh_actions();
    });
    refresh_recent();
}

void MainWindow::after_replacement() {
    const auto& drawers = document_.job().drawers;
    selection_.choose_pockets({});
    selection_.choose_object({});
    selection_.choose_drawer(drawers.empty() ? std::string() : drawers.front()->id);
    drop_what_is_gone();
    refresh_title();
    refresh_actions();
    say_hint();
}

/// Everything here was made after the job, and is told of it as of a change.
void MainWindow::tell_of_job() {
    document_.tell();
    selection_.tell();
    tell_building(0);
    say(tr("The program speaks English."));
}

std::unique_ptr<OpenJob> MainWindow::hand_over() {
    guide_acts_->close();
    keep_state();
    document_.preview(std::nullopt);
    return std::move(open_);
}

void MainWindow::after_change() {
    if (document_.previewing()) return; // a drag: nothing comes or goes
    drop_what_is_gone();
    refresh_actions();
}

/// Undo and deletion may take away what is chosen.
void MainWindow::drop_what_is_gone() {
    const auto& job = document_.job();
    if (job::find_drawer(job, selection_.drawer()) == nullptr)
        selection_.choose_drawer(job.drawers.empty() ? std::string() : job.drawers.front()->id);
    job::Subjects kept;
    for (const auto& subject : selection_.pockets()) {
        const auto found = job::find_pocket(job, subject);
        if (found.drawer != nullptr && found.drawer->id == selection_.drawer()) kept.push_back(subject);
    }
    if (kept != selection_.pockets()) selection_.choose_pockets(kept);
    if (const auto notch = selection_.notch(); notch && !kept.empty())
        if (*notch >= job::find_pocket(job, kept.back()).pocket->notches.size())
            selection_.choose_pockets(kept);
    if (!selection_.object().empty() && job::find_object(job, selection_.object()) == nullptr)
        selection_.choose_object({});
    show_middle(job.drawers.empty() ? welcome_page : sheets_page);
}

/// From the welcome page the keys go on to the sheet.
void MainWindow::show_middle(int page) {
    if (page == middle_->currentIndex()) return;
    middle_->setCurrentIndex(page);
    if (page == sheets_page) sheets_->canvas().setFocus();
}

void MainWindow::refresh_actions() {
    if (right_ == nullptr) return;
    if (hinting_) say_hint();
    actions_.update(situation_of(desk_, sheets_->canvas(), right_->checks().model()));
    const auto& stack = document_.undo_stack();
    actions_["edit.undo"]->setText(stack.canUndo() ? tr("&Undo: %1").arg(stack.undoText()) : tr("&Undo"));
    actions_["edit.redo"]->setText(stack.canRedo() ? tr("&Redo: %1").arg(stack.redoText()) : tr("&Redo"));
    show_checked(actions_, desk_, sheets_->canvas());
    actions_["view.left_pane"]->setChecked(panes_->left_shown());
    actions_["view.right_pane"]->setChecked(panes_->right_shown());
}

void MainWindow::refresh_title() {
    setWindowTitle(document_.display_name() + QStringLiteral("[*] – Drawercast"));
    setWindowFilePath(document_.path());
    setWindowModified(document_.unsaved());
}

void MainWindow::refresh_recent() {
    menus_.recent->clear();
    for (const auto& path : preferences_.recent()) {
        auto* action = menus_.recent->addAction(QFileInfo(path).fileName());
        action->setStatusTip(path);
        connect(action, &QAction::triggered, this, [this, path] { job_acts_->open(path); });
    }
    menus_.recent->setEnabled(!menus_.recent->isEmpty());
}

void MainWindow::go_to(const layout::Check& check) {
    const auto* plan = shown_plan(desk_);
    const auto& sheet = spec_of(sheet_of(check));
    sheets_->show_sheet(sheet.id);
    if (plan == nullptr) return;
    constexpr double around_mm = 40;
    shape::Box box;
    const auto frame = sheet.seen == Seen::drawer ? layout::CheckFrame::drawer : layout::CheckFrame::mold;
    if (sheet.seen != Seen::bench && check.frame == frame) {
        if (check.at) box.add(*check.at);
        if (check.to) box.add(*check.to);
    }
    if (sheet.tool == SheetTool::arrange) box.add(box_of(*plan, selection_.pockets()));
    if (!box.empty()) sheets_->canvas().zoom_to(box.grown(around_mm));
}

void MainWindow::tell_building(double done) {
    building_->setText(document_.building().busy()
                           ? tr("Working out plate, vents and cuts for the last change: %1 %")
                                 .arg(static_cast<int>(done * 100))
                           : QString());
}

void MainWindow::set_theme(const theme::Theme& theme) { sheets_->set_theme(theme); }

void MainWindow::restore_state() {
    const QSize room = screen()->availableSize() - QSize(0, 40); // the frame is the desktop's
    resize(room.boundedTo({1920, 1200}));
    if (const auto place = preferences_.window_state("place"); !place.isEmpty()) restoreGeometry(place);
    panes_->restore(preferences_.window_state("panes"));
    if (const auto shares = preferences_.window_state("answers"); !shares.isEmpty())
        right_->restoreState(shares);
}

void MainWindow::keep_state() {
    preferences_.set_window_state("place", saveGeometry());
    preferences_.set_window_state("panes", panes_->state());
    preferences_.set_window_state("answers", right_->saveState());
}

/// Enter presses the button it is on, as in a dialog: Qt has the space key alone do that outside of them.
void MainWindow::keyPressEvent(QKeyEvent* event) {
    auto* button = qobject_cast<QAbstractButton*>(focusWidget());
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (!enter || button == nullptr || event->isAutoRepeat() || event->modifiers() & Qt::ControlModifier)
        return QMainWindow::keyPressEvent(event);
    button->click();
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!job_acts_->may_leave()) return event->ignore();
    autosave_.forget(); // saved, or not wanted
    guide_acts_->close();
    keep_state();
    event->accept();
}

} // namespace drawercast::app
