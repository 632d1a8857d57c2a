// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/ranges.h"

#include "base/demand.h"

#include <algorithm>
#include <array>

namespace drawercast::job {

namespace {

// Wide enough for anything a bench could hold, narrow enough to catch a slipped decimal point. Sorted by
// path.
constexpr auto table = [] {
    std::array rows{
        Range{"/as_built/*/blocks/*/body", 1, 100, false, true},
        Range{"/as_built/*/blocks/*/grown_mm", -100, 100},
        Range{"/as_built/*/blocks/*/height_mm", 0.1, 2000},
        Range{"/as_built/*/depth_mm", 10, 10000},
        Range{"/as_built/*/walls_mm", 1, 2000},
        Range{"/as_built/*/width_mm", 10, 10000},
        Range{"/drawers/*/clear_height_mm", 1, 2000},
        Range{"/drawers/*/gap_mm", -3, 10},
        Range{"/drawers/*/insert_mm", 5, 500},
        Range{"/drawers/*/load_kg", 0, 10000},
        Range{"/drawers/*/obstructions/*/turn_deg", -36000, 36000},
        Range{"/drawers/*/pockets/*/n", 1, 1000000, false, true},
        Range{"/drawers/*/pockets/*/notches/*/depth_mm", 0, 500, true},
        Range{"/drawers/*/pockets/*/notches/*/turn_deg", -36000, 36000},
        Range{"/drawers/*/pockets/*/turn_deg", -36000, 36000},
        Range{"/drawers/*/pours/*/ml", 0, 1e6, true},
        Range{"/drawers/*/vents/keep/*/diameter_mm", 0.5, 20},
        Range{"/foam/activation_kj_mol", 1, 200},
        Range{"/foam/cup/diameter_mm", 10, 1000},
        Range{"/foam/cup/full_s", 1, 86400},
        Range{"/foam/cup/half_s", 1, 86400},
        Range{"/foam/cup/liquid_g", 1, 100000},
        Range{"/foam/cup/parts_c", -20, 60},
        Range{"/foam/cup/risen_mm", 1, 5000},
        Range{"/foam/cup/room_c", -20, 60},
        Range{"/foam/cup/start_s", 0, 86400},
        Range{"/foam/demold_min", 0, 10080},
        Range{"/foam/density_a_g_ml", 0.5, 3},
        Range{"/foam/density_b_g_ml", 0.5, 3},
        Range{"/foam/expansion", 1.5, 60},
        Range{"/foam/kits/*/at_hand", 0, 100000, false, true},
        Range{"/foam/kits/*/price", 0, 1e7},
        Range{"/foam/kits/*/volume_ml", 0, 1e7, true},
        Range{"/foam/mix_s", 0, 3600},
        Range{"/foam/mold_hotter_k", 0, 150},
        Range{"/foam/overpack", 0, 2},
        Range{"/foam/pigment_of_b", 0, 0.5},
        Range{"/foam/pot_life_s", 1, 86400},
        Range{"/foam/ratio_a", 0, 1000, true},
        Range{"/foam/ratio_b", 0, 1000, true},
        Range{"/foam/reference_c", -20, 60},
        Range{"/foam/rise_s", 1, 86400},
        Range{"/foam/shrinkage", 0, 0.19},
        Range{"/foam/stress25_kpa", 0, 10000, true},
        Range{"/foam/stress40_kpa", 0, 10000, true},
        Range{"/foam/viscosity_pa_s", 0, 1e7, true},
        Range{"/left_as_is/*/value", -1e9, 1e9},
        Range{"/minimums/edge_mm", 0, 200},
        Range{"/minimums/floor_mm", 0, 200},
        Range{"/minimums/wall_mm", 0, 200},
        Range{"/minimums/wall_ratio", 0.5, 1000},
        Range{"/mold/fillet_mm", 0, 50},
        Range{"/mold/film_mm", 0, 5},
        Range{"/mold/pressure_factor", 1, 10},
        Range{"/mold/spacing_mm", 10, 2000},
        Range{"/mold/stiffeners/count", 0, 50, false, true},
        Range{"/mold/vent_spacing_mm", 10, 5000},
        Range{"/objects/*/count", 0, 100000, false, true},
        Range{"/objects/*/fit_end_mm", -20, 20},
        Range{"/objects/*/fit_mm", -20, 20},
        Range{"/objects/*/height_mm", 0, 2000},
        Range{"/objects/*/levels/*/axis_mm", -1000, 1000},
        Range{"/objects/*/levels/*/depth_mm", 0, 500, true},
        Range{"/objects/*/levels/*/lying/*/diameter_mm", 0, 2000, true},
        Range{"/objects/*/levels/*/lying/*/length_mm", 0, 5000, true},
        Range{"/objects/*/levels/*/turn_deg", -36000, 36000},
        Range{"/objects/*/mass_g", 0, 1e7},
        Range{"/objects/*/volume_ml", 0, 1e7, true},
        Range{"/outline/coordinate_mm", -10000, 10000},
        Range{"/outline/corner_mm", 0, 5000},
        Range{"/outline/sagitta_mm", -10000, 10000},
        Range{"/outline/size_mm", 0, 10000, true},
        Range{"/point/coordinate_mm", -100000, 100000},
        Range{"/revision", 0, 1e9, false, true},
        Range{"/shop/altitude_m", -500, 9000},
        Range{"/shop/boards/*/at_hand", 0, 100000, false, true},
        Range{"/shop/boards/*/elasticity_mpa", 1, 1e6},
        Range{"/shop/boards/*/poisson", 0, 0.49},
        Range{"/shop/boards/*/price", 0, 1e7},
        Range{"/shop/boards/*/rupture_mpa", 0.1, 10000},
        Range{"/shop/boards/*/sheet_mm", 10, 20000},
        Range{"/shop/boards/*/specific_gravity", 0.05, 3},
        Range{"/shop/boards/*/thickness_mm", 1, 200},
        Range{"/shop/bucket_left_ml", 0, 100000},
        Range{"/shop/closures/*/at_hand", 0, 1e6, false, true},
        Range{"/shop/closures/*/capacity_n", 0, 1e7, true},
        Range{"/shop/closures/*/diameter_mm", 0.5, 100},
        Range{"/shop/closures/*/length_mm", 1, 2000},
        Range{"/shop/closures/*/price", 0, 1e7},
        Range{"/shop/closures/*/seconds", 0, 3600},
        Range{"/shop/closures/*/stiffness_n_mm", 1, 1e7},
        Range{"/shop/container_ml", 10, 1e7},
        Range{"/shop/drills_mm", 0.1, 100},
        Range{"/shop/drivers", 1, 100, false, true},
        Range{"/shop/kerf_mm", 0, 20},
        Range{"/shop/mixer_ml", 10, 1e7},
        Range{"/shop/people", 1, 100, false, true},
        Range{"/shop/pour_l_s", 0.001, 100},
        Range{"/shop/pour_s", 0, 86400},
        Range{"/shop/saw_step_mm", 0, 50},
        Range{"/shop/seconds_per_closure", 0, 3600},
        Range{"/shop/set_plate_s", 0, 3600},
        Range{"/shop/stiffeners/*/elasticity_mpa", 1, 1e6},
        Range{"/shop/stiffeners/*/length_mm", 1, 20000},
        Range{"/shop/stiffeners/*/price", 0, 1e7},
        Range{"/shop/stiffeners/*/rupture_mpa", 0.1, 10000},
        Range{"/shop/stiffeners/*/section_mm", 1, 1000},
        Range{"/shop/stir_room", 0, 100},
        Range{"/shop/temperature_c", -20, 60},
        Range{"/shop/tubes/*/at_hand", 0, 100000, false, true},
        Range{"/shop/tubes/*/length_mm", 1, 20000},
        Range{"/shop/tubes/*/outside_mm", 1, 1000},
        Range{"/shop/tubes/*/price", 0, 1e7},
        Range{"/shop/tubes/*/wall_mm", 0.1, 100},
    };
    return rows;
}();

static_assert(std::is_sorted(table.begin(), table.end(),
                             [](const Range& a, const Range& b) { return a.path < b.path; }));

} // namespace

std::span<const Range> ranges() { return table; }

const Range& range_of(std::string_view path) {
    const auto found =
        std::lower_bound(table.begin(), table.end(), path,
                         [](const Range& range, std::string_view p) { return range.path < p; });
    DRAWERCAST_DEMAND(found != table.end() && found->path == path, "every number of a job has its range");
    return *found;
}

} // namespace drawercast::job
