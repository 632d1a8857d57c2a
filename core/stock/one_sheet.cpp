// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/one_sheet.h"

#include "stock/unlimited_table.h"

namespace drawercast::stock {

OneSheetAnswer best_unlimited(const OneSheetIn& in) {
    const UnlimitedTable table(in);
    const Micro width = in.width + in.kerf, height = in.height + in.kerf;
    std::vector<Pattern> patterns;
    const int root = table.pattern(width, height, patterns);
    OneSheetAnswer answer;
    answer.value = table.value(width, height);
    answer.tree = tree_of(patterns, root, in.width, in.height, in.kerf);
    answer.steps = static_cast<int>(table.widths().size() * table.heights().size());
    return answer;
}

} // namespace drawercast::stock
