// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/unknown.h"
#include "shape/contour.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The drawers, and what lies where in them.
namespace drawercast::job {

struct Obstruction {
    shape::Given outline;
    shape::Pose pose;
    Unknowns unknown;
    bool operator==(const Obstruction&) const = default;
};

struct Notch { ///< finger notch; pose in the object's plane
    shape::Given outline;
    shape::Pose pose;
    double depth_mm = 0;
    Unknowns unknown;
    bool operator==(const Notch&) const = default;
};

struct Pocket {
    std::string object; ///< id
    int n = 1;          ///< unique per object, never reused
    shape::Pose pose;
    bool locked = false;
    std::vector<Notch> notches;
    Unknowns unknown;
    bool operator==(const Pocket&) const = default;
};
/// The pocket's name everywhere: "i1#1".
std::string subject_of(const Pocket& pocket);
bool is_named(const Pocket& pocket, std::string_view subject); ///< without a text being made of it

struct KeptVent {
    shape::Vec at;
    double diameter_mm = 3;
    Unknowns unknown = {};
    bool operator==(const KeptVent&) const = default;
};
struct Vents { ///< set by the maker
    std::vector<KeptVent> keep;
    bool rest_auto = true; ///< "rest": "auto" or "none"
    Unknowns unknown;
    bool operator==(const Vents&) const = default;
};
struct Pour {
    shape::Vec at;
    double ml = 0;
    Unknowns unknown = {};
    bool operator==(const Pour&) const = default;
};

struct Drawer {
    std::string id;
    std::string name;
    shape::Given
        outline; ///< rectangles and such are put so that the bounding box's lower-left corner is (0, 0)
    double clear_height_mm = 90;
    double insert_mm = 60;
    std::optional<double> gap_mm; ///< null: by the foam's firmness
    double load_kg = 25;
    std::vector<Obstruction> obstructions;
    std::vector<Pocket> pockets;
    std::optional<Vents> vents; ///< null: "auto"
    std::vector<Pour> pours;
    Unknowns unknown;
    bool operator==(const Drawer&) const = default;
};

} // namespace drawercast::job
