// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/blocks.h"

#include "base/demand.h"
#include "shape/dilate.h"
#include "shape/gap.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace drawercast::casting {

namespace {

using shape::Contour;
using shape::InDrawer;
using shape::InMold;
using shape::Outline;
using shape::Point;
using shape::Region;
using shape::Vec;

/// Blocks whose middles lie this close to one height read as one row.
constexpr double row_mm = 40;
constexpr std::size_t most_directions = 16; ///< of a free outline's sides, in which screws are tried
constexpr double step_mm = 0.5;             ///< in which a screw is moved inward
constexpr double least_apart_mm = 8; ///< two screws closer than this hold no better than one (our guess)

layout::Cut<InMold> in_mold(const layout::Cut<InDrawer>& cut, const shape::MoldMap& map) {
    using Kind = layout::Cut<InMold>::Kind;
    layout::Cut<InMold> out;
    out.kind = cut.kind == layout::Cut<InDrawer>::Kind::notch ? Kind::notch : Kind::level;
    out.index = cut.index;
    out.outline = map.to_mold(cut.outline);
    out.depth_mm = map.length_to_mold(cut.depth_mm);
    out.through = cut.through;
    if (cut.round)
        out.round =
            layout::Round{map.length_to_mold(cut.round->radius_mm), map.length_to_mold(cut.round->axis_mm)};
    return out;
}

const BlockPart& largest(const std::vector<BlockPart>& parts) {
    return *std::max_element(parts.begin(), parts.end(), [](const BlockPart& a, const BlockPart& b) {
        return shape::area(a.cut.outline.contour) < shape::area(b.cut.outline.contour);
    });
}

/// The piece of the line through `at` along `way` that lies inside the outline and holds `at`; from and to
/// along `way`.
struct Chord {
    double from = 0;
    double to = 0;
    double length() const { return to - from; }
};

std::optional<Chord> chord_through(const shape::Ring& ring, Vec at, Vec way) {
    Chord chord{-std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Vec a = ring[i] - at;
        const Vec b = ring[(i + 1) % ring.size()] - at;
        const double side_a = shape::cross(way, a);
        const double side_b = shape::cross(way, b);
        if ((side_a > 0) == (side_b > 0)) continue;
        const double share = side_a / (side_a - side_b);
        const double along = shape::dot(way, a + (b - a) * share);
        if (along <= 0) chord.from = std::max(chord.from, along);
        if (along >= 0) chord.to = std::min(chord.to, along);
    }
    if (!std::isfinite(chord.from) || !std::isfinite(chord.to)) return std::nullopt;
    return chord;
}

/// A point well inside: the centroid where the outline holds it, else the middle of the longest chord through
/// the box's middle lines.
Vec inner_point(const Contour& contour, const shape::Ring& ring) {
    const Vec middle = shape::centroid(contour);
    if (shape::contains(contour, middle)) return middle;
    const shape::Box box = shape::bounds(contour);
    Vec best = ring.front();
    double widest = -1;
    constexpr int lines = 9;
    for (int i = 1; i < lines; ++i) {
        const double y = box.min.y + box.height() * i / lines;
        for (int k = 1; k < lines; ++k) {
            const Vec at{box.min.x + box.width() * k / lines, y};
            if (!shape::contains(contour, at)) continue;
            const auto chord = chord_through(ring, at, {1, 0});
            if (chord && chord->length() > widest) {
                widest = chord->length();
                best = at + Vec{(chord->from + chord->to) / 2, 0};
            }
        }
    }
    return best;
}

double edge_distance(const Contour& contour, Vec at) {
    return shape::gap_inside(Contour{{at}, 0}, contour).mm;
}

/// Along the sides of the outline, longest first: screws stand parallel to what the maker sees. A round one
/// has none.
std::vector<Vec> side_directions(const Contour& contour) {
    std::vector<Vec> sides;
    for (std::size_t i = 0; i < contour.core.size(); ++i) {
        const Vec side = contour.core[(i + 1) % contour.core.size()] - contour.core[i];
        if (shape::length(side) > 1) sides.push_back(side);
    }
    std::stable_sort(sides.begin(), sides.end(),
                     [](Vec a, Vec b) { return shape::length(a) > shape::length(b); });
    if (sides.size() > most_directions) sides.resize(most_directions);
    for (Vec& side : sides) side = side * (1 / shape::length(side));
    sides.push_back({1, 0});
    return sides;
}

struct Run {
    Vec from;
    Vec to;
    double length() const { return shape::length(to - from); }
};

/// The ends of the chord, each moved in until it is `inset` from the edge.
Run run_inside(const Contour& contour, Vec middle, Vec way, const Chord& chord, double inset) {
    const auto end = [&](double reach) {
        const double sign = reach < 0 ? -1 : 1;
        double along = std::abs(reach) - inset;
        while (along > 0 && edge_distance(contour, middle + way * (sign * along)) < inset - 1e-6)
            along -= step_mm;
        return middle + way * (sign * std::max(along, 0.0));
    };
    return {end(chord.from), end(chord.to)};
}

void number_in_reading_order(std::vector<Block>& blocks) {
    std::vector<std::size_t> order(blocks.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    const auto row = [&](std::size_t i) { return std::floor(blocks[i].center.y_mm / row_mm); };
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        if (row(a) != row(b)) return row(a) > row(b);
        return blocks[a].center.x_mm < blocks[b].center.x_mm;
    });
    std::vector<Block> sorted;
    for (const std::size_t i : order) {
        sorted.push_back(std::move(blocks[i]));
        sorted.back().number = static_cast<int>(sorted.size());
    }
    blocks = std::move(sorted);
}

