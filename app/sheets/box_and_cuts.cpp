// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/box_and_cuts.h"

#include "plan/say.h"
#include "stock/screws.h"

#include "sheets/bench_pen.h"

#include <algorithm>

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;

namespace {

constexpr double numbered_true_mm = 40; ///< at true size a number hides no longer a cut
constexpr double apart_mm = 160;        ///< between what lies on the bench: words and dimensions

const stock::DrawerStock* find(const plan::StockPlan& stock, const std::string& drawer) {
    const auto at = std::find_if(stock.drawers.begin(), stock.drawers.end(),
                                 [&](const stock::DrawerStock& made) { return made.drawer == drawer; });
    return at == stock.drawers.end() ? nullptr : &*at;
}

double thickness_of(const stock::DrawerStock& drawer) {
    for (const auto& part : drawer.box.parts)
        if (part.role == stock::Role::wall) return part.thickness_mm;
    return 0;
}

} // namespace

Sheet<OnBench> box_and_cuts(const job::Job& job, const plan::StockPlan& stock, const std::string& drawer) {
    Sheet<OnBench> sheet;
    sheet.name = "Box and cuts";
    BenchPen pen(sheet);
    Box used;
    double x = 0;
    if (const auto* made = find(stock, drawer)) {
        add_box(pen, {0, -made->box.outside_depth_mm}, job, *made, thickness_of(*made));
        used.add(Vec{0, 0});
        used.add(Vec{made->box.outside_width_mm, -made->box.outside_depth_mm});
        x = made->box.outside_width_mm + apart_mm;
    }
    double y = 0;
    for (std::size_t board = 0; board < stock.cuts.boards.size(); ++board) {
        const auto& cut = stock.cuts.boards[board];
        for (std::size_t index = 0; index < cut.sheets.size(); ++index) {
            const Vec at{x, y - cut.board.sheet_width_mm};
            add_cut_sheet(pen, at, job, stock, board, index, drawer, numbered_true_mm);
            used.add(at);
            used.add(at + Vec{cut.board.sheet_length_mm, cut.board.sheet_width_mm});
            y -= cut.board.sheet_width_mm + apart_mm;
        }
    }
    for (const auto& cut : stock.cuts.bars) {
        const double height = add_bars(pen, {x, y}, job, stock, cut);
        used.add(Vec{x, y});
        used.add(Vec{x + cut.bar_mm, y - height});
        y -= height + apart_mm / 2;
    }
    sheet.area = used;
    sheet.lower_room_px = {48, 48}, sheet.upper_room_px = {24, 32};
    return sheet;
}

Sheet<OnBench> cut_sheet(const job::Job& job, const plan::StockPlan& stock, std::size_t board,
                         std::size_t index, double numbered_mm) {
    Sheet<OnBench> sheet;
    sheet.name = "Cuts";
    BenchPen pen(sheet);
    add_cut_sheet(pen, {0, 0}, job, stock, board, index, {}, numbered_mm);
    const auto& made = stock.cuts.boards[board].board;
    sheet.area.add(Vec{0, 0});
    sheet.area.add(Vec{made.sheet_length_mm, made.sheet_width_mm});
    sheet.lower_room_px = {8, 8}, sheet.upper_room_px = {8, 22};
    return sheet;
}

Sheet<OnBench> wall_strip(const job::Job& job, const stock::Wall& wall, double thickness_mm) {
    Sheet<OnBench> sheet;
    sheet.name = "Wall strip";
    BenchPen pen(sheet);
    const Box strip{{0, 0}, {wall.length_mm, thickness_mm}};
    const double middle = thickness_mm / 2;
    pen.turn_to(Layer::ground);
    pen.put(PathMark{path_of(strip), LineRole::trace, std::nullopt});
    pen.turn_to(Layer::still);
    pen.put(PathMark{line({0, middle}, {wall.length_mm, middle}), LineRole::center, std::nullopt});
    for (const double along : stock::spread_mm(wall.length_mm, stock::first_joint_mm, wall.foot_screws)) {
        pen.put(SignMark{Sign::screw, {{along, middle}}});
        pen.put(TextMark{{{along, 0}, {0, -11}},
                         plan::say_length_bare(along, job.display_units),
                         TextRole::figure,
                         Side::center,
                         0,
                         false});
    }
    sheet.area = strip;
    return sheet;
}

} // namespace drawercast::sheets
