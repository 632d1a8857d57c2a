// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <cstddef>
#include <string>

/// The maker's own vents as pure functions from a job to the next one, as in edit.h: places are grained,
/// drawer frame; a drawer or a vent that is not there changes nothing. A drawer without vents of the maker's
/// whose rest places itself is again as if nothing had been said of them.
namespace drawercast::job {

/// The maker's vents of a drawer; none where all are automatic.
std::vector<KeptVent> kept_vents(const Drawer& drawer);
/// Whether vents beside the maker's are placed.
bool vents_automatic(const Drawer& drawer);

/// `made` gets its number among the kept ones.
Job with_vent(Job job, const std::string& drawer, const KeptVent& vent, std::size_t* made = nullptr);
Job with_vent_moved(Job job, const std::string& drawer, std::size_t index, shape::Vec at);
Job with_vent_drilled(Job job, const std::string& drawer, std::size_t index, double diameter_mm);
Job without_vent(Job job, const std::string& drawer, std::size_t index);
/// Just these vents, whether more are placed or not.
Job with_vents(Job job, const std::string& drawer, const std::vector<KeptVent>& keep, bool rest_auto);

} // namespace drawercast::job
