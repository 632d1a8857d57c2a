// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/job.h"

namespace drawercast::job {

std::string subject_of(const Pocket& pocket) { return pocket.object + "#" + std::to_string(pocket.n); }

const Object* find_object(const Job& job, std::string_view id) {
    for (const auto& object : job.objects)
        if (object->id == id) return &*object;
    return nullptr;
}

} // namespace drawercast::job
