// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/hand_acts.h"

#include "layout/minimums.h"

#include "canvas/hit.h"
#include "document/document.h"
#include "document/preferences.h"
#include "document/selection.h"
#include "forms/copies_form.h"
#include "window/actions.h"
#include "window/asking.h"
#include "window/choose_dialog.h"
#include "window/feel_words.h"
#include "window/hand_placing.h"
#include "window/placement_pane.h"

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr int rest_ms = 120;

} // namespace

HandActs::HandActs(const Desk& desk, Actions& actions, PlacementPane& pane, QObject* parent)
    : QObject(parent), desk_(desk), pane_(pane) {
    actions.on("place.swap", [this] { swap(); });
    actions.on("place.replace", [this] { replace(); });
    actions.on("place.row", [this] { copies(); });
    actions.on("place.grid", [this] {
        if (const auto* plan = shown_plan(desk_))
            commit(tr("Onto the grid"),
                   placing::onto_grid(desk_.document.job(), *plan, desk_.selection.pockets(),
                                      desk_.preferences.grid_mm(desk_.document.job().display_units)));
    });
    actions.on("edit.select_listed", [this] { choose_listed(); });
    actions.on("objects.select", [this] { choose_alike(); });
    connect_pane();
}

void HandActs::connect_pane() {
    rested_.setSingleShot(true);
    rested_.setInterval(rest_ms);
    connect(&rested_, &QTimer::timeout, this, &HandActs::work_out_feel);
    connect(&desk_.document, &Document::shown_changed, this, &HandActs::show_placement);
    connect(&desk_.selection, &Selection::changed, this, &HandActs::show_placement);
    connect(&pane_, &PlacementPane::put, this, [this](placing::Axis axis, double edge_mm) {
        if (const auto* plan = shown_plan(desk_))
            commit(tr("Move to a typed place"),
                   placing::put_at(desk_.document.job(), *plan, desk_.selection.pockets(), axis, edge_mm));
    });
    connect(&pane_, &PlacementPane::turned, this, [this](double turn_deg) {
        if (const auto* plan = shown_plan(desk_))
            commit(tr("Turn to a typed angle"),
                   placing::turned_to(desk_.document.job(), *plan, desk_.selection.pockets(), turn_deg));
    });
    show_placement();
}

void HandActs::commit(const QString& what, job::Job job) {
    if (app::commit(desk_, what, std::move(job))) return;
    emit said(tr("Nothing to change: it is so already, or it does not fit."));
    show_placement(); // what was typed goes
}

void HandActs::swap() {
    if (const auto* plan = shown_plan(desk_))
        commit(tr("Swap"), placing::swapped(desk_.document.job(), *plan, desk_.selection.pockets()));
}

void HandActs::replace() {
    const auto* plan = shown_plan(desk_);
    const auto which = desk_.selection.pockets();
    if (plan == nullptr || which.empty()) return;
    QStringList names;
    std::vector<std::string> ids;
    const auto* was = find_pocket(*plan, which.back());
    for (const auto& object : desk_.document.job().objects) {
        if (which.size() == 1 && was != nullptr && was->object == object->id) continue;
        ids.push_back(object->id);
        names << tr("%1. %2").arg(names.size() + 1).arg(QString::fromStdString(object->name));
    }
    if (ids.empty()) return emit said(tr("The job has no other object."));
    const auto chosen = desk_.asking.choice(tr("Replace by another object"), tr("Object:"), names);
    plan = shown_plan(desk_); // while the dialog was open its long parts may have come
    if (!chosen || *chosen < 0 || plan == nullptr) return;
    job::Subjects made;
    auto job = placing::with_object_replaced(desk_.document.job(), *plan, which,
                                             ids[static_cast<std::size_t>(*chosen)], &made);
    commit(tr("Replace object"), std::move(job));
    if (!made.empty()) desk_.selection.choose_pockets(made);
}

void HandActs::copies() {
    const auto* plan = shown_plan(desk_);
    if (plan == nullptr || desk_.selection.pockets().empty()) return;
    const std::string subject = desk_.selection.pockets().back();
    const auto* pocket = find_pocket(*plan, subject);
    if (pocket == nullptr || !plan->insert) return;
    const auto& job = desk_.document.job();
    const auto minimums = layout::minimums_of(job.minimums, job.foam->firmness);
    CopyOrder usual;
    usual.wall_x_mm = usual.wall_y_mm = minimums.wall(pocket->form->greatest_depth_mm);
    const auto order = desk_.asking.copies(usual, {pocket->box, plan->insert->box},
                                           form_context(job, desk_.selection.drawer()));
    plan = shown_plan(desk_); // as above
    if (!order || plan == nullptr) return;
    job::Subjects made{subject};
    commit(tr("Copies in rows"), placing::with_copies(job, *plan, subject, *order, &made));
    desk_.selection.choose_pockets(made);
}

void HandActs::choose_listed() {
    const auto* plan = shown_plan(desk_);
    if (plan == nullptr) return;
    const auto before = desk_.selection.pockets();
    const auto chosen = desk_.asking.pockets_listed(
        listed_pockets(desk_.document.job(), *plan), before,
        [this](const job::Subjects& now) { desk_.selection.choose_pockets(now); });
    desk_.selection.choose_pockets(chosen ? *chosen : before);
}

/// All pockets of the chosen object.
void HandActs::choose_alike() {
    const auto* plan = shown_plan(desk_);
    if (plan == nullptr) return;
    job::Subjects alike;
    for (const auto& pocket : plan->pockets)
        if (pocket->object == desk_.selection.object()) alike.push_back(pocket->subject);
    if (alike.empty()) return emit said(tr("This object has no pocket in this drawer."));
    emit said(tr("Pockets chosen: %1.").arg(alike.size()));
    desk_.selection.choose_pockets(std::move(alike));
}

void HandActs::show_placement() {
    PlacementPane::Shown shown;
    const auto& job = desk_.document.shown();
    shown.context = form_context(job, desk_.selection.drawer());
    const auto& chosen = desk_.selection.pockets();
    shown.pockets = static_cast<int>(chosen.size());
    shown.free = !chosen.empty() && std::all_of(chosen.begin(), chosen.end(), [&](const auto& subject) {
        const auto found = job::find_pocket(job, subject);
        return found.pocket != nullptr && !found.pocket->locked;
    });
    if (const auto* plan = shown_plan(desk_)) {
        const auto box = box_of(*plan, chosen);
        if (!box.empty()) shown.box = box;
    }
    shown.turn_deg = placing::turn_of(job, chosen);
    shown.words = feel_;
    pane_.show_choice(shown);
    rested_.start();
}

void HandActs::work_out_feel() {
    const auto* plan = shown_plan(desk_);
    const auto& chosen = desk_.selection.pockets();
    const bool one = plan != nullptr && chosen.size() == 1 && !desk_.document.previewing();
    const QString words = one ? feel_words(desk_.document.job(), *plan, chosen.front()) : QString();
    if (words == feel_) return;
    feel_ = words;
    show_placement();
    rested_.stop(); // it is told
}

} // namespace drawercast::app
