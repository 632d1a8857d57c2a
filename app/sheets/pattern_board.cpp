// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/pattern_board.h"

#include "sheets/air_marks.h"
#include "sheets/block_axis.h"
#include "sheets/check_words.h"
#include "sheets/edge_words.h"
#include "sheets/filler_marks.h"
#include "sheets/fixing_marks.h"
#include "sheets/length_words.h"
#include "sheets/overall_size.h"
#include "sheets/pocket_labels.h"

namespace drawercast::sheets {

using shape::InMold;
using theme::LineRole;
using theme::TextRole;
using theme::WashRole;
using Pen = Drafter<InMold>;

namespace {

constexpr double screw_ring_mm = 3.5; ///< kept free of words around a screw point or a center

std::vector<layout::Cut<InMold>> cuts_of(const casting::Block& block) {
    std::vector<layout::Cut<InMold>> cuts;
    for (const auto& part : block.parts) cuts.push_back(part.cut);
    return cuts;
}

/// Lower parts first, so that the taller block of two hides the edge that runs into it.
void add_block(Pen& pen, const casting::Block& block, Finish finish) {
    pen.turn_to(Layer::still, block.subject);
    const auto cuts = cuts_of(block);
    for (const std::size_t i : by_depth(cuts)) {
        const auto& cut = cuts[i];
        if (finish == Finish::lines_only) {
            pen.edge(cut.outline, LineRole::trace, theme::Wash{WashRole::paper});
            continue;
        }
        const bool notch = cut.kind == layout::Cut<InMold>::Kind::notch;
        pen.edge(cut.outline, LineRole::pocket_edge, theme::Wash{WashRole::wood});
        pen.hatch(cut.outline, notch ? Hatch::notch : block.number % 2 ? Hatch::block : Hatch::block_other);
    }
}

void add_fixing(Pen& pen, const casting::Block& block, const job::Job& job, Finish finish) {
    pen.turn_to(Layer::still, block.subject);
    const BlockAxis axis = axis_of(block, job);
    pen.put(CenterMark{block.center.vec(), axis.half_mm, axis.turn_deg});
    for (const auto& point : block.fixing) pen.put(SignMark{sign_of(point.by), {point.at.vec()}});
    if (finish != Finish::lines_only) return;
    pen.turn_to(Layer::still); // a remark is the mark's: it may stand beside a block that has no room for it
    for (const auto& point : block.fixing) {
        const QString remark = remark_of(point.by);
        if (remark.isEmpty()) continue;
        TextMark words{
            {point.at.vec(), {9, 8}}, remark.toStdString(), TextRole::template_small, Side::left, 0, true};
        for (const Vec px : {Vec{9, 8}, Vec{9, -12}})
            words.elsewhere.spots.push_back({{point.at.vec(), px}, Side::left});
        for (const Vec px : {Vec{-9, 8}, Vec{-9, -12}})
            words.elsewhere.spots.push_back({{point.at.vec(), px}, Side::right});
        pen.put(std::move(words));
    }
}

/// Of a block's part: its number, which leads to it in the table, with the height; of the named one with the
/// name, too, where that has room, and with the number alone where not even the height has. The last try is
/// also the one that stands outside.
std::vector<std::vector<TextLine>> block_tries(const std::string& number, const std::string* name,
                                               const TextLine& height, TextRole role, TextRole small) {
    std::vector<std::vector<TextLine>> tries;
    const auto add = [&](const std::string& words) {
        const auto some = label_tries(words, {}, height, role, small);
        tries.insert(tries.end(), some.begin(),
                     some.end() - 2); // not the height alone: of which block is it?
    };
    if (name != nullptr) add(number + " " + *name);
    add(number);
    if (name == nullptr) return tries;
    tries.push_back({{number, small, false}});
    tries.push_back({{number, small, false}, {height.text, small, false, true}});
    return tries;
}

void add_label(Pen& pen, const casting::Block& block, const job::Job& job, Finish finish) {
    pen.turn_to(Layer::still, block.subject);
    const bool trace = finish == Finish::lines_only;
    const TextRole name = trace ? TextRole::template_name : TextRole::name;
    const TextRole small = trace ? TextRole::template_small : TextRole::name_small;
    const auto cuts = cuts_of(block);
    const std::size_t named = named_cut(cuts);
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        LabelMark label;
        const TextLine height{"h " + length_words(job, cuts[i].depth_mm),
                              trace ? TextRole::template_name : TextRole::depth, false};
        const std::string number = std::to_string(block.number);
        label.tries = block_tries(number, i == named ? &block.name : nullptr, height, name, small);
        label.outside = i == named;
        label.within = path_of(cuts[i].outline.contour);
        for (std::size_t k = 0; k < cuts.size(); ++k)
            if (k != i && cuts[k].depth_mm > cuts[i].depth_mm)
                label.avoid.push_back(path_of(cuts[k].outline.contour));
        for (const auto& point : block.fixing)
            label.uncovered.push_back(circle(point.at.vec(), screw_ring_mm));
        label.uncovered.push_back(circle(block.center.vec(), screw_ring_mm));
        pen.put(std::move(label));
    }
}

} // namespace

