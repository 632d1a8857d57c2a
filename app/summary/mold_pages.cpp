// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/mold_pages.h"

#include "job/shown_name.h"

#include "language/say.h"
#include "language/spoken.h"
#include "sheets/drilling.h"
#include "sheets/pour_plot.h"
#include "sheets/pressure_plate.h"
#include "sheets/text.h"
#include "summary/column.h"
#include "summary/placed.h"
#include "summary/plate_gauges.h"

#include <cmath>

namespace drawercast::summary {

namespace {

constexpr theme::Lettering body{theme::Face::regular, 11.5};

using sheets::text;

/// A drawing across the column or as high as `most_px`, in its middle.
template <class Frame>
void add_drawing(Column& column, const Summary& summary, const sheets::Sheet<Frame>& sheet, double most_px) {
    const double per_mm = per_mm_for(sheet, {column.width(), most_px});
    const Vec whole = whole_px(sheet, per_mm);
    if (column.free() < whole.y) column.turn_page();
    put_sheet(column.inks(), sheet, per_mm, column.here() + Vec{(column.width() - whole.x) / 2, 0},
              summary.theme);
    column.down(whole.y + 4);
}

void add_plate(Column& column, const Summary& summary, const plan::DrawerPlan& plan) {
    column.head(language::tr("Pressure plate: mold, MIRRORED, from above"), 420);
    for (const QString& line : plate_lines(summary, plan)) column.lines(line, body, 15, 0);
    column.down(6);
    column.down(write_plate_gauges(column.inks(), column.here(), column.width(), summary, plan));
    add_drawing(column, summary, sheets::pressure_plate(summary.job, plan, sheets::Finish::washed), 560);
    column.head(language::tr("Holes, from the datum over the box’s front-left inner corner"), 80);
    column.lines(
        language::tr("Closures have the number in which they are tightened; loosen them in reverse."), body,
        15, 0);
    column.down(4);
    column.table_in_two(sheets::drilling_table(summary.job, plan, sheets::DrillingWords::brief));
}

void add_air(Column& column, const Summary& summary, const plan::DrawerPlan& plan) {
    const auto units = summary.job.display_units;
    const auto& air = *plan.air;
    column.turn_page();
    column.head(language::tr("Where air stays: mold, MIRRORED, from above"), 300);
    column.lines(language::tr("Bands: the rise at which the foam arrives. Rings: where it shuts air in, and "
                              "the rise at which that goes. %1 vents let it out; what stays is %2 and counts "
                              "in the pressure. Foam squeezed out of them unpegged: %3.")
                     .arg(air.vented.vents.size())
                     .arg(language::say_volume_ml(air.vented.air_ml, units),
                          language::say_volume_ml(air.squeeze.out_ml, units)),
                 body, 15, 0);
    column.down(4);
    add_drawing(
        column, summary,
        sheets::pressure_plate(summary.job, plan, sheets::Finish::washed, sheets::PlateGround::arrival),
        column.free() / 2);
    const auto board = plan::pattern_board(summary.job, plan);
    if (!board) return;
    column.head(language::tr("Pour map: mold, MIRRORED, from above"), 300);
    column.lines(language::tr("Pour in the order of the numbers, so much at each: slots first, the widest "
                              "channel last."),
                 body, 15, 0);
    column.down(4);
    add_drawing(column, summary, sheets::pour_board(summary.job, *board, air.model->map().pour),
                column.free() - 8);
}

/// True to its size, across the column and as high as its page has room.
void add_plot(Column& column, const Summary& summary, const plan::DrawerPlan& plan) {
    const auto rooms = sheets::pour_plot(summary.job, plan);
    const Vec margins = rooms.lower_room_px + rooms.upper_room_px;
    const Vec px = Vec{column.width(), column.free() - 10} - margins;
    add_drawing(column, summary, sheets::pour_plot(summary.job, plan, px * (1 / theme::px_per_mm)),
                column.free() - 5);
}

void add_pour(Column& column, const Summary& summary, const plan::DrawerPlan& plan) {
    const auto& closing = plan.plate->closing;
    column.head(language::tr("The pour by seconds"), 340);
    const auto seconds = [](double s) { return QString::number(std::lround(s)) + QStringLiteral(" s"); };
    column.lines(
        closing.close_margin_s >= 0
            ? language::tr("The plate comes on at %1; it could be %2 later in the worse case. All closures "
                           "take %3; %4 must be in when the mold is full.")
                  .arg(seconds(closing.plate_on_s), seconds(closing.close_margin_s), seconds(closing.close_s))
                  .arg(closing.in_by_contact)
            : language::tr("The plate comes on at %1, which is %2 too late in the worse case: start closures "
                           "before the pour, let one more person close, or cool the parts.")
                  .arg(seconds(closing.plate_on_s), seconds(-closing.close_margin_s)),
        body, 15, 0);
    column.down(16); // the longest event's words reach as far up
    add_plot(column, summary, plan);
}

} // namespace

std::vector<Composed> mold_pages(const Summary& summary, const plan::Plan& plan, std::size_t index) {
    const job::Drawer& drawer = *summary.job.drawers[index];
    const plan::DrawerPlan& answer = plan.drawers[index];
    if (!answer.plate || !answer.insert || !answer.pressure) return {};
    Column column(summary, {text(job::shown_name(drawer)), {}, false});
    add_plate(column, summary, answer);
    if (answer.times && answer.dose) add_pour(column, summary, answer); // fills the page where the holes end
    if (answer.air) add_air(column, summary, answer);
    return column.take();
}

} // namespace drawercast::summary
