// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/title_block.h"
#include "sheets/table.h"
#include "summary/drawer_page.h"

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
