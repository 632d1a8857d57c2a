// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/build_up_page.h"

#include "job/shown_name.h"

#include "language/spoken.h"
#include "sheets/build_up.h"
#include "sheets/inking.h"
#include "summary/column.h"

#include <algorithm>

namespace drawercast::summary {

namespace {

/// The picture as large as `height` and the column allow. Names are as large at any scale, so a first
/// picture tells the scale and a second one is drawn for it.
void add_picture(Column& column, const Summary& summary, const buildup::SceneIn& in,
                 const buildup::Look& look, double height) {
    const auto mold = sheets::seen_mold(in, look);
    double per_mm = 1;
    for (int round = 0; round < 3; ++round) {
        const auto sheet = sheets::build_up(mold, per_mm);
        const Vec room{column.width() - sheet.lower_room_px.x - sheet.upper_room_px.x,
                       height - sheet.lower_room_px.y - sheet.upper_room_px.y};
        per_mm = std::min(room.x / sheet.area.width(), room.y / sheet.area.height());
    }
    const auto sheet = sheets::build_up(mold, per_mm);
    const Vec uneven = sheet.lower_room_px - sheet.upper_room_px; // words take more room on one side
    const Vec center = column.here() + Vec{column.width() / 2 + uneven.x / 2, height / 2 - uneven.y / 2};
    const Vec corner = sheet.area.center() * per_mm;
    const sheets::View view{theme::Medium::paper, per_mm, 1, {center.x - corner.x, center.y + corner.y}};
    for (auto& ink : sheets::ink_of(sheet.marks, view, summary.theme))
        column.inks().push_back(std::move(ink));
    column.down(height);
}

} // namespace

std::vector<Composed> build_up_pages(const Summary& summary, const plan::Plan& plan, std::size_t index) {
    const job::Drawer& drawer = *summary.job.drawers[index];
    const auto in = sheets::build_up_of(summary.job, plan.drawers[index]);
    if (!in) return {};
    Column column(summary, {QString::fromStdString(job::shown_name(drawer)), {}, false});
    column.head(language::tr("Build-up"), 400);
    const double height = column.free();
    add_picture(column, summary, *in, {45, 0}, 0.4 * height);
    add_picture(column, summary, *in, {45, 1}, 0.58 * height);
    return column.take();
}

} // namespace drawercast::summary
