// SPDX-License-Identifier: GPL-3.0-or-later
#include "buildup/picture.h"

#include "buildup/faces.h"
#include "shape/segments.h"

#include <algorithm>
#include <cmath>

namespace drawercast::buildup {

using shape::Box;
using shape::Ring;
using shape::Vec;

namespace {

const double rise = std::sqrt(1 - sight_sine * sight_sine); ///< a height's share in the picture

class Painter {
  public:
    Painter(const Faces& faces, double turn_deg) : faces_(faces), seen_(turn_deg) {}

    std::vector<Painted> paint() {
        std::vector<double> heights;
        for (const Level& level : faces_.levels) heights.push_back(level.height_mm);
        std::sort(heights.begin(), heights.end());
        heights.erase(std::unique(heights.begin(), heights.end()), heights.end());
        constexpr double all = 1e9;
        double floor = -all;
        for (const double height : heights) {
            storey(floor, height);
            for (const Level& level : faces_.levels)
                if (level.height_mm == height) put(level);
            floor = height;
        }
        storey(floor, all);
        return std::move(out_);
    }

  private:
    void storey(double floor, double ceiling) {
        std::vector<const Upright*> here;
        std::vector<Span> spans;
        for (const Upright& side : faces_.uprights) {
            if (side.top_mm <= floor || side.bottom_mm >= ceiling) continue;
            here.push_back(&side);
            spans.push_back(side.span);
        }
        for (const int i : far_to_near(spans)) put(*here[static_cast<std::size_t>(i)], floor);
    }

    void put(const Upright& side, double floor) {
        const double bottom = std::max(side.bottom_mm, floor);
        const Vec a = seen_(side.from, bottom), b = seen_(side.to, bottom);
        const Vec c = seen_(side.to, side.top_mm), d = seen_(side.from, side.top_mm);
        Painted face{side.part, *side.subject, side.face, {}, {}};
        face.area = {{a, b, c, d}};
        if (side.line_left) face.edges.emplace_back(a, d);
        if (side.line_right) face.edges.emplace_back(b, c);
        if (side.line_bottom && bottom == side.bottom_mm) face.edges.emplace_back(a, b);
        out_.push_back(std::move(face));
    }

    void put(const Level& level) {
        Painted face{level.part, *level.subject, Face::top, {}, {}};
        const auto add = [&](const Ring& ring) {
            Ring shown;
            for (const Vec p : ring) shown.push_back(seen_(p, level.height_mm));
            if (level.lined)
                for (std::size_t i = 0; i < shown.size(); ++i)
                    face.edges.emplace_back(shown[i], shown[(i + 1) % shown.size()]);
            face.area.push_back(std::move(shown));
        };
        for (const auto& patch : level.area.patches) {
            add(patch.outer);
            for (const Ring& hole : patch.holes) add(hole);
        }
        out_.push_back(std::move(face));
    }

    const Faces& faces_;
    Projection seen_;
    std::vector<Painted> out_;
};

bool covers(const Painted& face, Vec p) {
    bool in = false;
    for (const Ring& ring : face.area) in ^= shape::holds_half_open(ring, p);
    return in;
}

} // namespace

Vec Projection::operator()(Vec plan, double height_mm) const {
    const Vec at = turn_(plan);
    return {at.x, at.y * sight_sine + height_mm * rise};
}

Quarter facing_quarter(double turn_deg) {
    const auto turn = shape::Turn::of_degrees(turn_deg);
    // toward the viewer is −y once turned
    const Vec near{-turn.sine, -turn.cosine};
    return {near.x > 1e-9, near.y > 1e-9};
}

std::vector<Painted> painted(const Scene& scene, const Look& look) {
    const Faces faces = faces_of(scene, look);
    return Painter(faces, look.turn_deg).paint();
}

int seen_at(const std::vector<Painted>& all, Vec point) {
    for (std::size_t i = all.size(); i-- > 0;)
        if (covers(all[i], point)) return static_cast<int>(i);
    return -1;
}

bool visible_point(const std::vector<Painted>& all, Part part, Vec& point) {
    double most = 0;
    int tried = 0;
    for (std::size_t i = all.size(); i-- > 0 && tried < 60;) {
        if (all[i].part != part || all[i].area.empty()) continue;
        Box box;
        for (const Vec p : all[i].area.front()) box.add(p);
        if (box.width() * box.height() <= most) continue;
        ++tried;
        for (const Vec share : {Vec{0.5, 0.5}, Vec{0.3, 0.6}, Vec{0.7, 0.6}, Vec{0.15, 0.5}, Vec{0.85, 0.5},
                                Vec{0.5, 0.25}, Vec{0.5, 0.8}}) {
            const Vec at{box.min.x + share.x * box.width(), box.min.y + share.y * box.height()};
            const int seen = covers(all[i], at) ? seen_at(all, at) : -1;
            if (seen < 0 || all[static_cast<std::size_t>(seen)].part != part) continue;
            point = at;
            most = box.width() * box.height();
            break;
        }
    }
    return most > 0;
}

Box bounds(const std::vector<Painted>& all) {
    Box box;
    for (const Painted& face : all)
        for (const Ring& ring : face.area)
            for (const Vec p : ring) box.add(p);
    return box;
}

} // namespace drawercast::buildup
