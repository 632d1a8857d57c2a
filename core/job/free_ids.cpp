// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/free_ids.h"

#include <algorithm>

namespace drawercast::job {

namespace {

template <class Items>
bool has_id(const Items& items, const std::string& id) {
    return std::any_of(items.begin(), items.end(), [&](const auto& item) { return item->id == id; });
}

template <class Items>
bool names_drawer(const Items& items, const std::string& id) {
    return std::any_of(items.begin(), items.end(), [&](const auto& item) { return item.drawer == id; });
}

} // namespace

FreeObjectIds::FreeObjectIds(const Job& job) {
    for (const auto& object : job.objects) taken_.insert(object->id);
    each_subject_spoken_of(
        job, [&](const std::string& subject) { taken_.insert(subject.substr(0, subject.find('#'))); });
}

std::string FreeObjectIds::next() {
    while (true)
        if (std::string id = "i" + std::to_string(++last_); taken_.count(id) == 0) return id;
}

std::string free_object_id(const Job& job) { return FreeObjectIds(job).next(); }

std::string free_drawer_id(const Job& job) {
    for (int number = 1;; ++number)
        if (std::string id = "d" + std::to_string(number);
            !has_id(job.drawers, id) && !names_drawer(job.casts, id) && !names_drawer(job.as_built, id) &&
            !names_drawer(job.log, id))
            return id;
}

void each_subject_spoken_of(const Job& job, const std::function<void(const std::string&)>& do_with) {
    for (const auto& left : job.left_as_is)
        for (const auto& subject : left.subjects) do_with(subject);
    for (const auto& built : job.as_built)
        for (const auto& block : built.blocks) do_with(block.pocket);
    for (const auto& cast : job.casts)
        for (const auto& fit : cast.fits) do_with(fit.pocket);
}

} // namespace drawercast::job
