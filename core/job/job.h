// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/shared.h"
#include "shape/contour.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// What the user said, and nothing computed. All lengths mm, finished (cured) sizes, drawer frame. Member
/// names are the job file's keys; resources/schema/job.schema.json holds every range. `std::optional` is the
/// file's "auto" or null.
namespace drawercast::job {

inline constexpr int format_version = 1;

/// Members of the file that this version does not know, kept as their own text so that nothing is lost on
/// saving.
struct Unknown {
    std::string key;
    std::string raw; ///< the value's JSON text, verbatim
    bool operator==(const Unknown&) const = default;
};
using Unknowns = std::vector<Unknown>;

// ---- shop ----
struct Board {
    std::string name;
    double thickness_mm = 16;
    double elasticity_mpa = 2200;
    double poisson = 0.25;
    double rupture_mpa = 11;
    double specific_gravity = 0.605; ///< oven-dry
    double sheet_length_mm = 2440;
    double sheet_width_mm = 1220;
    double price = 0;
    int at_hand = 0;
    Unknowns unknown;
    bool operator==(const Board&) const = default;
};

struct Stiffener {
    std::string name;
    double width_mm = 45;
    double height_mm = 45; ///< standing on the plate
    double elasticity_mpa = 9000;
    double rupture_mpa = 30;
    double length_mm = 2400;
    double price = 0;
    Unknowns unknown;
    bool operator==(const Stiffener&) const = default;
};

enum class ClosureKind { screw, rod, clamp, strap };

struct Closure {
    std::string name;
    ClosureKind kind = ClosureKind::screw;
    double diameter_mm = 4;
    double length_mm = 50;
    double stiffness_n_mm = 1500;
    std::optional<double> capacity_n; ///< null: the screw formula
    std::optional<double> seconds;    ///< null: shop.seconds_per_closure
    double price = 0;
    std::optional<int> at_hand;
    Unknowns unknown;
    bool operator==(const Closure&) const = default;
};

struct Tube { ///< for round blocks
    std::string name;
    double outside_mm = 50; ///< diameter
    double wall_mm = 1.8;
    double length_mm = 2000;
    double price = 0;
    int at_hand = 0;
    Unknowns unknown;
    bool operator==(const Tube&) const = default;
};

/// What is used up beside wood and foam.
enum class Supply { sealer, release, clay, seal, glue, pigment, solvent, gloves, cups };

/// How a supply is sold, and what is left of it. Amounts in the unit its need is told in: L of sealer,
/// release and solvent; mL of clay, seal and pigment; g of glue; pairs of gloves; cups.
struct SupplyPack {
    Supply supply = Supply::sealer;
    double amount = 1;  ///< in one package
    double price = 0;   ///< of a package
    double at_hand = 0; ///< amount left, opened or not
    Unknowns unknown;
    bool operator==(const SupplyPack&) const = default;
};

struct Shop {
    double temperature_c = 23;
    double altitude_m = 0;
    int people = 1;
    int drivers = 1;
    double seconds_per_closure = 3;
    double pour_l_s = 0.1;
    std::optional<double> pour_s;
    double set_plate_s = 8;
    double container_ml = 19000;
    double stir_room = 1.0;
    std::optional<double> mixer_ml;
    std::optional<double> bucket_left_ml;
    double scale_step_g = 1; ///< what the scale shows
    double opens_h = 8;      ///< hands work from here, hours of the day
    double closes_h = 17;
    double hour_price = 0; ///< of an hour's work, in quotes
    double margin = 0;     ///< on top of the cost, as a share of it, in quotes
    double saw_step_mm = 0.5;
    double kerf_mm = 3.2;
    std::vector<double> drills_mm{2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 8, 10};
    std::optional<std::string> start;
    std::vector<Board> boards;         ///< empty: the built-in catalog
    std::vector<Stiffener> stiffeners; ///< empty: the built-in catalog
    std::vector<Closure> closures;     ///< empty: the built-in catalog
    std::vector<Tube> tubes;           ///< empty: the usual drain pipes
    std::vector<SupplyPack> supplies;  ///< those whose packages are known
    Unknowns unknown;
    bool operator==(const Shop&) const = default;
};

// ---- foam ----
enum class Firmness { firm, medium, soft };

struct Kit {
    std::string name;
    double volume_ml = 1900;
    double price = 0;
    int at_hand = 0;
    Unknowns unknown;
    bool operator==(const Kit&) const = default;
};

struct Cup { ///< test cup: straight-sided, risen measured from its floor
    bool use = false;
    double diameter_mm = 80;
    double liquid_g = 100;
    double risen_mm = 100;
    double start_s = 50;
    double half_s = 90;
    double full_s = 180;
    double parts_c = 23;
    double room_c = 23;
    Unknowns unknown;
    bool operator==(const Cup&) const = default;
};

struct Foam {
    std::string name = "foam";
    double expansion = 6; ///< free-rise volume over liquid volume at reference_c and 101.325 kPa
    double reference_c = 23;
    double ratio_a = 1; ///< by volume
    double ratio_b = 1;
    double density_a_g_ml = 1.20;
    double density_b_g_ml = 1.02;
    std::optional<double> overpack; ///< null: "auto"
    double mix_s = 20;
    double pot_life_s = 50;
    double rise_s = 180;
    double demold_min = 120;
    double shrinkage = 0.004;
    double pigment_of_b = 0.02;
    double stress25_kpa = 12;
    double stress40_kpa = 22;
    double viscosity_pa_s = 200;
    std::optional<double> activation_kj_mol;
    double mold_hotter_k = 10;
    Firmness firmness = Firmness::firm;
    bool crush = false;
    std::vector<Kit> kits;
    std::optional<Cup> cup;
    std::vector<Cup> cups; ///< further ones of the day; those in use count together with `cup`
    Unknowns unknown;
    bool operator==(const Foam&) const = default;
};

// ---- mold ----
enum class BoxCorner { lapped, pinwheel };
enum class Along { short_side, long_side };

struct StiffenerChoice {
    int count = 0;
    std::string name;
    Along along = Along::short_side;
    bool glued = false;
    Unknowns unknown;
    bool operator==(const StiffenerChoice&) const = default;
};

struct Mold {
    double fillet_mm = 5;
    double film_mm = 0.1;
    BoxCorner corner = BoxCorner::lapped;
    bool gasket = false;
    std::optional<double> spacing_mm;
    std::optional<std::string> board;
    std::optional<std::string> box_board;
    std::optional<std::string> closure;
    std::optional<StiffenerChoice> stiffeners;
    double vent_spacing_mm = 150;
    double pressure_factor = 1.5;
    bool share_walls = false; ///< drawers are cast one after the other, and equal walls serve them all
    Unknowns unknown;
    bool operator==(const Mold&) const = default;
};

struct Minimums { ///< null: by the foam's firmness
    std::optional<double> wall_mm;
    std::optional<double> wall_ratio; ///< wall at least depth / ratio
    std::optional<double> edge_mm;
    std::optional<double> floor_mm;
    Unknowns unknown;
    bool operator==(const Minimums&) const = default;
};

// ---- objects ----
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

// ---- drawers ----
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

// ---- the job ----
enum class DisplayUnits { mm, inch, inch_32 };

struct LeftAsIs { ///< a look the maker accepts, until its figure gets worse than `value`
    std::string drawer;
    std::string code;
    std::vector<std::string> subjects; ///< sorted
    double value = 0;
    Unknowns unknown;
    bool operator==(const LeftAsIs&) const = default;
};

struct BuiltBlock {     ///< one body of a block that came out other than planned
    std::string pocket; ///< "i1#1"
    int body = 1;       ///< levels in order (each cylinder of a lying round), then notches; from 1
    std::optional<double> height_mm; ///< over the board, sealed; null: as planned
    double grown_mm = 0;             ///< wider than planned on each side; < 0: narrower
    Unknowns unknown = {};
    bool operator==(const BuiltBlock&) const = default;
};
struct AsBuilt { ///< a mold measured before the pour; mold sizes
    std::string drawer;
    std::optional<double> width_mm; ///< inside the box, left to right; null: as planned
    std::optional<double> depth_mm; ///< inside the box, front to back
    std::vector<double> walls_mm;   ///< heights over the board, wherever read; none: as planned
    std::vector<BuiltBlock> blocks;
    std::string note;
    Unknowns unknown;
    bool operator==(const AsBuilt&) const = default;
};

// ---- pour day ----
struct Mark {           ///< what the maker marked as done, and when
    std::string drawer; ///< id; empty: of the whole job
    std::string step;   ///< plan/pour_log.h says which there are
    double at_s = 0;    ///< since 1970-01-01, UTC
    bool back = false;  ///< the last mark of that step is taken back
    Unknowns unknown = {};
    bool operator==(const Mark&) const = default;
};

struct CastFit {         ///< a pocket of a cast, measured
    std::string pocket;  ///< "i1#1"
    double wider_mm = 0; ///< than planned, the whole width; < 0: narrower
    Unknowns unknown = {};
    bool operator==(const CastFit&) const = default;
};
struct Cast { ///< what came out of a mold; null: not measured
    std::string drawer;
    std::string foam; ///< its name then
    std::string day;
    std::optional<double> mixed_g;          ///< into the buckets
    std::optional<double> cast_g;           ///< the insert
    std::optional<double> trimmed_g;        ///< flash, the plugs of the vents apart
    std::optional<double> plugs_g;          ///< what came through the vents
    std::optional<double> plugs_planned_ml; ///< squeeze-out that was reckoned with
    std::optional<double> viscosity_pa_s;   ///< at which it was
    int batches = 1;
    std::optional<double> bow_mm;       ///< of the insert's back
    std::optional<double> bar_mm;       ///< a length in the mold
    std::optional<double> bar_cured_mm; ///< the same on the cured insert
    std::optional<double> wax_g;        ///< release that went on the mold
    std::optional<double> clay_g;       ///< renewed
    bool new_holes = false;             ///< the closures' holes were shifted before it
    std::vector<CastFit> fits;
    std::string note;
    Unknowns unknown = {};
    bool operator==(const Cast&) const = default;
};

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
