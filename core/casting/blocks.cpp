// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/blocks.h"

#include "casting/bodies.h"
#include "casting/fixing.h"
#include "shape/dilate.h"

#include <algorithm>
#include <numeric>
#include <tuple>
#include <utility>

namespace drawercast::casting {
namespace {

using shape::InDrawer;
using shape::InMold;
using shape::MoldMap;
using shape::Region;
using shape::Vec;
using DrawerCut = layout::Cut<InDrawer>;
using MoldCut = layout::Cut<InMold>;

MoldCut to_mold(const DrawerCut& cut, const MoldMap& map, double insert_mm) {
    MoldCut out;
    out.kind = cut.kind == DrawerCut::Kind::notch ? MoldCut::Kind::notch : MoldCut::Kind::level;
    out.index = cut.index;
    out.outline = map.to_mold(cut.outline);
    out.depth_mm = map.length_to_mold(std::min(cut.depth_mm, insert_mm));
    out.through = cut.through;
    if (cut.round)
        out.round =
            layout::Round{map.length_to_mold(cut.round->radius_mm), map.length_to_mold(cut.round->axis_mm)};
    return out;
}

/// The block's bodies in its own plane, at the mold's size.
std::vector<BodyGiven> bodies_of(const layout::PocketForm& form, const Block& block, double k) {
    std::vector<BodyGiven> bodies;
    for (std::size_t i = 0; i < form.cuts.size(); ++i)
        bodies.push_back({enlarged(form.cuts[i].outline.contour, k), block.parts[i].wood_height_mm,
                          form.cuts[i].round.has_value()});
    return bodies;
}

void add_fixing(const layout::PlacedPocket& pocket, const MoldMap& map, Block& block) {
    const double k = map.enlargement();
    const auto bodies = bodies_of(*pocket.form, block, k);
    const auto met = meetings_of(bodies);
    for (std::size_t part = 0; part < met.size(); ++part) {
        int piece = 0;
        const auto add = [&](const Fixing& fixing) {
            const auto put = [&](Vec at, Holder by) {
                const Vec in_drawer = shape::placed(at * (1 / k), pocket.pose);
                block.fixing.push_back(
                    {map.to_mold(shape::Point<InDrawer>::of(in_drawer)), by, static_cast<int>(part), piece});
            };
            const bool thin = fixing.diameter_mm < screw_mm;
            for (const Vec at : fixing.screws) put(at, thin ? Holder::thin_screw : Holder::screw);
            for (const Vec at : fixing.pins) put(at, Holder::pin);
            ++piece;
        };
        if (met[part].rest == Rest::on_board) add(fixing_of(bodies[part].outline));
        if (met[part].rest != Rest::butts) continue;
        for (const auto& patch : met[part].left) add(fixing_of(shape::Contour{patch.outer, 0}, patch.holes));
    }
}

Block block_of(const BoardPocket& in, const MoldMap& map, double insert_mm, double film_mm) {
    const layout::PlacedPocket& pocket = *in.pocket;
    Block block;
    block.subject = pocket.subject;
    block.name = in.name;
    shape::Box own;
    for (std::size_t i = 0; i < pocket.cuts.size(); ++i) {
        BlockPart part{to_mold(pocket.cuts[i], map, insert_mm), 0};
        // A through block is as high as the walls, and sealed like them: the film cancels out.
        part.wood_height_mm = part.cut.depth_mm - (part.cut.through ? 0 : film_mm);
        block.height_mm = std::max(block.height_mm, part.cut.depth_mm);
        block.parts.push_back(std::move(part));
        own.add(shape::bounds(pocket.form->cuts[i].outline.contour));
    }
    block.center = map.to_mold(shape::Point<InDrawer>::of(shape::placed(own.center(), pocket.pose)));
    add_fixing(pocket, map, block);
    return block;
}

/// Rows from the back: whoever's center lies no further forward than half the row's first block is in its
/// row.
void number_blocks(const std::vector<BoardPocket>& pockets, double enlargement, std::vector<Block>& blocks) {
    std::vector<std::size_t> order(blocks.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto further_back = [&](std::size_t a, std::size_t b) {
        const Block& p = blocks[a];
        const Block& q = blocks[b];
        return std::tie(q.center.y_mm, p.center.x_mm, p.subject) <
               std::tie(p.center.y_mm, q.center.x_mm, q.subject);
    };
    const auto further_left = [&](std::size_t a, std::size_t b) {
        return std::tie(blocks[a].center.x_mm, blocks[a].subject) <
               std::tie(blocks[b].center.x_mm, blocks[b].subject);
    };
    std::sort(order.begin(), order.end(), further_back);
    int number = 0;
    for (auto first = order.begin(); first != order.end();) {
        const double front =
            blocks[*first].center.y_mm - enlargement * pockets[*first].pocket->box.height() / 2;
        const auto last =
            std::find_if(first, order.end(), [&](std::size_t i) { return blocks[i].center.y_mm < front; });
        std::sort(first, last, further_left);
        for (; first != last; ++first) blocks[*first].number = ++number;
    }
    std::sort(blocks.begin(), blocks.end(),
              [](const Block& a, const Block& b) { return a.number < b.number; });
}

/// Blocks and their fillets, inside the opening.
Expected<Region> clay_of(const PatternBoard& board, double fillet_mm) {
    std::vector<Region> all;
    for (const Block& block : board.blocks)
        for (const BlockPart& part : block.parts) {
            auto foot = shape::dilated(part.cut.outline.contour, std::min(fillet_mm, part.cut.depth_mm));
            if (!foot) return foot;
            all.push_back(*std::move(foot));
        }
    const auto together = shape::united(all);
    if (!together) return together;
    return shape::shared(*together, board.opening.region);
}

} // namespace

Expected<PatternBoard> pattern_board_of(const BoardIn& in) {
    const MoldMap map(in.insert->box, in.shrinkage);
    PatternBoard board;
    board.enlargement = map.enlargement();
    board.height_mm = map.length_to_mold(in.insert->thickness_mm);
    board.box.add(shape::Vec{0, 0});
    board.box.add(shape::Vec{in.insert->box.width(), in.insert->box.height()} * board.enlargement);
    board.opening = map.to_mold(in.insert->area);
    const shape::Ring inner{board.box.min, {board.box.max.x, 0}, board.box.max, {0, board.box.max.y}};
    auto fillers = shape::without(shape::region_of(inner), board.opening.region);
    if (!fillers) return fillers.error();
    board.fillers.region = *std::move(fillers);
    for (const BoardPocket& pocket : in.pockets)
        board.blocks.push_back(block_of(pocket, map, in.insert->thickness_mm, in.film_mm));
    number_blocks(in.pockets, board.enlargement, board.blocks);
    auto clay = clay_of(board, in.fillet_mm);
    if (!clay) return clay.error();
    board.clay.region = *std::move(clay);
    return board;
}

} // namespace drawercast::casting
