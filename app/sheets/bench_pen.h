// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/stock_stage.h"

#include "sheets/bench.h"
#include "sheets/length_words.h"

#include <string>

/// The parts that box_and_cuts() is put together from, each somewhere on the bench.
namespace drawercast::sheets {

using BenchPen = Drafter<OnBench>;

/// "512.5 × 60"
std::string size_words(const job::Job& job, double a_mm, double b_mm);

/// "d1 7a.1", or "strip: d1 7a.1, d1 7b.1"
std::string piece_words(const stock::Piece& piece, const plan::StockPlan& stock);

/// How much of a sheet is drawn: where it is mostly left over, its far side or end is broken off.
struct DrawnSheet {
    double length_mm = 0;
    double width_mm = 0;
    bool whole_length = true;
    bool whole_width = true;
};
DrawnSheet drawn_sheet(const stock::BoardCut& cut, std::size_t index);

/// Sheet `index` of board `board` of what is cut for a job.
struct CutSheetOf {
    const job::Job& job;
    const plan::StockPlan& stock;
    std::size_t board = 0;
    std::size_t index = 0;
};

/// A sheet with its pieces, offcuts and numbered cuts, lower left corner at `at`, as much as drawn_sheet()
/// says. Pieces of `drawer` are washed; empty: all are. Each cut of `numbered_mm` or more has its
/// number on it where there is room, shorter ones beside it; at 0 all have it on them, on a leader if need
/// be.
void add_cut_sheet(BenchPen& pen, Vec at, const CutSheetOf& of, const std::string& drawer,
                   double numbered_mm);

/// Bars of one kind below each other, the first one's upper edge at `at`. Returns the height used.
double add_bars(BenchPen& pen, Vec at, const job::Job& job, const plan::StockPlan& stock,
                const stock::BarCut& cut);

/// A wall's rectangle from above, its board `t` thick; `outside`: of the box.
Box wall_box(const Box& outside, const stock::Wall& wall, job::BoxCorner corner, double t);

/// What add_bars() will use.
double bars_height_mm(const stock::BarCut& cut);

/// The box from above, drawn `times` as large as it is, outer lower left corner at `at`: which wall runs over
/// which, sizes, screws.
void add_box(BenchPen& pen, Vec at, const job::Job& job, const stock::DrawerStock& drawer,
             double thickness_mm, double times = 1);

} // namespace drawercast::sheets
