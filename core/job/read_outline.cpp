// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/read_outline.h"

#include <array>
#include <optional>
#include <utility>

namespace drawercast::job {

namespace {

constexpr std::size_t most_corners = 5000;
/// Of one job, arcs as their chords. Forty bytes can ask for ten thousand chords; a thousand objects with
/// rounded outlines come to half a million.
constexpr std::size_t most_corners_in_all = 3'000'000;

/// Which numbers a list holds: one to three, each with its range; the last may be left out where it says so.
struct Sizes {
    std::string_view paths[3];
    std::size_t least = 1;
    std::size_t most = 1;
};
constexpr std::string_view size_path = "/outline/size_mm";
constexpr std::string_view coordinate_path = "/outline/coordinate_mm";
constexpr Sizes rectangle_sizes{{size_path, size_path, "/outline/corner_mm"}, 2, 3};
constexpr Sizes circle_sizes{{size_path}, 1, 1};
constexpr Sizes capsule_sizes{{size_path, size_path}, 2, 2};
constexpr Sizes corner_sizes{{coordinate_path, coordinate_path, "/outline/sagitta_mm"}, 2, 3};

/// The numbers of a list, those left out 0; nothing and a report where it is none.
std::optional<std::array<double, 3>> read_sizes(Reading& reading, JsonValue at, const Sizes& sizes) {
    if (at.kind() != JsonKind::array || at.size() < sizes.least || at.size() > sizes.most) {
        reading.report("outline", at,
                       sizes.least == sizes.most
                           ? phrase("needs %1 numbers", figure(std::to_string(sizes.least)))
                           : phrase("needs %1 to %2 numbers", figure(std::to_string(sizes.least)),
                                    figure(std::to_string(sizes.most))),
                       phrase("Write them as a list, in mm"));
        return std::nullopt;
    }
    std::array<double, 3> values{};
    std::size_t count = 0;
    bool all = true;
    at.each_item([&](JsonValue item) {
        const auto value = read_length(reading, item, sizes.paths[count]);
        all = all && value;
        values[count++] = value.value_or(0);
    });
    if (!all) return std::nullopt;
    return values;
}

std::optional<shape::Given> read_rectangle(Reading& reading, JsonValue at) {
    const auto s = read_sizes(reading, at, rectangle_sizes);
    if (!s) return std::nullopt;
    return shape::Rectangle{(*s)[0], (*s)[1], (*s)[2]};
}

std::optional<shape::Given> read_circle(Reading& reading, JsonValue at) {
    const auto s = read_sizes(reading, at, circle_sizes);
    if (!s) return std::nullopt;
    return shape::Circle{(*s)[0]};
}

std::optional<shape::Given> read_capsule(Reading& reading, JsonValue at) {
    const auto s = read_sizes(reading, at, capsule_sizes);
    if (!s) return std::nullopt;
    return shape::Capsule{(*s)[0], (*s)[1]};
}

std::optional<shape::Given> read_polygon(Reading& reading, JsonValue at) {
    if (at.kind() != JsonKind::array || at.size() > most_corners) {
        reading.report("outline", at,
                       phrase("is no list of at most %1 corners", figure(std::to_string(most_corners))),
                       phrase("Write [[x, y], …] in mm"));
        return std::nullopt;
    }
    shape::Polygon polygon;
    at.each_item([&](JsonValue corner) {
        if (reading.full()) return;
        const auto s = read_sizes(reading, corner, corner_sizes);
        if (s) polygon.corners.push_back({{(*s)[0], (*s)[1]}, (*s)[2]});
    });
    if (polygon.corners.size() != at.size()) return std::nullopt;
    return polygon;
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
        reading.report("outline-many-corners", at,
                       phrase("the job's outlines have too many corners and arcs in all"),
                       phrase("Leave out corners and arcs that nobody could measure"));
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
        reading.report("outline", at, phrase("is no outline"),
                       phrase("Write one of {\"rect\": [w, h, r]}, {\"circle\": [d]}, {\"capsule\": [l, w]}, "
                              "{\"polygon\": [[x, y], …]}"));
    });
}

void read_pose(Fields& fields, shape::Pose& pose) {
    fields.point("at", pose.at);
    fields.number("turn_deg", pose.turn_deg);
}

} // namespace drawercast::job
