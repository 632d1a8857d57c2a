// SPDX-License-Identifier: GPL-3.0-or-later
#include "language/goods.h"
#include "language/spoken.h"
#include "sheets/aligned_length.h"
#include "sheets/bench_pen.h"
#include "sheets/drilling.h"
#include "sheets/edge_words.h"
#include "sheets/filler_marks.h"
#include "sheets/fixing_marks.h"
#include "sheets/overall_size.h"
#include "sheets/part_words.h"
#include "sheets/plate_marks.h"

namespace drawercast::sheets {

using shape::InMold;
using theme::LineRole;
using theme::TextRole;
using Pen = Drafter<InMold>;

namespace {

struct WallScrew {
    QString wall;
    Vec at;
};

/// On the walls' center lines, where their strips have them.
std::vector<WallScrew> wall_screws(const job::Job& job, const casting::PatternBoard& board,
                                   const stock::DrawerStock& stock) {
    const double t = stock::wall_thickness_mm(stock.box);
    const Box outside = board.box.grown(t);
    std::vector<WallScrew> screws;
    for (const auto& wall : stock.box.walls) {
        const Box box = wall_box(outside, wall, job.mold.corner, t);
        const bool level = box.width() > box.height();
        for (const double along : wall.foot_mm)
            screws.push_back({part_words(wall.label), level ? Vec{box.min.x + along, box.center().y}
                                                            : Vec{box.center().x, box.min.y + along}});
    }
    return screws;
}

/// Where closures go up through bearers and base into the walls.
std::vector<Vec> bearer_ends(const plan::DrawerPlan& plan) {
    std::vector<Vec> ends;
    if (!plan.base) return ends;
    for (const auto& closure : plan.base->answer.design.closures)
        if (closure.stiffener_end) ends.push_back(closure.at.vec());
    return ends;
}

/// Under the base: dashed, as hidden edges are.
void add_bearers(Pen& pen, const mold::PlateDesign& design) {
    pen.turn_to(Layer::ground);
    for (std::size_t i = 0; i < design.stiffeners.size(); ++i) {
        const auto& at = design.stiffeners[i];
        pen.put(PathMark{path_of(stiffener_box(design, at)), LineRole::under, std::nullopt});
        add_piece_name(pen, at, language::tr("bearer %1").arg(i + 1));
    }
}

void add_blocks(Pen& pen, const casting::PatternBoard& board) {
    for (const auto& block : board.blocks) {
        pen.turn_to(Layer::still, block.subject);
        for (const auto& part : block.parts) pen.edge(part.cut.outline, LineRole::under);
        for (const auto& point : block.fixing) {
            const QString remark = remark_of(point.by);
            pen.put(SignMark{sign_of(point.by), {point.at.vec()}});
            pen.put(TextMark{{point.at.vec(), {11, 9}},
                             std::to_string(block.number) +
                                 (remark.isEmpty() ? std::string() : "  " + remark.toStdString()),
                             TextRole::template_small,
                             Side::left,
                             0,
                             true});
        }
    }
}

} // namespace

Sheet<InMold> base_drilling(const job::Job& job, const plan::DrawerPlan& plan,
                            const casting::PatternBoard& board, const stock::DrawerStock& stock) {
    Sheet<InMold> sheet;
    sheet.name = "Base";
    const Box base = board.box.grown(stock::wall_thickness_mm(stock.box));
    sheet.area = base.grown(edge_room_mm);
    Pen pen(sheet);
    pen.turn_to(Layer::ground);
    pen.put(PathMark{path_of(base), LineRole::trace, std::nullopt});
    pen.put(PathMark{path_of(board.box), LineRole::trace, std::nullopt});
    if (!board.fillers.region.empty()) pen.edge(board.fillers, LineRole::trace);
    add_edge_words(pen, base, EdgeWords::mold);
    add_overall_size(pen, base, job.display_units);
    if (plan.base) add_bearers(pen, plan.base->answer.design);
    add_blocks(pen, board);
    pen.turn_to(Layer::still);
    for (const Vec at : bearer_ends(plan)) pen.put(SignMark{Sign::screw, {at}});
    for (const auto& screw : wall_screws(job, board, stock)) pen.put(SignMark{Sign::screw, {screw.at}});
    for (const auto& filler : casting::fillers_of(board)) {
        for (const Vec at : filler.screws) pen.put(SignMark{Sign::screw, {at}});
        pen.put(filler_label(filler, job, TextRole::template_small, {}));
    }
    pen.put(SignMark{Sign::datum, {board.box.min}});
    pen.put(TextMark{{board.box.min, {10, 12}}, "0, 0", TextRole::caption, Side::left, 0, true});
    return sheet;
}

Table base_table(const job::Job& job, const plan::DrawerPlan& plan, const casting::PatternBoard& board,
                 const stock::DrawerStock& stock) {
    Table table;
    table.columns = {{language::tr("hole"), Align::left, 0, 90},
                     {language::tr("x"), Align::right, 0, 60},
                     {language::tr("y"), Align::right, 0, 60},
                     {"", Align::left, 0, 8},
                     {language::tr("for"), Align::left, 1, 0}};
    const auto row = [&](const QString& hole, Vec at, const QString& what) {
        table.rows.push_back({{hole, true, {}},
                              {aligned_length(at.x, job.display_units), false, {}},
                              {aligned_length(at.y, job.display_units), false, {}},
                              {},
                              {what, false, {}}});
    };
    for (const auto& block : board.blocks)
        for (const auto& point : block.fixing)
            row(QString::number(block.number), point.at.vec(),
                words_of(point.by) + QStringLiteral(", ") + language::tr("block ") +
                    QString::fromStdString(block.name));
    for (const auto& filler : casting::fillers_of(board))
        for (const Vec at : filler.screws) row(filler_name(filler), at, language::tr("filler from below"));
    for (const auto& screw : wall_screws(job, board, stock))
        row(screw.wall, screw.at, language::tr("foot of the wall"));
    for (const Vec at : bearer_ends(plan))
        row(language::tr("bearer"), at,
            language::tr("%1, through bearer and base")
                .arg(language::goods_name(plan.base->answer.design.end_closure.name)));
    return table;
}

} // namespace drawercast::sheets
