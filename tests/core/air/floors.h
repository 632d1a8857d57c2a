// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/trapped.h"
#include "air/widths.h"

#include <memory>
#include <string>
#include <vector>

namespace drawercast::air {

inline Floor empty_floor(double width_mm, double depth_mm, double height_mm) {
    Floor floor;
    floor.width_mm = width_mm;
    floor.depth_mm = depth_mm;
    floor.height_mm = height_mm;
    floor.opening.patches.push_back({{{0, 0}, {width_mm, 0}, {width_mm, depth_mm}, {0, depth_mm}}, {}});
    floor.opening_mm2 = width_mm * depth_mm;
    return floor;
}

inline void add_body(Floor& floor, shape::Contour outline, double height_mm) {
    Body body;
    body.outline = std::move(outline);
    body.height_mm = height_mm;
    body.through = height_mm >= floor.height_mm;
    body.pocket = static_cast<int>(floor.subjects.size());
    floor.bodies.push_back(std::move(body));
    floor.subjects.push_back("i" + std::to_string(floor.subjects.size() + 1) + "#1");
}

inline void add_block(Floor& floor, double x, double y, double width_mm, double depth_mm, double height_mm) {
    add_body(floor, {{{x, y}, {x + width_mm, y}, {x + width_mm, y + depth_mm}, {x, y + depth_mm}}, 0},
             height_mm);
}

/// A floor worked out to the end, by the parts that the rest is made of.
class Worked {
  public:
    Worked(Floor given, double pitch_mm, double full_expansion, const std::vector<Puddle>& puddles = {})
        : floor(std::move(given)), cells(cells_of(floor, pitch_mm)), pieces(pieces_of(cells)),
          links(links_of(cells, widths_of(floor, cells))),
          liquid(liquid_of(cells, pieces, full_expansion, puddles)),
          rise(cells, links, liquid, full_expansion), history(cells, pieces, rise) {}
    Worked(const Worked&) = delete;
    Worked& operator=(const Worked&) = delete;

    const std::vector<AirPocket>& follow() {
        history.follow(never_stop);
        pockets = air_pockets_of(history);
        return pockets;
    }

    Floor floor;
    Cells cells;
    Pieces pieces;
    Links links;
    Liquid liquid;
    Rise rise;
    History history;
    std::vector<AirPocket> pockets;
};

} // namespace drawercast::air