Sheet<InMold> pattern_board(const job::Job& job, const casting::PatternBoard& board, Finish finish) {
    Sheet<InMold> sheet;
    sheet.name = QT_TRANSLATE_NOOP("Sheets", "Pattern board");
    Pen pen(sheet);
    const bool trace = finish == Finish::lines_only;
    sheet.area = trace ? board.box.grown(edge_room_mm) : board.box;
    if (!trace) sheet.lower_room_px = sheet.upper_room_px = {56, 56};

    pen.turn_to(Layer::ground);
    if (!board.fillers.region.empty()) {
        if (trace)
            pen.edge(board.fillers, LineRole::trace);
        else {
            pen.edge(board.fillers, LineRole::pocket_edge, theme::Wash{WashRole::wood});
            pen.hatch(board.fillers, Hatch::filler);
        }
    }
    pen.put(PathMark{path_of(board.box), trace ? LineRole::trace : LineRole::cavity_edge, std::nullopt});
    add_edge_words(pen, board.box, trace ? EdgeWords::mold : EdgeWords::mold_once);
    add_overall_size(pen, board.box, job.display_units);

    pen.turn_to(Layer::still);
    pen.edge(board.clay, LineRole::clay);
    for (const auto& block : board.blocks) add_block(pen, block, finish);
    for (const auto& block : board.blocks) add_fixing(pen, block, job, finish);
    pen.turn_to(Layer::still);
    for (const auto& filler : casting::fillers_of(board)) {
        for (const Vec at : filler.screws) pen.put(SignMark{Sign::screw, {at}});
        pen.put(filler_label(filler, job, TextRole::name, board.height_mm));
    }
    for (const auto& block : board.blocks) add_label(pen, block, job, finish);
    pen.turn_to(Layer::still);
    pen.put(SignMark{Sign::datum, {board.box.min}});
    pen.put(TextMark{{board.box.min, {-12, -13}}, "0, 0", TextRole::caption, Side::right, 0, false});
    return sheet;
}

Sheet<InMold> pour_board(const job::Job& job, const casting::PatternBoard& board, const air::PourMap& pours) {
    auto sheet = pattern_board(job, board, Finish::washed);
    const auto kept = kept_for_pours(pours);
    sheet.marks.insert(sheet.marks.begin(), kept.begin(), kept.end());
    Pen pen(sheet);
    add_pour_map(pen, pours, job, board.box);
    return sheet;
}

bool lies_on_board(const layout::Check& check) {
    using layout::Code;
    return check.code == Code::slot_narrow || check.code == Code::channel_shut ||
           check.code == Code::floor_slow;
}

void add_board_checks(Sheet<InMold>& sheet, const job::Job& job, const std::vector<layout::Check>& checks) {
    Pen pen(sheet);
    pen.turn_to(Layer::still);
    int number = 0;
    for (const auto& check : checks) {
        ++number;
        if (check.at && lies_on_board(check)) pen.put(FlagMark{*check.at, tag_of(check, number, job)});
    }
}

} // namespace drawercast::sheets
