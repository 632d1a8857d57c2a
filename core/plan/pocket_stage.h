// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/cavity.h"
#include "layout/checks.h"
#include "layout/pocket.h"
#include "plan/object_table.h"

#include <memory>
#include <optional>
#include <vector>

namespace drawercast::plan {

/// The pockets of one drawer in the job's order, placed; those whose fit leaves nothing are refused with a
/// check. A pocket that did not change keeps its instance, so that later stages see at a glance what moved.
class PocketStage {
  public:
    void update(const std::vector<job::Pocket>& pockets, const ObjectTable& objects, double insert_mm);

    const std::vector<layout::Standing>& standing() const { return standing_; }
    const std::vector<casting::CavityPocket>& bodies() const { return bodies_; } ///< as standing()
    const std::vector<layout::Check>& checks() const {
        return checks_;
    } ///< of single pockets: refused, doubted

  private:
    struct Entry {
        job::Pocket pocket;
        std::shared_ptr<const ObjectEntry> object;
        layout::Standing standing;          ///< without a pocket where refused
        std::optional<layout::Check> check; ///< refused, or its volume doubted
    };
    struct FormEntry {
        std::shared_ptr<const ObjectEntry> object;
        std::vector<job::Notch> notches;
        std::shared_ptr<const layout::PocketForm> form;
    };

    bool still_holds(const Entry& entry, const job::Pocket& pocket, const ObjectTable& objects) const;
    Entry make(const job::Pocket& pocket, const std::shared_ptr<const ObjectEntry>& object);
    Expected<std::shared_ptr<const layout::PocketForm>>
    form_of(const job::Pocket& pocket, const std::shared_ptr<const ObjectEntry>& object);
    void drop_unused_forms();

    double insert_mm_ = 0;
    int objects_version_ = 0;
    std::vector<Entry> entries_;
    std::vector<FormEntry> forms_;
    std::vector<layout::Standing> standing_;
    std::vector<casting::CavityPocket> bodies_;
    std::vector<layout::Check> checks_;
};

} // namespace drawercast::plan
