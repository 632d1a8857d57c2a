// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/insert.h"

#include "shape/fit.h"
#include "shape/gap.h"
#include "shape/region.h"

#include <algorithm>
#include <optional>

namespace drawercast::layout {

namespace {

using shape::Contour;
using shape::Region;

/// A piece of foam below this is a sliver of the set operations, not a piece anybody could cast (our guess).
constexpr double least_piece_mm2 = 1;

Problem split(const job::Drawer& drawer) {
    return {"insert-split", drawer.id, phrase("the obstructions cut the insert in two"),
            phrase("Move them, or plan two drawers")};
}

Problem nothing_left(const job::Drawer& drawer) {
    return {"insert-split", drawer.id, phrase("gap and obstructions leave no insert"),
            phrase("Choose a smaller gap")};
}

/// A contour and the same as a region: exact for distances, on the grid for set operations.
struct Piece {
    Contour contour;
    Region region;
};

Piece piece_of(Contour contour) {
    Region region = shape::region_of(contour);
    return {std::move(contour), std::move(region)};
}

/// `given`, of the contour `plain` at `pose`, offset by `by_mm` with straight edges mitred. Families stay
/// exact, free outlines go over the grid. Nothing where not exactly one piece is left.
Expected<std::optional<Piece>> offset(const shape::Given& given, const Contour& plain,
                                      const shape::Pose& pose, double by_mm) {
    if (by_mm == 0) return std::optional(piece_of(plain));
    if (!std::holds_alternative<shape::Polygon>(given)) {
        const auto contour = shape::fitted(given, {by_mm, by_mm});
        if (!contour) return std::optional<Piece>(); // shrunk to nothing: families do not split
        return std::optional(piece_of(shape::placed(*contour, pose)));
    }
    auto region = shape::offset_mitred(shape::region_of(plain), by_mm);
    if (!region) return region.error();
    if (region->patches.size() != 1 || !region->patches[0].holes.empty()) return std::optional<Piece>();
    return std::optional(Piece{Contour{region->patches[0].outer, 0}, *region});
}

/// An obstruction as it stands, and grown by the gap.
struct Grown {
    Piece plain;
    Piece grown;
};

Expected<std::vector<Grown>> grown_obstructions(const job::Drawer& drawer, double gap_mm) {
    std::vector<Grown> all;
    for (const job::Obstruction& obstruction : drawer.obstructions) {
        const auto own = shape::contour_of(obstruction.outline);
        if (!own) return own.error();
        const Piece plain = piece_of(shape::placed(*own, obstruction.pose));
        auto grown = offset(obstruction.outline, plain.contour, obstruction.pose, gap_mm);
        if (!grown) return grown.error();
        all.push_back({plain, grown->value_or(plain)}); // too slim to be squeezed: foam stops at it
    }
    return all;
}

/// Whether the obstruction stands free: its edge is then a whole hole of the insert, and stays exact.
bool stands_free(const std::vector<Grown>& all, std::size_t which, const Contour& drawer,
                 const Contour& inset) {
    const Contour& self = all[which].grown.contour;
    if (!(shape::gap_inside(self, inset).mm > 0)) return false;
    if (!(shape::gap_inside(all[which].plain.contour, drawer).mm > 0))
        return false; // a press fit shrinks what is grown
    for (std::size_t i = 0; i < all.size(); ++i)
        if (i != which && !(shape::gap_between(self, all[i].grown.contour).mm > 0)) return false;
    return true;
}

/// The insert's region beside the obstructions that reach its edge. A press fit (gap < 0) grows what the
/// obstructions leave of the drawer: cutting slimmer obstructions out of a larger insert would leave fins
/// between them and the wall.
Expected<Region> cut(const Piece& drawer, const Piece& inset, const std::vector<const Grown*>& cutting,
                     double gap_mm) {
    std::vector<Region> regions;
    for (const Grown* one : cutting) regions.push_back(gap_mm < 0 ? one->plain.region : one->grown.region);
    const auto taken = shape::united(regions);
    if (!taken) return taken.error();
    auto left = shape::without(gap_mm < 0 ? drawer.region : inset.region, *taken);
    if (!left || gap_mm >= 0) return left;
    return shape::offset_mitred(*left, -gap_mm);
}

void drop_slivers(Region& region) {
    std::erase_if(region.patches,
                  [](const shape::Patch& patch) { return shape::area(Region{{patch}}) < least_piece_mm2; });
}

Contour hole_contour(const shape::Ring& clockwise) {
    return {shape::Ring(clockwise.rbegin(), clockwise.rend()), 0};
}

/// Takes a free-standing obstruction out of the insert.
void add_hole(Insert& insert, const Piece& piece) {
    const shape::Ring& outer = piece.region.patches.at(0).outer;
    insert.area.region.patches[0].holes.emplace_back(outer.rbegin(), outer.rend());
    insert.edges.push_back({piece.contour});
    insert.area_mm2 -= shape::area(piece.contour);
}

} // namespace

Expected<Insert> insert_of(const job::Drawer& drawer, double gap_mm) {
    const auto own = shape::contour_of(drawer.outline);
    if (!own) return own.error();
    const shape::Pose corner_at_zero{shape::Vec{} - shape::bounds(*own).min, 0};
    const Piece whole = piece_of(shape::placed(*own, corner_at_zero));
    const auto inset = offset(drawer.outline, whole.contour, corner_at_zero, -gap_mm);
    if (!inset) return inset.error();
    if (!*inset) return nothing_left(drawer);
    const auto obstructions = grown_obstructions(drawer, gap_mm);
    if (!obstructions) return obstructions.error();

    std::vector<const Grown*> cutting;
    std::vector<const Grown*> free;
    for (std::size_t i = 0; i < obstructions->size(); ++i)
        (stands_free(*obstructions, i, whole.contour, (*inset)->contour) ? free : cutting)
            .push_back(&(*obstructions)[i]);

    Insert insert{{(*inset)->region}, {{(*inset)->contour}}, {}, shape::area((*inset)->contour),
                  drawer.insert_mm,   {whole.contour},       {}};
    if (!cutting.empty()) {
        auto region = cut(whole, **inset, cutting, gap_mm);
        if (!region) return region.error();
        drop_slivers(*region);
        if (region->empty()) return nothing_left(drawer);
        if (region->patches.size() > 1) return split(drawer);
        insert.area.region = *std::move(region);
        const shape::Patch& patch = insert.area.region.patches[0];
        insert.edges = {{Contour{patch.outer, 0}}};
        for (const shape::Ring& hole : patch.holes) insert.edges.push_back({hole_contour(hole)});
        insert.area_mm2 = shape::area(insert.area.region);
    }
    for (const Grown* one : free) add_hole(insert, one->grown);
    insert.box = shape::bounds(insert.edges[0].contour);
    for (const Grown& one : *obstructions) insert.obstructions.push_back({one.plain.contour});
    return insert;
}

} // namespace drawercast::layout
