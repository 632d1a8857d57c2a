// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/edit.h"

#include "job/pocket_numbers.h"

#include <algorithm>
#include <utility>

namespace drawercast::job {

namespace {

template <class Item>
void put(std::vector<Shared<Item>>& items, const Item& item) {
    for (auto& one : items)
        if (one->id == item.id) {
            if (!(*one == item)) one = item;
            return;
        }
    items.emplace_back(item);
}

} // namespace

Job with_object(Job job, const Object& object) {
    put(job.objects, object);
    raise_count(job, object.id);
    return job;
}

Job with_objects(Job job, std::vector<Object> objects) {
    FreeObjectIds ids(job);
    for (Object& object : objects) {
        object.id = ids.next();
        job.objects.emplace_back(std::move(object));
    }
    return job;
}

Job without_object(Job job, const std::string& id) {
    std::erase_if(job.objects, [&](const Shared<Object>& object) { return object->id == id; });
    const auto of_it = [&](const Pocket& pocket) { return pocket.object == id; };
    for (auto& drawer : job.drawers)
        if (std::any_of(drawer->pockets.begin(), drawer->pockets.end(), of_it))
            drawer.edit([&](Drawer& d) { std::erase_if(d.pockets, of_it); });
    return job;
}

Job with_object_copied(Job job, const std::string& id, std::string* made) {
    const Object* object = find_object(job, id);
    if (object == nullptr) return job;
    Object copy = *object;
    copy.id = free_object_id(job);
    if (made != nullptr) *made = copy.id;
    job.objects.emplace_back(copy);
    return job;
}

Job with_drawer(Job job, const Drawer& drawer) {
    put(job.drawers, drawer);
    return job;
}

Job without_drawer(Job job, const std::string& id) {
    std::erase_if(job.drawers, [&](const Shared<Drawer>& drawer) { return drawer->id == id; });
    std::erase_if(job.left_as_is, [&](const LeftAsIs& left) { return left.drawer == id; });
    return job;
}

Job without_left_as_is(Job job, const LeftAsIs& left) {
    std::erase_if(job.left_as_is, [&](const LeftAsIs& other) {
        return other.drawer == left.drawer && other.code == left.code && other.subjects == left.subjects;
    });
    return job;
}

Job with_left_as_is(Job job, LeftAsIs left) {
    std::sort(left.subjects.begin(), left.subjects.end());
    job = without_left_as_is(std::move(job), left);
    job.left_as_is.push_back(std::move(left));
    return job;
}

Job in_units(Job job, DisplayUnits units) {
    job.display_units = units;
    return job;
}

Job with_overpack(Job job, std::optional<double> overpack) {
    job.foam.edit([&](Foam& foam) { foam.overpack = overpack; });
    return job;
}

Job next_revision(Job job) {
    ++job.revision;
    return job;
}

Found find_pocket(const Job& job, const std::string& subject) {
    for (const auto& drawer : job.drawers)
        for (const auto& pocket : drawer->pockets)
            if (is_named(pocket, subject)) return {&*drawer, &pocket};
    return {};
}

const Drawer* find_drawer(const Job& job, const std::string& id) {
    for (const auto& drawer : job.drawers)
        if (drawer->id == id) return &*drawer;
    return nullptr;
}

} // namespace drawercast::job
