// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/liquid.h"

#include "base/demand.h"

#include <algorithm>
#include <cmath>

namespace drawercast::air {
namespace {

/// Liquid below `level` in one cell, and the area it shows there.
struct Below {
    double mm3 = 0;
    double mm2 = 0;
};
Below below(const Cells& cells, std::size_t cell, double level_mm) {
    Below sum;
    for (const Part& part : cells.parts_of(cell)) {
        const double deep = level_mm - (cells.height_mm - part.gap_mm);
        if (deep <= 0) continue;
        sum.mm3 += part.area_mm2 * deep;
        sum.mm2 += part.area_mm2;
    }
    return sum;
}

/// The level at which the cells hold `mm3`. The volume bends upward only, so that Newton's steps from above
/// close in without overshooting.
double level_of(const Cells& cells, const std::vector<std::size_t>& in, double mm3) {
    double level = cells.height_mm;
    for (int i = 0; i < 200; ++i) {
        Below all;
        for (const std::size_t cell : in) {
            const Below here = below(cells, cell, level);
            all.mm3 += here.mm3, all.mm2 += here.mm2;
        }
        const double excess = all.mm3 - mm3;
        if (all.mm2 <= 0 || excess <= 1e-12 * mm3) break;
        level -= excess / all.mm2;
    }
    return level;
}

} // namespace

Liquid liquid_of(const Cells& cells, const Pieces& pieces, double full_expansion,
                 const std::vector<Puddle>& puddles) {
    DRAWERCAST_DEMAND(full_expansion > 1, "the liquid alone does not fill the mold");
    Liquid out;
    out.mm3.assign(cells.mesh.size(), 0.0);
    std::vector<std::vector<std::size_t>> members(static_cast<std::size_t>(pieces.count));
    Values due(members.size(), 0.0); // of each piece
    double all = 0;
    for_each_cell(cells.mesh, [&](std::size_t cell) {
        if (!cells.open(cell)) return;
        const auto piece = static_cast<std::size_t>(pieces.piece[cell] - 1);
        members[piece].push_back(cell);
        due[piece] += cells.room_mm3[cell] / full_expansion;
        all += cells.room_mm3[cell] / full_expansion;
    });
    Values put(members.size(), 0.0);
    for (const Puddle& puddle : puddles) {
        double area = 0;
        for (const std::size_t cell : puddle.cells) area += cells.area_mm2[cell];
        for (const std::size_t cell : puddle.cells) {
            const double mm3 = puddle.share * all * cells.area_mm2[cell] / area;
            out.mm3[cell] += mm3;
            put[static_cast<std::size_t>(pieces.piece[cell] - 1)] += mm3;
        }
    }
    double widest = 0;
    for (std::size_t piece = 0; piece < members.size(); ++piece) {
        const double fits = put[piece] > due[piece] ? due[piece] / put[piece] : 1;
        const double rest = due[piece] - fits * put[piece];
        const double level = rest > 1e-9 * due[piece] ? level_of(cells, members[piece], rest) : 0;
        for (const std::size_t cell : members[piece])
            out.mm3[cell] = fits * out.mm3[cell] + below(cells, cell, level).mm3;
        if (due[piece] > widest) widest = due[piece], out.level_mm = level;
    }
    return out;
}

} // namespace drawercast::air
