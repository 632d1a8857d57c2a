// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/read_outline.h"

#include "base/number.h"

#include <cmath>

namespace drawercast::job {

namespace {

constexpr double most_outline_mm = 10000;
constexpr std::size_t most_corners = 5000;

/// The numbers of a list of `least` to `most` of them; empty and a report where it is none.
std::vector<double> sizes(Reading& reading, const Spot& spot, std::size_t least, std::size_t most) {
    std::vector<double> values;
    const JsonNode& node = *spot.node;
    if (node.kind != JsonNode::Kind::array || node.items.size() < least || node.items.size() > most) {
        reading.report("outline", spot.pointer, node.begin,
                       "needs " + std::to_string(least) +
                           (least == most ? "" : " to " + std::to_string(most)) + " numbers",
                       "Write them as a list, in mm");
        return {};
    }
    for (const auto& item : node.items) {
        const auto value = item.kind == JsonNode::Kind::number ? parse_number(item.text) : std::nullopt;
        if (!value || !(std::abs(*value) <= most_outline_mm)) {
            reading.report("outline", spot.pointer, item.begin, "is no length",
                           "Use numbers within " + number_text(most_outline_mm) + " mm");
            return {};
        }
        values.push_back(grained(*value));
    }
    return values;
}

std::optional<shape::Given> read_polygon(Reading& reading, const Spot& spot) {
    const JsonNode& node = *spot.node;
    if (node.kind != JsonNode::Kind::array || node.items.size() > most_corners) {
        reading.report("outline", spot.pointer, node.begin,
                       "is no list of at most " + std::to_string(most_corners) + " corners",
                       "Write [[x, y], …] in mm");
        return std::nullopt;
    }
    shape::Polygon polygon;
    for (std::size_t i = 0; i < node.items.size(); ++i) {
        const auto xy = sizes(reading, spot.item(i, node.items[i]), 2, 3);
        if (xy.empty()) return std::nullopt;
        polygon.corners.push_back({{xy[0], xy[1]}, xy.size() > 2 ? xy[2] : 0});
    }
    return shape::Given(std::move(polygon));
}

std::optional<shape::Given> read_form(Reading& reading, std::string_view family, const Spot& spot) {
    if (family == "polygon") return read_polygon(reading, spot);
    if (family == "rect") {
        const auto s = sizes(reading, spot, 2, 3);
        if (s.empty()) return std::nullopt;
        return shape::Given(shape::Rectangle{s[0], s[1], s.size() > 2 ? s[2] : 0});
    }
    if (family == "circle") {
        const auto s = sizes(reading, spot, 1, 1);
        if (s.empty()) return std::nullopt;
        return shape::Given(shape::Circle{s[0]});
    }
    const auto s = sizes(reading, spot, 2, 2);
    if (s.empty()) return std::nullopt;
    return shape::Given(shape::Capsule{s[0], s[1]});
}

} // namespace

void read_outline(Fields& fields, std::string_view key, shape::Given& outline) {
    fields.require(key);
    fields.part(key, [&](const Spot& spot) {
        const JsonNode& node = *spot.node;
        for (const std::string_view family : {"rect", "circle", "capsule", "polygon"}) {
            const JsonNode* form = node.find(family);
            if (form == nullptr || node.members.size() != 1) continue;
            const Spot at = spot.at(family, *form);
            const auto given = read_form(fields.reading(), family, at);
            if (!given) return;
            const auto contour = shape::contour_of(*given);
            if (!contour) {
                const Problem& problem = contour.error();
                fields.reading().report(problem.code, at.pointer, form->begin, problem.what, problem.fix);
                return;
            }
            outline = *given;
            return;
        }
        fields.reading().report(
            "outline", spot.pointer, node.begin, "is no outline",
            "Write one of {\"rect\": [w, h, r]}, {\"circle\": [d]}, {\"capsule\": [l, w]}, "
            "{\"polygon\": [[x, y], …]}");
    });
}

void read_pose(Fields& fields, shape::Pose& pose) {
    fields.point("at", pose.at);
    fields.number("turn_deg", pose.turn_deg);
}

} // namespace drawercast::job
