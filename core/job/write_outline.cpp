// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/write_parts.h"

namespace drawercast::job {

namespace {

struct OutlineWriter {
    JsonLines& out;
    void operator()(const shape::Rectangle& r) const {
        write_numbers(out, "rect", {r.width_mm, r.height_mm, r.corner_mm});
    }
    void operator()(const shape::Circle& c) const { write_numbers(out, "circle", {c.diameter_mm}); }
    void operator()(const shape::Capsule& c) const {
        write_numbers(out, "capsule", {c.length_mm, c.width_mm});
    }
    void operator()(const shape::Polygon& polygon) const {
        out.key("polygon");
        out.begin_list(Width::narrow);
        for (const auto& corner : polygon.corners) {
            out.begin_list(Width::narrow);
            out.number(corner.at.x);
            out.number(corner.at.y);
            if (corner.sagitta_mm != 0) out.number(corner.sagitta_mm);
            out.end_list();
        }
        out.end_list();
    }
};

} // namespace

void write_numbers(JsonLines& out, std::string_view key, const std::vector<double>& values) {
    out.key(key);
    out.begin_list(Width::narrow);
    for (const double value : values) out.number(value);
    out.end_list();
}

void write_outline(JsonLines& out, const shape::Given& given) {
    out.key("outline");
    out.begin_object(Width::narrow);
    std::visit(OutlineWriter{out}, given);
    out.end_object();
}

void write_pose(JsonLines& out, const shape::Pose& pose) {
    out.key("at");
    out.point(pose.at);
    out.member("turn_deg", pose.turn_deg);
}

} // namespace drawercast::job
