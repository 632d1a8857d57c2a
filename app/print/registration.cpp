// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/registration.h"

#include "plan/say.h"
#include "shape/boxes.h"

#include "language/spoken.h"
#include "print/title_block.h"

#include <algorithm>
#include <array>
#include <optional>

namespace drawercast::print {

using sheets::Align;
using theme::Face;
using theme::LineRole;

namespace {

constexpr double ring_mm = 3;    ///< radius
constexpr double cross_mm = 4.5; ///< half length of its arms; both fit into the overlap
constexpr theme::Lettering small{Face::regular, 9.5};

bool joined_to(const Tile* neighbor) { return neighbor && !neighbor->empty; }

/// Where the coordinates stand, relative to the ring on the page: along the joint, behind the cross.
Box words_box(const RingMark& mark) {
    const double arm = px(cross_mm), width = sheets::written_width(mark.words, small),
                 half = small.px * theme::capital_share;
    if (mark.upright_joint) return {{-half, -arm - 5 - width}, {half, -arm - 3}};
    return {{arm + 3, -half}, {arm + 5 + width, half}};
}

/// Words of the drawing that a ring at a point would cover, on a scale of how many.
int covered(const RingMark& mark, const std::vector<Box>& words) {
    const Vec at{px(mark.at_mm.x), -px(mark.at_mm.y)};
    Box box = words_box(mark);
    box.add(Vec{px(cross_mm), px(cross_mm)});
    box.add(Vec{-px(cross_mm), -px(cross_mm)});
    const Box place = shape::moved(box, at);
    return static_cast<int>(
        std::count_if(words.begin(), words.end(), [&](const Box& one) { return shape::near(one, place); }));
}

/// The place of a ring along an edge from `from` to `to`: the first of some shares that covers least.
RingMark placed(Vec from, Vec to, bool upright, bool far_half, const std::vector<Box>& words,
                job::DisplayUnits units) {
    constexpr std::array shares{0.22, 0.18, 0.27, 0.14,
                                0.32, 0.37, 0.42}; // clear of corners, where four tiles meet
    std::optional<RingMark> best;
    int least = 0;
    for (const double share : shares) {
        const Vec at = from + (to - from) * (far_half ? 1 - share : share);
        RingMark mark{at, upright,
                      language::figures("x " + plan::say_length_bare(at.x, units) + "  y " +
                                        plan::say_length_bare(at.y, units))};
        const int count = covered(mark, words);
        if (best && count >= least) continue;
        best = mark;
        least = count;
    }
    return *best;
}

void write_ring(sheets::Inks& inks, const RingMark& mark, Vec by, const theme::Theme& theme) {
    const Vec at = Vec{px(mark.at_mm.x), -px(mark.at_mm.y)} + by;
    const theme::Pen pen = theme::pen_of(LineRole::thin, theme, theme::Medium::paper, 1);
    const double arm = px(cross_mm);
    inks.push_back(sheets::Stroke{sheets::circle(at, px(ring_mm)), pen});
    inks.push_back(sheets::Stroke{sheets::joined(sheets::line(at - Vec{arm, 0}, at + Vec{arm, 0}),
                                                 sheets::line(at - Vec{0, arm}, at + Vec{0, arm})),
                                  pen});
    const Box box = words_box(mark);
    inks.push_back(sheets::Fill{sheets::path_of(shape::moved(box, at)), theme.paper});
    const double rise = small.px * theme::capital_share;
    const Vec start = mark.upright_joint ? Vec{rise / 2, box.max.y - 1} : Vec{box.min.x + 1, rise / 2};
    sheets::write_turned(inks, mark.words, {at + start, Align::left, mark.upright_joint ? 90.0 : 0.0}, small,
                         theme.ink2);
}

/// In the strip beyond the joint, which is cut off or covered.
void write_neighbor(sheets::Inks& inks, const Tile& neighbor, Vec middle, bool upright,
                    const theme::Theme& theme) {
    const theme::Lettering bold{Face::bold, 9.5};
    const QString name = QString::fromStdString(neighbor.name());
    const QString words = neighbor.empty ? name + language::tr(" is empty") : language::tr("joins ") + name;
    const double half = sheets::written_width(words, bold) / 2 + 3, rise = bold.px * theme::capital_share;
    const Vec reach = upright ? Vec{rise, half} : Vec{half, rise};
    inks.push_back(sheets::Fill{sheets::path_of(Box{middle - reach, middle + reach}), theme.paper});
    sheets::write_turned(
        inks, words,
        {middle + (upright ? Vec{rise / 2, 0} : Vec{0, rise / 2}), Align::center, upright ? 90.0 : 0.0}, bold,
        theme.ink2);
}

} // namespace

std::vector<RingMark> ring_marks(const Tiling& tiling, const sheets::Inks& inks, job::DisplayUnits units) {
    std::vector<Box> words;
    for (const auto& ink : inks)
        if (std::holds_alternative<sheets::Words>(ink)) words.push_back(sheets::reach_of(ink));
    std::vector<RingMark> marks;
    for (const Tile& tile : tiling.tiles) {
        if (tile.empty) continue;
        for (const bool far_half : {false, true}) {
            if (joined_to(tiling.at(tile.column + 1, tile.row))) {
                const double x = tiling.joint_x(tile.column);
                marks.push_back(
                    placed({x, tile.area_mm.min.y}, {x, tile.area_mm.max.y}, true, far_half, words, units));
            }
            if (joined_to(tiling.at(tile.column, tile.row + 1))) {
                const double y = tiling.joint_y(tile.row);
                marks.push_back(
                    placed({tile.area_mm.min.x, y}, {tile.area_mm.max.x, y}, false, far_half, words, units));
            }
        }
    }
    return marks;
}

std::vector<Box> joint_strips(const Tiling& tiling, const Box& area) {
    constexpr double half_mm = 1;
    std::vector<Box> strips;
    for (int i = 0; i + 1 < tiling.columns; ++i)
        strips.push_back(
            {{tiling.joint_x(i) - half_mm, area.min.y}, {tiling.joint_x(i) + half_mm, area.max.y}});
    for (int i = 0; i + 1 < tiling.rows; ++i)
        strips.push_back(
            {{area.min.x, tiling.joint_y(i) - half_mm}, {area.max.x, tiling.joint_y(i) + half_mm}});
    return strips;
}

void write_joints(sheets::Inks& inks, const Tiling& tiling, const Tile& tile,
                  const std::vector<RingMark>& rings, Vec by, const theme::Theme& theme) {
    const auto page = [&](Vec mm) { return Vec{px(mm.x), -px(mm.y)} + by; };
    const Box& area = tile.area_mm;
    constexpr double cut_off_mm = overlap_mm / 2;
    for (const int side : {-1, 1}) {
        if (const Tile* neighbor = tiling.at(tile.column + side, tile.row)) {
            const double x = tiling.joint_x(side < 0 ? tile.column - 1 : tile.column);
            if (!neighbor->empty)
                rule(inks, page({x, area.min.y}), page({x, area.max.y}), LineRole::center, theme);
            write_neighbor(inks, *neighbor, page({x + side * cut_off_mm / 2, area.center().y}), true, theme);
        }
        if (const Tile* neighbor = tiling.at(tile.column, tile.row + side)) {
            const double y = tiling.joint_y(side < 0 ? tile.row - 1 : tile.row);
            if (!neighbor->empty)
                rule(inks, page({area.min.x, y}), page({area.max.x, y}), LineRole::center, theme);
            write_neighbor(inks, *neighbor, page({area.center().x, y + side * cut_off_mm / 2}), false, theme);
        }
    }
    for (const RingMark& ring : rings)
        if (shape::near({ring.at_mm, ring.at_mm}, area)) write_ring(inks, ring, by, theme);
}

} // namespace drawercast::print
