// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/cut_list.h"
#include "stock/saw.h"

#include <algorithm>
#include <functional>
#include <map>
#include <utility>

namespace drawercast::stock {

std::vector<Piece> pieces_of(const std::vector<Part>& parts, const std::vector<int>& of_board, double kerf_mm,
                             double longest_mm) {
    std::vector<Piece> pieces;
    std::map<double, std::vector<Piece>, std::greater<>> strips; // by fence
    for (const int index : of_board) {
        const Part& part = parts[static_cast<std::size_t>(index)];
        if (part.length_mm >= least_cut_mm) {
            pieces.push_back({{index}, part.length_mm, part.width_mm, false});
            continue;
        }
        auto& of_fence = strips[part.length_mm]; // its longer side is the strip's width
        if (of_fence.empty() || of_fence.back().length_mm + kerf_mm + part.width_mm > longest_mm)
            of_fence.push_back({{}, -kerf_mm, part.length_mm, true});
        of_fence.back().parts.push_back(index);
        of_fence.back().length_mm += kerf_mm + part.width_mm;
    }
    for (auto& [fence, of_fence] : strips)
        for (Piece& strip : of_fence) {
            strip.length_mm = std::min(std::max(strip.length_mm, least_strip_mm), longest_mm);
            pieces.push_back(std::move(strip));
        }
    return pieces;
}

} // namespace drawercast::stock
