// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/registration.h"

#include "plan/say.h"

#include "print/title_block.h"

#include <array>

namespace drawercast::print {

using sheets::Align;
using theme::Face;
using theme::LineRole;

namespace {

constexpr double ring_mm = 3;    ///< radius
constexpr double cross_mm = 4.5; ///< half length of its arms; both fit into the overlap

/// Ring and cross at a point of the drawing, its coordinates beside it along the joint.
void write_mark(sheets::Inks& inks, Vec mm, bool upright_joint, Vec by, job::DisplayUnits units,
                const theme::Theme& theme) {
    const Vec at = Vec{px(mm.x), -px(mm.y)} + by;
    const theme::Pen pen = theme::pen_of(LineRole::thin, theme, theme::Medium::paper, 1);
    const double arm = px(cross_mm);
    inks.push_back(sheets::Stroke{sheets::circle(at, px(ring_mm)), pen});
    inks.push_back(sheets::Stroke{sheets::joined(sheets::line(at - Vec{arm, 0}, at + Vec{arm, 0}),
                                                 sheets::line(at - Vec{0, arm}, at + Vec{0, arm})),
                                  pen});
    const theme::Lettering face{Face::regular, 9.5};
    const QString text = QString::fromStdString("x " + plan::say_length_bare(mm.x, units) + "  y " +
                                                plan::say_length_bare(mm.y, units));
    const double width = sheets::written_width(text, face), height = face.px * theme::capital_share;
    const Vec middle = upright_joint ? at + Vec{height / 2, -arm - 4} : at + Vec{arm + 4, height / 2};
    const sheets::Box plate =
        upright_joint ? sheets::Box{{at.x - height, middle.y - width - 1}, {at.x + height, middle.y + 1}}
                      : sheets::Box{{middle.x - 1, at.y - height}, {middle.x + width + 1, at.y + height}};
    inks.push_back(sheets::Fill{sheets::path_of(plate), theme.paper});
    sheets::write(inks, text, middle, face, theme.ink2, Align::left, upright_joint ? 90 : 0);
}

bool joined_to(const Tile* neighbor) { return neighbor && !neighbor->empty; }

} // namespace

void write_joints(sheets::Inks& inks, const Tiling& tiling, const Tile& tile, Vec by, job::DisplayUnits units,
                  const theme::Theme& theme) {
    constexpr std::array places{0.22, 0.78}; // of the shared edge, clear of the corners where four tiles meet
    const auto page = [&](Vec mm) { return Vec{px(mm.x), -px(mm.y)} + by; };
    for (const int side : {-1, 1})
        if (joined_to(tiling.at(tile.column + side, tile.row))) {
            const double x = tiling.joint_x(side < 0 ? tile.column - 1 : tile.column);
            rule(inks, page({x, tile.area_mm.min.y}), page({x, tile.area_mm.max.y}), LineRole::center, theme);
            for (const double share : places)
                write_mark(inks, {x, tile.area_mm.min.y + share * tile.area_mm.height()}, true, by, units,
                           theme);
        }
    for (const int side : {-1, 1})
        if (joined_to(tiling.at(tile.column, tile.row + side))) {
            const double y = tiling.joint_y(side < 0 ? tile.row - 1 : tile.row);
            rule(inks, page({tile.area_mm.min.x, y}), page({tile.area_mm.max.x, y}), LineRole::center, theme);
            for (const double share : places)
                write_mark(inks, {tile.area_mm.min.x + share * tile.area_mm.width(), y}, false, by, units,
                           theme);
        }
}

void write_neighbors(sheets::Inks& inks, const Tiling& tiling, const Tile& tile, const Box& window,
                     const theme::Theme& theme) {
    const theme::Lettering face{Face::bold, 9.5};
    const double height = face.px * theme::capital_share, off = 2.5;
    const auto put = [&](int columns, int rows, Vec at, double turn) {
        const Tile* neighbor = tiling.at(tile.column + columns, tile.row + rows);
        if (!neighbor) return;
        const QString name = QString::fromStdString(neighbor->name());
        sheets::write(inks, neighbor->empty ? name + " is empty" : "joins " + name, at, face, theme.ink2,
                      Align::center, turn);
    };
    const Vec c = window.center();
    put(0, 1, {c.x, window.min.y - off}, 0);
    put(0, -1, {window.max.x - px(12), window.max.y + off + height}, 0);
    put(-1, 0, {window.min.x - off, window.min.y + px(12)}, 90);
    put(1, 0, {window.max.x + off + height, c.y}, 90);
}

} // namespace drawercast::print
