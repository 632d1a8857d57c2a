// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/job.h"

#include <array>
#include <charconv>

namespace drawercast::job {

std::string subject_of(const Pocket& pocket) { return pocket.object + "#" + std::to_string(pocket.n); }

bool is_named(const Pocket& pocket, std::string_view subject) {
    const std::size_t mark = pocket.object.size();
    if (subject.size() <= mark || subject[mark] != '#' || subject.substr(0, mark) != pocket.object)
        return false;
    std::array<char, 16> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), pocket.n).ptr;
    return subject.substr(mark + 1) ==
           std::string_view(digits.data(), static_cast<std::size_t>(end - digits.data()));
}

const Object* find_object(const Job& job, std::string_view id) {
    for (const auto& object : job.objects)
        if (object->id == id) return &*object;
    return nullptr;
}

} // namespace drawercast::job
