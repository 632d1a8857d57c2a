// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/tiling.h"

#include "base/demand.h"

#include "sheets/zones.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace drawercast::print {

std::string Tile::name() const { return sheets::zone_letter(row) + std::to_string(column + 1); }

const Tile* Tiling::at(int column, int row) const {
    if (column < 0 || row < 0 || column >= columns || row >= rows) return nullptr;
    return &tiles[static_cast<std::size_t>(row * columns + column)];
}

int Tiling::printed() const {
    return static_cast<int>(
        std::count_if(tiles.begin(), tiles.end(), [](const Tile& tile) { return !tile.empty; }));
}

std::string Tiling::extent() const { return std::to_string(columns) + "×" + std::to_string(rows); }

double Tiling::joint_x(int after_column) const { return at(after_column, 0)->area_mm.max.x - overlap_mm / 2; }
double Tiling::joint_y(int after_row) const { return at(0, after_row)->area_mm.max.y - overlap_mm / 2; }

Tiling tiled(const Box& area, Vec window, Orientation orientation, const HasContent& has_content) {
    DRAWERCAST_DEMAND(window.x > 2 * overlap_mm && window.y > 2 * overlap_mm,
                      "a tile is wider than its overlaps");
    const auto count = [](double length, double side) {
        constexpr double rounding = 1e-9;
        return std::max(1,
                        static_cast<int>(std::ceil((length - overlap_mm) / (side - overlap_mm) - rounding)));
    };
    Tiling tiling;
    tiling.orientation = orientation;
    tiling.columns = count(area.width(), window.x);
    tiling.rows = count(area.height(), window.y);
    const Vec step = window - Vec{overlap_mm, overlap_mm};
    const Vec whole{tiling.columns * step.x + overlap_mm, tiling.rows * step.y + overlap_mm};
    const Vec start = area.center() - whole * 0.5;
    for (int row = 0; row < tiling.rows; ++row)
        for (int column = 0; column < tiling.columns; ++column) {
            Tile tile{column, row, {}, false};
            tile.area_mm.min = start + Vec{column * step.x, row * step.y};
            tile.area_mm.max = tile.area_mm.min + window;
            Box own = tile.area_mm.grown(-overlap_mm / 2);
            if (column == 0) own.min.x = tile.area_mm.min.x;
            if (row == 0) own.min.y = tile.area_mm.min.y;
            if (column + 1 == tiling.columns) own.max.x = tile.area_mm.max.x;
            if (row + 1 == tiling.rows) own.max.y = tile.area_mm.max.y;
            tile.empty = !has_content(own);
            tiling.tiles.push_back(tile);
        }
    return tiling;
}

Tiling fewest_tiles(const Tiling& portrait, const Tiling& landscape) {
    const auto cost = [](const Tiling& tiling) {
        return std::make_tuple(tiling.printed(), tiling.tiles.size());
    };
    return cost(landscape) < cost(portrait) ? landscape : portrait;
}

} // namespace drawercast::print
