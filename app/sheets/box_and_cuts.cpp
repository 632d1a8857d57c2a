// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/box_and_cuts.h"

#include "plan/say.h"
#include "stock/screws.h"

#include "sheets/bench_pen.h"

#include <algorithm>

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;

namespace {

constexpr double numbered_mm = 330;  ///< on a whole bench a number hides a shorter cut
constexpr double apart_mm = 260;     ///< between what lies on the bench: words and dimensions
constexpr double box_times = 2.8;    ///< the box is a detail, drawn larger than the boards
constexpr double box_words_mm = 330; ///< its dimension and FRONT below it
constexpr double aspect = 1.3;       ///< of a window's sheet, about

/// Rows of boards beside and below the box, as wide as fills a sheet of `aspect` best.
class Rows {
  public:
    Rows(double most_mm) : most_mm_(most_mm) {}
    /// The upper left corner of the next one; y down is negative.
    Vec put(double width, double height) {
        if (x_ > 0 && x_ + width > most_mm_) next();
        const Vec at{x_, y_};
        x_ += width + apart_mm;
        high_ = std::max(high_, height);
        used_.add(at);
        used_.add(at + Vec{width, -height});
        return at;
    }
    void next() {
        y_ -= high_ + apart_mm;
        x_ = high_ = 0;
    }
    const Box& used() const { return used_; }
    double scale() const { return std::max(used_.width() / aspect, used_.height()); }

  private:
    double most_mm_;
    double x_ = 0, y_ = 0, high_ = 0;
    Box used_;
};

const stock::DrawerStock* find(const plan::StockPlan& stock, const std::string& drawer) {
    const auto at = std::find_if(stock.drawers.begin(), stock.drawers.end(),
                                 [&](const stock::DrawerStock& made) { return made.drawer == drawer; });
    return at == stock.drawers.end() ? nullptr : &*at;
}

double thickness_of(const stock::DrawerStock& drawer) {
    for (const auto& part : drawer.box.parts)
        if (part.role == stock::Role::wall) return part.thickness_mm;
    return 0;
}

} // namespace

Sheet<OnBench> box_and_cuts(const job::Job& job, const plan::StockPlan& stock, const std::string& drawer) {
    Sheet<OnBench> sheet;
    sheet.name = "Box and cuts";
    BenchPen pen(sheet);
    const auto* made = find(stock, drawer);
    const auto lay = [&](double most_mm, bool draw) {
        Rows rows(most_mm);
        if (made != nullptr) {
            const Vec size = Vec{made->box.outside_width_mm, made->box.outside_depth_mm} * box_times;
            const Vec at = rows.put(size.x, size.y + box_words_mm);
            if (draw) add_box(pen, at - Vec{0, size.y}, job, *made, thickness_of(*made), box_times);
        }
        for (std::size_t board = 0; board < stock.cuts.boards.size(); ++board) {
            const auto& cut = stock.cuts.boards[board];
            for (std::size_t index = 0; index < cut.sheets.size(); ++index) {
                const DrawnSheet drawn = drawn_sheet(cut, index);
                const Vec at = rows.put(drawn.length_mm, drawn.width_mm);
                if (draw)
                    add_cut_sheet(pen, at - Vec{0, drawn.width_mm}, job, stock, board, index, drawer,
                                  numbered_mm);
            }
        }
        for (const auto& cut : stock.cuts.bars) {
            const Vec at = rows.put(cut.bar_mm, bars_height_mm(cut));
            if (draw) add_bars(pen, at, job, stock, cut);
        }
        return rows;
    };
    double best_mm = 0, least = 0;
    for (const double most_mm : {2600.0, 3900.0, 5200.0, 6600.0, 7900.0})
        if (const double scale = lay(most_mm, false).scale(); best_mm == 0 || scale < least)
            best_mm = most_mm, least = scale;
    const Box used = lay(best_mm, true).used();
    sheet.area = used;
    sheet.lower_room_px = {76, 56}, sheet.upper_room_px = {24, 40};
    return sheet;
}

Sheet<OnBench> cut_sheet(const job::Job& job, const plan::StockPlan& stock, std::size_t board,
                         std::size_t index, double numbered_mm) {
    Sheet<OnBench> sheet;
    sheet.name = "Cuts";
    BenchPen pen(sheet);
    add_cut_sheet(pen, {0, 0}, job, stock, board, index, {}, numbered_mm);
    const DrawnSheet drawn = drawn_sheet(stock.cuts.boards[board], index);
    sheet.area.add(Vec{0, 0});
    sheet.area.add(Vec{drawn.length_mm, drawn.width_mm});
    sheet.lower_room_px = {8, 8}, sheet.upper_room_px = {8, 22};
    return sheet;
}

} // namespace drawercast::sheets
