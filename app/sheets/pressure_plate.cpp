// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/pressure_plate.h"

#include "plan/say.h"

#include "language/spoken.h"
#include "sheets/check_words.h"
#include "sheets/edge_words.h"
#include "sheets/overall_size.h"
#include "sheets/pattern_board.h"
#include "sheets/plate_marks.h"

#include <algorithm>
#include <cmath>

namespace drawercast::sheets {

using shape::InMold;
using theme::LineRole;
using theme::TextRole;
using theme::WashRole;

namespace {

constexpr double fine_mm = 5;             ///< contours are worked out on lines so far apart
constexpr double least_lift_line_mm = 70; ///< shorter lines have no figure
constexpr double edge_step_mm = 5;
constexpr double edge_words_at = 0.16; ///< clear of the worst closure’s pull, at a stiffener’s end

struct Scene {
    const job::Job& job;
    const plan::DrawerPlan& plan;
    const mold::PlateAnswer& answer;
    shape::MoldMap map;
    Box inside;
    shape::Area<InMold> opening;
    Finish finish;
    bool washed() const { return finish == Finish::washed; }
};

Scene scene_of(const job::Job& job, const plan::DrawerPlan& plan, Finish finish) {
    const shape::MoldMap map(plan.insert->box, job.foam->shrinkage);
    return {job,   plan, plan.plate->answer, map, box_inside(job, plan), map.to_mold(plan.insert->area),
            finish};
}

/// Outline, opening, and through blocks that prop the plate.
void add_outline(MoldPen& pen, const Scene& scene) {
    const Box plate = plate_box(scene.answer.design, scene.inside);
    pen.turn_to(Layer::ground);
    pen.put(PathMark{path_of(plate), scene.washed() ? LineRole::cavity_edge : LineRole::trace,
                     scene.washed() ? std::optional(theme::Wash{WashRole::magnitude, 0}) : std::nullopt});
}

void add_below(MoldPen& pen, const Scene& scene, PlateGround ground) {
    pen.put(PathMark{path_of(scene.inside), LineRole::under, std::nullopt});
    pen.edge(scene.opening, LineRole::under);
    for (const auto& pocket : scene.plan.pockets)
        for (const auto& cut : pocket->cuts)
            if (cut.through || ground == PlateGround::arrival)
                pen.edge(scene.map.to_mold(cut.outline), LineRole::under);
}

Field ground_field(const Scene& scene, PlateGround ground) {
    return ground == PlateGround::lift ? refined(field_of(scene.answer.lift), fine_mm)
                                       : field_of(scene.plan.air->model->map());
}

Vec gap_place(const Scene& scene) {
    const Field field = field_of(scene.answer.lift);
    Vec best = scene.inside.min;
    double most = -1;
    for (const auto& patch : scene.opening.region.patches)
        for (std::size_t i = 0; i < patch.outer.size(); ++i) {
            const Vec a = patch.outer[i], b = patch.outer[(i + 1) % patch.outer.size()];
            const int steps = std::max(1, static_cast<int>(std::ceil(length(b - a) / edge_step_mm)));
            for (int k = 0; k < steps; ++k) {
                const Vec p = a + (b - a) * (static_cast<double>(k) / steps);
                if (const double lift = value_at(field, p); lift > most * (1 + 1e-6)) most = lift, best = p;
            }
        }
    return best;
}

Side words_side(const Scene& scene, Vec at) {
    const double share = (at.x - scene.inside.min.x) / scene.inside.width();
    return share < 0.15 ? Side::left : share > 0.85 ? Side::right : Side::center;
}

void add_figures(MoldPen& pen, const Scene& scene) {
    const auto units = scene.job.display_units;
    const auto of = [&](const std::string& what, double value, double limit) {
        return what + say_small(value, units) + language::tr(" of ").toStdString() + say_small(limit, units);
    };
    const auto put = [&](Vec at, const std::string& words) {
        constexpr Vec cross{2, 2};
        pen.put(CenterMark{at, cross, 0});
        pen.put(KeepFreeMark{{at - cross, at + cross}});
        const Side side = words_side(scene, at);
        std::vector<Spot> spots;
        for (const double up : {18.0, -18.0, 34.0, -34.0, 50.0, -50.0})
            spots.push_back({{at, {0, up}}, side});
        const Place own = spots.front().at;
        pen.put(
            TextMark{own, words, TextRole::depth, side, 0, true, {std::move(spots), scene.inside, false}});
    };
    put(scene.answer.bow_at.vec(),
        of(language::tr("bow ").toStdString(), scene.answer.bow_mm, mold::bow_limit_mm));
    put(gap_place(scene),
        of(language::tr("gap ").toStdString(), scene.answer.gap_mm, scene.answer.gap_limit_mm));
}

void keep_stiffeners_free(MoldPen& pen, const Scene& scene) {
    const auto& design = scene.answer.design;
    for (const auto& at : design.stiffeners) pen.put(KeepFreeMark{stiffener_box(design, at)});
}

void add_ground(MoldPen& pen, const Scene& scene, PlateGround ground, const Field& field,
                const Bands& bands) {
    if (scene.washed()) add_bands(pen, field, bands);
    add_below(pen, scene, ground);
    if (scene.washed()) add_contours(pen, field, bands);
}

/// What looks for room comes last, the most wanted first.
void add_words(MoldPen& pen, const Scene& scene, PlateGround ground) {
    pen.turn_to(Layer::still);
    keep_stiffeners_free(pen, scene);
    const bool washed = scene.washed(), lift = ground == PlateGround::lift;
    if (washed && lift) add_figures(pen, scene);
    if (!scene.plan.air) return;
    const auto& vents = scene.plan.air->vented.vents;
    if (!washed)
        add_vent_numbers(pen, vents);
    else if (!lift)
        add_vent_words(pen, vents, scene.job, VentWords::numbers, scene.inside);
    add_air_words(pen, *scene.plan.air, scene.job, !lift, scene.inside);
    if (washed && lift) add_vent_words(pen, vents, scene.job, VentWords::places, scene.inside);
}

/// Those that lie on the plate, with the numbers they have in the list.
void add_checks(MoldPen& pen, const Scene& scene) {
    int number = 0;
    for (const auto& check : scene.plan.checks) {
        ++number;
        if (check.frame == layout::CheckFrame::mold && check.at && !lies_on_board(check))
            pen.put(FlagMark{*check.at, tag_of(check, number, scene.job)});
    }
}

void add_dimensions(MoldPen& pen, const Scene& scene) {
    const Box plate = plate_box(scene.answer.design, scene.inside);
    const double out_mm = scene.washed() ? pull_room_mm : 0;
    const double out_px = scene.washed() ? 36 : template_dimension_px;
    add_overall_size(pen, plate, scene.job.display_units, {out_mm, out_px, template_figure_at});
}

/// What the bars mean, above the plate.
void add_key(MoldPen& pen, const Scene& scene) {
    const auto& answer = scene.answer;
    const auto units = scene.job.display_units;
    const double allowed = answer.capacity_n[answer.worst] / mold::capacity_factor;
    const Box plate = plate_box(answer.design, scene.inside);
    pen.put(TextMark{{{plate.min.x, plate.max.y + pull_room_mm}, {0, 34}},
                     language::tr("bars: pull at ").toStdString() +
                         plan::say_pressure_kpa(scene.plan.pressure->build_for_kpa, units) +
                         language::tr("; tick: a third of what one holds, ").toStdString() +
                         plan::say_force_n(allowed, units),
                     TextRole::caption,
                     Side::left,
                     0,
                     false});
}

void add_datum(MoldPen& pen, const Scene& scene) {
    pen.put(SignMark{Sign::datum, {scene.inside.min}});
    pen.put(TextMark{{scene.inside.min, {0, -26}}, "0, 0", TextRole::caption, Side::center, 0, true});
}

} // namespace

Bands plate_bands(const job::Job& job, const plan::DrawerPlan& plan, PlateGround ground) {
    if (ground == PlateGround::arrival) {
        if (!plan.air) return {};
        return arrival_bands(plan.air->model->map().first_touch, plan.air->model->map().full_expansion);
    }
    return plan.plate ? lift_bands(plan.plate->answer.bow_mm, job.display_units) : Bands{};
}

Sheet<InMold> pressure_plate(const job::Job& job, const plan::DrawerPlan& plan, Finish finish,
                             PlateGround ground) {
    Sheet<InMold> sheet;
    sheet.name = QT_TRANSLATE_NOOP("Sheets", "Pressure plate");
    if (!plan.plate || !plan.insert || !plan.pressure) return sheet;
    if (!plan.air) ground = PlateGround::lift;
    const Scene scene = scene_of(job, plan, finish);
    const Bands bands = plate_bands(job, plan, ground);
    MoldPen pen(sheet);
    sheet.area =
        plate_box(scene.answer.design, scene.inside).grown(scene.washed() ? pull_room_mm : edge_room_mm);
    if (scene.washed()) sheet.lower_room_px = {56, 56}, sheet.upper_room_px = {56, 84};
    add_outline(pen, scene);
    const Field field = ground_field(scene, ground);
    add_ground(pen, scene, ground, field, bands);
    pen.turn_to(Layer::still);
    add_stiffeners(pen, job, scene.answer.design);
    add_closure_signs(pen, scene.answer.design);
    if (plan.air) {
        add_air_pockets(pen, *plan.air);
        add_vents(pen, plan.air->vented.vents);
    }
    pen.turn_to(Layer::still);
    add_datum(pen, scene);
    add_edge_words(pen, sheet.area, scene.washed() ? EdgeWords::mold_once : EdgeWords::mold, edge_words_at);
    add_dimensions(pen, scene);
    const bool of_lift = scene.washed() && ground == PlateGround::lift; // what pulls says nothing of air
    if (of_lift) add_pulls(pen, job, scene.answer, scene.inside);
    add_words(pen, scene, ground);
    if (!scene.washed()) return sheet;
    if (of_lift) { // air stays in many small places: there the legend tells the bands
        add_contour_figures(pen, field, bands, scene.inside, least_lift_line_mm);
        add_key(pen, scene);
    }
    if (bands.count > 0)
        pen.put(LegendMark{{sheet.area.max, {-31.0 * bands.count - 12, 78}},
                           Ladder::magnitude,
                           bands.caption,
                           bands.figures});
    add_checks(pen, scene);
    return sheet;
}

} // namespace drawercast::sheets
