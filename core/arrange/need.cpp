// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/need.h"

#include "base/contains.h"
#include "job/edit.h"
#include "layout/insert.h"
#include "layout/minimums.h"
#include "layout/pocket.h"

#include <algorithm>

namespace drawercast::arrange {

namespace {

struct Areas {
    double objects = 0;
    double with_fit = 0;
    double with_walls = 0;
};

/// The largest hollow's: those of one pocket may lie over each other.
double largest(const layout::PocketForm& form, double around_mm) {
    double most = 0;
    for (const auto& cut : form.cuts) {
        shape::Contour outline = cut.outline.contour;
        outline.round_mm += around_mm;
        most = std::max(most, shape::area(outline));
    }
    return most;
}

/// Of one of that object; nothing where it has no pocket.
Areas areas_of(const job::Job& job, const job::Object& object, double insert_mm) {
    const auto bare = layout::pocket_form(object, {}, {}, insert_mm);
    const auto form = layout::pocket_form(object, {}, layout::fit_of(object, job.foam->firmness), insert_mm);
    if (!bare || !form) return {};
    const auto minimums = layout::minimums_of(job.minimums, job.foam->firmness);
    return {largest(*bare, 0), largest(*form, 0), largest(*form, minimums.wall(form->greatest_depth_mm) / 2)};
}

/// How many of it are to lie in those drawers: all but what stands in others.
int count_in(const job::Job& job, const job::Object& object, const std::vector<std::string>& drawers) {
    int count = object.count;
    for (const auto& drawer : job.drawers) {
        if (contains(drawers, drawer->id)) continue;
        for (const auto& pocket : drawer->pockets) count -= pocket.object == object.id ? 1 : 0;
    }
    return std::max(count, 0);
}

/// Of an insert, what its edges leave: beside an edge half a wall is counted with the hollow already. As if
/// its corners were a rectangle's.
double room_of(const job::Job& job, const job::Drawer& drawer) {
    const auto insert = layout::insert_of(drawer, layout::gap_of(drawer, job.foam->firmness));
    if (!insert) return 0;
    const auto minimums = layout::minimums_of(job.minimums, job.foam->firmness);
    const double in = std::max(0.0, minimums.edge_mm - minimums.wall_mm / 2);
    double area = insert->area_mm2;
    for (const auto& edge : insert->edges) area -= shape::perimeter(edge.contour) * in;
    return std::max(0.0, area + 4 * in * in);
}

} // namespace

Need need_of(const job::Job& job, const std::vector<std::string>& drawers) {
    double room = 0;
    double insert_mm = 0;
    for (const std::string& id : drawers)
        if (const job::Drawer* drawer = job::find_drawer(job, id)) {
            room += room_of(job, *drawer);
            insert_mm = std::max(insert_mm, drawer->insert_mm);
        }
    if (room <= 0) return {};
    Need need;
    for (const auto& object : job.objects) {
        const Areas areas = areas_of(job, *object, insert_mm);
        const double share = count_in(job, *object, drawers) / room;
        need.objects += share * areas.objects;
        need.with_fit += share * areas.with_fit;
        need.with_walls += share * areas.with_walls;
    }
    return need;
}

Need need_of(const job::Job& job) {
    std::vector<std::string> all;
    for (const auto& drawer : job.drawers) all.push_back(drawer->id);
    return need_of(job, all);
}

} // namespace drawercast::arrange
