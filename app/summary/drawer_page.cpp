// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/drawer_page.h"

#include "base/ascii.h"
#include "base/number.h"
#include "job/shown_name.h"

#include "language/say.h"
#include "language/spoken.h"
#include "print/title_block.h"
#include "sheets/drawer_plan.h"
#include "summary/check_list.h"
#include "summary/object_rows.h"
#include "summary/panels.h"
#include "summary/placed.h"

#include <algorithm>
#include <array>

namespace drawercast::summary {

using sheets::Align;
using theme::Face;
using theme::LineRole;

namespace {

constexpr double pad = 10, header_px = 50;
constexpr double list_share = 0.66; ///< of the width, for the objects; the rest is for the checks

QString name_of(const job::Drawer& drawer) { return QString::fromStdString(job::shown_name(drawer)); }

/// What the head of a page says of.
struct HeadOf {
    const job::Drawer& drawer;
    const plan::DrawerPlan& plan;
    const std::vector<ListedCheck>& checks;
};

/// `which`: of the drawers, and whether it goes on.
void write_header(sheets::Inks& inks, const Box& box, const Summary& summary, const HeadOf& of,
                  const QString& which) {
    const bool figures = std::any_of(of.drawer.name.begin(), of.drawer.name.end(), is_digit);
    // the drafting face's 1 is a bare stroke: names with figures in them are set in the other
    const theme::Lettering face =
        figures ? theme::Lettering{Face::medium, 23} : theme::Lettering{Face::drafting, 27};
    const theme::Lettering plain{Face::regular, 12};
    const double base = box.min.y + 34;
    const QString name = sheets::elided(name_of(of.drawer), face, box.width() * 0.42);
    sheets::write(inks, name, {box.min.x + pad, base}, face, summary.theme.ink);
    const double x = box.min.x + pad + sheets::written_width(name, face) + 14;
    if (of.plan.insert) {
        const QString times = QStringLiteral(" × ");
        const QString insert = language::tr("insert ") + summary.said(of.plan.insert->box.width()) + times +
                               summary.said(of.plan.insert->box.height()) + times +
                               language::say_length(of.drawer.insert_mm, summary.job.display_units);
        sheets::write(inks, insert, {x, base - 13}, plain, summary.theme.ink2);
    }
    sheets::write(inks, which, {x, base + 3}, plain, summary.theme.ink2);
    write_state(inks, {box.max.x - pad, box.min.y + header_px / 2}, of.checks, summary);
}

/// The largest of the usual reductions (ISO 5455 and the steps between that a shop's paper needs).
double reduction_for(Vec mm, Vec room_px) {
    constexpr std::array usual{1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 4.5, 5.0, 6.0, 7.5, 10.0};
    for (const double reduction : usual)
        if (print::px(mm.x) / reduction <= room_px.x && print::px(mm.y) / reduction <= room_px.y)
            return reduction;
    return std::max(print::px(mm.x) / room_px.x, print::px(mm.y) / room_px.y);
}

/// Draws the plan into the box's width, from its top; returns the height used and sets the scale's words.
double write_plan(sheets::Inks& inks, const Box& box, const sheets::Sheet<shape::InDrawer>& sheet,
                  QString& scale, const theme::Theme& theme) {
    const Vec margins = sheet.lower_room_px + sheet.upper_room_px;
    const Vec size{sheet.area.width(), sheet.area.height()};
    if (sheet.area.empty()) return 0;
    const double reduction = reduction_for(size, Vec{box.width(), box.height()} - margins);
    const double per_mm = theme::px_per_mm / reduction;
    const Vec whole = whole_px(sheet, per_mm);
    put_sheet(inks, sheet, per_mm, box.min + Vec{(box.width() - whole.x) / 2, 0}, theme);
    scale = QStringLiteral("1 : ") + language::figures(rounded_text(reduction, 3));
    return whole.y;
}

/// What of the lists is still to be written.
struct Rest {
    std::size_t row = 0;
    std::size_t check = 0;
    bool operator==(const Rest&) const = default;
};

/// Checks below each other, as many as have room.
void write_checks(sheets::Inks& inks, const Box& box, const std::vector<ListedCheck>& checks, Rest& rest,
                  const Summary& summary) {
    double y = box.min.y;
    for (; rest.check < checks.size(); ++rest.check) {
        if (y + check_height(checks[rest.check], box.width(), summary) > box.max.y) return;
        y += write_check(inks, {box.min.x, y}, box.width(), checks[rest.check], summary);
    }
}

/// Objects left and checks right in the box, as many as have room; where there are no objects left, checks
/// in three columns.
void write_lists(sheets::Inks& inks, const Box& box, const sheets::Table& table,
                 const std::vector<ListedCheck>& checks, Rest& rest, const Summary& summary) {
    print::rule(inks, box.min, {box.max.x, box.min.y}, LineRole::thin, summary.theme);
    if (rest.row >= table.rows.size() && rest.check > 0) {
        constexpr int columns = 3;
        const double width = box.width() / columns;
        for (int i = 0; i < columns; ++i) {
            const double x = box.min.x + i * width;
            write_checks(inks, {{x + pad, box.min.y + 8}, {x + width - pad, box.max.y}}, checks, rest,
                         summary);
        }
        return;
    }
    const double split = box.min.x + box.width() * list_share;
    print::rule(inks, {split, box.min.y}, {split, box.max.y}, LineRole::thin, summary.theme);
    const std::size_t rows = table.rows_fitting(rest.row, box.height() - 8);
    if (rest.row < table.rows.size())
        table.write(inks, {box.min.x + pad, box.min.y + 2}, split - box.min.x - 2 * pad, rest.row, rows,
                    summary.theme);
    rest.row += rows;
    const Box right{{split + pad, box.min.y + 8}, {box.max.x - pad, box.max.y}};
    if (checks.empty())
        sheets::write(inks, language::tr("No checks: nothing to mend"), right.min + Vec{0, 12},
                      {Face::regular, 11}, summary.theme.ink);
    write_checks(inks, right, checks, rest, summary);
}

/// Height the objects want, and the checks up to `most_checks_px`.
double wanted(const sheets::Table& table, const std::vector<ListedCheck>& checks, double width,
              const Summary& summary, double most_checks_px) {
    double list = 12;
    for (const auto& check : checks) list += check_height(check, width * (1 - list_share) - 2 * pad, summary);
    return std::max(table.head_height() + table.row_px * static_cast<double>(table.rows.size()) + 12,
                    std::min(list, most_checks_px));
}

/// What the plan may take of `free`. It comes first: long lists go on overleaf rather than crowd it; but it
/// gives way where that spares a page with little on it.
double plan_height(double free, const sheets::Table& table, const std::vector<ListedCheck>& checks,
                   double width, const Summary& summary) {
    constexpr double plan_share = 0.6, least_plan_share = 0.4, few_checks_px = 230, list_head_px = 14;
    const double all = wanted(table, checks, width, summary, free) + list_head_px;
    if (all <= (1 - least_plan_share) * free) return free - all;
    return std::max(plan_share * free, free - wanted(table, checks, width, summary, few_checks_px));
}

} // namespace

std::vector<Composed> drawer_pages(const Summary& summary, const plan::Plan& plan, std::size_t index) {
    const job::Drawer& drawer = *summary.job.drawers[index];
    const plan::DrawerPlan& answer = plan.drawers[index];
    const auto checks = listed(answer, summary.job.display_units);
    const auto table = object_table(summary, drawer, answer);
    const Box room = page_room(summary.paper);
    const QString which = language::tr("drawer %1 of %2").arg(index + 1).arg(summary.job.drawers.size());

    std::vector<Composed> pages{{empty_page(summary.paper), {name_of(drawer), {}, true}}};
    sheets::Inks& inks = pages.front().page.inks;
    const HeadOf head{drawer, answer, checks};
    write_header(inks, room, summary, head, which);
    double y = room.min.y + header_px;
    print::rule(inks, {room.min.x, y}, {room.max.x, y}, LineRole::thin, summary.theme);
    write_panels(inks, {{room.min.x, y}, {room.max.x, y + panels_px}}, summary, answer);
    y += panels_px;
    print::rule(inks, {room.min.x, y}, {room.max.x, y}, LineRole::thin, summary.theme);

    const double free = room.max.y - y;
    const double plan_px = plan_height(free, table, checks, room.width(), summary);
    const Box plan_box{{room.min.x + pad, y + 6}, {room.max.x - pad, y + std::min(plan_px, free) - 6}};
    y = plan_box.min.y +
        write_plan(inks, plan_box, sheets::drawer_plan(summary.job, drawer, answer, sheets::Keys::letters),
                   pages.front().foot.scale, summary.theme) +
        6;

    Rest rest;
    write_lists(inks, {{room.min.x, y}, room.max}, table, checks, rest, summary);
    while (rest.row < table.rows.size() || rest.check < checks.size()) {
        pages.push_back({empty_page(summary.paper), {name_of(drawer), {}, false}});
        sheets::Inks& more = pages.back().page.inks;
        write_header(more, room, summary, head, which + language::tr(", continued"));
        const Rest before = rest;
        write_lists(more, {{room.min.x, room.min.y + header_px}, room.max}, table, checks, rest, summary);
        if (rest == before) break; // an entry taller than a page
    }
    return pages;
}

} // namespace drawercast::summary
