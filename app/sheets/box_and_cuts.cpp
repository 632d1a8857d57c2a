// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/box_and_cuts.h"

#include "plan/say.h"
#include "stock/saw.h"

#include "sheets/bench_pen.h"

#include <algorithm>
#include <functional>

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;

namespace {

constexpr double numbered_mm = 330;  ///< on a whole bench a number on a shorter cut hides it
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

/// What lies where on the bench.
class Bench {
  public:
    Bench(const job::Job& job, const plan::StockPlan& stock, const std::string& drawer)
        : job_(job), stock_(stock), drawer_(drawer), made_(plan::find_stock(&stock, drawer)) {
        double least = 0;
        for (const double most_mm : {2600.0, 3900.0, 5200.0, 6600.0, 7900.0})
            if (const double scale = lay(most_mm).scale(); best_mm_ == 0 || scale < least)
                best_mm_ = most_mm, least = scale;
    }

    Box draw(BenchPen& pen) const { return lay(best_mm_, &pen).used(); }

    /// The lower left corner of a sheet.
    Vec corner_of(std::size_t board, std::size_t index) const {
        Vec corner{0, 0};
        lay(best_mm_, nullptr, [&](std::size_t b, std::size_t i, Vec at) {
            if (b == board && i == index) corner = at;
        });
        return corner;
    }

  private:
    using Told = std::function<void(std::size_t board, std::size_t index, Vec corner)>;

    Rows lay(double most_mm, BenchPen* pen = nullptr, const Told& told = {}) const {
        Rows rows(most_mm);
        if (made_ != nullptr) {
            const Vec size = Vec{made_->box.outside_width_mm, made_->box.outside_depth_mm} * box_times;
            const Vec at = rows.put(size.x, size.y + box_words_mm);
            if (pen)
                add_box(*pen, at - Vec{0, size.y}, job_, *made_, stock::wall_thickness_mm(made_->box),
                        box_times);
        }
        for (std::size_t board = 0; board < stock_.cuts.boards.size(); ++board) {
            const auto& cut = stock_.cuts.boards[board];
            for (std::size_t index = 0; index < cut.sheets.size(); ++index) {
                const DrawnSheet drawn = drawn_sheet(cut, index);
                const Vec at = rows.put(drawn.length_mm, drawn.width_mm) - Vec{0, drawn.width_mm};
                if (pen) add_cut_sheet(*pen, at, {job_, stock_, board, index}, drawer_, numbered_mm);
                if (told) told(board, index, at);
            }
        }
        for (const auto& cut : stock_.cuts.bars) {
            const Vec at = rows.put(cut.bar_mm, bars_height_mm(cut));
            if (pen) add_bars(*pen, at, job_, stock_, cut);
        }
        return rows;
    }

    const job::Job& job_;
    const plan::StockPlan& stock_;
    const std::string& drawer_;
    const stock::DrawerStock* made_;
    double best_mm_ = 0;
};

} // namespace

Sheet<OnBench> box_and_cuts(const job::Job& job, const plan::StockPlan& stock, const std::string& drawer) {
    Sheet<OnBench> sheet;
    sheet.name = QT_TRANSLATE_NOOP("Sheets", "Box and cuts");
    BenchPen pen(sheet);
    sheet.area = Bench(job, stock, drawer).draw(pen);
    sheet.lower_room_px = {76, 56}, sheet.upper_room_px = {24, 40};
    return sheet;
}

Box place_of_cut(const job::Job& job, const plan::StockPlan& stock, const std::string& drawer,
                 const CutPlace& place) {
    const auto& saw = stock.cuts.boards[place.board].sheets[place.sheet].cuts[place.cut];
    const Vec inside = Bench(job, stock, drawer).corner_of(place.board, place.sheet) +
                       Vec{stock::sheet_trim_mm, stock::sheet_trim_mm};
    Box box;
    box.add(inside + Vec{stock::mm_of(saw.x0), stock::mm_of(saw.y0)});
    box.add(inside + Vec{stock::mm_of(saw.x1), stock::mm_of(saw.y1)});
    return box;
}

Sheet<OnBench> cut_sheet(const job::Job& job, const plan::StockPlan& stock, std::size_t board,
                         std::size_t index, double longer_mm) {
    Sheet<OnBench> sheet;
    sheet.name = QT_TRANSLATE_NOOP("Sheets", "Cuts");
    BenchPen pen(sheet);
    add_cut_sheet(pen, {0, 0}, {job, stock, board, index}, {}, longer_mm);
    const DrawnSheet drawn = drawn_sheet(stock.cuts.boards[board], index);
    sheet.area.add(Vec{0, 0});
    sheet.area.add(Vec{drawn.length_mm, drawn.width_mm});
    sheet.lower_room_px = {8, 8}, sheet.upper_room_px = {8, 22};
    return sheet;
}

} // namespace drawercast::sheets
