// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/one_sheet.h"
#include "stock/sheets.h"

#include <algorithm>
#include <cmath>

namespace drawercast::stock {

namespace {

constexpr std::size_t few_pieces = 8; ///< for which one sheet is searched whole
constexpr int search_steps = 20'000;

/// Two such pieces lie neither side by side nor one behind the other, however they are turned.
bool keeps_others_off(const SheetPiece& piece, Micro width, Micro height, Micro kerf) {
    const auto big = [&](Micro w, Micro h) { return 2 * (w + kerf) > width && 2 * (h + kerf) > height; };
    return big(piece.width, piece.height) && (!piece.may_turn || big(piece.height, piece.width));
}

/// Whether all pieces were shown not to come out of one sheet. Looked at with pieces a little smaller and a
/// sheet a little larger, in whole grains: what does not fit so does not fit at all.
bool more_than_one(const SheetsIn& in) {
    constexpr Micro grains = 64; // along the sheet's shorter side
    const Micro grain = std::max<Micro>(1, std::min(in.width, in.height) / grains);
    const auto down = [&](Micro size) { return std::max<Micro>(1, (size + in.kerf) / grain); };
    const auto up = [&](Micro size) { return (size + in.kerf + grain - 1) / grain; };
    OneSheetIn search{up(in.width), up(in.height), 0, false, {}};
    for (const auto& piece : in.pieces) {
        search.pieces.push_back({down(piece.width), down(piece.height), 1, 1});
        search.may_turn = search.may_turn || piece.may_turn;
    }
    const auto answer = best_limited(search, search_steps);
    return answer.proven && answer.value < static_cast<std::int64_t>(in.pieces.size());
}

} // namespace

int least_sheets(const SheetsIn& in) {
    if (in.pieces.empty()) return 0;
    const Micro width = in.width + in.kerf, height = in.height + in.kerf;
    double area = 0;
    int alone = 0;
    for (const auto& piece : in.pieces) {
        area += static_cast<double>(piece.width + in.kerf) * static_cast<double>(piece.height + in.kerf);
        alone += keeps_others_off(piece, width, height, in.kerf) ? 1 : 0;
    }
    const double sheet = static_cast<double>(width) * static_cast<double>(height);
    const int least = std::max(alone, static_cast<int>(std::ceil(area / sheet - 1e-12)));
    if (least == 1 && in.pieces.size() <= few_pieces && more_than_one(in)) return 2;
    return least;
}

} // namespace drawercast::stock
