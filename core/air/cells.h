// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/floor.h"
#include "air/mesh.h"

#include <span>
#include <vector>

namespace drawercast::air {

/// A part of a cell over which the plate stands at one height above what is under it.
struct Part {
    double area_mm2 = 0;
    double gap_mm = 0;
};

/// A floor in cells. What a cell holds is exact for its share of each block, so that the foam's volume does
/// not hang on where the mesh happens to cut the blocks; how easily foam moves in it is that of its center.
struct Cells {
    Mesh mesh;
    double height_mm = 0;
    Values area_mm2;       ///< open to foam: without fillers and through blocks; 0 in walls
    Values room_mm3;       ///< between board, blocks and plate
    Values gap_mm;         ///< at the center; 0 in walls
    std::vector<int> body; ///< that the center stands on, −1: open channel or wall
    Marks channel;         ///< the center is over the open board
    std::vector<Part> parts;
    std::vector<std::size_t> first_part; ///< of each cell, and one past the last

    std::span<const Part> parts_of(std::size_t cell) const {
        return {parts.data() + first_part[cell], first_part[cell + 1] - first_part[cell]};
    }
    bool open(std::size_t cell) const { return area_mm2[cell] > 0; }
};

/// Sets of cells joined by faces between open cells, 1 … count; 0 in walls.
struct Pieces {
    std::vector<int> piece;
    int count = 0;
};

Cells cells_of(const Floor& floor, double pitch_mm);

/// The open cells that foam can reach from each other.
Pieces pieces_of(const Cells& cells);

} // namespace drawercast::air
