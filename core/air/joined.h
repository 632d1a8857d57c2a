// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/mesh.h"

#include <array>
#include <vector>

namespace drawercast::air {

/// Cells that hang together by faces, numbered from 1 in order of their first cell; 0 for cells left out.
struct Joined {
    std::vector<int> piece;
    int count = 0;
};

inline std::array<std::size_t, 4> neighbors(const Mesh& mesh, std::size_t cell) {
    return {cell - 1, cell + 1, cell - mesh.stride(), cell + mesh.stride()};
}

/// The pieces of the cells for which `member(cell)` holds. The rim never does.
template <class Member>
Joined joined_cells(const Mesh& mesh, Member member) {
    Joined out;
    out.piece.assign(mesh.size(), 0);
    std::vector<std::size_t> front;
    for_each_cell(mesh, [&](std::size_t seed) {
        if (out.piece[seed] != 0 || !member(seed)) return;
        out.piece[seed] = ++out.count;
        front.assign(1, seed);
        while (!front.empty()) {
            const std::size_t cell = front.back();
            front.pop_back();
            for (const std::size_t next : neighbors(mesh, cell)) {
                const bool inside = mesh.column_of(next) >= 0 && mesh.column_of(next) < mesh.columns() &&
                                    mesh.row_of(next) >= 0 && mesh.row_of(next) < mesh.rows();
                if (!inside || out.piece[next] != 0 || !member(next)) continue;
                out.piece[next] = out.count;
                front.push_back(next);
            }
        }
    });
    return out;
}

} // namespace drawercast::air
