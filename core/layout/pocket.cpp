// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/pocket.h"

#include <algorithm>
#include <cmath>

namespace drawercast::layout {

namespace {

using shape::Contour;
using shape::Fit;
using FormCut = Cut<shape::InObject>;

Problem vanished(const job::Object& object) {
    return {"fit-vanishes", object.id, phrase("the fit leaves no pocket in one piece"),
            phrase("Squeeze the object less")};
}

FormCut level_cut(int index, Contour contour, double depth_mm) {
    FormCut cut;
    cut.index = index;
    cut.outline.contour = std::move(contour);
    cut.depth_mm = depth_mm;
    return cut;
}

/// How far the end of a cylinder moves outward: by the end fit where it is a free face or a shoulder; where
/// its larger neighbor has the shoulder, that one moves against it; not at all between equal ones.
double end_shift(const job::Cylinder& self, const job::Cylinder* neighbor, double end_mm) {
    if (!neighbor || neighbor->diameter_mm < self.diameter_mm) return end_mm;
    return neighbor->diameter_mm > self.diameter_mm ? -end_mm : 0.0;
}

/// A lying round: one hollow for each cylinder, together the row offset by the fit (ends along the common
/// axis). The outline is the opening at the face: the full width, or the chord of the circle where the axis
/// is above the face.
bool add_lying(int index, const job::Lying& lying, const shape::Pose& pose, const Fit& fit,
               std::vector<FormCut>& cuts) {
    double total = 0;
    for (const auto& cylinder : lying.cylinders) total += cylinder.length_mm;
    double left = -total / 2;
    const auto& row = lying.cylinders;
    for (std::size_t i = 0; i < row.size(); ++i) {
        const double right = left + row[i].length_mm;
        const double from = left - end_shift(row[i], i > 0 ? &row[i - 1] : nullptr, fit.end_mm);
        const double to = right + end_shift(row[i], i + 1 < row.size() ? &row[i + 1] : nullptr, fit.end_mm);
        left = right;
        const double radius = row[i].diameter_mm / 2 + fit.side_mm;
        const double depth = lying.axis_mm + radius;
        if (!(to > from) || !(radius > 0) || !(depth > 0)) return false;
        const double above = std::min(0.0, lying.axis_mm);
        const double half = std::sqrt(radius * radius - above * above);
        const Contour opening{{{from, -half}, {to, -half}, {to, half}, {from, half}}, 0};
        FormCut cut = level_cut(index, shape::placed(opening, pose), depth);
        cut.round = Round{radius, lying.axis_mm};
        cuts.push_back(std::move(cut));
    }
    return true;
}

/// Adds the hollows of one level; a problem where the fit leaves none.
std::optional<Problem> add_level(const job::Object& object, int index, const Fit& fit, double insert_mm,
                                 std::vector<FormCut>& cuts) {
    const job::Level& level = object.levels[static_cast<std::size_t>(index)];
    if (const auto* lying = std::get_if<job::Lying>(&level.form)) {
        if (!add_lying(index, *lying, level.pose, fit, cuts)) return vanished(object);
        return std::nullopt;
    }
    const auto* sunk = std::get_if<job::Sunk>(&level.form);
    const shape::Given& given = sunk ? sunk->outline : std::get<job::Through>(level.form).outline;
    auto outline = shape::fitted(given, fit);
    if (!outline) {
        Problem problem = outline.error();
        if (problem.where.empty()) problem.where = Where(object.id);
        return problem;
    }
    FormCut cut = level_cut(index, shape::placed(*outline, level.pose), sunk ? sunk->depth_mm : insert_mm);
    cut.through = !sunk;
    cuts.push_back(std::move(cut));
    return std::nullopt;
}

} // namespace

Expected<PocketForm> pocket_form(const job::Object& object, const std::vector<job::Notch>& notches,
                                 const Fit& fit, double insert_mm) {
    PocketForm form;
    for (int i = 0; i < static_cast<int>(object.levels.size()); ++i)
        if (auto problem = add_level(object, i, fit, insert_mm, form.cuts)) return *std::move(problem);
    for (int i = 0; i < static_cast<int>(notches.size()); ++i) {
        const job::Notch& notch = notches[static_cast<std::size_t>(i)];
        auto outline = shape::contour_of(notch.outline);
        if (!outline) return outline.error();
        FormCut cut = level_cut(i, shape::placed(*outline, notch.pose), notch.depth_mm);
        cut.kind = FormCut::Kind::notch;
        form.cuts.push_back(std::move(cut));
    }
    for (const FormCut& cut : form.cuts)
        form.greatest_depth_mm = std::max(form.greatest_depth_mm, cut.depth_mm);
    return form;
}

PlacedPocket place(const job::Pocket& pocket, std::shared_ptr<const PocketForm> form) {
    PlacedPocket placed{job::subject_of(pocket), pocket.object, pocket.pose, std::move(form), {}, {}, {}};
    placed.cuts.reserve(placed.form->cuts.size());
    placed.boxes.reserve(placed.form->cuts.size());
    for (const FormCut& cut : placed.form->cuts) {
        using Kind = Cut<shape::InDrawer>::Kind;
        placed.cuts.push_back({cut.kind == FormCut::Kind::notch ? Kind::notch : Kind::level,
                               cut.index,
                               {shape::placed(cut.outline.contour, pocket.pose)},
                               cut.depth_mm,
                               cut.through,
                               cut.round});
        placed.boxes.push_back(shape::bounds(placed.cuts.back().outline.contour));
        placed.box.add(placed.boxes.back());
    }
    return placed;
}

Fit fit_of(const job::Object& object, job::Firmness firmness) {
    double side = 0;
    switch (firmness) {
    case job::Firmness::firm:
        side = -0.5;
        break;
    case job::Firmness::medium:
        side = -1;
        break;
    case job::Firmness::soft:
        side = -2;
        break;
    }
    if (object.fit_mm) side = *object.fit_mm;
    return {side, object.fit_end_mm.value_or(side)};
}

double gap_of(const job::Drawer& drawer, job::Firmness firmness) {
    return drawer.gap_mm.value_or(firmness == job::Firmness::soft ? 0.0 : 0.5);
}

} // namespace drawercast::layout
