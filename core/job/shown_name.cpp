// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/shown_name.h"

#include "job/edit.h"

namespace drawercast::job {

std::string shown_name(const Drawer& drawer) { return drawer.name.empty() ? drawer.id : drawer.name; }

std::string shown_name(const Job& job, const std::string& id) {
    const Drawer* drawer = find_drawer(job, id);
    return drawer == nullptr ? id : shown_name(*drawer);
}

} // namespace drawercast::job
