// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/wall_strip.h"

#include "mold/plate_judge.h"
#include "plan/say.h"
#include "stock/screws.h"

#include "sheets/bench_pen.h"

#include <algorithm>

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;

std::vector<double> foot_holes_mm(const stock::Wall& wall) {
    return stock::spread_mm(wall.length_mm, stock::first_joint_mm, wall.foot_screws);
}

std::vector<double> top_holes_mm(const stock::Wall& wall, const mold::PlateDesign& design, const Box& inside,
                                 job::BoxCorner corner) {
    const double t = design.box_board.thickness_mm;
    const Box box = wall_box(inside.grown(t), wall, corner, t);
    const bool level = box.width() > box.height();
    std::vector<double> holes;
    for (const auto& closure : design.closures) {
        const Vec at = closure.at.vec();
        if (mold::kind_of(design, closure).kind != job::ClosureKind::screw) continue;
        if (shape::near(box, Box{at, at})) holes.push_back(level ? at.x - box.min.x : at.y - box.min.y);
    }
    std::sort(holes.begin(), holes.end());
    return holes;
}

Sheet<OnBench> wall_strip(const job::Job& job, const stock::Wall& wall, double thickness_mm,
                          const std::vector<double>& holes_mm) {
    Sheet<OnBench> sheet;
    sheet.name = "Wall strip";
    BenchPen pen(sheet);
    const Box strip{{0, 0}, {wall.length_mm, thickness_mm}};
    const double middle = thickness_mm / 2;
    pen.turn_to(Layer::ground);
    pen.put(PathMark{path_of(strip), LineRole::trace, std::nullopt});
    pen.turn_to(Layer::still);
    pen.put(PathMark{line({0, middle}, {wall.length_mm, middle}), LineRole::center, std::nullopt});
    for (const double along : holes_mm) {
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
