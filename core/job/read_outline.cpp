// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/read_outline.h"

#include "base/number.h"

#include <cmath>
#include <optional>
#include <utility>

namespace drawercast::job {

namespace {

constexpr double most_outline_mm = 10000;
constexpr std::size_t most_corners = 5000;
/// Of one job, arcs as their chords. Forty bytes can ask for ten thousand chords; a thousand objects with
/// rounded outlines come to half a million.
constexpr std::size_t most_corners_in_all = 3'000'000;

/// The numbers of a list of `least` to `most` of them; empty and a report where it is none.
std::vector<double> sizes(Reading& reading, JsonValue at, std::size_t least, std::size_t most) {
    if (at.kind() != JsonKind::array || at.size() < least || at.size() > most) {
        reading.report("outline", at,
                       "needs " + std::to_string(least) +
                           (least == most ? "" : " to " + std::to_string(most)) + " numbers",
                       "Write them as a list, in mm");
        return {};
    }
    std::vector<double> values;
    at.each_item([&](JsonValue item) {
        const auto value = read_number(reading, item);
        if (!value) return;
        if (std::abs(*value) <= most_outline_mm)
            values.push_back(grained(*value));
        else
            reading.report("number-range", item, rounded_text(*value, 9) + " is out of range",
                           "Use numbers within " + number_text(most_outline_mm) + " mm");
    });
    if (values.size() != at.size()) values.clear();
    return values;
}

std::optional<shape::Given> read_polygon(Reading& reading, JsonValue at) {
    if (at.kind() != JsonKind::array || at.size() > most_corners) {
        reading.report("outline", at, "is no list of at most " + std::to_string(most_corners) + " corners",
                       "Write [[x, y], …] in mm");
        return std::nullopt;
    }
    shape::Polygon polygon;
    at.each_item([&](JsonValue corner) {
        const auto xy = sizes(reading, corner, 2, 3);
        if (!xy.empty()) polygon.corners.push_back({{xy[0], xy[1]}, xy.size() > 2 ? xy[2] : 0});
    });
    if (polygon.corners.size() != at.size()) return std::nullopt;
    return polygon;
}

std::optional<shape::Given> read_rectangle(Reading& reading, JsonValue at) {
    const auto s = sizes(reading, at, 2, 3);
    if (s.empty()) return std::nullopt;
    return shape::Rectangle{s[0], s[1], s.size() > 2 ? s[2] : 0};
}

std::optional<shape::Given> read_circle(Reading& reading, JsonValue at) {
    const auto s = sizes(reading, at, 1, 1);
    if (s.empty()) return std::nullopt;
    return shape::Circle{s[0]};
}

std::optional<shape::Given> read_capsule(Reading& reading, JsonValue at) {
    const auto s = sizes(reading, at, 2, 2);
    if (s.empty()) return std::nullopt;
    return shape::Capsule{s[0], s[1]};
}

struct Family {
    std::string_view key;
    std::optional<shape::Given> (*read)(Reading&, JsonValue);
};
constexpr Family families[] = {
    {"rect", read_rectangle}, {"circle", read_circle}, {"capsule", read_capsule}, {"polygon", read_polygon}};

/// The outline, if it is one that foam can be cast around.
std::optional<shape::Given> accepted(Reading& reading, JsonValue at, shape::Given given) {
    if (reading.outlines_refused) return std::nullopt;
    if (reading.outline_corners > most_corners_in_all) {
        reading.outlines_refused = true;
        reading.report("outline-many-corners", at, "the job's outlines have too many corners and arcs in all",
                       "Leave out corners and arcs that nobody could measure");
        return std::nullopt;
    }
    const auto contour = shape::contour_of(given);
    if (!contour) {
        const Problem problem = contour.error();
        reading.report(problem.code, at, problem.what, problem.fix);
        return std::nullopt;
    }
    reading.outline_corners += contour->core.size();
    return given;
}

} // namespace

void read_outline(Fields& fields, std::string_view key, shape::Given& outline) {
    Reading& reading = fields.reading();
    fields.require(key);
    fields.part(key, [&](JsonValue at) {
        for (const auto& [name, read] : families) {
            const auto sizes_at = at.find(name);
            if (!sizes_at || at.size() != 1) continue;
            auto given = read(reading, *sizes_at);
            if (given) given = accepted(reading, *sizes_at, std::move(*given));
            if (given) outline = std::move(*given);
            return;
        }
        reading.report("outline", at, "is no outline",
                       "Write one of {\"rect\": [w, h, r]}, {\"circle\": [d]}, {\"capsule\": [l, w]}, "
                       "{\"polygon\": [[x, y], …]}");
    });
}

void read_pose(Fields& fields, shape::Pose& pose) {
    fields.point("at", pose.at);
    fields.number("turn_deg", pose.turn_deg);
}

} // namespace drawercast::job
