// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/pour_acts.h"

#include "job/edit.h"
#include "plan/pour_log.h"
#include "plan/stock_depths.h"

#include "document/document.h"
#include "document/preferences.h"
#include "document/selection.h"
#include "language/in_words.h"
#include "language/say.h"
#include "pourday/pour_view.h"
#include "window/actions.h"
#include "window/asking.h"
#include "window/help_texts.h"
#include "window/now.h"

#include <QAction>

namespace drawercast::app {

namespace {

/// How many levels of objects have another depth in `now`.
int changed_depths(const job::Job& before, const job::Job& now) {
    int changed = 0;
    for (std::size_t i = 0; i < before.objects.size(); ++i)
        for (std::size_t k = 0; k < before.objects[i]->levels.size(); ++k)
            changed += before.objects[i]->levels[k] == now.objects[i]->levels[k] ? 0 : 1;
    return changed;
}

/// The drawer's plan, with the plate of the last long answer while a newer one is being worked out: a mark
/// changes neither.
std::optional<plan::DrawerPlan> plan_of(const Document& document, const std::string& drawer) {
    const auto* now = plan::find_drawer(document.plan(), drawer);
    if (now == nullptr) return std::nullopt;
    plan::DrawerPlan found = *now;
    if (found.plate || !document.last_built()) return found;
    const auto* old = plan::find_drawer(*document.last_built(), drawer);
    if (old != nullptr && old->cavity == found.cavity && old->dose == found.dose)
        found.plate = old->plate, found.air = old->air;
    return found;
}

/// The whole plan likewise.
plan::Plan plan_of(const Document& document) {
    plan::Plan plan = document.plan();
    for (auto& drawer : plan.drawers)
        if (auto found = plan_of(document, drawer.id)) drawer = std::move(*found);
    return plan;
}

} // namespace

PourActs::PourActs(const Desk& desk, Actions& actions, QObject* parent)
    : QObject(parent), desk_(desk), actions_(actions), log_in_file_(desk.document.job().log) {
    connect_forms(actions);
    actions.on("pour.day", [this] { pour(); });
    actions.on("pour.rehearse", [this] { rehearse(); });
    connect(&desk_.document, &Document::committed, this, &PourActs::keep_log);
    connect(&desk_.document, &Document::replaced, this, [this] {
        log_in_file_ = desk_.document.job().log;
        if (view_) view_->close();
        take_up_running();
    });
    connect(&desk_.document, &Document::shown_changed, this, [this] {
        if (view_) view_->refresh();
    });
    take_up_running();
}

PourView* PourActs::view() const { return view_; }

void PourActs::connect_forms(Actions& actions) {
    const auto form = [this, &actions](const char* id, Asking::PourForm which, const QString& what) {
        actions.on(id, [this, which, what] {
            const auto& document = desk_.document;
            auto job =
                desk_.asking.pour_form(which, document.job(), plan_of(document), desk_.selection.drawer());
            if (job) commit(desk_, what, std::move(*job));
        });
    };
    form("pour.cup", Asking::PourForm::cup, tr("Test cup"));
    form("pour.as_built", Asking::PourForm::as_built, tr("As built"));
    form("pour.as_cast", Asking::PourForm::as_cast, tr("As cast"));
    actions.on("pour.depths", [this] { depths_from_boards(); });
}

/// Of the chosen object, or of all where none is chosen.
void PourActs::depths_from_boards() {
    const auto before = desk_.document.job();
    auto now = plan::with_depths_from_boards(before, desk_.document.plan(), desk_.selection.object());
    const int changed = changed_depths(before, now);
    commit(desk_, tr("Depths from boards at hand"), std::move(now));
    emit said(changed == 0
                  ? tr("Every depth is a sum of boards at hand already.")
                  : tr("Depths made sums of boards at hand: %1. Undo brings them back.").arg(changed));
}

std::optional<plan::DrawerPlan> PourActs::pourable() {
    auto plan = plan_of(desk_.document, desk_.selection.drawer());
    if (!plan || plan::pour_steps(desk_.document.job(), *plan).empty()) {
        emit said(tr("This drawer has no dose yet: the checks say why."));
        return std::nullopt;
    }
    if (!has_a_file()) return std::nullopt;
    return plan;
}

void PourActs::pour() {
    const auto plan = pourable();
    if (!plan) return;
    const bool new_run = wants_a_new_run(plan->id);
    if (new_run && !may_pour(*plan)) return;
    caution_once();
    if (new_run && !begun(plan->id, tr("Begin the pour"), plan::begin_pour)) return;
    open_pour(plan->id);
}

void PourActs::rehearse() {
    const auto plan = pourable();
    if (!plan || !may_rehearse(plan->id)) return;
    caution_once();
    if (begun(plan->id, tr("Begin a dry run"), plan::begin_rehearsal)) open_rehearsal(plan->id);
}

bool PourActs::begun(const std::string& drawer, const QString& what, std::string_view beginning) {
    const auto trouble = keep(what, plan::with_mark(desk_.document.job(), drawer, beginning, now_s()));
    if (!trouble.isEmpty()) emit said(trouble);
    return trouble.isEmpty();
}

/// A pour that is not at its end goes on, unless the maker wants to start over.
bool PourActs::wants_a_new_run(const std::string& drawer) const {
    const auto run = plan::last_run(desk_.document.job().log, drawer);
    if (!run || run->rehearsal || run->is_done(plan::last_step)) return true;
    if (run->done.empty() || plan::is_running(*run, now_s())) return false;
    return !desk_.asking.yes(tr("Go on with this pour?"),
                             tr("Some steps of a pour of this drawer are marked already. Go on there? "
                                "“No” begins a new one; the log keeps both."));
}

/// A rehearsal in the middle of a pour would hide the pour's clock.
bool PourActs::may_rehearse(const std::string& drawer) const {
    const auto run = plan::last_run(desk_.document.job().log, drawer);
    return !run || !plan::is_running(*run, now_s()) ||
           desk_.asking.yes(tr("Dry run now?"),
                            tr("A pour of this drawer is going on. A dry run hides its clock "
                               "and its next step. Begin it all the same?"));
}

/// What is still to mend spoils the cast: nobody pours without having read that.
bool PourActs::may_pour(const plan::DrawerPlan& drawer) const {
    const int mends = plan::count_to_mend(drawer.checks);
    return mends == 0 || desk_.asking.yes(tr("Pour all the same?"),
                                          tr("Checks of this drawer that say that something must be mended: "
                                             "%1. Pour all the same?")
                                              .arg(mends));
}

bool PourActs::has_a_file() {
    if (desk_.document.path().isEmpty()) {
        emit said(tr("The log of a pour is kept in the job’s file: save it first."));
        actions_["job.save"]->trigger(); // which says what became of it
    }
    return !desk_.document.path().isEmpty();
}

void PourActs::caution_once() {
    const QString told = QStringLiteral("pour_cautions");
    if (!desk_.preferences.window_state(told).isEmpty()) return;
    desk_.asking.tell(tr("Cautions"), cautions_html());
    desk_.preferences.set_window_state(told, "told");
}

QString PourActs::keep(const QString& what, job::Job job) {
    log_in_file_ = job.log; // saved here, with its trouble told where the mark was made
    commit(desk_, what, std::move(job));
    return save_log();
}

QString PourActs::save_log() {
    const auto problem = desk_.document.save_log();
    return problem ? tr("Marked, but not saved: %1").arg(problem_line(*problem)) : QString();
}

void PourActs::keep_log() {
    const auto& log = desk_.document.job().log;
    if (log == log_in_file_ || desk_.document.path().isEmpty()) return;
    log_in_file_ = log;
    const auto trouble = save_log();
    if (!trouble.isEmpty()) emit said(trouble);
}

void PourActs::open_pour(const std::string& drawer) {
    connect(open_view(drawer, plan::pour_steps), &PourView::finished, this, [this] {
        emit said(tr("Once the insert is trimmed, weigh and measure it: Pour day, As cast."));
    });
}

void PourActs::open_rehearsal(const std::string& drawer) {
    connect(
        open_view(drawer, plan::rehearsal_steps), &PourView::finished, this,
        [this, drawer] { offer_times(drawer); }, Qt::QueuedConnection);
}

PourView* PourActs::open_view(const std::string& drawer, StepsOf steps_of) {
    if (view_) view_->close();
    auto& document = desk_.document;
    PourPort port;
    port.now_s = now_s;
    port.run = [&document, drawer] {
        return plan::last_run(document.job().log, drawer).value_or(plan::PourRun{});
    };
    port.steps = [&document, drawer, steps_of] {
        const auto plan = plan_of(document, drawer);
        return plan ? steps_of(document.job(), *plan) : std::vector<plan::PourStep>();
    };
    port.mark = [this, drawer](const std::string& step) {
        return keep(tr("Mark"), plan::with_mark(desk_.document.job(), drawer, step, now_s()));
    };
    port.take_back = [this, drawer] {
        return keep(tr("Take a mark back"),
                    plan::with_last_taken_back(desk_.document.job(), drawer, now_s()));
    };
    const auto* named = job::find_drawer(document.job(), drawer);
    auto* view = new PourView(named ? QString::fromStdString(named->name) : QString(), std::move(port),
                              qobject_cast<QWidget*>(parent()));
    view->setAttribute(Qt::WA_DeleteOnClose);
    view_ = view;
    view->showFullScreen();
    view->activateWindow();
    return view;
}

void PourActs::take_up_running() {
    const std::string drawer = plan::running_drawer(desk_.document.job(), now_s());
    if (drawer.empty() || desk_.document.path().isEmpty()) return;
    QMetaObject::invokeMethod(
        this,
        [this, drawer] {
            if (job::find_drawer(desk_.document.job(), drawer) == nullptr) return;
            desk_.selection.choose_drawer(drawer);
            open_pour(drawer);
            emit said(tr("A pour of this drawer is going on: its clock never stopped."));
        },
        Qt::QueuedConnection);
}

void PourActs::offer_times(const std::string& drawer) {
    const auto run = plan::last_run(desk_.document.job().log, drawer);
    const auto plan = plan_of(desk_.document, drawer);
    if (!run || !plan) return;
    const auto& shop = *desk_.document.job().shop;
    const auto now = plan::with_rehearsed_times(shop, *run, plan::rehearsed_of(desk_.document.job(), *plan));
    if (now == shop) return;
    const auto s = [](double value) { return language::fixed(value, 1); };
    const double poured = plan->dose ? plan->dose->pour_s : 0;
    const double batch_ml = plan::rehearsed_of(desk_.document.job(), *plan).batch_ml;
    if (!desk_.asking.yes(tr("Take these times?"),
                          tr("Pouring a batch %1 s (reckoned with until now: %2), setting the plate on %3 s "
                             "(%4), a closure %5 s (%6). Reckon with them from now on?")
                              .arg(s(now.pour_s ? *now.pour_s : batch_ml / (1000 * now.pour_l_s)), s(poured),
                                   s(now.set_plate_s), s(shop.set_plate_s), s(now.seconds_per_closure),
                                   s(shop.seconds_per_closure))))
        return;
    auto job = desk_.document.job();
    job.shop = now;
    commit(desk_, tr("Times of the dry run"), std::move(job));
    emit said(tr("The shop’s times are the dry run’s now."));
}

} // namespace drawercast::app
