// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/foam.h"
#include "job/object.h"
#include "layout/checks.h"
#include "shape/fit.h"

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace drawercast::plan {

/// What the plan keeps of one object while it stays the same in the job. The entry's address stands for its
/// content.
struct ObjectEntry {
    job::Shared<job::Object> object;
    shape::Fit fit;
    std::shared_ptr<const layout::ObjectFacts> facts;
};

/// The job's objects by id, with what the foam makes of them. Entries of unchanged objects are kept.
class ObjectTable {
  public:
    void update(const std::vector<job::Shared<job::Object>>& objects, job::Firmness firmness);
    std::shared_ptr<const ObjectEntry> find(const std::string& id) const; ///< null where there is none
    /// Another number after each update that changed anything.
    int version() const { return version_; }

  private:
    std::map<std::string, std::shared_ptr<const ObjectEntry>> entries_;
    std::vector<job::Shared<job::Object>> objects_;
    std::optional<job::Firmness> firmness_;
    int version_ = 0;
};

} // namespace drawercast::plan
