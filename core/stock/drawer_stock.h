// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/block.h"
#include "stock/box.h"

#include <optional>
#include <string>
#include <vector>

/// Everything one drawer's mold is built of.
namespace drawercast::stock {

struct FillerIn {
    shape::Ring outline; ///< mold frame
    int screws = 2;      ///< from below; 0: glued
    bool operator==(const FillerIn&) const = default;
};

struct DrawerStockIn {
    BoxIn box;
    BlockShop shop;
    std::vector<BlockIn> blocks;
    std::vector<FillerIn> fillers;
};

struct Filler {
    std::string label; ///< "F1"
    StackToHeight stack;
    std::vector<std::string> layers;
    Panel panel;
    double feet_mm = 0;
    int screws = 0;                 ///< 0: glued
    std::optional<double> screw_mm; ///< length; absent: no screw grips
    bool operator==(const Filler&) const = default;
};

/// Where seal and paint are forgotten, counted.
struct Missed {
    double raw_edges_mm = 0;  ///< of base and plate
    double end_grain_mm2 = 0; ///< of blocks and fillers
    double wall_tops_mm = 0;
    int screw_holes = 0;           ///< in the base, pins' too
    std::optional<int> vent_holes; ///< absent: not known yet
    bool operator==(const Missed&) const = default;
};

struct DrawerStock {
    std::string drawer;
    Box box;
    std::vector<BlockByStock> blocks;
    std::vector<Filler> fillers;
    std::vector<Part> parts; ///< of box, blocks and fillers
    std::vector<LengthPart> lengths;
    std::vector<ScrewUse> screws;
    std::vector<ScrewUse> pins; ///< headless nails
    double sealed_mm2 = 0;      ///< all that foam touches
    double bead_mm = 0;         ///< of seal: box, fillers and blocks' feet
    double glue_mm2 = 0;
    Missed missed;
};

DrawerStock drawer_stock_of(const DrawerStockIn& in);

} // namespace drawercast::stock
