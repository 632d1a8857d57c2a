// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/saw.h"

#include "language/say.h"
#include "language/spoken.h"
#include "sheets/aligned_length.h"
#include "sheets/block_axis.h"
#include "sheets/filler_marks.h"
#include "sheets/fixing_marks.h"
#include "sheets/pattern_board.h"

#include <algorithm>

namespace drawercast::sheets {

namespace {

/// Heights to cut the parts to, tallest first, each once: "42.1, 26.0".
QString heights(const casting::Block& block, job::DisplayUnits units) {
    std::vector<double> all;
    for (const auto& part : block.parts) all.push_back(part.wood_height_mm);
    std::sort(all.begin(), all.end(), std::greater<>());
    QStringList words;
    for (const double mm : all)
        if (const QString word = aligned_length(mm, units); !words.contains(word)) words.append(word);
    return words.join(QStringLiteral(", "));
}

/// Two of a kind and a piece to a line; on lines of their own stands what they are.
void add_fixing(Table& table, std::vector<Table::Cell> row, const casting::Block& block,
                const job::Job& job) {
    const auto say = [&](double mm) { return aligned_length(mm, job.display_units); };
    if (block.fixing.empty()) row.push_back({language::tr("glued"), false, {}});
    const casting::FixingPoint* last = nullptr;
    std::size_t on_line = 0;
    const auto new_line = [&](const casting::FixingPoint& point) {
        table.rows.push_back(std::move(row));
        row = {{}, {words_of(point.by), false, {}}, {}, {}, {}, {}};
        on_line = 0;
    };
    for (const auto& point : block.fixing) {
        const bool same = last
                              ? point.by == last->by && point.part == last->part && point.piece == last->piece
                              : point.by == casting::Holder::screw;
        if (!same || on_line == 2) new_line(point);
        row.push_back({say(point.at.x_mm), false, {}});
        row.push_back({say(point.at.y_mm), false, {}});
        last = &point, ++on_line;
    }
    table.rows.push_back(std::move(row));
}

/// Two screws to a line; a filler has as many lines as it needs.
void add_filler(Table& table, const casting::Filler& filler, double height_mm, const job::Job& job) {
    const auto say = [&](double mm) { return aligned_length(mm, job.display_units); };
    std::vector<Table::Cell> row{
        {filler_name(filler), true, {}},
        {filler.screws.empty() ? language::tr("filler, glued") : language::tr("filler, traced"), false, {}},
        {say(height_mm), true, {}},
        {},
        {},
        {}};
    for (std::size_t i = 0; i < filler.screws.size(); ++i) {
        if (i > 0 && i % 2 == 0) {
            table.rows.push_back(std::move(row));
            row.assign(6, {});
        }
        row.push_back({say(filler.screws[i].x), false, {}});
        row.push_back({say(filler.screws[i].y), false, {}});
    }
    table.rows.push_back(std::move(row));
}

} // namespace

Table block_table(const job::Job& job, const casting::PatternBoard& board) {
    const auto say = [&](double mm) { return aligned_length(mm, job.display_units); };
    Table table;
    table.columns = {
        {language::tr("no."), Align::right, 0, 22},        {language::tr("block"), Align::left, 1, 0},
        {language::tr("cut to h"), Align::right, 0.62, 0}, {language::tr("center x"), Align::right, 0, 50},
        {language::tr("y"), Align::right, 0, 46},          {language::tr("turn"), Align::right, 0, 38},
        {language::tr("screw 1 x"), Align::right, 0, 50},  {language::tr("y"), Align::right, 0, 46},
        {language::tr("screw 2 x"), Align::right, 0, 50},  {language::tr("y"), Align::right, 0, 46}};
    for (const auto& block : board.blocks) {
        const BlockAxis axis = axis_of(block, job);
        const QString turn = is_square(axis) ? QString() : language::fixed(axis.turn_deg, 1) + QChar(0xB0);
        std::vector<Table::Cell> row{
            {QString::number(block.number), true, {}},     {QString::fromStdString(block.name), false, {}},
            {heights(block, job.display_units), true, {}}, {say(block.center.x_mm), false, {}},
            {say(block.center.y_mm), false, {}},           {turn, false, {}}};
        add_fixing(table, std::move(row), block, job);
    }
    const double walls_mm = stock::sawn_mm(board.height_mm, job.shop->saw_step_mm);
    for (const auto& filler : casting::fillers_of(board)) add_filler(table, filler, walls_mm, job);
    return table;
}

} // namespace drawercast::sheets
