// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/pour_map.h"

#include "shape/gap.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace drawercast::air {
namespace {

double least_width(double depth_mm) { return std::max(slot_mm, depth_mm / slot_ratio); }

PourKind kind_of(const PourStep& step, double height_mm) {
    if (step.channel < 0) return PourKind::top;
    return step.width_mm < least_width(height_mm) ? PourKind::slot : PourKind::channel;
}

/// Keeps the narrowest of a pair, measured against what it should have.
void keep_worst(std::map<std::pair<int, int>, Slot>& slots, Slot slot) {
    if (slot.width_mm >= slot.least_mm) return;
    const auto [at, fresh] = slots.try_emplace({slot.first, slot.second}, slot);
    if (!fresh && slot.width_mm / slot.least_mm < at->second.width_mm / at->second.least_mm)
        at->second = slot;
}

std::vector<shape::Contour> edges_of(const Floor& floor) {
    std::vector<shape::Contour> edges; // each side by itself: a segment
    for (const shape::Patch& patch : floor.opening.patches) {
        std::vector<const shape::Ring*> rings{&patch.outer};
        for (const shape::Ring& hole : patch.holes) rings.push_back(&hole);
        for (const shape::Ring* ring : rings)
            for (std::size_t i = 0; i < ring->size(); ++i)
                edges.push_back({{(*ring)[i], (*ring)[(i + 1) % ring->size()]}, 0});
    }
    return edges;
}

} // namespace

PourMap pour_map_of(double poured_ml, const std::vector<SetPour>& set, double height_mm, const Cells& cells,
                    const Channels& channels, const std::vector<int>& fed_by) {
    std::vector<double> room(channels.all.size(), 0.0);
    double all = 0;
    for_each_cell(cells.mesh, [&](std::size_t cell) {
        all += cells.room_mm3[cell];
        if (fed_by[cell] >= 0) room[static_cast<std::size_t>(fed_by[cell])] += cells.room_mm3[cell];
    });
    PourMap map;
    std::vector<double> still(channels.all.size());
    for (std::size_t i = 0; i < still.size(); ++i) still[i] = poured_ml * room[i] / all;
    for (const SetPour& pour : set) {
        const std::size_t cell = cells.mesh.holding(pour.at);
        PourStep step;
        step.at = pour.at;
        step.ml = pour.ml;
        step.channel = channels.channel[cell];
        step.set = true;
        if (step.channel >= 0) step.width_mm = channels.all[static_cast<std::size_t>(step.channel)].width_mm;
        if (fed_by[cell] >= 0) still[static_cast<std::size_t>(fed_by[cell])] -= pour.ml;
        map.set_ml += pour.ml;
        map.steps.push_back(step);
    }
    // What one channel got too much of, the others need not get.
    double wanted = 0;
    for (const double ml : still) wanted += std::max(0.0, ml);
    const double rest = std::max(0.0, poured_ml - map.set_ml);
    for (std::size_t i = 0; i < still.size(); ++i) {
        if (still[i] <= 0 || rest <= 0) continue;
        PourStep step;
        step.at = channels.all[i].middle;
        step.ml = still[i] * rest / wanted;
        step.width_mm = channels.all[i].width_mm;
        step.channel = static_cast<int>(i);
        map.steps.push_back(step);
    }
    for (PourStep& step : map.steps) step.kind = kind_of(step, height_mm);
    std::stable_sort(map.steps.begin(), map.steps.end(), [](const PourStep& a, const PourStep& b) {
        return std::tie(a.kind, a.width_mm, a.ml) < std::tie(b.kind, b.width_mm, b.ml);
    });
    for (std::size_t i = 0; i < map.steps.size(); ++i) map.steps[i].order = static_cast<int>(i) + 1;
    return map;
}

namespace {

/// Whether another body of the same pocket fills the place between two of its bodies: steps of one block.
bool filled_between(const Floor& floor, std::size_t i, std::size_t j, const shape::Gap& gap) {
    const shape::Vec middle = (gap.a + gap.b) * 0.5;
    for (std::size_t k = 0; k < floor.bodies.size(); ++k)
        if (k != i && k != j && floor.bodies[k].pocket == floor.bodies[i].pocket &&
            shape::contains(floor.bodies[k].outline, middle))
            return true;
    return false;
}

} // namespace

std::vector<Slot> slots_of(const Floor& floor) {
    const double cutoff = least_width(floor.height_mm);
    std::map<std::pair<int, int>, Slot> slots;
    std::vector<shape::Box> boxes;
    for (const Body& body : floor.bodies) boxes.push_back(shape::bounds(body.outline));
    for (std::size_t i = 0; i < floor.bodies.size(); ++i)
        for (std::size_t j = 0; j < floor.bodies.size(); ++j) {
            const Body& a = floor.bodies[i];
            const Body& b = floor.bodies[j];
            const bool twice = a.pocket > b.pocket || (a.pocket == b.pocket && i >= j);
            if (twice || !shape::near(boxes[i], boxes[j], cutoff)) continue;
            const auto gap = shape::gap_between(a.outline, boxes[i], b.outline, boxes[j], cutoff);
            const double least = least_width(std::min(a.height_mm, b.height_mm));
            if (!(gap.mm > 0 && gap.within(cutoff))) continue;
            if (a.pocket == b.pocket && filled_between(floor, i, j, gap)) continue;
            keep_worst(slots, {a.pocket, b.pocket, gap.mm, least, gap.a, gap.b});
        }
    for (const shape::Contour& edge : edges_of(floor)) {
        const shape::Box box = shape::bounds(edge);
        for (std::size_t i = 0; i < floor.bodies.size(); ++i) {
            const Body& body = floor.bodies[i];
            if (!shape::near(boxes[i], box, cutoff)) continue;
            const auto gap = shape::gap_between(body.outline, boxes[i], edge, box, cutoff);
            if (gap.mm > 0 && gap.within(cutoff))
                keep_worst(slots, {body.pocket, -1, gap.mm, least_width(body.height_mm), gap.a, gap.b});
        }
    }
    std::vector<Slot> out;
    for (const auto& [pair, slot] : slots) out.push_back(slot);
    return out;
}

std::vector<ShutChannel> shut_channels_of(const PourMap& map, const Channels& channels) {
    std::vector<double> ml(static_cast<std::size_t>(channels.boards), 0.0);
    std::vector<char> set(ml.size(), 0);
    std::vector<double> area(ml.size(), 0.0);
    for (const auto& channel : channels.all)
        area[static_cast<std::size_t>(channel.board)] += channel.area_mm2;
    for (const PourStep& step : map.steps) {
        if (step.channel < 0) continue;
        const int board = channels.all[static_cast<std::size_t>(step.channel)].board;
        ml[static_cast<std::size_t>(board)] += step.ml;
        set[static_cast<std::size_t>(board)] |= static_cast<char>(step.set);
    }
    const auto main = std::max_element(area.begin(), area.end()) - area.begin();
    std::vector<ShutChannel> out;
    for (std::size_t i = 0; i < channels.all.size(); ++i) {
        const auto& channel = channels.all[i];
        const auto board = static_cast<std::size_t>(channel.board);
        if (static_cast<std::ptrdiff_t>(board) == main || set[board]) continue;
        set[board] = 1; // one of its channels speaks for it
        out.push_back({static_cast<int>(i), ml[board], channel.middle});
    }
    return out;
}

} // namespace drawercast::air
