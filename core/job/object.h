// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/unknown.h"
#include "shape/contour.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

/// The objects to be kept, in their own planes.
namespace drawercast::job {

struct Sunk { ///< an outline with a depth from the insert's face
    shape::Given outline;
    double depth_mm = 0;
    bool operator==(const Sunk&) const = default;
};
struct Through { ///< the object stands on the drawer's bottom
    shape::Given outline;
    bool operator==(const Through&) const = default;
};
struct Cylinder {
    double length_mm = 0;
    double diameter_mm = 0;
    bool operator==(const Cylinder&) const = default;
};
struct Lying { ///< coaxial cylinders lying down, side by side along x, centered as a whole on the origin
    std::vector<Cylinder> cylinders;
    double axis_mm = 0; ///< depth of the axis below the face, < 0 above it
    bool operator==(const Lying&) const = default;
};

struct Level {
    std::variant<Sunk, Through, Lying> form;
    shape::Pose pose; ///< in the object's own plane
    Unknowns unknown;
    bool operator==(const Level&) const = default;
};

/// Which turns an arrangement may give an object: any quarter, any angle, none but the one it has, end for
/// end (what must lie along the drawer, either way round).
enum class Turns { quarter, free, none, half };

struct Object {
    std::string id;
    std::string name;
    int count = 1;
    double mass_g = 0;
    double height_mm = 0;
    std::optional<double> fit_mm;     ///< null: by the foam's firmness
    std::optional<double> fit_end_mm; ///< null: as fit_mm
    Turns turns = Turns::quarter;
    std::optional<double> volume_ml; ///< measured by dunking; then the outline serves walls and template only
    std::string note;
    std::vector<Level> levels; ///< 1 to 4
    Unknowns unknown;
    bool operator==(const Object&) const = default;
};

} // namespace drawercast::job
