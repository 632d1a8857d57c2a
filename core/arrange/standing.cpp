// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/standing.h"

#include "job/edit.h"

#include <memory>

namespace drawercast::arrange {

std::vector<layout::Standing> standing_in(const job::Job& job, const job::Drawer& drawer) {
    std::vector<layout::Standing> standing;
    for (const auto& pocket : drawer.pockets) {
        const job::Object* object = job::find_object(job, pocket.object);
        if (object == nullptr) continue;
        auto form = layout::pocket_form(*object, pocket.notches, layout::fit_of(*object, job.foam->firmness),
                                        drawer.insert_mm);
        if (!form) continue;
        const auto shared = std::make_shared<const layout::PocketForm>(std::move(*form));
        standing.push_back({std::make_shared<const layout::PlacedPocket>(layout::place(pocket, shared)),
                            std::make_shared<const layout::ObjectFacts>(layout::facts_of(*object))});
    }
    return standing;
}

bool about_place(const layout::Check& check) {
    using layout::Code;
    return check.code == Code::wall_thin || check.code == Code::edge_thin || check.code == Code::overlap ||
           check.code == Code::outside || check.code == Code::obstructed;
}

} // namespace drawercast::arrange
