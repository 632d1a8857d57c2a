// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/cavity.h"
#include "casting/profile.h"
#include "job/job.h"
#include "layout/insert.h"
#include "plan/layout_stage.h"
#include "plan/object_table.h"
#include "plan/plan.h"
#include "plan/pocket_stage.h"

#include <memory>
#include <optional>

namespace drawercast::plan {

/// What one drawer's answer reads besides the drawer itself.
struct Setting {
    const job::Job& job;
    const ObjectTable& objects;
    const Expected<casting::Profile>& profile; ///< of the foam today
};

/// One drawer's answer, and what is worth remembering of it for the next job.
class DrawerStage {
  public:
    DrawerPlan update(const job::Drawer& drawer, const Setting& setting);

  private:
    struct InsertIn {
        shape::Given outline;
        std::vector<job::Obstruction> obstructions;
        double insert_mm = 0;
        double gap_mm = 0;
        bool operator==(const InsertIn&) const = default;
    };
    void update_insert(const job::Drawer& drawer, double gap_mm);
    casting::Cavity update_cavity(const job::Job& job);

    std::optional<InsertIn> insert_in_;
    std::shared_ptr<const layout::Insert> insert_;
    std::optional<Problem> insert_problem_;
    PocketStage pockets_;
    LayoutStage layout_;
    casting::CavityMemory cavity_;
};

} // namespace drawercast::plan
