// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/pocket.h"
#include "shape/frame.h"

#include <string>
#include <vector>

/// What casting answers, as plain values. How each figure comes about stands beside the function that makes
/// it.
namespace drawercast::casting {

/// What the mold holds. Mold frame and sizes (enlarged), mm² and mm³.
struct Cavity {
    double insert_area_mm2 = 0; ///< opening of the mold, fillers outside
    double height_mm = 0;       ///< H: insert thickness, enlarged
    double gross_mm3 = 0;
    double blocks_mm3 = 0;
    double fillet_mm3 = 0;
    double net_mm3 = 0;
    double open_area_mm2 = 0; ///< floor not under any block
    bool operator==(const Cavity&) const = default;
};

/// Foam by volume and mass, at the job's altitude.
struct Dose {
    double expansion = 0; ///< E' at this altitude
    bool by_cup = false;  ///< false: "by the label"
    double overpack = 0;  ///< over free rise, 0.15 = 15 %
    bool overpack_auto = true;
    bool none_passes =
        false; ///< the automatic overpack found none that is neither short if low nor hard if high
    double free_rise_kg_m3 = 0;
    double molded_kg_m3 = 0;
    double liquid_g_ml = 0; ///< mixed density
    double poured_ml = 0;
    double mixed_ml = 0;
    double a_ml = 0;
    double b_ml = 0;
    double a_g = 0;
    double b_g = 0;
    double pigment_ml = 0;
    int batches = 1;
    double bucket_left_ml = 0; ///< each
    double pour_s = 0;         ///< each
    double insert_g = 0;
    bool operator==(const Dose&) const = default;
};

/// One end of what the foam may do: E' and the net cavity there, how full that is, and the pressure of it.
struct BandEnd {
    double expansion = 0;
    double net_mm3 = 0;
    double fill = 0; ///< E'·V_L / V_net: 1 just fills
    double closed_kpa = 0;
    bool operator==(const BandEnd&) const = default;
};
struct Band {
    double uncertainty = 0.10; ///< u of E: 10 % by the label, 4 % after a cup (our guess)
    BandEnd low, expected, high;
    bool operator==(const Band&) const = default;
};

struct Pressure { ///< an estimate with two stated allowances, never a bound
    double closed_kpa = 0;
    double build_for_kpa = 0;
    double low_kpa = 0;
    double high_kpa = 0;
    double lift_n = 0;
    bool operator==(const Pressure&) const = default;
};

struct Times { ///< seconds from the start of mixing, today's temperature
    double pot_life_s = 0;
    double rise_s = 0;
    double demold_min = 0;
    double liquid_level_mm = 0; ///< Z: where the poured liquid stands in the channels
    double touch_s = 0;         ///< channels reach the plate
    double contact_s = 0;       ///< the mold is full
    double pour_margin_s = 0;   ///< pot life − mix − pour
    bool operator==(const Times&) const = default;
};

struct KitCount {
    std::string name;
    int count = 0;
    bool operator==(const KitCount&) const = default;
};
struct Purchase {
    double needed_ml = 0;       ///< mixed over all drawers and the spare
    std::vector<KitCount> kits; ///< to buy, over what is at hand
    std::vector<KitCount> from_shelf;
    double price = 0;
    double left_over_ml = 0;
    bool operator==(const Purchase&) const = default;
};

// ---- what stands on the pattern board (mold frame, sealed sizes: what displaces foam and what the template
// shows) ----
struct BlockPart {
    layout::Cut<shape::InMold>
        cut;                   ///< outline and depth enlarged: depth_mm is the block's height over the board
    double wood_height_mm = 0; ///< height to cut to: less the sealer's film
    bool operator==(const BlockPart&) const = default;
};
/// What holds a piece of wood from below at a point; a piece without a screw is glued as well.
enum class Holder { screw, thin_screw, pin };
struct FixingPoint {
    shape::Point<shape::InMold> at;
    Holder by = Holder::screw;
    int part = 0;  ///< of the block's parts
    int piece = 0; ///< of that part, where a taller one cuts it in several
    bool operator==(const FixingPoint&) const = default;
};
struct Block {
    std::string subject; ///< "i1#1"
    std::string name;    ///< the object's, with its number where there are several
    int number = 0;      ///< on the template and in the table: 1 … n in reading order of the board
    double height_mm = 0;
    std::vector<BlockPart> parts;
    shape::Point<shape::InMold> center;
    std::vector<FixingPoint> fixing; ///< of every piece that stands on the board
    bool operator==(const Block&) const = default;
};
struct PatternBoard {
    shape::Box box; ///< inner box: (0, 0) to its size
    double height_mm = 0;
    double enlargement = 1;
    shape::Area<shape::InMold> opening; ///< the insert
    shape::Area<shape::InMold> fillers; ///< full height, screwed to the base
    shape::Area<shape::InMold> clay;    ///< blocks and their fillets: its boundary is the clay line
    std::vector<Block> blocks;
};

} // namespace drawercast::casting
