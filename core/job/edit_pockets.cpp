// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "job/edit.h"
#include "job/pocket_numbers.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <iterator>
#include <map>
#include <set>
#include <utility>

namespace drawercast::job {

namespace {

/// From 0 up to 360.
double whole_turn_left(double degrees) {
    const double rest = grained(std::fmod(degrees, 360.0));
    const double left = rest < 0 ? grained(rest + 360) : rest;
    return left < 360 ? left : 0; // 359.9999999 is a whole turn in millionths
}

shape::Pose settled(const shape::Pose& pose) { return {grained_at(pose.at), whole_turn_left(pose.turn_deg)}; }

Notch settled(Notch notch) {
    notch.pose = settled(notch.pose);
    notch.depth_mm = grained(notch.depth_mm);
    return notch;
}

/// Which pockets an edit is about, asked of every pocket of a job.
class Chosen {
  public:
    explicit Chosen(const Subjects& which) : subjects_(which.begin(), which.end()) {}
    bool operator()(const Pocket& pocket) const { return subjects_.count(subject_of(pocket)) != 0; }

  private:
    std::set<std::string> subjects_;
};

/// Changes the drawers that hold any of the pockets; the others keep their instance.
template <class Change>
Job with_drawers_of(Job job, const Chosen& chosen, Change change) {
    for (auto& drawer : job.drawers)
        if (std::any_of(drawer->pockets.begin(), drawer->pockets.end(), std::cref(chosen)))
            drawer.edit(change);
    return job;
}

template <class Change>
Job changed(Job job, const Subjects& which, Change change) {
    const Chosen chosen(which);
    return with_drawers_of(std::move(job), chosen, [&](Drawer& drawer) {
        for (auto& pocket : drawer.pockets)
            if (chosen(pocket)) change(pocket);
    });
}

} // namespace

Subjects unlocked(const Job& job, const Subjects& which) {
    const Chosen chosen(which);
    std::set<std::string> free; // every pocket is looked at once, however many are chosen
    for (const auto& drawer : job.drawers)
        for (const auto& pocket : drawer->pockets)
            if (!pocket.locked && chosen(pocket)) free.insert(subject_of(pocket));
    Subjects left;
    std::copy_if(which.begin(), which.end(), std::back_inserter(left),
                 [&](const std::string& subject) { return free.count(subject) != 0; });
    return left;
}

Job moved(Job job, const Subjects& which, shape::Vec by) {
    return changed(std::move(job), which,
                   [&](Pocket& pocket) { pocket.pose.at = grained_at(pocket.pose.at + by); });
}

Job posed(Job job, const std::vector<Placement>& placements) {
    std::map<std::string, shape::Pose> poses;
    Subjects which;
    for (const auto& placement : placements) {
        poses.insert_or_assign(placement.subject, placement.pose);
        which.push_back(placement.subject);
    }
    return changed(std::move(job), which,
                   [&](Pocket& pocket) { pocket.pose = settled(poses.at(subject_of(pocket))); });
}

Job turned(Job job, const Subjects& which, double by_deg, shape::Vec about) {
    const auto turn = shape::Turn::of_degrees(by_deg);
    return changed(std::move(job), which, [&](Pocket& pocket) {
        pocket.pose = settled({about + turn(pocket.pose.at - about), pocket.pose.turn_deg + by_deg});
    });
}

Job locked(Job job, const Subjects& which, bool lock) {
    return changed(std::move(job), which, [&](Pocket& pocket) { pocket.locked = lock; });
}

Job removed(Job job, const Subjects& which) {
    const Chosen chosen(which);
    return with_drawers_of(std::move(job), chosen,
                           [&](Drawer& drawer) { std::erase_if(drawer.pockets, std::cref(chosen)); });
}

Job placed(Job job, const std::string& drawer_id, const std::string& object, const shape::Pose& pose,
           std::string* made) {
    if (find_object(job, object) == nullptr) return job;
    for (auto& drawer : job.drawers) {
        if (drawer->id != drawer_id) continue;
        Pocket pocket;
        pocket.object = object;
        pocket.n = next_number(job, object);
        pocket.pose = settled(pose);
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
        copy.pose.at = grained_at(copy.pose.at + by);
        if (made != nullptr) made->push_back(subject_of(copy));
        for (auto& drawer : job.drawers)
            if (drawer->id == drawer_id) drawer.edit([&](Drawer& d) { d.pockets.push_back(copy); });
        raise_count(job, copy.object);
    }
    return job;
}

Job with_notch(Job job, const std::string& subject, const Notch& notch) {
    return changed(std::move(job), {subject},
                   [&](Pocket& pocket) { pocket.notches.push_back(settled(notch)); });
}

Job with_notch_changed(Job job, const std::string& subject, std::size_t index, const Notch& notch) {
    return changed(std::move(job), {subject}, [&](Pocket& pocket) {
        if (index < pocket.notches.size()) pocket.notches[index] = settled(notch);
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
    const Chosen chosen(which);
    std::vector<Pocket> taken;
    Subjects leaving;
    for (const auto& drawer : job.drawers)
        for (const auto& pocket : drawer->pockets)
            if (drawer->id != drawer_id && chosen(pocket)) {
                taken.push_back(pocket);
                leaving.push_back(subject_of(pocket));
            }
    if (taken.empty()) return job;
    job = removed(std::move(job), leaving);
    for (auto& drawer : job.drawers)
        if (drawer->id == drawer_id)
            drawer.edit([&](Drawer& d) { d.pockets.insert(d.pockets.end(), taken.begin(), taken.end()); });
    return job;
}

} // namespace drawercast::job
