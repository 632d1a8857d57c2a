// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/torsion.h"

#include "air/joined.h"
#include "air/links.h"
#include "air/multigrid.h"

#include <algorithm>
#include <map>

namespace drawercast::air {
namespace {

constexpr double precise = 1e-6; ///< of what rises in the mean cell

class FloorFlow {
  public:
    explicit FloorFlow(const Cells& cells) : cells_(cells), on_block_(cells.mesh.size(), 0.0) {
        const Mesh& mesh = cells.mesh;
        for_each_cell(mesh, [&](std::size_t cell) {
            for (const Part& part : cells.parts_of(cell))
                if (part.gap_mm < cells.height_mm) on_block_[cell] += part.area_mm2 / mesh.cell_mm2();
        });
    }

    bool floor(std::size_t cell) const { return cells_.open(cell) && !cells_.channel[cell]; }

    Links links() const {
        const Mesh& mesh = cells_.mesh;
        Links links(mesh.size());
        for_each_cell(mesh, [&](std::size_t cell) {
            links.right[cell] = link(cell, cell + 1) * mesh.dy() / mesh.dx();
            links.back[cell] = link(cell, cell + mesh.stride()) * mesh.dx() / mesh.dy();
        });
        return links;
    }

    /// Floor cells that are joined to a channel.
    Marks reached(const Links& links) const {
        const Mesh& mesh = cells_.mesh;
        const Joined joined = joined_cells(mesh, [&](std::size_t cell) { return floor(cell); });
        Marks fed(static_cast<std::size_t>(joined.count) + 1, 0);
        for_each_cell(mesh, [&](std::size_t cell) {
            const auto feeds = [&](std::size_t next, double link) {
                if (link > 0 && floor(cell) != floor(next))
                    fed[static_cast<std::size_t>(joined.piece[floor(cell) ? cell : next])] = 1;
            };
            feeds(cell + 1, links.right[cell]);
            feeds(cell + mesh.stride(), links.back[cell]);
        });
        Marks out(mesh.size(), 0);
        for_each_cell(mesh, [&](std::size_t cell) {
            out[cell] = floor(cell) && fed[static_cast<std::size_t>(joined.piece[cell])];
        });
        return out;
    }

    double rises(std::size_t cell) const { return on_block_[cell] * cells_.mesh.cell_mm2(); }

  private:
    double link(std::size_t a, std::size_t b) const {
        if (!cells_.open(a) || !cells_.open(b) || (!floor(a) && !floor(b))) return 0;
        const double gap = std::min(cells_.gap_mm[a], cells_.gap_mm[b]);
        if (floor(a) && floor(b)) return gap * gap;
        // The block's edge lies between the two centers, or a little to one side, as far as it covers both.
        const double to_edge = std::clamp(on_block_[a] + on_block_[b] - 0.5, 0.1, 1.0);
        return gap * gap / to_edge;
    }

    const Cells& cells_;
    Values on_block_; ///< share of each cell
};

} // namespace

std::vector<Slowness> slowness_of(const Floor& floor, const Cells& cells) {
    const FloorFlow flow(cells);
    const Links links = flow.links();
    const Marks reached = flow.reached(links);
    Values phi(cells.mesh.size(), 0.0);
    Values rises(cells.mesh.size(), 0.0);
    for_each_cell(cells.mesh, [&](std::size_t cell) { rises[cell] = reached[cell] ? flow.rises(cell) : 0; });
    Multigrid multigrid(cells.mesh, links);
    multigrid.choose(reached);
    multigrid.solve(phi, rises, precise * cells.mesh.cell_mm2());

    std::map<int, Slowness> greatest;
    for_each_cell(cells.mesh, [&](std::size_t cell) {
        if (!reached[cell]) return;
        const int pocket = floor.bodies[static_cast<std::size_t>(cells.body[cell])].pocket;
        Slowness& slow = greatest[pocket];
        if (phi[cell] > slow.phi) slow = {pocket, phi[cell], cells.mesh.center(cell)};
    });
    std::vector<Slowness> out;
    for (const auto& [pocket, slow] : greatest)
        if (slow.phi > 0) out.push_back(slow);
    return out;
}

} // namespace drawercast::air
