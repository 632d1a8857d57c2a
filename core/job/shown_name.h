// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <string>

namespace drawercast::job {

/// What a drawer is called where a reader sees it: its name, its id where it has none.
std::string shown_name(const Drawer& drawer);
/// Of the drawer with that id; the id itself where the job has no such drawer.
std::string shown_name(const Job& job, const std::string& id);

} // namespace drawercast::job
