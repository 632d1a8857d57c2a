// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/demand.h"
#include "shape/contour.h"
#include "shape/gap.h"
#include "shape/region.h"
#include "shape/trace.h"

#include "core/shape/geos_twin.h"
#include "fuzz/targets.h"

#include <cmath>
#include <optional>

namespace drawercast::fuzz {

namespace {

using namespace shape;

constexpr double coarse_mm = 0.05; // chords of the rings: their areas are of the same rings on both sides

/// Bytes as numbers; zeros when they run out, so that every input means something.
class Reader {
  public:
    explicit Reader(std::string_view bytes) : bytes_(bytes) {}
    int next() {
        if (bytes_.empty()) return 0;
        const auto byte = static_cast<unsigned char>(bytes_.front());
        bytes_.remove_prefix(1);
        return byte;
    }
    double tenths() { return (next() * 256 + next()) % 4000 * 0.1; } // 0 … 400 mm as makers measure

  private:
    std::string_view bytes_;
};

std::optional<Contour> outline(Reader& from) {
    const int kind = from.next() % 4;
    const double w = 1 + from.tenths();
    const double h = 1 + from.tenths();
    Expected<Contour> made = contour_of(Circle{w});
    if (kind == 1) made = contour_of(Rectangle{w, h, std::min(w, h) / 2 * (from.next() % 9) / 8});
    if (kind == 2) made = contour_of(Capsule{std::max(w, h), std::min(w, h)});
    if (kind == 3) {
        Polygon free;
        const int corners = 3 + from.next() % 14;
        for (int i = 0; i < corners; ++i) {
            const double x = from.tenths();
            const double y = from.tenths();
            free.corners.push_back({{x, y}, (from.next() % 5 - 2) * 0.5});
        }
        made = contour_of(free);
    }
    if (!made) return std::nullopt; // crossing outlines are refused, and the refusals are tested elsewhere
    return placed(*made, {{from.tenths(), from.tenths()}, 15.0 * (from.next() % 24)});
}

bool near(double a, double b, double slack) { return std::abs(a - b) <= slack; }

void hold_set_operations(const Ring& a, const Ring& b, double slack) {
    static const shape::testing::Geos geos;
    const auto left = geos.polygon(a);
    const auto right = geos.polygon(b);
    const Region ra = region_of(a);
    const Region rb = region_of(b);
    const auto whole = united(ra, rb);
    const auto both = shared(ra, rb);
    const auto rest = without(ra, rb);
    DRAWERCAST_DEMAND(whole && both && rest, "set operations of two plain outlines are worked out");
    DRAWERCAST_DEMAND(near(area(*whole) + area(*both), area(ra) + area(rb), slack), "union and intersection");
    DRAWERCAST_DEMAND(near(area(*rest) + area(*both), area(ra), slack), "difference and intersection");
    const double twin = geos.area(geos.shared(left, right));
    DRAWERCAST_DEMAND(std::isnan(twin) || near(area(*both), twin, slack), "the intersection as GEOS has it");
    const double joined = geos.area(geos.united(left, right));
    DRAWERCAST_DEMAND(std::isnan(joined) || near(area(*whole), joined, slack), "the union as GEOS has it");
}

void hold_offsets(const Ring& ring, double by, double slack) {
    const Region region = region_of(ring);
    const auto grown = offset_round(region, by);
    DRAWERCAST_DEMAND(grown, "a plain outline can be grown");
    DRAWERCAST_DEMAND(area(*grown) >= area(region) - slack, "growing does not shrink");
    const auto lost = without(region, *grown);
    DRAWERCAST_DEMAND(lost && area(*lost) <= slack, "what is grown holds what it was grown from");
    const auto closed = offset_round(*grown, -by);
    DRAWERCAST_DEMAND(closed && area(*closed) >= area(region) - slack,
                      "growing and shrinking back loses nothing");
}

void hold_distance(const Contour& a, const Contour& b, const Ring& ta, const Ring& tb) {
    const Gap gap = gap_between(a, b);
    const Gap back = gap_between(b, a);
    DRAWERCAST_DEMAND(near(gap.mm, back.mm, 1e-9 + 1e-12 * gap.mm), "a distance is the same both ways");
    static const shape::testing::Geos geos;
    const double twin = geos.distance(geos.polygon(ta), geos.polygon(tb));
    DRAWERCAST_DEMAND(std::isnan(twin) || near(gap.mm, twin, 2.1 * coarse_mm), "the distance as GEOS has it");
}

} // namespace

void plane(std::string_view bytes) {
    Reader reader(bytes);
    const auto a = outline(reader);
    const auto b = outline(reader);
    if (!a || !b) return;
    const Ring ta = traced(*a, coarse_mm);
    const Ring tb = traced(*b, coarse_mm);
    // the grid moves a point by half a step at most, in x and in y
    const double slack = (perimeter(ta) + perimeter(tb)) * 0.5e-3 + 1e-3;
    hold_set_operations(ta, tb, 2 * slack);
    hold_distance(*a, *b, ta, tb);
    // an offset draws its arcs finely, which costs a hundred times as much: one input in eight
    if (reader.next() % 8 == 1) hold_offsets(ta, 0.5 + reader.next() * 0.1, 6 * slack);
}

} // namespace drawercast::fuzz
