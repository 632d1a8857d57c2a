// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/links.h"

#include <algorithm>

namespace drawercast::air {
namespace {

double mobility(double gap_mm, double width_mm) {
    return gap_mm / (12 * (1 / (gap_mm * gap_mm) + 1 / (width_mm * width_mm)));
}

} // namespace

Links links_of(const Cells& cells, const Values& widths_mm) {
    const Mesh& mesh = cells.mesh;
    Links links(mesh.size());
    const auto link = [&](std::size_t a, std::size_t b) {
        if (!cells.open(a) || !cells.open(b)) return 0.0;
        const double open = std::min(cells.area_mm2[a], cells.area_mm2[b]) / mesh.cell_mm2();
        return open *
               mobility(std::min(cells.gap_mm[a], cells.gap_mm[b]), std::min(widths_mm[a], widths_mm[b]));
    };
    for_each_cell(mesh, [&](std::size_t cell) {
        links.right[cell] = link(cell, cell + 1) * mesh.dy() / mesh.dx();
        links.back[cell] = link(cell, cell + mesh.stride()) * mesh.dx() / mesh.dy();
    });
    return links;
}

} // namespace drawercast::air
