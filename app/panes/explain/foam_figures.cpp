// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/explain/foam_figures.h"

#include "panes/explain/figures.h"

#include <algorithm>

namespace drawercast::app {

std::vector<FoamFigure> foam_figures(const job::Job& job, const plan::Plan& plan,
                                     const plan::DrawerPlan& drawer, DosingUnit unit) {
    const auto answer = explain::Answer::of(job, plan, drawer, unit);
    if (!answer) return {};
    std::vector<FoamFigure> figures;
    for (const auto one : {explain::part_a, explain::part_b, explain::mixed, explain::poured, explain::holds,
                           explain::rise, explain::overpack, explain::batches, explain::insert_mass})
        figures.push_back(one(*answer));
    if (auto kits = explain::kits(*answer)) figures.push_back(std::move(*kits));
    if (drawer.band && drawer.pressure)
        for (const auto one : {explain::band, explain::closed, explain::build_for})
            figures.push_back(one(*answer));
    for (const auto one : {explain::pour_time, explain::touch, explain::contact})
        figures.push_back(one(*answer));
    return figures;
}

const FoamFigure* find_figure(const std::vector<FoamFigure>& figures, const QString& id) {
    const auto found = std::find_if(figures.begin(), figures.end(),
                                    [&](const FoamFigure& figure) { return figure.id == id; });
    return found == figures.end() ? nullptr : &*found;
}

} // namespace drawercast::app
