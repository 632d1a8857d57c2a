// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/excerpt.h"

#include "base/contains.h"
#include "job/free_ids.h"
#include "job/pocket_numbers.h"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace drawercast::job {

namespace {

/// The same thing to a maker: all but the id and how many there are.
bool same_thing(Object a, const Object& b) {
    a.id = b.id;
    a.count = b.count;
    return a == b;
}

Drawer frame_of(const Drawer& drawer) {
    Drawer frame = drawer;
    frame.pockets.clear();
    frame.obstructions.clear();
    frame.vents.reset();
    frame.pours.clear();
    return frame;
}

int pockets_of(const Job& job, const std::string& object) {
    int count = 0;
    for (const auto& drawer : job.drawers)
        count += static_cast<int>(std::count_if(drawer->pockets.begin(), drawer->pockets.end(),
                                                [&](const Pocket& one) { return one.object == object; }));
    return count;
}

/// Id of that thing in the job; the one of the same id before others. Empty: the job has none.
std::string id_of(const Job& job, const Object& object) {
    const Object* same_id = find_object(job, object.id);
    if (same_id != nullptr && same_thing(*same_id, object)) return same_id->id;
    for (const auto& one : job.objects)
        if (same_thing(*one, object)) return one->id;
    return {};
}

std::string add(Job& job, Object object) {
    object.id = free_object_id(job);
    job.objects.emplace_back(object);
    return object.id;
}

} // namespace

Job excerpt(const Job& job, const Subjects& pockets, const std::vector<std::string>& objects) {
    Job part;
    part.display_units = job.display_units;
    std::map<std::string, int> counts;
    std::optional<Drawer> frame;
    for (const auto& drawer : job.drawers)
        for (const auto& pocket : drawer->pockets) {
            if (!contains(pockets, subject_of(pocket))) continue;
            if (!frame) frame = frame_of(*drawer);
            frame->pockets.push_back(pocket);
            ++counts[pocket.object];
        }
    if (frame) part.drawers.emplace_back(std::move(*frame));
    for (const auto& object : job.objects) {
        const auto count = counts.find(object->id);
        if (count == counts.end() && !contains(objects, object->id)) continue;
        Object copy = *object;
        if (count != counts.end()) copy.count = count->second;
        part.objects.emplace_back(copy);
    }
    return part;
}

Merged merged(const Job& job, const Job& part, const std::string& drawer, shape::Vec by) {
    Merged result{job, {}, {}};
    const bool has_pockets = std::any_of(part.drawers.begin(), part.drawers.end(),
                                         [](const auto& one) { return !one->pockets.empty(); });
    if (has_pockets && find_drawer(job, drawer) == nullptr) return result;
    std::map<std::string, std::string> ids; // in the part, in the job
    for (const auto& object : part.objects) {
        const bool placed = pockets_of(part, object->id) > 0;
        std::string id = placed ? id_of(result.job, *object) : std::string();
        if (id.empty()) id = add(result.job, *object);
        ids[object->id] = id;
        result.objects.push_back(id);
    }
    std::map<std::string, int> numbers; // the next one of each object
    std::vector<Pocket> pasted;
    for (const auto& from : part.drawers)
        for (Pocket pocket : from->pockets) {
            const auto id = ids.find(pocket.object);
            if (id == ids.end()) continue;
            pocket.object = id->second;
            const auto [next, fresh] = numbers.try_emplace(pocket.object, 0);
            if (fresh) next->second = next_number(result.job, pocket.object);
            pocket.n = next->second++;
            pocket.locked = false;
            result.pockets.push_back(subject_of(pocket));
            pasted.push_back(std::move(pocket));
        }
    for (auto& into : result.job.drawers)
        if (into->id == drawer && !pasted.empty())
            into.edit([&](Drawer& d) { d.pockets.insert(d.pockets.end(), pasted.begin(), pasted.end()); });
    for (const auto& [object, next] : numbers) raise_count(result.job, object);
    result.job = moved(std::move(result.job), result.pockets, by);
    return result;
}

} // namespace drawercast::job
