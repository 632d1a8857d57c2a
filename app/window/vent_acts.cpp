// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/vent_acts.h"

#include "base/contains.h"
#include "job/edit.h"
#include "job/edit_vents.h"

#include "canvas/sheet_canvas.h"
#include "canvas/vent_places.h"
#include "document/document.h"
#include "document/selection.h"
#include "language/say.h"
#include "window/actions.h"

#include <QCursor>
#include <QMenu>

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

constexpr double most_drill_mm = 10; ///< a wider hole is no vent

} // namespace

VentActs::VentActs(const Desk& desk, Actions& actions, SheetCanvas& canvas, QWidget* window)
    : QObject(window), desk_(desk), canvas_(canvas), drills_(new QMenu(window)) {
    drills_->setTitle(tr("Drill bit of the vent"));
    actions.first("edit.delete", [this] { return remove(); });
    actions.first("edit.lock", [this] { return lock(true); });
    actions.first("edit.unlock", [this] { return lock(false); });
    actions.on("vents.add", [this] { add(); });
    actions.on("vents.drill", [this] { offer_drills(); });
    actions.on("vents.rest", [this] {
        const auto* drawer = canvas_.drawer();
        if (drawer != nullptr) place_rest(!job::vents_automatic(*drawer));
    });
    actions.on("vents.automatic", [this] {
        commit(tr("All vents automatic"),
               job::with_vents(desk_.document.job(), desk_.selection.drawer(), {}, true));
    });
}

void VentActs::commit(const QString& what, job::Job job) { desk_.document.commit(what, std::move(job)); }

/// Under the pointer; else at the air pocket that keeps most; else in the middle.
shape::Vec VentActs::place_for_another() const {
    const auto air = canvas_.air();
    const auto& floor = air->model->in().floor;
    if (const auto at = canvas_.pointer_mm())
        return {std::clamp(std::round(at->x), 0.0, floor.width_mm),
                std::clamp(std::round(at->y), 0.0, floor.depth_mm)};
    const auto& shares = air->vented.shares_ml;
    const auto most = std::max_element(shares.begin(), shares.end());
    if (most != shares.end() && *most > air::vented_ml)
        return air->model->map().pockets[static_cast<std::size_t>(most - shares.begin())].at;
    return {std::round(floor.width_mm / 2), std::round(floor.depth_mm / 2)};
}

void VentActs::add() {
    const auto* plan = canvas_.built_plan();
    if (plan == nullptr || !canvas_.air()) return;
    const auto& job = desk_.document.job();
    const shape::Vec at = vent_in_drawer(job, *plan, place_for_another());
    std::size_t made = 0;
    auto with = job::with_vent(job, plan->id, {at, air::vent_drill_mm, {}}, &made);
    const shape::Vec put = job::find_drawer(with, plan->id)->vents->keep[made].at;
    commit(tr("Add vent"), std::move(with));
    desk_.selection.choose_vent(put);
    emit said(tr("Added and locked. Drag it where you want it."));
}

std::vector<job::KeptVent> VentActs::vents(bool all, std::optional<std::size_t> without) const {
    std::vector<job::KeptVent> keep = job::kept_vents(*canvas_.drawer());
    const auto& now = canvas_.air()->vented.vents;
    if (all)
        for (std::size_t i = keep.size(); i < now.size(); ++i)
            keep.push_back({vent_in_drawer(desk_.document.job(), *canvas_.built_plan(), now[i].at),
                            now[i].diameter_mm,
                            {}});
    if (without && *without < keep.size()) keep.erase(keep.begin() + static_cast<std::ptrdiff_t>(*without));
    return keep;
}

/// One of the maker's goes, and the rest is placed anew. One of the program's would come back: so the others
/// stay as they are, and none are placed beside them any more.
bool VentActs::remove() {
    const auto chosen = canvas_.vent_chosen();
    if (!chosen) return false;
    const auto& job = desk_.document.job();
    const std::string id = desk_.selection.drawer();
    const bool kept = canvas_.air()->vented.vents[*chosen].why == air::VentFor::kept;
    auto without =
        kept ? job::without_vent(job, id, *chosen) : job::with_vents(job, id, vents(true, chosen), false);
    desk_.selection.choose_vent(std::nullopt);
    commit(tr("Delete vent"), std::move(without));
    emit said(kept ? tr("Deleted; the program places what is still needed.")
                   : tr("Deleted; the others stay where they are. “Place the other vents” in the menu "
                        "brings the program’s back."));
    return true;
}

bool VentActs::lock(bool on) {
    const auto chosen = canvas_.vent_chosen();
    if (!chosen) return false;
    const auto& job = desk_.document.job();
    const std::string id = desk_.selection.drawer();
    const auto& vent = canvas_.air()->vented.vents[*chosen];
    if (on && vent.why != air::VentFor::kept) {
        const shape::Vec at = vent_in_drawer(job, *canvas_.built_plan(), vent.at);
        commit(tr("Lock vent"), job::with_vent(job, id, {at, vent.diameter_mm, {}}));
    } else if (!on && vent.why == air::VentFor::kept) {
        auto freed = job::without_vent(job, id, *chosen);
        commit(tr("Unlock vent"),
               job::with_vents(freed, id, job::kept_vents(*job::find_drawer(freed, id)), true));
        emit said(tr("The program places it again, where it is needed."));
    }
    return true;
}

void VentActs::offer_drills() {
    const auto chosen = canvas_.vent_chosen();
    if (!chosen) return;
    drills_->clear();
    const auto& job = desk_.document.job();
    const double now = canvas_.air()->vented.vents[*chosen].diameter_mm;
    std::vector<double> sizes = job.shop->drills_mm;
    if (!contains(sizes, now)) sizes.push_back(now);
    std::sort(sizes.begin(), sizes.end());
    for (const double mm : sizes) {
        if (mm > most_drill_mm) continue;
        auto* one = drills_->addAction(language::say_length(mm, job.display_units));
        one->setCheckable(true);
        one->setChecked(mm == now);
        connect(one, &QAction::triggered, this, [this, mm] { drill(mm); });
    }
    drills_->popup(QCursor::pos());
}

void VentActs::drill(double diameter_mm) {
    const auto chosen = canvas_.vent_chosen();
    if (!chosen) return;
    const auto& job = desk_.document.job();
    const std::string id = desk_.selection.drawer();
    const auto& vent = canvas_.air()->vented.vents[*chosen];
    if (vent.why == air::VentFor::kept)
        return commit(tr("Drill of a vent"), job::with_vent_drilled(job, id, *chosen, diameter_mm));
    const shape::Vec at = vent_in_drawer(job, *canvas_.built_plan(), vent.at);
    commit(tr("Drill of a vent"), job::with_vent(job, id, {at, diameter_mm, {}}));
}

void VentActs::place_rest(bool on) {
    const auto& job = desk_.document.job();
    const std::string id = desk_.selection.drawer();
    if (!canvas_.air() || canvas_.built_plan() == nullptr) return;
    commit(on ? tr("Place the other vents") : tr("Keep the vents as they are"),
           job::with_vents(job, id, vents(!on, std::nullopt), on));
}

} // namespace drawercast::app
