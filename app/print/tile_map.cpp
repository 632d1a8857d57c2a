// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/tile_map.h"

#include "language/spoken.h"
#include "print/title_block.h"
#include "sheets/inking.h"
#include "sheets/room.h"
#include "sheets/signs.h"

#include <algorithm>

namespace drawercast::print {

using sheets::Align;
using theme::Face;
using theme::LineRole;

double write_tile_map(sheets::Inks& inks, const Box& box, const Template& drawing, const LaidOut& laid,
                      const theme::Theme& theme) {
    const Tiling& tiling = laid.tiling;
    Box all;
    for (const Tile& tile : tiling.tiles) all.add(tile.area_mm);
    const double factor = std::min(box.width() / px(all.width()), box.height() / px(all.height()));
    const auto place = [&](Vec mm) { return box.min + px(Vec{mm.x - all.min.x, all.max.y - mm.y}) * factor; };

    for (const auto& mark : drawing.marks) {
        const auto* path = std::get_if<sheets::PathMark>(&mark.kind);
        if (!path || !path->line || path->line == LineRole::clay) continue;
        sheets::View view = sheets::View::true_size(place({}));
        view.per_mm *= factor;
        inks.push_back(
            sheets::Stroke{view(path->path), theme::pen_of(LineRole::soft, theme, theme::Medium::paper, 1)});
    }
    const auto place_box = [&](const Box& mm) {
        Box page;
        page.add(place(mm.min));
        page.add(place(mm.max));
        return page;
    };
    for (const Tile& tile : tiling.tiles) { // up to its joints: neighbors do not overlap on the map
        Box own = tile.area_mm;
        if (tile.column > 0) own.min.x = tiling.joint_x(tile.column - 1);
        if (tile.column + 1 < tiling.columns) own.max.x = tiling.joint_x(tile.column);
        if (tile.row > 0) own.min.y = tiling.joint_y(tile.row - 1);
        if (tile.row + 1 < tiling.rows) own.max.y = tiling.joint_y(tile.row);
        const Box cell = place_box(own);
        const theme::Pen hatch = theme::pen_of(LineRole::wall_hatch, theme, theme::Medium::paper, 1);
        if (tile.empty)
            inks.push_back(sheets::Stroke{
                sheets::hatching(sheets::chords(sheets::path_of(cell), 1), cell.min, 45, 7), hatch});
        frame(inks, cell, LineRole::thin, theme);
        const theme::Lettering face{Face::bold, 15}, small{Face::regular, 10};
        const QString name = QString::fromStdString(tile.name());
        const double half = std::max(sheets::written_width(name, face),
                                     tile.empty ? sheets::written_width(language::tr("empty"), small) : 0.0) /
                                2 +
                            3;
        const Vec c = cell.center();
        inks.push_back(sheets::Fill{
            sheets::path_of(Box{c - Vec{half, 9}, c + Vec{half, tile.empty ? 20.0 : 9.0}}), theme.paper});
        sheets::write(inks, name, c + Vec{0, 5.5}, face, tile.empty ? theme.ink3 : theme.ink, Align::center);
        if (tile.empty)
            sheets::write(inks, language::tr("empty"), c + Vec{0, 17}, small, theme.ink2, Align::center);
    }
    const Vec arrow{box.min.x + px(all.width()) * factor / 2, box.min.y + px(all.height()) * factor + 25};
    inks.push_back(sheets::Stroke{sheets::front_arrow(arrow, 40),
                                  theme::pen_of(LineRole::thin, theme, theme::Medium::paper, 1)});
    inks.push_back(sheets::Fill{sheets::frame_sign(arrow - Vec{0, 7}, 14, drawing.mirrored), theme.ink});
    sheets::write(inks, language::tr("FRONT of the drawer"), arrow + Vec{22, 5}, {Face::drafting, 13, 1.16},
                  theme.ink);
    return px(all.height()) * factor + 50;
}

} // namespace drawercast::print
