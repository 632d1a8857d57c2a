// SPDX-License-Identifier: GPL-3.0-or-later
#include "buildup/plan_order.h"

#include <queue>

#include <algorithm>
#include <functional>

namespace drawercast::buildup {

namespace {

double depth_at(const Span& span, double x) {
    const double share = (x - span.from.x) / (span.to.x - span.from.x);
    return span.from.y + (span.to.y - span.from.y) * std::clamp(share, 0.0, 1.0);
}

/// Whether a lies behind b, told in the middle of what they share of the sweep.
bool behind(const Span& a, const Span& b) {
    const double x = (std::max(a.from.x, b.from.x) + std::min(a.to.x, b.to.x)) / 2;
    return depth_at(a, x) > depth_at(b, x);
}

struct Event {
    double x;
    bool starts;
    int span;
};

std::vector<Event> events_of(const std::vector<Span>& spans) {
    std::vector<Event> events;
    for (std::size_t i = 0; i < spans.size(); ++i) {
        events.push_back({spans[i].from.x, true, static_cast<int>(i)});
        events.push_back({spans[i].to.x, false, static_cast<int>(i)});
    }
    std::sort(events.begin(), events.end(), [](const Event& a, const Event& b) {
        if (a.x != b.x) return a.x < b.x;
        return a.starts != b.starts ? b.starts : a.span < b.span; // ends first
    });
    return events;
}

/// Pairs (farther, nearer) that meet along the sweep.
std::vector<std::vector<int>> hidings(const std::vector<Span>& spans) {
    std::vector<std::vector<int>> nearer(spans.size());
    std::vector<int> active; // far to near
    const auto pair = [&](int far, int near) { nearer[static_cast<std::size_t>(far)].push_back(near); };
    for (const Event& event : events_of(spans)) {
        const Span& span = spans[static_cast<std::size_t>(event.span)];
        if (event.starts) {
            const auto at = std::find_if(active.begin(), active.end(), [&](int other) {
                return !behind(spans[static_cast<std::size_t>(other)], span);
            });
            const auto placed = active.insert(at, event.span);
            if (placed != active.begin()) pair(*(placed - 1), event.span);
            if (placed + 1 != active.end()) pair(event.span, *(placed + 1));
        } else {
            const auto gone = active.erase(std::find(active.begin(), active.end(), event.span));
            if (gone != active.begin() && gone != active.end()) pair(*(gone - 1), *gone);
        }
    }
    return nearer;
}

constexpr int put = -1; ///< in place of a count: it is in the order already

/// Sides that cross by the grid's width can wait for each other in a circle: the farthest of them goes first.
int farthest_waiting(const std::vector<Span>& spans, const std::vector<int>& waits) {
    const auto depth = [&](std::size_t i) { return std::max(spans[i].from.y, spans[i].to.y); };
    std::size_t farthest = spans.size();
    for (std::size_t i = 0; i < spans.size(); ++i)
        if (waits[i] > 0 && (farthest == spans.size() || depth(i) > depth(farthest))) farthest = i;
    return static_cast<int>(farthest);
}

} // namespace

std::vector<int> far_to_near(const std::vector<Span>& spans) {
    const auto nearer = hidings(spans);
    std::vector<int> waits(spans.size(), 0), order;
    for (const auto& all : nearer)
        for (const int one : all) ++waits[static_cast<std::size_t>(one)];
    std::priority_queue<int, std::vector<int>, std::greater<>> ready;
    for (std::size_t i = 0; i < spans.size(); ++i)
        if (waits[i] == 0) ready.push(static_cast<int>(i));
    while (order.size() < spans.size()) {
        if (ready.empty()) ready.push(farthest_waiting(spans, waits));
        const int next = ready.top();
        ready.pop();
        order.push_back(next);
        waits[static_cast<std::size_t>(next)] = put;
        for (const int one : nearer[static_cast<std::size_t>(next)]) {
            int& left = waits[static_cast<std::size_t>(one)];
            if (left != put && --left == 0) ready.push(one);
        }
    }
    return order;
}

} // namespace drawercast::buildup
