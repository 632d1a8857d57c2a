// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/place_acts.h"

#include "job/shown_name.h"
#include "layout/checks.h"

#include "canvas/hit.h"
#include "document/document.h"
#include "document/selection.h"
#include "window/actions.h"
#include "window/asking.h"
#include "window/hand_placing.h"

#include <algorithm>

namespace drawercast::app {

namespace {

job::LeftAsIs left_of(const layout::Check& check, const std::string& drawer) {
    job::LeftAsIs left;
    left.drawer = drawer;
    left.code = std::string(layout::text_of(check.code));
    left.subjects = check.subjects;
    left.value = check.value;
    return left;
}

} // namespace

PlaceActs::PlaceActs(const Desk& desk, Actions& actions, QObject* parent)
    : QObject(parent), desk_(desk), actions_(actions) {
    connect_edit();
    connect_objects();
    connect_place();
    connect_checks();
}

void PlaceActs::commit(const QString& what, job::Job job) {
    if (!app::commit(desk_, what, std::move(job)))
        emit said(tr("Nothing to change: it is so already, or it does not fit."));
}

job::Subjects PlaceActs::free() const {
    return job::unlocked(desk_.document.job(), desk_.selection.pockets());
}

shape::Vec PlaceActs::pointer_or(shape::Vec other) const {
    return pointer_ ? shape::Vec{pointer_->x(), pointer_->y()} : other;
}

void PlaceActs::connect_edit() {
    auto& document = desk_.document;
    auto& selection = desk_.selection;
    actions_.on("edit.undo", [&] { document.undo_stack().undo(); });
    actions_.on("edit.redo", [&] { document.undo_stack().redo(); });
    actions_.on("edit.duplicate", [this, &document, &selection] {
        constexpr double aside_mm = 10;
        job::Subjects made;
        commit(tr("Duplicate"),
               job::duplicated(document.job(), selection.pockets(), {aside_mm, -aside_mm}, &made));
        if (!made.empty()) selection.choose_pockets(made);
    });
    actions_.on("edit.delete", [this, &document, &selection] {
        if (selection.notch()) return take_notch_away();
        const auto which = free_ones();
        if (which.empty()) return;
        selection.choose_pockets({});
        commit(tr("Delete"), job::removed(document.job(), which));
    });
    actions_.on("edit.select_all", [this, &selection] {
        job::Subjects all;
        if (const auto* plan = shown_plan(desk_))
            for (const auto& pocket : plan->pockets) all.push_back(pocket->subject);
        selection.choose_pockets(all);
    });
    actions_.on("edit.lock",
                [this, &document] { commit(tr("Lock"), job::locked(document.job(), free(), true)); });
    actions_.on("edit.unlock", [this, &document, &selection] {
        commit(tr("Unlock"), job::locked(document.job(), selection.pockets(), false));
    });
}

void PlaceActs::place(const std::string& object) {
    const auto* plan = shown_plan(desk_);
    if (plan == nullptr) return;
    std::string made;
    commit(tr("Place"), placing::placed_where_free(desk_.document.job(), *plan, object, &made));
    if (!made.empty()) desk_.selection.choose_pockets({made});
}

void PlaceActs::connect_objects() {
    actions_.on("objects.place", [this] { place(desk_.selection.object()); });
    actions_.on("objects.duplicate", [this] {
        std::string made;
        commit(tr("Duplicate object"),
               job::with_object_copied(desk_.document.job(), desk_.selection.object(), &made));
        if (!made.empty()) desk_.selection.choose_object(made);
    });
    actions_.on("objects.delete", [this] { delete_object(); });
}

void PlaceActs::delete_object() {
    const std::string id = desk_.selection.object();
    const auto* object = job::find_object(desk_.document.job(), id);
    if (object == nullptr) return;
    const QString name = QString::fromStdString(object->name);
    int pockets = 0;
    for (const auto& drawer : desk_.document.job().drawers)
        pockets +=
            static_cast<int>(std::count_if(drawer->pockets.begin(), drawer->pockets.end(),
                                           [&](const job::Pocket& pocket) { return pocket.object == id; }));
    if (pockets > 0 &&
        !desk_.asking.yes(tr("Delete the object?"),
                          tr("“%1” and its pockets (%2) go. You can undo it.").arg(name).arg(pockets)))
        return;
    desk_.selection.choose_pockets({});
    commit(tr("Delete object"), job::without_object(desk_.document.job(), id));
    desk_.selection.choose_object({});
}

void PlaceActs::connect_place() {
    actions_.on("place.turn", [this] { turn(90); });
    actions_.on("place.turn_back", [this] { turn(-90); });
    actions_.on("place.turn_15", [this] { turn(15); });
    actions_.on("place.align_left", [this] { align(tr("Align left edges"), placing::Line::left); });
    actions_.on("place.align_right", [this] { align(tr("Align right edges"), placing::Line::right); });
    actions_.on("place.align_front", [this] { align(tr("Align front edges"), placing::Line::front); });
    actions_.on("place.align_back", [this] { align(tr("Align back edges"), placing::Line::back); });
    actions_.on("place.center_x", [this] { align(tr("Centers in line"), placing::Line::center_x); });
    actions_.on("place.center_y", [this] { align(tr("Centers in line"), placing::Line::center_y); });
    actions_.on("place.spread_x", [this] { spread(placing::Axis::x); });
    actions_.on("place.spread_y", [this] { spread(placing::Axis::y); });
    actions_.on("place.walls_x", [this] { equal_walls(placing::Axis::x); });
    actions_.on("place.walls_y", [this] { equal_walls(placing::Axis::y); });
    actions_.on("place.notch", [this] { notch(); });
    actions_.on("place.notch_sizes", [this] { ask_notch_sizes(); });
    actions_.on("place.no_notch", [this] { take_notch_away(); });
    actions_.on("place.other_drawer", [this] { to_other_drawer(); });
}

void PlaceActs::turn(double by_deg) {
    const auto* plan = shown_plan(desk_);
    const auto which = free();
    if (plan == nullptr || which.empty()) return;
    // One pocket turns about its own origin, so that four turns bring it back to the same figures.
    const auto found = job::find_pocket(desk_.document.job(), which.front());
    const auto about = which.size() == 1 ? found.pocket->pose.at : box_of(*plan, which).center();
    commit(tr("Turn"), job::turned(desk_.document.job(), which, by_deg, about));
}

void PlaceActs::align(const QString& what, placing::Line line) {
    if (const auto* plan = shown_plan(desk_))
        commit(what, placing::aligned(desk_.document.job(), *plan, desk_.selection.pockets(), line));
}

void PlaceActs::spread(placing::Axis axis) {
    if (const auto* plan = shown_plan(desk_))
        commit(tr("Spread evenly"),
               placing::distributed(desk_.document.job(), *plan, desk_.selection.pockets(), axis));
}

void PlaceActs::equal_walls(placing::Axis axis) {
    if (const auto* plan = shown_plan(desk_))
        commit(tr("Equal walls"),
               placing::with_equal_walls(desk_.document.job(), *plan, desk_.selection.pockets(), axis));
}

/// Beside the pointer, so that a further one need not lie over the first; chosen, so that it can be slid.
void PlaceActs::notch() {
    const auto* plan = shown_plan(desk_);
    if (plan == nullptr || desk_.selection.pockets().empty()) return;
    const auto* pocket = find_pocket(*plan, desk_.selection.pockets().back());
    const auto found = job::find_pocket(desk_.document.job(), desk_.selection.pockets().back());
    if (pocket == nullptr || found.pocket == nullptr) return;
    const std::string subject = pocket->subject;
    const std::size_t made = found.pocket->notches.size();
    const shape::Vec front{pocket->box.center().x, pocket->box.min.y};
    const auto side = placing::nearest_side(pocket->box, pointer_or(front));
    commit(tr("Finger notch"), placing::with_finger_notch(desk_.document.job(), *plan, subject, side));
    desk_.selection.choose_notch(subject, made);
}

/// The chosen notch, else the one nearest to the pointer.
std::optional<std::size_t> PlaceActs::notch_meant() const {
    if (desk_.selection.pockets().empty()) return std::nullopt;
    const auto& subject = desk_.selection.pockets().back();
    const auto found = job::find_pocket(desk_.document.job(), subject);
    if (found.pocket == nullptr || found.pocket->notches.empty()) return std::nullopt;
    if (const auto chosen = desk_.selection.notch(); chosen && *chosen < found.pocket->notches.size())
        return chosen;
    return placing::nearest_notch(desk_.document.job(), subject, pointer_or(found.pocket->pose.at));
}

void PlaceActs::take_notch_away() {
    const auto notch = notch_meant();
    if (!notch) return;
    const auto subject = desk_.selection.pockets().back();
    desk_.selection.choose_pockets({subject});
    commit(tr("Take finger notch away"), job::without_notch(desk_.document.job(), subject, *notch));
}

void PlaceActs::ask_notch_sizes() {
    const auto notch = notch_meant();
    if (!notch) return;
    const auto subject = desk_.selection.pockets().back();
    desk_.selection.choose_notch(subject, *notch);
    const auto& job = desk_.document.job();
    const auto asked = desk_.asking.notch(job::find_pocket(job, subject).pocket->notches[*notch],
                                          form_context(job, desk_.selection.drawer()));
    if (asked && !(*asked == job::find_pocket(job, subject).pocket->notches[*notch]))
        commit(tr("Change notch"), job::with_notch_changed(job, subject, *notch, *asked));
}

/// Of those chosen; what is locked stays where it is, and that is said.
job::Subjects PlaceActs::free_ones() {
    const auto& chosen = desk_.selection.pockets();
    auto which = job::unlocked(desk_.document.job(), chosen);
    if (which.size() < chosen.size()) emit said(tr("Locked pockets stay: unlock them first."));
    return which;
}

void PlaceActs::to_other_drawer() {
    QStringList names;
    std::vector<std::string> ids;
    for (const auto& drawer : desk_.document.job().drawers) {
        if (drawer->id == desk_.selection.drawer()) continue;
        ids.push_back(drawer->id);
        names << QStringLiteral("%1. %2")
                     .arg(names.size() + 1)
                     .arg(QString::fromStdString(job::shown_name(*drawer)));
    }
    if (ids.empty()) return;
    const auto chosen = desk_.asking.choice(tr("To another drawer"), tr("Drawer:"), names);
    if (!chosen || *chosen < 0) return;
    const auto which = free_ones();
    if (which.empty()) return;
    const auto& id = ids[static_cast<std::size_t>(*chosen)];
    const auto& job = desk_.document.job();
    const auto* from = shown_plan(desk_);
    const auto* there = plan::find_drawer(desk_.document.plan(), id);
    if (from == nullptr || there == nullptr) return;
    double depth_mm = 0;
    for (const auto& subject : which)
        if (const auto* pocket = find_pocket(*from, subject))
            depth_mm = std::max(depth_mm, pocket->form->greatest_depth_mm);
    const double edge_mm =
        layout::limits_of(job, *job::find_drawer(job, id), there->insert).minimums.edge(depth_mm);
    commit(tr("To another drawer"), placing::into_drawer(job, *from, which, *there, edge_mm));
    desk_.selection.choose_drawer(id);
    desk_.selection.choose_pockets(which);
}

void PlaceActs::connect_checks() {
    actions_.on("check.leave", [this] { set_left_as_is(true); });
    actions_.on("check.take_back", [this] { set_left_as_is(false); });
}

/// The chosen check as it is now: since it was chosen, its value may have changed.
std::optional<layout::Check> PlaceActs::check_now() const {
    const auto& chosen = desk_.selection.check();
    const auto* plan = shown_plan(desk_);
    if (!chosen || plan == nullptr) return chosen;
    const auto now = std::find_if(plan->checks.begin(), plan->checks.end(), [&](const layout::Check& check) {
        return check.code == chosen->code && check.subjects == chosen->subjects;
    });
    return now == plan->checks.end() ? chosen : *now;
}

void PlaceActs::set_left_as_is(bool left) {
    const auto check = check_now();
    if (!check) return;
    const auto entry = left_of(*check, desk_.selection.drawer());
    commit(left ? tr("Leave as is") : tr("Take back"),
           left ? job::with_left_as_is(desk_.document.job(), entry)
                : job::without_left_as_is(desk_.document.job(), entry));
    auto now = *check;
    now.left_as_is = left;
    desk_.selection.choose_check(now);
}

} // namespace drawercast::app
