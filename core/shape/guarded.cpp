// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/guarded.h"

#include <algorithm>

namespace drawercast::shape {
namespace {

using kernel::Operation;

constexpr double nudge_mm =
    1e-6; // measured: enough to end every coincidence, far below anything a maker can see

template <class Change>
Region each_point(const Region& region, Change change) {
    Region out = region;
    for (Patch& patch : out.patches) {
        for (Vec& p : patch.outer) p = change(p);
        for (Ring& hole : patch.holes)
            for (Vec& p : hole) p = change(p);
    }
    return out;
}

Region shrunk(const Region& region) {
    const Box box = bounds(region);
    const Vec center = box.center();
    const double half = std::max({box.width(), box.height(), 1.0}) / 2;
    return each_point(region, [&](Vec p) { return center + (p - center) * (1 - nudge_mm / half); });
}

bool sliver(const Ring& ring) { return std::abs(area(ring)) <= perimeter(ring) * grid_mm; }

Region without_slivers(Region region) {
    for (Patch& patch : region.patches)
        patch.holes.erase(std::remove_if(patch.holes.begin(), patch.holes.end(), sliver), patch.holes.end());
    auto& patches = region.patches;
    patches.erase(
        std::remove_if(patches.begin(), patches.end(), [](const Patch& p) { return sliver(p.outer); }),
        patches.end());
    return region;
}

/// Without the corners that a straight side was given where something else met it: rounded to the grid they
/// would be tiny bends.
Ring straightened(const Ring& ring) {
    const auto straight = [](Vec a, Vec b, Vec c) {
        const double across = std::abs(cross(c - a, b - a));
        return across <= nudge_mm * length(c - a) && dot(b - a, c - b) > 0;
    };
    Ring out;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Vec before = out.empty() ? ring.back() : out.back();
        if (!straight(before, ring[i], ring[(i + 1) % ring.size()])) out.push_back(ring[i]);
    }
    return out;
}

Region straightened(Region region) {
    for (Patch& patch : region.patches) {
        patch.outer = straightened(patch.outer);
        for (Ring& hole : patch.holes) hole = straightened(hole);
    }
    return region;
}

Operation complement_of(Operation operation) {
    return operation == Operation::share ? Operation::subtract : Operation::share;
}

/// What needs no set operation: operands whose boxes are apart, or empty ones.
std::optional<Region> trivial(Operation operation, const Region& a, const Region& b) {
    if (near(bounds(a), bounds(b))) return std::nullopt;
    if (operation == Operation::share) return Region{};
    Region out = a;
    if (operation == Operation::unite)
        out.patches.insert(out.patches.end(), b.patches.begin(), b.patches.end());
    return out;
}

std::optional<Region> attempt(Operation operation, const Region& a, const Region& b,
                              const RawOperation& raw) {
    const auto answer = raw(operation, a, b);
    const auto other = raw(complement_of(operation), a, b);
    if (!answer || !other) return std::nullopt;
    const Region main = kernel::cleaned(*answer);
    const Region complement = kernel::cleaned(*other);
    if (!plausible(operation, a, b, main, complement)) return std::nullopt;
    return settled(main);
}

} // namespace

Problem geometry_problem(Phrase what) {
    return {"geometry", "", std::move(what),
            phrase("Move or turn one of the outlines a little, or simplify it")};
}

Expected<Region> prepared(const Region& region) {
    Region snapped = kernel::cleaned(each_point(region, on_grid));
    const auto fault = kernel::fault(snapped);
    if (!fault) return snapped;
    if (!kernel::fault(region)) return region;
    return geometry_problem(phrase("an outline can't be used for areas: %1", verbatim(*fault)));
}

Region settled(const Region& raw) {
    Region snapped = without_slivers(kernel::cleaned(each_point(straightened(raw), on_grid)));
    return kernel::fault(snapped) ? without_slivers(raw) : snapped;
}

bool plausible(Operation operation, const Region& a, const Region& b, const Region& main,
               const Region& complement) {
    if (kernel::fault(main)) return false;
    const double area_a = area(a);
    const double area_b = area(b);
    const double result = area(main);
    // A lost or doubled piece is far larger; what the operations themselves round is far smaller.
    const double slack = 1e-3 + 1e-9 * (area_a + area_b);
    double least = 0;
    double most = area_a;
    double whole = area_a; // what result and complement add up to
    switch (operation) {
    case Operation::unite:
        least = std::max(area_a, area_b);
        most = whole = area_a + area_b;
        break;
    case Operation::share:
        most = std::min(area_a, area_b);
        break;
    case Operation::subtract:
        least = std::max(0.0, area_a - area_b);
        break;
    }
    return result >= least - slack && result <= most + slack &&
           std::abs(result + area(complement) - whole) <= slack;
}

Expected<Region> guarded(Operation operation, const Region& a, const Region& b, const RawOperation& raw) {
    if (auto known = trivial(operation, a, b)) return *known;
    const Expected<Region> left = prepared(a);
    if (!left) return left.error();
    const Expected<Region> right = prepared(b);
    if (!right) return right.error();
    if (auto known = trivial(operation, *left, *right)) return *known;
    if (auto done = attempt(operation, *left, *right, raw)) return *done;
    if (auto done = attempt(operation, *left, shrunk(*right), raw)) return *done;
    if (auto done = attempt(operation, shrunk(*left), *right, raw)) return *done;
    return geometry_problem(phrase("the area of two outlines together could not be worked out reliably"));
}

} // namespace drawercast::shape
