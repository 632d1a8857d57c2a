// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/object_keys.h"

#include "sheets/zones.h"

#include <algorithm>

namespace drawercast::sheets {

std::string object_key(const job::Job& job, const job::Drawer& drawer, const std::string& object) {
    int index = 0;
    for (const auto& one : job.objects) {
        const bool here = std::any_of(drawer.pockets.begin(), drawer.pockets.end(),
                                      [&](const job::Pocket& pocket) { return pocket.object == one->id; });
        if (!here) continue;
        if (one->id == object) {
            std::string key = zone_letter(index);
            for (char& c : key) c = static_cast<char>(c - 'A' + 'a');
            return key;
        }
        ++index;
    }
    return {};
}

} // namespace drawercast::sheets
