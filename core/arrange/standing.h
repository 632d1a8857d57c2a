// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "layout/checks.h"

#include <vector>

namespace drawercast::arrange {

/// The pockets of a drawer as the checks want them; those without a form are left out.
std::vector<layout::Standing> standing_in(const job::Job& job, const job::Drawer& drawer);

/// Whether a check is about where something stands: a wall, an edge, or what it lies over.
bool about_place(const layout::Check& check);

} // namespace drawercast::arrange