Block block_of(const BoardPocket& pocket, const shape::MoldMap& map, double film_mm) {
    Block block;
    block.subject = pocket.pocket->subject;
    block.name = pocket.name;
    for (const auto& cut : pocket.pocket->cuts) {
        BlockPart part{in_mold(cut, map), 0};
        // A through block stands as high as the walls and meets the plate: no film on its top.
        part.wood_height_mm = cut.through ? part.cut.depth_mm : part.cut.depth_mm - film_mm;
        block.height_mm = std::max(block.height_mm, part.cut.depth_mm);
        block.parts.push_back(std::move(part));
    }
    DRAWERCAST_DEMAND(!block.parts.empty(), "a pocket has a hollow");
    const auto& foot = largest(block.parts).cut.outline;
    block.center = Point<InMold>::of(shape::bounds(foot.contour).center());
    block.fixing = fixing_points(foot);
    block.pin = block.fixing.size() == 1;
    return block;
}

Region box_region(const shape::Box& box) {
    return shape::region_of(shape::Ring{box.min, {box.max.x, box.min.y}, box.max, {box.min.x, box.max.y}});
}

/// All feet with their clay, where foam can be.
Expected<Region> clay_of(const std::vector<Block>& blocks, const Region& opening, double fillet_mm) {
    std::vector<Region> feet;
    for (const auto& block : blocks)
        for (const auto& part : block.parts) {
            auto foot = shape::dilated(part.cut.outline.contour, std::min(fillet_mm, part.cut.depth_mm));
            if (!foot) return foot.error();
            feet.push_back(std::move(*foot));
        }
    const auto all = shape::united(feet);
    if (!all) return all.error();
    return shape::shared(*all, opening);
}

} // namespace

std::vector<Point<InMold>> fixing_points(const Outline<InMold>& foot) {
    const Contour& contour = foot.contour;
    const shape::Ring ring = shape::traced(contour, 0.05);
    const Vec middle = inner_point(contour, ring);
    const double inset = std::min(fixing_inset_mm, edge_distance(contour, middle));
    Run best;
    double longest = 0;
    for (const Vec way : side_directions(contour)) {
        const auto chord = chord_through(ring, middle, way);
        if (!chord) continue;
        longest = std::max(longest, chord->length());
        const Run run = run_inside(contour, middle, way, *chord, inset);
        if (run.length() > best.length() + 1e-6) best = run;
    }
    if (longest < two_screws_from_mm || best.length() < least_apart_mm) return {Point<InMold>::of(middle)};
    return {Point<InMold>::of(best.from), Point<InMold>::of(best.to)};
}

Expected<PatternBoard> pattern_board_of(const BoardIn& in) {
    const shape::MoldMap map(in.insert->box, in.shrinkage);
    PatternBoard board;
    board.enlargement = map.enlargement();
    board.height_mm = map.length_to_mold(in.insert->thickness_mm);
    board.box = {{0, 0},
                 {map.length_to_mold(in.insert->box.width()), map.length_to_mold(in.insert->box.height())}};
    board.opening = map.to_mold(in.insert->area);
    auto fillers = shape::without(box_region(board.box), board.opening.region);
    if (!fillers) return fillers.error();
    board.fillers.region = std::move(*fillers);
    for (const auto& pocket : in.pockets) board.blocks.push_back(block_of(pocket, map, in.film_mm));
    number_in_reading_order(board.blocks);
    auto clay = clay_of(board.blocks, board.opening.region, in.fillet_mm);
    if (!clay) return clay.error();
    board.clay.region = std::move(*clay);
    return board;
}

} // namespace drawercast::casting
