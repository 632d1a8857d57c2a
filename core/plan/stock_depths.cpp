// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/stock_depths.h"

#include "job/catalog.h"
#include "plan/plate_parts.h"
#include "plan/stock_stage.h"
#include "shape/enlargement.h"

#include <algorithm>

namespace drawercast::plan {

namespace {

/// The boards that blocks for an object are made of.
std::vector<job::Board> boards_for(const job::Job& job, const Plan& plan, const std::string& object) {
    const auto holds = [&](const DrawerPlan& drawer) {
        return std::any_of(drawer.pockets.begin(), drawer.pockets.end(),
                           [&](const auto& pocket) { return pocket->object == object; });
    };
    auto drawer = std::find_if(plan.drawers.begin(), plan.drawers.end(), holds);
    if (drawer == plan.drawers.end()) drawer = plan.drawers.begin();
    const PlateParts plate = plate_parts(job, drawer == plan.drawers.end() ? DrawerPlan{} : *drawer);
    return stock::boards_for_blocks(job::boards_of(*job.shop), plate.box_board, plate.board);
}

} // namespace

job::Job with_depths_from_boards(job::Job job, const Plan& plan, std::string_view object) {
    const double enlargement = shape::enlargement_for(job.foam->shrinkage), film = job.mold.film_mm;
    for (auto& shared : job.objects) {
        if (!object.empty() && shared->id != object) continue;
        const auto boards = boards_for(job, plan, shared->id);
        shared.edit([&](job::Object& changed) {
            for (auto& level : changed.levels)
                if (auto* sunk = std::get_if<job::Sunk>(&level.form))
                    sunk->depth_mm = stock::depth_from_boards_mm(sunk->depth_mm, boards, enlargement, film);
        });
    }
    return job;
}

} // namespace drawercast::plan
