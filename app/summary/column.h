// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/title_block.h"
#include "sheets/table.h"
#include "summary/drawer_page.h"

#include <algorithm>
#include <vector>

namespace drawercast::summary {

/// Sections below each other; a new page where one has no room left.
class Column {
  public:
    static constexpr double pad = 10;

    Column(const Summary& summary, const Foot& foot)
        : summary_(summary), foot_(foot), room_(page_room(summary.paper)) {
        turn_page();
    }

    sheets::Inks& inks() { return pages_.back().page.inks; }
    double left() const { return room_.min.x + pad; }
    double width() const { return room_.width() - 2 * pad; }
    double free() const { return room_.max.y - y_; }
    Vec here() const { return {left(), y_}; }
    void down(double by) { y_ += by; }
    void turn_page() {
        pages_.push_back({empty_page(summary_.paper), foot_});
        y_ = room_.min.y;
    }
    /// A heading with at least `room` below it on the same page.
    void head(const QString& words, double room) {
        if (free() < room + 34) turn_page();
        if (y_ > room_.min.y)
            print::rule(inks(), {room_.min.x, y_}, {room_.max.x, y_}, theme::LineRole::thin, summary_.theme);
        sheets::write(inks(), words, {left(), y_ + 23}, {theme::Face::bold, 15}, summary_.theme.ink);
        y_ += 32;
    }
    void table(const sheets::Table& given) {
        const sheets::Table table = sheets::folded(given, width());
        for (std::size_t first = 0; first < table.rows.size();) {
            const std::size_t count = table.rows_fitting(first, free() - 6);
            if (count == 0) {
                turn_page();
                continue;
            }
            y_ += table.write(inks(), here(), width(), first, count, summary_.theme);
            first += count;
        }
        y_ += 12;
    }
    /// In two halves side by side, read down the left one first: for rows that need no whole width.
    void table_in_two(const sheets::Table& table) {
        constexpr double between = 24;
        const double half = (width() - between) / 2;
        for (std::size_t first = 0; first < table.rows.size();) {
            const std::size_t rest = table.rows.size() - first,
                              fitting = table.rows_fitting(first, free() - 6);
            if (fitting == 0) {
                turn_page();
                continue;
            }
            const std::size_t left_count = std::min(fitting, (rest + 1) / 2),
                              right_count = std::min(left_count, rest - left_count);
            const double taken = table.write(inks(), here(), half, first, left_count, summary_.theme);
            if (right_count > 0)
                table.write(inks(), here() + Vec{half + between, 0}, half, first + left_count, right_count,
                            summary_.theme);
            y_ += taken;
            first += left_count + right_count;
        }
        y_ += 12;
    }
    void lines(const QString& words, const theme::Lettering& face, double pitch, double indent) {
        for (const QString& line : sheets::broken(words, face, width() - indent)) {
            if (free() < pitch) turn_page();
            y_ += pitch;
            sheets::write(inks(), line, {left() + indent, y_}, face, summary_.theme.ink);
        }
    }
    std::vector<Composed> take() { return std::move(pages_); }

  private:
    const Summary& summary_;
    Foot foot_;
    Box room_;
    std::vector<Composed> pages_;
    double y_ = 0;
};

} // namespace drawercast::summary
