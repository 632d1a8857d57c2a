// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <functional>
#include <set>
#include <string>

/// Ids are never used again while anything in the job speaks of what had them.
namespace drawercast::job {

/// Ids of the form "i7" that no object has and nothing speaks of, lowest first; each is given out once.
class FreeObjectIds {
  public:
    explicit FreeObjectIds(const Job& job);
    std::string next();

  private:
    std::set<std::string> taken_;
    int last_ = 0;
};

std::string free_object_id(const Job& job);
std::string free_drawer_id(const Job& job); ///< likewise, "d7"

/// do_with(subject) for each pocket that a look left as is, a mold as built or a cast speaks of.
void each_subject_spoken_of(const Job& job, const std::function<void(const std::string&)>& do_with);

} // namespace drawercast::job
