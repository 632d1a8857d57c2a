// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/job_page.h"

#include "print/title_block.h"
#include "summary/assumptions.h"
#include "summary/cautions.h"
#include "summary/check_list.h"

#include <algorithm>

namespace drawercast::summary {

using theme::Face;
using theme::LineRole;

namespace {

constexpr double pad = 10;

/// Sections below each other; a new page where one has no room left.
class Column {
  public:
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
            print::rule(inks(), {room_.min.x, y_}, {room_.max.x, y_}, LineRole::thin, summary_.theme);
        sheets::write(inks(), words, {left(), y_ + 23}, {Face::bold, 15}, summary_.theme.ink);
        y_ += 32;
    }
    void table(const sheets::Table& table) {
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

void add_purchase_and_checks(Column& column, const Summary& summary, const plan::Plan& plan) {
    column.head(QStringLiteral("Foam to buy, whole job"), 60);
    for (const QString& line : purchase_lines(summary, plan))
        column.lines(line, {Face::regular, 11.5}, 15, 0);
    column.down(12);
    const auto checks = listed(plan.checks);
    if (checks.empty()) return;
    column.head(QStringLiteral("Checks of the whole job"), 60);
    for (const auto& check : checks) {
        const double height = check_height(check, column.width(), summary);
        if (column.free() < height) column.turn_page();
        write_check(column.inks(), column.here(), column.width(), check, summary);
        column.down(height);
    }
    column.down(6);
}

} // namespace

std::vector<Composed> job_pages(const Summary& summary, const plan::Plan& plan) {
    Column column(summary, {QStringLiteral("all drawers"), {}, false});
    add_purchase_and_checks(column, summary, plan);

    column.head(QStringLiteral("Foam, drawer by drawer"), 60);
    column.table(foam_table(summary, plan));
    column.head(QStringLiteral("What the figures stand on"), 100);
    column.table(assumption_table(summary, plan));

    column.head(QStringLiteral("Cautions"), 190);
    for (const QString& caution : cautions()) {
        column.lines(caution, {Face::regular, 11.5}, 15, 0);
        column.down(5);
    }
    return column.take();
}

} // namespace drawercast::summary
