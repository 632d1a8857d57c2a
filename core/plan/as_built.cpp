// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/as_built.h"

#include "casting/cavity.h"
#include "casting/dose.h"
#include "casting/form_casting.h"
#include "plan/foam_in_mold.h"
#include "shape/enlargement.h"
#include "shape/fit.h"

#include <algorithm>
#include <numeric>

namespace drawercast::plan {

namespace {

using Cut = layout::Cut<shape::InObject>;

/// One drawer's mold, measured.
class Measured {
  public:
    Measured(const job::Job& job, const DrawerPlan& drawer, const job::AsBuilt& built)
        : job_(job), drawer_(drawer), built_(built), k_(shape::enlargement_for(job.foam->shrinkage)) {}

    casting::Cavity cavity() const {
        auto insert = std::make_shared<layout::Insert>(*drawer_.insert);
        if (!built_.walls_mm.empty())
            insert->thickness_mm = std::accumulate(built_.walls_mm.begin(), built_.walls_mm.end(), 0.0) /
                                   static_cast<double>(built_.walls_mm.size()) / k_;
        casting::CavityIn in{insert, job_.mold.fillet_mm, k_, {}};
        for (const auto& pocket : drawer_.pockets) {
            auto now = changed(pocket, insert->thickness_mm);
            const auto* object = job::find_object(job_, pocket->object);
            auto volume_ml = object ? object->volume_ml : std::nullopt;
            if (volume_ml) // what was dunked, and what its block came out larger than planned
                *volume_ml += (casting::levels_mm3(*now->form, insert->thickness_mm) -
                               casting::levels_mm3(*pocket->form, drawer_.insert->thickness_mm)) /
                              1000;
            in.pockets.push_back({std::move(now), volume_ml});
        }
        return with_box(casting::cavity_of(in));
    }

  private:
    casting::Cavity with_box(casting::Cavity cavity) const {
        const double planned_w = drawer_.insert->box.width() * k_,
                     planned_d = drawer_.insert->box.height() * k_;
        const double more =
            built_.width_mm.value_or(planned_w) * built_.depth_mm.value_or(planned_d) - planned_w * planned_d;
        cavity.insert_area_mm2 += more;
        cavity.open_area_mm2 += more;
        cavity.gross_mm3 += more * cavity.height_mm;
        cavity.net_mm3 += more * cavity.height_mm;
        return cavity;
    }

    /// The pocket with its measured bodies, placed as before.
    std::shared_ptr<const layout::PlacedPocket>
    changed(const std::shared_ptr<const layout::PlacedPocket>& pocket, double insert_mm) const {
        auto form = std::make_shared<layout::PocketForm>(*pocket->form);
        for (Cut& cut : form->cuts)
            if (cut.through) cut.depth_mm = insert_mm;
        for (const auto& block : built_.blocks) {
            const auto body = static_cast<std::size_t>(block.body - 1);
            if (block.pocket == pocket->subject && body < form->cuts.size())
                change(block, *pocket, body, *form);
        }
        form->greatest_depth_mm = 0;
        for (const Cut& cut : form->cuts)
            form->greatest_depth_mm = std::max(form->greatest_depth_mm, cut.depth_mm);
        return std::make_shared<const layout::PlacedPocket>(placed(*pocket, std::move(form)));
    }

    void change(const job::BuiltBlock& block, const layout::PlacedPocket& pocket, std::size_t body,
                layout::PocketForm& form) const {
        Cut& cut = form.cuts[body];
        if (block.grown_mm != 0) grow(block.grown_mm / k_, pocket, body, cut);
        if (block.height_mm && !cut.through) { // what was measured, however wide it is
            const double deeper = *block.height_mm / k_ - cut.depth_mm;
            cut.depth_mm += deeper;
            if (cut.round) cut.round->axis_mm += deeper;
        }
    }

