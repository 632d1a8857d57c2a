// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/saw.h"

#include "language/goods.h"
#include "language/spoken.h"
#include "sheets/bench_pen.h"
#include "sheets/part_words.h"

#include <algorithm>

namespace drawercast::sheets {

using stock::mm_of;
using theme::LineRole;
using theme::TextRole;
using theme::WashRole;

namespace {

constexpr double bar_mm = 45, pitch_mm = 75; ///< a bar as drawn, and from one to the next

constexpr double beyond_mm = 90;                ///< drawn of what is left over, up to the break
constexpr double whole_from = 0.75;             ///< of a side: breaking less off is not worth it
constexpr double least_drawn_mm[] = {900, 300}; ///< room for the words over it
constexpr double least_told_mm[] = {150, 60};   ///< of an offcut whose size is told

Box box_at(Vec at, double width, double height) { return {at, at + Vec{width, height}}; }

void add_piece(BenchPen& pen, const Box& box, const job::Job& job, const stock::Piece& piece,
               const plan::StockPlan& stock, const std::string& drawer) {
    const stock::Part& first = stock.parts[static_cast<std::size_t>(piece.parts.front())];
    const bool washed = drawer.empty() || first.drawer == drawer;
    pen.put(PathMark{path_of(box), LineRole::pocket_edge,
                     theme::Wash{washed ? WashRole::wood : WashRole::paper}});
    if (first.finish == stock::Finish::disc && !piece.strip)
        pen.put(PathMark{circle(box.center(), std::min(box.width(), box.height()) / 2), LineRole::thin,
                         std::nullopt});
    LabelMark label;
    const std::string name = piece_words(piece, stock),
                      size = size_words(job, piece.length_mm, piece.width_mm);
    const std::string number =
        piece.strip ? language::tr("strip").toStdString() : part_name(first.label).toStdString();
    label.tries = {{TextLine{name, TextRole::name}, TextLine{size, TextRole::depth}},
                   {TextLine{name, TextRole::name_small}, TextLine{size, TextRole::name_small}},
                   {TextLine{number, TextRole::name_small}, TextLine{size, TextRole::name_small}},
                   {TextLine{name + "  " + size, TextRole::name_small}},
                   {TextLine{name, TextRole::name_small}},
                   {TextLine{number, TextRole::name_small}},
                   {TextLine{number, TextRole::key_small}}};
    label.within = path_of(box);
    pen.put(std::move(label));
}

/// The edge of a sheet that is broken off (ISO 128-2, thin line with zigzags), a little past both sides.
Path broken_edge(Vec from, Vec to) {
    constexpr double past_mm = 15, tooth_mm = 20;
    const Vec along = (to - from) * (1 / length(to - from)), across{-along.y, along.x};
    const Vec middle = (from + to) * 0.5;
    return polyline({from - along * past_mm, middle - along * tooth_mm,
                     middle - along * (tooth_mm / 2) + across * tooth_mm,
                     middle + along * (tooth_mm / 2) - across * tooth_mm, middle + along * tooth_mm,
                     to + along * past_mm});
}

void add_edges(BenchPen& pen, const Box& box, const DrawnSheet& drawn) {
    if (drawn.whole_length && drawn.whole_width) {
        pen.put(PathMark{path_of(box), LineRole::cavity_edge, std::nullopt});
        return;
    }
    const Vec right{box.max.x, box.min.y}, back{box.min.x, box.max.y};
    const auto edge = [&](Vec from, Vec to, bool whole) {
        pen.put(PathMark{whole ? line(from, to) : broken_edge(from, to),
                         whole ? LineRole::cavity_edge : LineRole::thin, std::nullopt});
    };
    edge(box.min, right, true);
    edge(box.min, back, true);
    edge(right, box.max, drawn.whole_length);
    edge(back, box.max, drawn.whole_width);
}

void add_offcut(BenchPen& pen, const Box& box, const job::Job& job, const stock::Offcut& offcut) {
    const double width = mm_of(offcut.width), height = mm_of(offcut.height);
    if (std::max(width, height) < least_told_mm[0] || std::min(width, height) < least_told_mm[1]) return;
    LabelMark label;
    const std::string size = size_words(job, width, height);
    label.tries = {{TextLine{language::tr("left over ").toStdString() + size, TextRole::caption}},
                   {TextLine{size, TextRole::name_small}}};
    label.within = path_of(box);
    pen.put(std::move(label));
}

/// On its line where that is free; `or_none`: else not at all, as on a whole bench.
TextMark cut_number(int order, Vec from, Vec to, int depth, bool or_none) {
    std::vector<Spot> spots;
    const double first = depth % 2 ? 0.08 : 0.5; // a long cut at its end, where the saw comes in
    for (const double along : {first, 0.5, 0.3, 0.7, 0.15, 0.85, 0.04, 0.96})
        spots.push_back({{from + (to - from) * along}, Side::center});
    const Place at = spots.front().at;
    return {at,   std::to_string(order),          TextRole::caption, Side::center, 0,
            true, {std::move(spots), {}, or_none}};
}

/// Beside a cut so short that its number would hide it, once the cut is drawn well longer than its number:
/// closer up there is room.
TextMark short_cut_number(int order, Vec from, Vec to) {
    std::vector<Spot> spots;
    const bool upright = to.x - from.x < to.y - from.y;
    for (const double along : {0.5, 0.35, 0.65})
        for (const double side : {1.0, -1.0}) {
            const Vec px = upright ? Vec{7 * side, -4} : Vec{0, side > 0 ? 4.0 : -13.0};
            const Side anchor = !upright ? Side::center : side > 0 ? Side::left : Side::right;
            spots.push_back({{from + (to - from) * along, px}, anchor});
        }
    const Vec reach = Vec{1, 1} * (0.4 * length(to - from));
    const Vec middle = (from + to) * 0.5;
    const Spot first = spots.front();
    return {first.at,
            std::to_string(order),
            TextRole::caption,
            first.anchor,
            0,
            false,
            {std::move(spots), Box{middle - reach, middle + reach}, true}};
}

} // namespace

std::string piece_words(const stock::Piece& piece, const plan::StockPlan& stock) {
    std::string words = piece.strip ? language::tr("strip: ").toStdString() : "";
    for (std::size_t i = 0; i < piece.parts.size(); ++i)
        words += (i ? ", " : "") +
                 part_words(stock.parts[static_cast<std::size_t>(piece.parts[i])].label).toStdString();
    return words;
}

std::string size_words(const job::Job& job, double a_mm, double b_mm) {
    return length_words(job, a_mm) + " × " + length_words(job, b_mm);
}

DrawnSheet drawn_sheet(const stock::BoardCut& cut, std::size_t index) {
    Vec used{0, 0};
    for (const auto& piece : cut.sheets[index].pieces)
        used = {std::max(used.x, mm_of(piece.x + piece.width)),
                std::max(used.y, mm_of(piece.y + piece.height))};
    DrawnSheet drawn{std::max(used.x + stock::sheet_trim_mm + beyond_mm, least_drawn_mm[0]),
                     std::max(used.y + stock::sheet_trim_mm + beyond_mm, least_drawn_mm[1]), false, false};
    if (drawn.length_mm >= whole_from * cut.board.sheet_length_mm)
        drawn.length_mm = cut.board.sheet_length_mm, drawn.whole_length = true;
    if (drawn.width_mm >= whole_from * cut.board.sheet_width_mm)
        drawn.width_mm = cut.board.sheet_width_mm, drawn.whole_width = true;
    return drawn;
}

void add_cut_sheet(BenchPen& pen, Vec at, const CutSheetOf& of, const std::string& drawer,
                   double numbered_mm) {
    const auto& [job, stock, board, index] = of;
    const stock::BoardCut& cut = stock.cuts.boards[board];
    const stock::SheetLayout& sheet = cut.sheets[index];
    const Vec inside = at + Vec{stock::sheet_trim_mm, stock::sheet_trim_mm};
    const DrawnSheet drawn = drawn_sheet(cut, index);
    const Box seen = box_at(at, drawn.length_mm, drawn.width_mm);
    const Vec last = seen.max - Vec{drawn.whole_length ? stock::sheet_trim_mm : 0,
                                    drawn.whole_width ? stock::sheet_trim_mm : 0};
    const auto within = [&](Vec p) { return Vec{std::min(p.x, last.x), std::min(p.y, last.y)}; };
    pen.turn_to(Layer::ground);
    add_edges(pen, seen, drawn);
    const std::string name = language::goods_name(cut.board.name).toStdString() + "   " +
                             language::tr("sheet").toStdString() + " " + std::to_string(index + 1) +
                             language::tr(" of ").toStdString() + std::to_string(cut.sheets.size()) + "   " +
                             size_words(job, cut.board.sheet_length_mm, cut.board.sheet_width_mm);
    pen.put(TextMark{{at + Vec{0, drawn.width_mm}, {0, 9}}, name, TextRole::name, Side::left, 0, false});
    pen.turn_to(Layer::still);
    for (const auto& piece : sheet.pieces)
        add_piece(
            pen,
            box_at(inside + Vec{mm_of(piece.x), mm_of(piece.y)}, mm_of(piece.width), mm_of(piece.height)),
            job, cut.pieces[static_cast<std::size_t>(piece.piece)], stock, drawer);
    for (const auto& offcut : sheet.offcuts) {
        const Vec corner = inside + Vec{mm_of(offcut.x), mm_of(offcut.y)};
        const Vec end = within(corner + Vec{mm_of(offcut.width), mm_of(offcut.height)});
        if (end.x > corner.x && end.y > corner.y) add_offcut(pen, {corner, end}, job, offcut);
    }
    int order = 0;
    for (const auto& saw : sheet.cuts) {
        const Vec from = inside + Vec{mm_of(saw.x0), mm_of(saw.y0)},
                  to = within(inside + Vec{mm_of(saw.x1), mm_of(saw.y1)});
        pen.put(
            PathMark{line(from, to), saw.depth == 1 ? LineRole::pocket_edge : LineRole::thin, std::nullopt});
        ++order;
        if (std::max(to.x - from.x, to.y - from.y) >= numbered_mm)
            pen.put(cut_number(order, from, to, saw.depth, numbered_mm > 0));
        else
            pen.put(short_cut_number(order, from, to));
    }
}

double bars_height_mm(const stock::BarCut& cut) { return static_cast<double>(cut.bars.size()) * pitch_mm; }

double add_bars(BenchPen& pen, Vec at, const job::Job& job, const plan::StockPlan& stock,
                const stock::BarCut& cut) {
    double y = at.y;
    pen.turn_to(Layer::still);
    pen.put(TextMark{{at, {0, 9}},
                     language::goods_name(cut.stock).toStdString() + "   " +
                         pieces_of(static_cast<int>(cut.bars.size()),
                                   QString::fromStdString(length_words(job, cut.bar_mm)))
                             .toStdString(),
                     TextRole::name,
                     Side::left,
                     0,
                     false});
    for (const auto& bar : cut.bars) {
        pen.put(PathMark{path_of(box_at({at.x, y - bar_mm}, cut.bar_mm, bar_mm)), LineRole::cavity_edge,
                         std::nullopt});
        double x = at.x;
        for (const int index : bar) {
            const stock::LengthPart& part = stock.lengths[static_cast<std::size_t>(index)];
            const Box box = box_at({x, y - bar_mm}, part.length_mm, bar_mm);
            pen.put(PathMark{path_of(box), LineRole::pocket_edge, theme::Wash{WashRole::wood}});
            LabelMark label;
            const std::string length = length_words(job, part.length_mm);
            label.tries = {
                {TextLine{part_words(part.label).toStdString() + "  " + length, TextRole::name_small}},
                {TextLine{length, TextRole::name_small}}};
            label.within = path_of(box);
            pen.put(std::move(label));
            x += part.length_mm + job.shop->kerf_mm;
        }
        y -= pitch_mm;
    }
    return at.y - y;
}

} // namespace drawercast::sheets
