// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/build_up_page.h"

#include "job/shown_name.h"

#include "language/spoken.h"
#include "sheets/build_up.h"
#include "summary/column.h"
#include "summary/placed.h"

namespace drawercast::summary {

namespace {

/// The picture as large as `height` and the column allow. Names are as large at any scale, so a first
/// picture tells the scale and a second one is drawn for it.
void add_picture(Column& column, const Summary& summary, const buildup::SceneIn& in,
                 const buildup::Look& look, double height) {
    const auto mold = sheets::seen_mold(in, look);
    const Vec room{column.width(), height};
    double per_mm = 1;
    for (int round = 0; round < 3; ++round) per_mm = per_mm_for(sheets::build_up(mold, per_mm), room);
    const auto sheet = sheets::build_up(mold, per_mm);
    const Vec margin = (room - whole_px(sheet, per_mm)) * 0.5;
    put_sheet(column.inks(), sheet, per_mm, column.here() + margin, summary.theme);
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
