// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/floor.h"
#include "air/trapped.h"

#include <span>
#include <vector>

namespace drawercast::air {

inline constexpr double vent_drill_mm = 3;   ///< common practice
inline constexpr double vent_inside_mm = 20; ///< of corner and wall vents from the walls (common practice)
inline constexpr double vented_ml = 5;       ///< a pocket that keeps no more counts as vented (our guess)
inline constexpr double meat_diameters = 2;  ///< wood between a vent and what it stands off (common practice)

/// What vents stand off: closures (their holes) and stiffeners.
struct KeptClear {
    struct Hole {
        shape::Vec at;
        double radius_mm = 0;
        bool operator==(const Hole&) const = default;
    };
    struct Strip {
        shape::Vec from;
        shape::Vec to;
        double half_mm = 0;
        bool operator==(const Strip&) const = default;
    };
    std::vector<Hole> holes;
    std::vector<Strip> strips;
    bool operator==(const KeptClear&) const = default;
};

/// Wood between the vent's edge and the nearest of `clear`, mm; < 0 where it runs into it.
double meat_mm(shape::Vec at, double diameter_mm, const KeptClear& clear);
/// Whether the vent runs into a stiffener.
bool on_strip(shape::Vec at, double diameter_mm, const KeptClear& clear);

enum class VentFor { kept, air, corner, wall };

struct Vent {
    shape::Vec at; ///< mold frame; those the program places on whole millimeters
    double diameter_mm = vent_drill_mm;
    VentFor why = VentFor::air;
    bool operator==(const Vent&) const = default;
};

struct VentsIn {
    std::vector<Vent> kept; ///< the maker's own
    bool place_rest = true;
    double spacing_mm = 150;
    KeptClear clear;
    bool operator==(const VentsIn&) const = default;
};

/// The maker's vents and, if wanted, the rest: as few as leave no air pocket more than vented_ml, each at a
/// pocket; then practice's: in the corners and along the walls, where these are not there already. All stand
/// off what must be kept clear: pockets' vents move as little as that takes, practice's move along the wall
/// or are left out.
std::vector<Vent> vents_of(const VentsIn& in, const Floor& floor, const Cells& cells, const AirTree& tree,
                           const std::vector<AirPocket>& pockets);

/// The cells under vents.
std::vector<std::size_t> cells_under(std::span<const Vent> vents, const Mesh& mesh);

} // namespace drawercast::air
