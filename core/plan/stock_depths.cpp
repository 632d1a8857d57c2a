// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/stock_depths.h"

#include "job/catalog.h"
#include "plan/stock_stage.h"

namespace drawercast::plan {

job::Job with_depths_from_boards(job::Job job, std::string_view object) {
    const PlateParts plate = plate_parts(job, {});
    const auto boards = stock::boards_for_blocks(job::boards_of(*job.shop), plate.box_board, plate.board);
    const double enlargement = 1 / (1 - job.foam->shrinkage), film = job.mold.film_mm;
    for (auto& shared : job.objects) {
        if (!object.empty() && shared->id != object) continue;
        shared.edit([&](job::Object& changed) {
            for (auto& level : changed.levels)
                if (auto* sunk = std::get_if<job::Sunk>(&level.form))
                    sunk->depth_mm = stock::depth_from_boards_mm(sunk->depth_mm, boards, enlargement, film);
        });
    }
    return job;
}

} // namespace drawercast::plan
