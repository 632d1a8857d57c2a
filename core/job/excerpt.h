// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <string>
#include <vector>

/// Parts of a job on their way into another place or another job: themselves a job, so that its file text is
/// what goes on a clipboard.
namespace drawercast::job {

/// A job of nothing but some pockets, notches and all, where they stand, and the objects in them; each object
/// counts as often as it has a pocket. Of several drawers the first one's name and sizes are kept. Further
/// objects come along without pockets, counted as they are.
Job excerpt(const Job& job, const Subjects& pockets, const std::vector<std::string>& objects = {});

struct Merged {
    Job job;
    Subjects pockets;                 ///< the new ones
    std::vector<std::string> objects; ///< ids of those the pockets are of, or that were brought along
};
/// All pockets of `part` put into a drawer of `job`, `by` from where they stood, numbered anew and unlocked,
/// with their objects: one that the job has already (whatever its id and count) is used, others are added.
/// Objects without a pocket are always added. Unchanged where there is no such drawer and `part` has pockets.
Merged merged(const Job& job, const Job& part, const std::string& drawer, shape::Vec by);

} // namespace drawercast::job
