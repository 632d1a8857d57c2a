// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/say.h"

#include "sheets/block_axis.h"
#include "sheets/pattern_board.h"

#include <cmath>

namespace drawercast::sheets {

Table block_table(const job::Job& job, const casting::PatternBoard& board) {
    const auto say = [&](double mm) {
        return QString::fromStdString(plan::say_length_bare(mm, job.display_units));
    };
    Table table;
    table.columns = {{"no.", Align::right, 0, 22},       {"block", Align::left, 1, 0},
                     {"cut to h", Align::right, 0, 52},  {"x", Align::right, 0, 46},
                     {"y", Align::right, 0, 46},         {"turn", Align::right, 0, 34},
                     {"screw 1 x", Align::right, 0, 50}, {"y", Align::right, 0, 46},
                     {"screw 2 x", Align::right, 0, 50}, {"y", Align::right, 0, 46}};
    for (const auto& block : board.blocks) {
        const double turn = axis_of(block).turn_deg;
        const bool upright = std::abs(turn) < 0.05 || std::abs(std::abs(turn) - 90) < 0.05;
        double wood = 0;
        for (const auto& part : block.parts)
            if (part.cut.depth_mm == block.height_mm) wood = part.wood_height_mm;
        std::vector<Table::Cell> row{
            {QString::number(block.number), true, {}},
            {QString::fromStdString(block.name), false, {}},
            {say(wood), true, {}},
            {say(block.center.x_mm), false, {}},
            {say(block.center.y_mm), false, {}},
            {upright ? QString() : QString::fromStdString(plan::fixed(turn, 1)) + QChar(0xB0), false, {}}};
        for (const auto& point : block.fixing) {
            row.push_back({say(point.x_mm), false, {}});
            row.push_back({say(point.y_mm), false, {}});
        }
        if (block.pin && block.fixing.size() == 1) row.push_back({"and a pin", false, {}});
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace drawercast::sheets
