// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/edit.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace drawercast::job {

namespace {

shape::Pose grained_pose(shape::Pose pose) {
    pose.at = {grained(pose.at.x), grained(pose.at.y)};
    pose.turn_deg = grained(std::remainder(pose.turn_deg, 360.0));
    return pose;
}

bool among(const Subjects& which, const Pocket& pocket) {
    const std::string subject = subject_of(pocket);
    return std::find(which.begin(), which.end(), subject) != which.end();
}

/// Changes the pockets that `which` names; drawers without any keep their instance.
template <class Change>
Job changed(Job job, const Subjects& which, Change change) {
    for (auto& drawer : job.drawers) {
        const auto& pockets = drawer->pockets;
        if (std::none_of(pockets.begin(), pockets.end(), [&](const Pocket& p) { return among(which, p); }))
            continue;
        drawer.edit([&](Drawer& d) {
            for (auto& pocket : d.pockets)
                if (among(which, pocket)) change(pocket);
        });
    }
    return job;
}

int next_number(const Job& job, const std::string& object) {
    int most = 0;
    for (const auto& drawer : job.drawers)
        for (const auto& pocket : drawer->pockets)
            if (pocket.object == object) most = std::max(most, pocket.n);
    return most + 1;
}

Shared<Object>* object_of(Job& job, const std::string& id) {
    for (auto& object : job.objects)
        if (object->id == id) return &object;
    return nullptr;
}

/// More pockets than objects would be foam cut for nothing: the count follows.
void raise_count(Job& job, const std::string& id) {
    int placed_count = 0;
    for (const auto& drawer : job.drawers)
        for (const auto& pocket : drawer->pockets) placed_count += pocket.object == id;
    auto* object = object_of(job, id);
    if (object != nullptr && (*object)->count < placed_count)
        object->edit([&](Object& o) { o.count = placed_count; });
}

template <class Items>
std::string free_id(const Items& items, const char* letter) {
    for (int number = 1;; ++number) {
        const std::string id = letter + std::to_string(number);
        if (std::none_of(items.begin(), items.end(), [&](const auto& item) { return item->id == id; }))
            return id;
    }
}

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

Job moved(Job job, const Subjects& which, shape::Vec by) {
    return changed(std::move(job), which, [&](Pocket& pocket) {
        pocket.pose.at = pocket.pose.at + by;
        pocket.pose = grained_pose(pocket.pose);
    });
}

Job posed(Job job, const std::vector<Placement>& placements) {
    std::map<std::string, shape::Pose> poses;
    Subjects which;
    for (const auto& placement : placements) {
        poses.insert_or_assign(placement.subject, placement.pose);
        which.push_back(placement.subject);
    }
    return changed(std::move(job), which,
                   [&](Pocket& pocket) { pocket.pose = grained_pose(poses.at(subject_of(pocket))); });
}

Job turned(Job job, const Subjects& which, double by_deg, shape::Vec about) {
    const auto turn = shape::Turn::of_degrees(by_deg);
    return changed(std::move(job), which, [&](Pocket& pocket) {
        pocket.pose.at = about + turn(pocket.pose.at - about);
        pocket.pose.turn_deg += by_deg;
        pocket.pose = grained_pose(pocket.pose);
    });
}

Job locked(Job job, const Subjects& which, bool lock) {
    return changed(std::move(job), which, [&](Pocket& pocket) { pocket.locked = lock; });
}

Job removed(Job job, const Subjects& which) {
    for (auto& drawer : job.drawers) {
        const auto& pockets = drawer->pockets;
        if (std::none_of(pockets.begin(), pockets.end(), [&](const Pocket& p) { return among(which, p); }))
            continue;
        drawer.edit(
            [&](Drawer& d) { std::erase_if(d.pockets, [&](const Pocket& p) { return among(which, p); }); });
    }
    return job;
}

Job placed(Job job, const std::string& drawer_id, const std::string& object, const shape::Pose& pose,
           std::string* made) {
    if (object_of(job, object) == nullptr) return job;
    for (auto& drawer : job.drawers) {
        if (drawer->id != drawer_id) continue;
        Pocket pocket;
        pocket.object = object;
        pocket.n = next_number(job, object);
        pocket.pose = grained_pose(pose);
        if (made != nullptr) *made = subject_of(pocket);
        drawer.edit([&](Drawer& d) { d.pockets.push_back(pocket); });
        raise_count(job, object);
        break;
    }
    return job;
}

Job duplicated(Job job, const Subjects& which, shape::Vec by, Subjects* made) {
    for (const auto& subject : which) {
        const Found found = find_pocket(job, subject);
        if (found.pocket == nullptr) continue;
        Pocket copy = *found.pocket;
        const std::string drawer_id = found.drawer->id;
        copy.n = next_number(job, copy.object);
        copy.locked = false;
        copy.pose.at = copy.pose.at + by;
        copy.pose = grained_pose(copy.pose);
        if (made != nullptr) made->push_back(subject_of(copy));
        for (auto& drawer : job.drawers)
            if (drawer->id == drawer_id) drawer.edit([&](Drawer& d) { d.pockets.push_back(copy); });
        raise_count(job, copy.object);
    }
    return job;
}

Job with_notch(Job job, const std::string& subject, const Notch& notch) {
    return changed(std::move(job), {subject}, [&](Pocket& pocket) {
        pocket.notches.push_back(notch);
        pocket.notches.back().pose = grained_pose(notch.pose);
        pocket.notches.back().depth_mm = grained(notch.depth_mm);
    });
}

Job without_notch(Job job, const std::string& subject, std::size_t index) {
    return changed(std::move(job), {subject}, [&](Pocket& pocket) {
        if (index < pocket.notches.size())
            pocket.notches.erase(pocket.notches.begin() + static_cast<std::ptrdiff_t>(index));
    });
}

Job moved_to_drawer(Job job, const Subjects& which, const std::string& drawer_id) {
    if (find_drawer(job, drawer_id) == nullptr) return job;
    std::vector<Pocket> taken;
    for (const auto& drawer : job.drawers)
        if (drawer->id != drawer_id)
            for (const auto& pocket : drawer->pockets)
                if (among(which, pocket)) taken.push_back(pocket);
    if (taken.empty()) return job;
    Subjects leaving;
    for (const auto& pocket : taken) leaving.push_back(subject_of(pocket));
    job = removed(std::move(job), leaving);
    for (auto& drawer : job.drawers)
        if (drawer->id == drawer_id)
            drawer.edit([&](Drawer& d) { d.pockets.insert(d.pockets.end(), taken.begin(), taken.end()); });
    return job;
}

std::string free_object_id(const Job& job) { return free_id(job.objects, "i"); }
std::string free_drawer_id(const Job& job) { return free_id(job.drawers, "d"); }

Job with_object(Job job, const Object& object) {
    put(job.objects, object);
    raise_count(job, object.id);
    return job;
}

Job without_object(Job job, const std::string& id) {
    std::erase_if(job.objects, [&](const Shared<Object>& object) { return object->id == id; });
    for (auto& drawer : job.drawers) {
        const auto& pockets = drawer->pockets;
        if (std::none_of(pockets.begin(), pockets.end(), [&](const Pocket& p) { return p.object == id; }))
            continue;
        drawer.edit(
            [&](Drawer& d) { std::erase_if(d.pockets, [&](const Pocket& p) { return p.object == id; }); });
    }
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

Job next_revision(Job job) {
    ++job.revision;
    return job;
}

Found find_pocket(const Job& job, const std::string& subject) {
    for (const auto& drawer : job.drawers)
        for (const auto& pocket : drawer->pockets)
            if (subject_of(pocket) == subject) return {&*drawer, &pocket};
    return {};
}

const Drawer* find_drawer(const Job& job, const std::string& id) {
    for (const auto& drawer : job.drawers)
        if (drawer->id == id) return &*drawer;
    return nullptr;
}

} // namespace drawercast::job