    /// Wider by `by_mm` on each side, as another fit would make it; a notch grows about its own place.
    void grow(double by_mm, const layout::PlacedPocket& pocket, std::size_t body, Cut& cut) const {
        const auto* object = job::find_object(job_, pocket.object);
        if (!object) return;
        const auto notches = notches_of(pocket.subject);
        shape::Fit fit = layout::fit_of(*object, job_.foam->firmness);
        fit.side_mm += by_mm, fit.end_mm += by_mm;
        if (cut.kind == Cut::Kind::notch) {
            const auto& notch = notches[static_cast<std::size_t>(cut.index)];
            if (const auto grown = shape::fitted(notch.outline, {by_mm, by_mm}))
                cut.outline.contour = shape::placed(*grown, notch.pose);
            return;
        }
        const auto other = layout::pocket_form(*object, notches, fit, drawer_.insert->thickness_mm);
        if (!other || body >= other->cuts.size()) return;
        cut.outline = other->cuts[body].outline;
        if (cut.round && other->cuts[body].round) {
            const double more = other->cuts[body].round->radius_mm - cut.round->radius_mm;
            cut.round->radius_mm += more, cut.depth_mm += more;
        }
    }

    std::vector<job::Notch> notches_of(const std::string& subject) const {
        for (const auto& drawer : job_.drawers)
            for (const auto& pocket : drawer->pockets)
                if (job::subject_of(pocket) == subject) return pocket.notches;
        return {};
    }

    static layout::PlacedPocket placed(const layout::PlacedPocket& pocket,
                                       std::shared_ptr<const layout::PocketForm> form) {
        job::Pocket as_given;
        as_given.object = pocket.object, as_given.pose = pocket.pose;
        layout::PlacedPocket out = layout::place(as_given, std::move(form));
        out.subject = pocket.subject;
        return out;
    }

    const job::Job& job_;
    const DrawerPlan& drawer_;
    const job::AsBuilt& built_;
    double k_;
};

} // namespace

std::optional<BuiltFigures> built_figures(const job::Job& job, const DrawerPlan& drawer,
                                          const job::AsBuilt& built) {
    if (!drawer.insert || !drawer.cavity) return std::nullopt;
    const auto profile = profile_today(job);
    if (!profile) return std::nullopt;
    BuiltFigures figures;
    figures.cavity = Measured(job, drawer, built).cavity();
    const casting::Cavity& cavity = figures.cavity;
    const auto pressure_with = [&](double poured_ml) {
        return pressure_in(job, mold_with(*profile, *job.foam, cavity, poured_ml, air_left_ml(drawer)));
    };
    if (const auto dose =
            casting::dose_of({*profile, job.foam, job.shop, cavity.net_mm3, cavity.insert_area_mm2}))
        figures.dose = *dose, figures.pressure = pressure_with(dose->poured_ml);
    if (drawer.dose)
        if (const auto pressure = pressure_with(drawer.dose->poured_ml))
            figures.planned_dose_kpa = pressure->closed_kpa;
    return figures;
}

const job::AsBuilt* last_built(const job::Job& job, const std::string& drawer) {
    const auto at = std::find_if(job.as_built.rbegin(), job.as_built.rend(),
                                 [&](const job::AsBuilt& built) { return built.drawer == drawer; });
    return at == job.as_built.rend() ? nullptr : &*at;
}

job::AsBuilt as_cut(const job::Job& job, const DrawerPlan& drawer, const stock::DrawerStock& stock) {
    const double k = shape::enlargement_for(job.foam->shrinkage), film = job.mold.film_mm;
    job::AsBuilt built;
    built.drawer = drawer.id;
    built.width_mm = stock.box.width_mm, built.depth_mm = stock.box.depth_mm;
    built.walls_mm = {stock.box.height_mm};
    for (const auto& block : stock.blocks) {
        const auto* pocket = find_pocket(drawer, block.subject);
        if (!pocket) continue;
        for (const auto& body : block.bodies) {
            if (body.rest == stock::Rest::butts || body.tube || body.make == stock::Make::shaped) continue;
            const auto& cut = pocket->form->cuts[static_cast<std::size_t>(body.of)];
            const stock::Panel exact = stock::panel_of(cut.outline.contour);
            const double wider = (body.panel.length_mm + body.panel.width_mm) / 2 -
                                 (exact.length_mm + exact.width_mm) / 2 * k + 2 * film;
            job::BuiltBlock odd{block.subject, body.of + 1, std::nullopt, wider / 2, {}};
            if (!cut.through) odd.height_mm = body.top_mm + film;
            built.blocks.push_back(std::move(odd));
        }
    }
    return built;
}

} // namespace drawercast::plan
