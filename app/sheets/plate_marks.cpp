// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/plate_marks.h"

#include "mold/plate_judge.h"
#include "plan/say.h"

#include "language/spoken.h"

#include <algorithm>

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;
using theme::WashRole;

namespace {

constexpr double bar_mm = 20;       ///< at a third of the capacity
constexpr double bar_wide_mm = 2.5; ///< the worst's half as wide again
constexpr double bar_off_mm = 3;    ///< from the plate's edge
constexpr double tick_mm = 3.5;     ///< half of it
constexpr double most_share = 1.35; ///< bars are not drawn longer

bool needs_hole(const job::Closure& closure) {
    return closure.kind == job::ClosureKind::screw || closure.kind == job::ClosureKind::rod;
}

struct Bar {
    Vec foot;   ///< where it begins
    Vec out;    ///< unit vector it runs along
    Vec across; ///< to the right or up
};

Path bar_path(const Bar& bar, double length, double width) {
    const Vec side = bar.across * (width / 2), end = bar.foot + bar.out * length;
    return polygon({bar.foot - side, bar.foot + side, end + side, end - side});
}

} // namespace

Box plate_box(const mold::PlateDesign& design, const Box& inside) {
    return inside.grown(design.box_board.thickness_mm);
}

Vec outward(const mold::ClosureAt& closure, const Box& inside) {
    const Vec at = closure.at.vec();
    if (at.y < inside.min.y) return {0, -1};
    if (at.y > inside.max.y) return {0, 1};
    return {at.x < inside.min.x ? -1.0 : 1.0, 0};
}

std::vector<int> closure_numbers(const mold::PlateDesign& design) {
    std::vector<int> numbers(design.closures.size(), 0);
    for (std::size_t i = 0; i < design.order.size(); ++i)
        numbers[static_cast<std::size_t>(design.order[i])] = static_cast<int>(i) + 1;
    return numbers;
}

Box box_inside(const job::Job& job, const plan::DrawerPlan& plan) {
    const shape::MoldMap map(plan.insert->box, job.foam->shrinkage);
    return {{0, 0},
            {map.length_to_mold(plan.insert->box.width()), map.length_to_mold(plan.insert->box.height())}};
}

void add_piece_name(MoldPen& pen, const mold::StiffenerAt& at, const QString& name) {
    const double turn = at.from.y_mm == at.to.y_mm ? 0 : 90;
    const Vec place = at.from.vec() + (at.to.vec() - at.from.vec()) * 0.3;
    pen.put(TextMark{{place}, name.toStdString(), TextRole::template_small, Side::center, turn, true});
}

Box stiffener_box(const mold::PlateDesign& design, const mold::StiffenerAt& at) {
    const double half = design.stiffener ? design.stiffener->width_mm / 2 : 0;
    Box box;
    box.add(at.from.vec());
    box.add(at.to.vec());
    const Vec side = box.width() > box.height() ? Vec{0, half} : Vec{half, 0};
    return {box.min - side, box.max + side};
}

void add_stiffeners(MoldPen& pen, const job::Job& job, const mold::PlateDesign& design) {
    if (!design.stiffener) return;
    const auto say = [&](double mm) { return plan::say_length_bare(mm, job.display_units); };
    for (std::size_t i = 0; i < design.stiffeners.size(); ++i) {
        const auto& at = design.stiffeners[i];
        const std::string name = language::tr("stiffener ").toStdString() + std::to_string(i + 1) + ", " +
                                 say(design.stiffener->width_mm) + " × " + say(design.stiffener->height_mm);
        const Box box = stiffener_box(design, at);
        pen.put(PathMark{path_of(box), LineRole::cavity_edge, theme::Wash{WashRole::paper}});
        pen.put(PathMark{line(at.from.vec(), at.to.vec()), LineRole::center, std::nullopt});
        const double turn = box.width() > box.height() ? 0 : 90;
        const Vec third = at.from.vec() + (at.to.vec() - at.from.vec()) * 0.68;
        pen.put(TextMark{{third}, name, TextRole::name, Side::center, turn, true});
    }
}

void add_closure_signs(MoldPen& pen, const mold::PlateDesign& design) {
    for (std::size_t i = 0; i < design.closures.size(); ++i)
        pen.put(SignMark{needs_hole(mold::kind_of(design, design.closures[i])) ? Sign::screw : Sign::pin,
                         {design.closures[i].at.vec()}});
}

void add_pulls(MoldPen& pen, const job::Job& job, const mold::PlateAnswer& answer, const Box& inside) {
    const auto& design = answer.design;
    const auto numbers = closure_numbers(design);
    const double edge = design.box_board.thickness_mm / 2 + bar_off_mm;
    for (std::size_t i = 0; i < design.closures.size(); ++i) {
        const Vec out = outward(design.closures[i], inside);
        const Bar bar{design.closures[i].at.vec() + out * edge, out, out.x == 0 ? Vec{1, 0} : Vec{0, 1}};
        const bool worst = i == answer.worst;
        const double allowed = answer.capacity_n[i] / mold::capacity_factor;
        const double share = allowed > 0 ? std::min(answer.closure_n[i] / allowed, most_share) : most_share;
        pen.put(PathMark{bar_path(bar, share * bar_mm, worst ? bar_wide_mm * 1.5 : bar_wide_mm), std::nullopt,
                         theme::Wash{WashRole::ink}});
        const Vec limit = bar.foot + out * bar_mm;
        pen.put(PathMark{line(limit - bar.across * tick_mm, limit + bar.across * tick_mm), LineRole::thin,
                         std::nullopt});
        const Vec beside = bar.foot + out * (bar_mm * 0.4);
        const bool level = out.x == 0; // bars at the front and back stand upright
        pen.put(TextMark{{beside, level ? Vec{5, 0} : Vec{0, 10}},
                         std::to_string(numbers[i]),
                         TextRole::figure,
                         level ? Side::left : Side::center,
                         0,
                         false});
        if (!worst) continue;
        const Vec past = bar.foot + out * (bar_mm + 2); // of a bar at a side the words stand below
        pen.put(TextMark{{level ? past : beside, level ? out * 10 : Vec{0, -11}},
                         plan::say_force_n(answer.closure_n[i], job.display_units),
                         TextRole::depth,
                         Side::center,
                         0,
                         true});
    }
}

} // namespace drawercast::sheets
