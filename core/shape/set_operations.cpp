// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/guarded.h"
#include "shape/region.h"

#include <algorithm>
#include <numeric>

namespace drawercast::shape {
namespace {

/// For each region the least index of those it hangs together with by overlapping boxes.
std::vector<std::size_t> clusters(std::span<const Region> all) {
    std::vector<Box> boxes;
    for (const Region& region : all) boxes.push_back(bounds(region));
    std::vector<std::size_t> order(all.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t i, std::size_t j) { return boxes[i].min.x < boxes[j].min.x; });
    std::vector<std::size_t> parent(all.size());
    std::iota(parent.begin(), parent.end(), 0);
    const auto root = [&](std::size_t i) {
        while (parent[i] != i) i = parent[i] = parent[parent[i]];
        return i;
    };
    for (std::size_t i = 0; i < order.size(); ++i)
        for (std::size_t j = i + 1; j < order.size() && boxes[order[j]].min.x <= boxes[order[i]].max.x; ++j) {
            if (!near(boxes[order[i]], boxes[order[j]])) continue;
            const auto [low, high] = std::minmax({root(order[i]), root(order[j])});
            parent[high] = low;
        }
    for (std::size_t i = 0; i < parent.size(); ++i) parent[i] = root(i);
    return parent;
}

/// Halves first, so that no operand grows before it must: a union one after another is quadratic.
Expected<Region> united_tree(std::span<const Region* const> all) {
    if (all.size() == 1) return *all[0];
    const Expected<Region> left = united_tree(all.first(all.size() / 2));
    if (!left) return left;
    const Expected<Region> right = united_tree(all.subspan(all.size() / 2));
    if (!right) return right;
    return united(*left, *right);
}

} // namespace

Expected<Region> united(const Region& a, const Region& b) { return guarded(kernel::Operation::unite, a, b); }

Expected<Region> shared(const Region& a, const Region& b) { return guarded(kernel::Operation::share, a, b); }

Expected<Region> without(const Region& a, const Region& b) {
    return guarded(kernel::Operation::subtract, a, b);
}

Expected<Region> united(std::span<const Region> all) {
    const std::vector<std::size_t> cluster = clusters(all);
    std::vector<std::vector<const Region*>> members(all.size());
    for (std::size_t i = 0; i < all.size(); ++i)
        if (!all[i].empty()) members[cluster[i]].push_back(&all[i]);
    Region out;
    for (const auto& together : members) {
        if (together.empty()) continue;
        Expected<Region> part = united_tree(together);
        if (!part) return part;
        for (Patch& patch : part->patches) out.patches.push_back(std::move(patch));
    }
    return out;
}

} // namespace drawercast::shape
