// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/checks.h"

#include <algorithm>
#include <limits>
#include <map>
#include <string_view>

namespace drawercast::layout {

namespace {

/// Size and area of a level as the maker gave it, and how deep it reaches (through: deeper than any).
struct LevelFacts {
    shape::Box box;
    double area_mm2 = 0;
    double depth_mm = 0;
};

LevelFacts facts_of(const shape::Given& given, double depth_mm) {
    const auto contour = shape::contour_of(given);
    if (!contour) return {}; // refused before it gets a pocket
    return {shape::bounds(*contour), shape::area(*contour), depth_mm};
}

/// A lying round rests along its deepest cylinders; seen from above these are length by width at the face.
LevelFacts facts_of(const job::Lying& lying) {
    LevelFacts facts;
    double total = 0, widest = 0;
    for (const auto& cylinder : lying.cylinders) {
        total += cylinder.length_mm;
        widest = std::max(widest, cylinder.diameter_mm);
    }
    facts.depth_mm = lying.axis_mm + widest / 2;
    facts.box = {{0, 0}, {total, widest}};
    for (const auto& cylinder : lying.cylinders)
        if (cylinder.diameter_mm == widest) facts.area_mm2 += cylinder.length_mm * widest;
    return facts;
}

LevelFacts facts_of(const job::Level& level) {
    if (const auto* sunk = std::get_if<job::Sunk>(&level.form))
        return facts_of(sunk->outline, sunk->depth_mm);
    if (const auto* lying = std::get_if<job::Lying>(&level.form)) return facts_of(*lying);
    return facts_of(std::get<job::Through>(level.form).outline, std::numeric_limits<double>::infinity());
}

} // namespace

DrawerLimits limits_of(const job::Job& job, const job::Drawer& drawer, std::shared_ptr<const Insert> insert) {
    return {std::move(insert), minimums_of(job.minimums, job.foam->firmness),
            drawer.insert_mm,  drawer.clear_height_mm,
            drawer.load_kg,    job.foam->stress25_kpa};
}

ObjectFacts facts_of(const job::Object& object) {
    ObjectFacts facts{object.mass_g, object.height_mm, 0, {}};
    double deepest = 0;
    for (const job::Level& level : object.levels) {
        const LevelFacts one = facts_of(level);
        facts.wide.push_back(one.box.width() > wide_mm && one.box.height() > wide_mm);
        if (one.depth_mm > deepest) facts.foot_mm2 = 0;
        deepest = std::max(deepest, one.depth_mm);
        if (one.depth_mm == deepest) facts.foot_mm2 += one.area_mm2;
    }
    if (deepest == std::numeric_limits<double>::infinity())
        facts.foot_mm2 = 0; // on the drawer's bottom, not on foam
    return facts;
}

void add_pocket_checks(const PlacedPocket& pocket, const ObjectFacts& object, const DrawerLimits& limits,
                       std::vector<Check>& checks) {
    if (limits.insert) add_edge_checks(pocket, *limits.insert, limits.minimums, checks);
    add_height_checks(pocket, object, limits, checks);
    add_notch_checks(pocket, limits.minimums, checks);
}

void add_drawer_checks(double objects_g, const DrawerLimits& limits, std::vector<Check>& checks) {
    const auto add = [&](Code code, double value, double limit) {
        checks.push_back({code, Severity::mend, {}, value, limit, CheckFrame::none, {}, {}, false});
    };
    if (objects_g / 1000 > limits.load_kg) add(Code::overload, objects_g / 1000, limits.load_kg);
    if (below(limits.clear_height_mm, limits.insert_mm))
        add(Code::too_high, limits.insert_mm, limits.clear_height_mm);
}

void add_not_placed(const job::Job& job, std::vector<Check>& checks) {
    std::map<std::string_view, int> placed;
    for (const auto& drawer : job.drawers)
        for (const job::Pocket& pocket : drawer->pockets) ++placed[pocket.object];
    for (const auto& object : job.objects) {
        const int count = placed[object->id];
        if (count < object->count)
            checks.push_back({Code::not_placed,
                              Severity::look,
                              {object->id},
                              static_cast<double>(count),
                              static_cast<double>(object->count),
                              CheckFrame::none,
                              {},
                              {},
                              false});
    }
}

Check check_of(const Problem& problem, std::vector<std::string> subjects) {
    Check check;
    check.code = code_of(problem.code).value_or(Code::geometry);
    check.severity = Severity::mend;
    check.subjects = std::move(subjects);
    std::sort(check.subjects.begin(), check.subjects.end());
    return check;
}

std::vector<Check> layout_checks(const std::vector<Standing>& pockets, const DrawerLimits& limits) {
    std::vector<Check> checks;
    double objects_g = 0;
    for (std::size_t i = 0; i < pockets.size(); ++i) {
        objects_g += pockets[i].object->mass_g;
        add_pocket_checks(*pockets[i].pocket, *pockets[i].object, limits, checks);
        for (std::size_t j = i + 1; j < pockets.size(); ++j)
            if (auto check = pair_check(*pockets[i].pocket, *pockets[j].pocket, limits.minimums))
                checks.push_back(*std::move(check));
    }
    add_drawer_checks(objects_g, limits, checks);
    std::sort(checks.begin(), checks.end(), comes_before);
    return checks;
}

} // namespace drawercast::layout
