// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/crowds.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace drawercast::casting {
namespace {

using shape::Box;
using Tile = Crowds::Tile;

int tile_at(double mm) { return static_cast<int>(std::floor(mm / Crowds::tile_mm)); }

Box box_of(Tile tile) {
    const shape::Vec corner{tile.first * Crowds::tile_mm, tile.second * Crowds::tile_mm};
    return {corner, corner + shape::Vec{Crowds::tile_mm, Crowds::tile_mm}};
}

template <class Visit>
void for_each_tile(const Box& box, Visit visit) {
    for (int x = tile_at(box.min.x); x <= tile_at(box.max.x); ++x)
        for (int y = tile_at(box.min.y); y <= tile_at(box.max.y); ++y) visit(Tile{x, y});
}

Box covered(const Place& place) { return place.box.grown(place.reach_mm); }

/// Whom each pocket near by meets, ascending.
using Neighbors = std::vector<std::vector<int>>;

Neighbors neighbors_near(const std::vector<Box>& zones, const std::vector<Place>& places,
                         const std::vector<Contact>& contacts) {
    std::vector<bool> is_near(places.size(), false);
    for (std::size_t i = 0; i < places.size(); ++i)
        is_near[i] = std::any_of(zones.begin(), zones.end(),
                                 [&](const Box& zone) { return near(covered(places[i]), zone); });
    Neighbors out(places.size());
    for (const Contact& contact : contacts) {
        const auto first = static_cast<std::size_t>(contact.first);
        const auto second = static_cast<std::size_t>(contact.second);
        if (is_near[first] && is_near[second]) out[first].push_back(contact.second);
    }
    return out;
}

/// Who meets in a tile, and in which part of it.
struct Crowd {
    std::set<int> members;
    Box window;
};

/// The crowd of each dirty tile: every three pockets that meet each other and whose boxes share part of it.
std::map<Tile, Crowd> crowded_tiles(const std::set<Tile>& dirty, const Neighbors& neighbors,
                                    const std::vector<Place>& places) {
    std::map<Tile, Crowd> out;
    const auto box = [&](int i) { return covered(places[static_cast<std::size_t>(i)]); };
    for (int i = 0; i < static_cast<int>(places.size()); ++i) {
        const auto& met = neighbors[static_cast<std::size_t>(i)];
        for (std::size_t j = 0; j < met.size(); ++j)
            for (std::size_t k = j + 1; k < met.size(); ++k) {
                const auto& of_j = neighbors[static_cast<std::size_t>(met[j])];
                if (!std::binary_search(of_j.begin(), of_j.end(), met[k])) continue;
                const Box shared = shape::shared_box(shape::shared_box(box(i), box(met[j])), box(met[k]));
                if (shared.empty()) continue;
                for_each_tile(shared, [&](Tile tile) {
                    if (!dirty.contains(tile)) return;
                    Crowd& crowd = out[tile];
                    crowd.members.insert({i, met[j], met[k]});
                    crowd.window.add(shape::shared_box(shared, box_of(tile)));
                });
            }
    }
    return out;
}

Correction correction_in(const Crowd& crowd, const std::vector<Place>& places, const Ground& ground) {
    std::vector<const Standing*> standing;
    int at_edge = 0;
    for (const int i : crowd.members) {
        const Place& place = places[static_cast<std::size_t>(i)];
        standing.push_back(&place.standing);
        at_edge += place.at_edge ? 1 : 0;
    }
    std::sort(standing.begin(), standing.end(),
              [](const Standing* a, const Standing* b) { return a->pocket->subject < b->pocket->subject; });
    return crowded_in(crowd.window, standing, ground,
                      at_edge >= 3); // all three must reach out for a point outside
}

} // namespace

void Crowds::refresh(const std::vector<Box>& dirty, const std::vector<Place>& places,
                     const std::vector<Contact>& contacts, const Ground& ground) {
    if (contacts.size() < 3 && all_.empty()) return;
    std::set<Tile> tiles;
    std::vector<Box> zones;
    for (const Box& box : dirty) {
        for_each_tile(box, [&](Tile tile) { tiles.insert(tile); });
        Box zone = box_of({tile_at(box.min.x), tile_at(box.min.y)});
        zone.add(box_of({tile_at(box.max.x), tile_at(box.max.y)}));
        zones.push_back(zone);
    }
    for (const Tile& tile : tiles) all_.erase(tile);
    const auto crowded = crowded_tiles(tiles, neighbors_near(zones, places, contacts), places);
    for (const auto& [tile, crowd] : crowded) {
        Correction correction = correction_in(crowd, places, ground);
        if (correction != Correction{}) all_.emplace(tile, std::move(correction));
    }
}

} // namespace drawercast::casting
