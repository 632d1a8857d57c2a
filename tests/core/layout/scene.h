// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/demand.h"
#include "job/job.h"
#include "layout/checks.h"
#include "layout/insert.h"
#include "layout/pocket.h"

#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

/// Small layouts by hand: a firm foam, a drawer without gap, objects without squeeze, so that the figures of
/// a test are those one reads off its coordinates.
namespace drawercast::layout::testing {

inline job::Level sunk(shape::Given outline, double depth_mm, shape::Pose pose = {}) {
    return {job::Sunk{std::move(outline), depth_mm}, pose, {}};
}
inline job::Level through(shape::Given outline, shape::Pose pose = {}) {
    return {job::Through{std::move(outline)}, pose, {}};
}
inline job::Level lying(std::vector<job::Cylinder> cylinders, double axis_mm) {
    return {job::Lying{std::move(cylinders), axis_mm}, {}, {}};
}
inline job::Notch notch(shape::Given outline, shape::Pose pose, double depth_mm) {
    return {std::move(outline), pose, depth_mm, {}};
}

inline job::Object object_of(std::string id, std::vector<job::Level> levels) {
    job::Object object;
    object.id = std::move(id);
    object.fit_mm = 0;
    object.height_mm = 20;
    object.levels = std::move(levels);
    return object;
}

inline job::Drawer drawer_of(shape::Given outline, double insert_mm = 60) {
    job::Drawer drawer;
    drawer.id = "d1";
    drawer.outline = std::move(outline);
    drawer.gap_mm = 0;
    drawer.insert_mm = insert_mm;
    return drawer;
}

/// A pocket of `object` standing in an insert `insert_mm` thick.
inline std::shared_ptr<const PlacedPocket> stand(const job::Object& object, const job::Pocket& pocket,
                                                 double insert_mm) {
    const auto form = pocket_form(object, pocket.notches, fit_of(object, job::Firmness::firm), insert_mm);
    DRAWERCAST_DEMAND(form.has_value(), "the test's object fits");
    return std::make_shared<const PlacedPocket>(place(pocket, std::make_shared<const PocketForm>(*form)));
}

/// A job of one drawer.
struct Scene {
    job::Job job;
    job::Drawer drawer = drawer_of(shape::Rectangle{400, 300, 0});

    job::Object& add(job::Object object, std::vector<std::pair<shape::Vec, double>> places,
                     std::vector<job::Notch> notches = {}) {
        int n = 0;
        for (const auto& [at, turn_deg] : places)
            drawer.pockets.push_back({object.id, ++n, {at, turn_deg}, false, notches, {}});
        objects.push_back(std::move(object));
        return objects.back();
    }
    const job::Object& object(const std::string& id) const {
        for (const auto& one : objects)
            if (one.id == id) return one;
        demand_failed("the test has the object", __FILE__, __LINE__);
    }
    DrawerLimits limits() const {
        const auto insert = insert_of(drawer, gap_of(drawer, job.foam->firmness));
        return limits_of(job, drawer, insert ? std::make_shared<const Insert>(*insert) : nullptr);
    }
    std::vector<Standing> standing() const {
        std::vector<Standing> pockets;
        for (const auto& pocket : drawer.pockets) {
            const job::Object& one = object(pocket.object);
            pockets.push_back(
                {stand(one, pocket, drawer.insert_mm), std::make_shared<const ObjectFacts>(facts_of(one))});
        }
        return pockets;
    }
    std::vector<Check> checks() const { return layout_checks(standing(), limits()); }

    std::vector<job::Object> objects;
};

/// Those of one code.
inline std::vector<Check> only(const std::vector<Check>& checks, Code code) {
    std::vector<Check> some;
    for (const Check& check : checks)
        if (check.code == code) some.push_back(check);
    return some;
}

} // namespace drawercast::layout::testing
