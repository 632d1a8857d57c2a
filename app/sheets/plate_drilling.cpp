// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_judge.h"
#include "plan/say.h"

#include "language/goods.h"
#include "language/say.h"
#include "language/spoken.h"
#include "sheets/aligned_length.h"
#include "sheets/drilling.h"
#include "sheets/edge_words.h"
#include "sheets/overall_size.h"
#include "sheets/plate_marks.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace drawercast::sheets {

using shape::InMold;
using theme::LineRole;
using theme::TextRole;

namespace {

void add_hole(MoldPen& pen, Vec at, double diameter_mm, const std::string& number, Vec inward) {
    if (diameter_mm > 0) pen.put(PathMark{circle(at, diameter_mm / 2), LineRole::trace, std::nullopt});
    pen.put(CenterMark{at, {diameter_mm / 2, diameter_mm / 2}, 0});
    pen.put(TextMark{{at, inward * 20}, number, TextRole::template_small, Side::center, 0, true});
}

void add_footprints(MoldPen& pen, const mold::PlateDesign& design) {
    for (std::size_t i = 0; i < design.stiffeners.size(); ++i) {
        const auto& at = design.stiffeners[i];
        pen.put(PathMark{path_of(stiffener_box(design, at)), LineRole::trace, std::nullopt});
        pen.put(PathMark{line(at.from.vec(), at.to.vec()), LineRole::center, std::nullopt});
        add_piece_name(pen, at, language::tr("stiffener ") + QString::number(i + 1));
    }
}

std::vector<std::size_t> in_driving_order(const mold::PlateDesign& design) {
    std::vector<std::size_t> order;
    for (const int index : design.order) order.push_back(static_cast<std::size_t>(index));
    return order;
}

/// Which stiffener a closure at an end goes through, and how far from the piece's end.
QString end_words(const job::Job& job, const mold::PlateDesign& design, Vec closure) {
    std::size_t which = 0;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < design.stiffeners.size(); ++i) {
        const auto& at = design.stiffeners[i];
        const double apart =
            std::min(shape::length(at.from.vec() - closure), shape::length(at.to.vec() - closure));
        if (apart < least) least = apart, which = i;
    }
    return language::tr(", through stiffener %1, %2 from its end")
        .arg(which + 1)
        .arg(language::say_length(least, job.display_units));
}

/// Its name, with its kind before it unless the name says so.
QString closure_name(const job::Closure& closure) {
    const QString name = language::goods_name(closure.name);
    const auto kind = [&] {
        switch (closure.kind) {
        case job::ClosureKind::screw:
            return language::tr("screw");
        case job::ClosureKind::rod:
            return language::tr("rod");
        case job::ClosureKind::clamp:
            return language::tr("clamp");
        case job::ClosureKind::strap:
            return language::tr("strap");
        }
        return QString();
    }();
    return name.contains(kind, Qt::CaseInsensitive) ? name : kind + QLatin1Char(' ') + name;
}

QString closure_words(const job::Job& job, const mold::PlateDesign& design, const mold::ClosureAt& at) {
    const job::Closure& closure = mold::kind_of(design, at);
    const QString name = closure_name(closure);
    const QString words =
        closure.kind == job::ClosureKind::rod ? language::tr("%1, on through wall and base").arg(name) : name;
    return at.stiffener_end ? words + end_words(job, design, at.at.vec()) : words;
}

} // namespace

Sheet<InMold> plate_drilling(const job::Job& job, const plan::DrawerPlan& plan) {
    Sheet<InMold> sheet;
    sheet.name = "Pressure plate";
    const mold::PlateDesign& design = plan.plate->answer.design;
    const Box inside = box_inside(job, plan), plate = plate_box(design, inside);
    const shape::MoldMap map(plan.insert->box, job.foam->shrinkage);
    sheet.area = plate.grown(edge_room_mm);
    MoldPen pen(sheet);
    pen.turn_to(Layer::ground);
    pen.put(PathMark{path_of(plate), LineRole::trace, std::nullopt});
    pen.put(PathMark{path_of(inside), LineRole::under, std::nullopt});
    pen.edge(map.to_mold(plan.insert->area), LineRole::under);
    add_edge_words(pen, plate, EdgeWords::mold);
    add_overall_size(pen, plate, job.display_units);
    pen.turn_to(Layer::still);
    add_footprints(pen, design);
    const auto numbers = closure_numbers(design);
    for (std::size_t i = 0; i < design.closures.size(); ++i) {
        const auto& closure = design.closures[i];
        const auto holes = mold::holes_of(mold::kind_of(design, closure), job.shop->drills_mm);
        add_hole(pen, closure.at.vec(), holes.clearance_mm, std::to_string(numbers[i]),
                 outward(closure, inside) * -1);
    }
    if (plan.air) {
        add_vents(pen, plan.air->vented.vents);
        add_vent_numbers(pen, plan.air->vented.vents);
    }
    pen.turn_to(Layer::still);
    pen.put(SignMark{Sign::datum, {inside.min}});
    pen.put(TextMark{{inside.min, {10, 12}}, "0, 0", TextRole::caption, Side::left, 0, true});
    return sheet;
}

Table drilling_table(const job::Job& job, const plan::DrawerPlan& plan, DrillingWords words) {
    const bool brief = words == DrillingWords::brief;
    Table table;
    table.columns = {{language::tr("no."), Align::right, 0, 30},
                     {language::tr("x"), Align::right, 0, 54},
                     {language::tr("y"), Align::right, 0, 54},
                     {brief ? language::tr("through") : language::tr("through plate"), Align::right, 0, 84},
                     {brief ? language::tr("pilot") : language::tr("pilot in wall"), Align::right, 0, 76},
                     {language::tr("deep"), Align::right, 0, 54},
                     {"", Align::left, 0, 8},
                     {language::tr("for"), Align::left, 1, 0}};
    for (auto& column : table.columns)
        if (brief && column.fixed_px > 0) column.fixed_px = 0, column.fitted = true;
    const auto say = [&](double mm) { return mm > 0 ? aligned_length(mm, job.display_units) : QString(); };
    const auto place = [&](double mm) { return aligned_length(mm, job.display_units); };
    const mold::PlateDesign& design = plan.plate->answer.design;
    const auto numbers = closure_numbers(design);
    for (const std::size_t i : in_driving_order(design)) {
        const auto& at = design.closures[i];
        const auto& kind = mold::kind_of(design, at);
        const auto holes = mold::holes_of(kind, job.shop->drills_mm);
        const double through =
            design.board.thickness_mm + (at.stiffener_end ? design.stiffener->height_mm : 0);
        const QString what = brief ? closure_name(kind) : closure_words(job, design, at);
        table.rows.push_back({{QString::number(numbers[i]), true, {}},
                              {place(at.at.x_mm), false, {}},
                              {place(at.at.y_mm), false, {}},
                              {say(holes.clearance_mm), false, {}},
                              {say(holes.pilot_mm), false, {}},
                              {say(mold::in_wall_mm(kind, {through, 0, 0})), false, {}},
                              {},
                              {what, false, {}}});
    }
    if (!plan.air) return table;
    const Table vents = vent_table(job, plan.air->vented.vents);
    for (const auto& row : vents.rows)
        table.rows.push_back(
            {row[0], row[1], row[2], row[3], {}, {}, {}, {language::tr("vent, ") + row[4].text, false, {}}});
    return table;
}

} // namespace drawercast::sheets
