// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/air_map.h"

#include "plan/say.h"

#include "sheets/air_marks.h"
#include "sheets/edge_words.h"

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;
using theme::WashRole;

namespace {

void add_blocks(MoldPen& pen, const casting::PatternBoard& board) {
    for (const auto& block : board.blocks) {
        pen.turn_to(Layer::still, block.subject);
        for (const auto& part : block.parts)
            pen.edge(part.cut.outline, LineRole::under, theme::Wash{WashRole::wood});
    }
    pen.turn_to(Layer::ground);
    if (board.fillers.region.empty()) return;
    pen.edge(board.fillers, LineRole::under, theme::Wash{WashRole::wood});
    pen.hatch(board.fillers, Hatch::filler);
}

void add_frame(MoldPen& pen, const Box& box, const job::Job& job) {
    const auto say = [&](double mm) { return plan::say_length_bare(mm, job.display_units); };
    const double out = template_dimension_px;
    pen.turn_to(Layer::ground);
    pen.put(PathMark{path_of(box), LineRole::cavity_edge, std::nullopt});
    add_edge_words(pen, box, EdgeWords::mold);
    pen.put(DimensionMark{
        box.min, {box.max.x, box.min.y}, {{}, {0, -out}}, say(box.width()), template_figure_at});
    pen.put(DimensionMark{
        box.min, {box.min.x, box.max.y}, {{}, {-out, 0}}, say(box.height()), template_figure_at});
}

} // namespace

Sheet<shape::InMold> air_map(const job::Job& job, const casting::PatternBoard& board,
                             const air::Answer& air) {
    Sheet<shape::InMold> sheet;
    sheet.name = "Where air stays";
    sheet.area = board.box.grown(edge_room_mm);
    MoldPen pen(sheet);
    add_frame(pen, board.box, job);
    add_blocks(pen, board);
    add_arrival(pen, air.model->map());
    add_air_pockets(pen, air, job);
    add_vents(pen, air.vented.vents);
    pen.turn_to(Layer::still);
    pen.put(SignMark{Sign::datum, {board.box.min}});
    pen.put(TextMark{{board.box.min, {-12, -13}}, "0, 0", TextRole::caption, Side::right, 0, false});
    return sheet;
}

} // namespace drawercast::sheets
