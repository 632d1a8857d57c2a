// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/wall_strip.h"

#include "mold/plate_judge.h"

#include "sheets/bench_pen.h"

#include <algorithm>

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;

namespace {
constexpr double ring_share = 0.4; ///< of the edge, around the holes of stiffener ends
}

WallHoles wall_holes(const stock::Wall& wall, const mold::PlateDesign& design, const Box& inside,
                     job::BoxCorner corner) {
    const double t = design.box_board.thickness_mm;
    const Box box = wall_box(inside.grown(t), wall, corner, t);
    const bool level = box.width() > box.height();
    WallHoles holes;
    for (const auto& closure : design.closures) {
        const Vec at = closure.at.vec();
        if (mold::kind_of(design, closure).kind != job::ClosureKind::screw) continue;
        if (!shape::near(box, Box{at, at})) continue;
        auto& of_kind = closure.stiffener_end ? holes.ends_mm : holes.around_mm;
        of_kind.push_back(level ? at.x - box.min.x : at.y - box.min.y);
    }
    for (auto* of_kind : {&holes.around_mm, &holes.ends_mm}) std::sort(of_kind->begin(), of_kind->end());
    return holes;
}

Sheet<OnBench> wall_strip(const job::Job& job, const stock::Wall& wall, double thickness_mm,
                          const std::vector<double>& holes_mm, const std::vector<double>& ringed_mm) {
    Sheet<OnBench> sheet;
    sheet.name = "Wall strip";
    BenchPen pen(sheet);
    const Box strip{{0, 0}, {wall.length_mm, thickness_mm}};
    const double middle = thickness_mm / 2;
    pen.turn_to(Layer::ground);
    pen.put(PathMark{path_of(strip), LineRole::trace, std::nullopt});
    pen.turn_to(Layer::still);
    pen.put(PathMark{line({0, middle}, {wall.length_mm, middle}), LineRole::center, std::nullopt});
    const auto add_hole = [&](double along) {
        pen.put(SignMark{Sign::screw, {{along, middle}}});
        pen.put(TextMark{
            {{along, 0}, {0, -11}}, length_words(job, along), TextRole::figure, Side::center, 0, false});
    };
    for (const double along : holes_mm) add_hole(along);
    for (const double along : ringed_mm) {
        pen.put(PathMark{circle({along, middle}, thickness_mm * ring_share), LineRole::thin, std::nullopt});
        add_hole(along);
    }
    sheet.area = strip;
    return sheet;
}

} // namespace drawercast::sheets
