// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/drawer.h"
#include "job/foam.h"
#include "job/mold.h"
#include "job/object.h"
#include "job/record.h"
#include "job/shared.h"
#include "job/shop.h"
#include "job/unknown.h"

#include <string>
#include <string_view>
#include <vector>

/// What the user said, and nothing computed. All lengths mm, finished (cured) sizes, drawer frame. Member
/// names are the job file's keys; resources/schema/job.schema.json holds every range. `std::optional` is the
/// file's "auto" or null.
namespace drawercast::job {

inline constexpr int format_version = 1;

enum class DisplayUnits { mm, inch, inch_32 };

struct Job {
    std::string title;
    int revision = 1;
    DisplayUnits display_units = DisplayUnits::mm;
    std::string currency;
    Shared<Shop> shop;
    Shared<Foam> foam;
    Mold mold;
    Minimums minimums;
    std::vector<Shared<Object>> objects;
    std::vector<Shared<Drawer>> drawers;
    std::vector<LeftAsIs> left_as_is;
    std::vector<AsBuilt> as_built;
    std::vector<Cast> casts;
    std::vector<Mark> log; ///< oldest first
    Unknowns unknown;
    bool operator==(const Job&) const = default;
};

/// The object of that id, or nullptr.
const Object* find_object(const Job& job, std::string_view id);

} // namespace drawercast::job
