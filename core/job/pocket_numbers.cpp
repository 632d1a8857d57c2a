// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/pocket_numbers.h"

#include "base/number.h"
#include "job/free_ids.h"

#include <algorithm>
#include <string_view>

namespace drawercast::job {

namespace {

constexpr double most_pocket_number = 1e6; // as the reader takes

/// The number in a subject of that object, 0 where it is of another.
int number_in(const std::string& subject, const std::string& object) {
    const std::string start = object + "#";
    if (subject.compare(0, start.size(), start) != 0) return 0;
    const auto number = parse_number(std::string_view(subject).substr(start.size()));
    return number && *number >= 1 && *number < most_pocket_number ? static_cast<int>(*number) : 0;
}

} // namespace

int next_number(const Job& job, const std::string& object) {
    int most = 0;
    for (const auto& drawer : job.drawers)
        for (const auto& pocket : drawer->pockets)
            if (pocket.object == object) most = std::max(most, pocket.n);
    each_subject_spoken_of(
        job, [&](const std::string& subject) { most = std::max(most, number_in(subject, object)); });
    return most + 1;
}

void raise_count(Job& job, const std::string& id) {
    int placed_count = 0;
    for (const auto& drawer : job.drawers)
        for (const auto& pocket : drawer->pockets) placed_count += pocket.object == id;
    for (auto& object : job.objects)
        if (object->id == id && object->count < placed_count)
            object.edit([&](Object& o) { o.count = placed_count; });
}

} // namespace drawercast::job
