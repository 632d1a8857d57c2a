// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/room.h"

#include <algorithm>
#include <cmath>

namespace drawercast::sheets {

namespace {

Box around(Vec center, Vec size) { return {center - size * 0.5, center + size * 0.5}; }

} // namespace

/// Liang and Barsky's clipping.
bool segment_meets(Vec a, Vec b, const Box& box) {
    double from = 0, to = 1;
    const auto clip = [&](double start, double step, double low, double high) {
        if (step == 0) return start > low && start < high;
        double enter = (low - start) / step, leave = (high - start) / step;
        if (enter > leave) std::swap(enter, leave);
        from = std::max(from, enter);
        to = std::min(to, leave);
        return from < to;
    };
    return clip(a.x, b.x - a.x, box.min.x, box.max.x) && clip(a.y, b.y - a.y, box.min.y, box.max.y);
}

bool crosses(const std::vector<shape::Ring>& rings, const Box& box) {
    for (const auto& ring : rings)
        for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++)
            if (segment_meets(ring[j], ring[i], box)) return true;
    return false;
}

std::optional<Vec> room_inside(const std::vector<shape::Ring>& within,
                               const std::vector<std::vector<shape::Ring>>& avoid, Vec size) {
    Box box;
    for (const auto& ring : within)
        for (const Vec p : ring) box.add(p);
    if (box.empty() || box.width() < size.x || box.height() < size.y) return std::nullopt;
    const auto fits = [&](Vec center) {
        const Box place = around(center, size);
        if (!inside(within, center) || crosses(within, place)) return false;
        return std::none_of(avoid.begin(), avoid.end(), [&](const auto& rings) {
            return inside(rings, center) || crosses(rings, place);
        });
    };
    if (fits(box.center())) return box.center();

    constexpr int steps = 16;
    std::vector<Vec> places;
    for (int i = 0; i <= steps; ++i)
        for (int k = 0; k <= steps; ++k)
            places.push_back({box.min.x + size.x / 2 + (box.width() - size.x) * i / steps,
                              box.min.y + size.y / 2 + (box.height() - size.y) * k / steps});
    std::stable_sort(places.begin(), places.end(),
                     [&](Vec a, Vec b) { return length(a - box.center()) < length(b - box.center()); });
    const auto best = std::find_if(places.begin(), places.end(), fits);
    if (best == places.end()) return std::nullopt;
    return *best;
}

Path hatching(const std::vector<shape::Ring>& rings, Vec anchor, double turn_deg, double pitch) {
    const shape::Turn turn = shape::Turn::of_degrees(turn_deg);
    const Vec along{turn.cosine, -turn.sine}, across{turn.sine, turn.cosine};
    double low = std::numeric_limits<double>::infinity(), high = -low;
    for (const auto& ring : rings)
        for (const Vec p : ring) {
            low = std::min(low, dot(p - anchor, across));
            high = std::max(high, dot(p - anchor, across));
        }
    Path path;
    std::vector<double> hits;
    for (double k = std::ceil(low / pitch); k * pitch <= high; ++k) {
        hits.clear();
        for (const auto& ring : rings)
            for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
                const double a = dot(ring[j] - anchor, across) - k * pitch;
                const double b = dot(ring[i] - anchor, across) - k * pitch;
                if ((a > 0) == (b > 0)) continue;
                const Vec p = ring[j] + (ring[i] - ring[j]) * (a / (a - b));
                hits.push_back(dot(p - anchor, along));
            }
        std::sort(hits.begin(), hits.end());
        for (std::size_t i = 0; i + 1 < hits.size(); i += 2) {
            const Vec foot = anchor + across * (k * pitch);
            path = joined(std::move(path), line(foot + along * hits[i], foot + along * hits[i + 1]));
        }
    }
    return path;
}

} // namespace drawercast::sheets
