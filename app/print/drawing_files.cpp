// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/drawing_files.h"

#include "base/ascii.h"
#include "job/shown_name.h"
#include "plan/stock_stage.h"

#include "language/spoken.h"
#include "print/page.h"
#include "print/stamp.h"
#include "sheets/box_and_cuts.h"
#include "sheets/build_up.h"
#include "sheets/drawer_plan.h"
#include "sheets/drilling.h"
#include "sheets/inking.h"
#include "sheets/pattern_board.h"
#include "sheets/pressure_plate.h"
#include "sheets/signs.h"
#include "sheets/svg.h"

#include <QStringList>

#include <algorithm>
#include <set>

namespace drawercast::print {

using theme::px_per_mm;

namespace {

/// An id as part of a file's name: letters, digits, - and _ stay.
std::string file_part(const std::string& id, std::set<std::string>& used) {
    std::string part = id;
    for (char& c : part)
        if (!(is_letter(c) || is_digit(c) || c == '-' || c == '_')) c = '_';
    if (part.empty()) part = "drawer";
    const std::string stem = part;
    for (int n = 2; !used.insert(part).second; ++n) part = stem + "-" + std::to_string(n);
    return part;
}

constexpr double gap_mm = 8, caption_mm = 10;

/// The sheet at true size, a line that says what it is, and its table.
template <class Frame>
Drawing drawn(std::string file, const sheets::Sheet<Frame>& sheet, const job::Job& job,
              const job::Drawer& drawer, const sheets::Table* table) {
    const theme::Theme theme = theme::printed_theme();
    const Box seen{sheet.area.min - sheet.lower_room_px * (1 / px_per_mm) - Vec{2, 2},
                   sheet.area.max + sheet.upper_room_px * (1 / px_per_mm) + Vec{2, 2}};
    sheets::Inks inks = sheets::ink_of(sheet.marks, sheets::View::true_mm({seen.min.x, seen.max.y}), theme);
    Vec size{seen.width(), seen.height() + caption_mm};

    const double base = size.y - 3.5;
    inks.push_back(sheets::About{});
    inks.push_back(
        sheets::Fill{sheets::frame_sign({5, base - 1.8}, 5, sheets::is_mirrored(sheet)), theme.ink});
    const QString words =
        QStringList{language::tr(sheets::frame_words(sheet).data()), language::tr(sheet.name.c_str()),
                    QString::fromStdString(job::shown_name(drawer)),
                    QString::fromStdString(job.title) + ", " + stamp(job), QStringLiteral("1 : 1")}
            .join(QStringLiteral("  ·  "));
    sheets::write(inks, words, {9, base}, {theme::Face::bold, 3.6}, theme.ink);
    if (table) {
        constexpr double table_px = 660;
        sheets::Inks rows;
        const double height = table->write(rows, {}, table_px, 0, table->rows.size(), theme);
        for (auto& ink : sheets::moved(std::move(rows), 1 / px_per_mm, {3, size.y + gap_mm / 2}))
            inks.push_back(std::move(ink));
        size = {std::max(size.x, table_px / px_per_mm + 6), size.y + height / px_per_mm + gap_mm};
    }
    return {std::move(file), words, size, std::move(inks)};
}

} // namespace

std::vector<Drawing> drawings(const job::Job& job, const plan::Plan& plan) {
    std::vector<Drawing> all;
    std::set<std::string> used;
    for (std::size_t i = 0; i < job.drawers.size() && i < plan.drawers.size(); ++i) {
        const job::Drawer& drawer = *job.drawers[i];
        const auto& answer = plan.drawers[i];
        const std::string stem = file_part(drawer.id, used);
        all.push_back(
            drawn(stem + "-drawer-plan.svg", sheets::drawer_plan(job, drawer, answer), job, drawer, nullptr));
        if (answer.insert)
            all.push_back(drawn(stem + "-drawer-check.svg", sheets::drawer_check(job, drawer, answer), job,
                                drawer, nullptr));
        if (const auto board = plan::pattern_board(job, answer)) {
            const sheets::Table table = sheets::block_table(job, *board);
            all.push_back(drawn(stem + "-pattern-board.svg",
                                sheets::pattern_board(job, *board, sheets::Finish::lines_only), job, drawer,
                                &table));
            if (answer.air)
                all.push_back(drawn(stem + "-pour-map.svg",
                                    sheets::pour_board(job, *board, answer.air->model->map().pour), job,
                                    drawer, nullptr));
        }
        if (answer.plate)
            all.push_back(drawn(stem + "-pressure-plate.svg",
                                sheets::pressure_plate(job, answer, sheets::Finish::washed), job, drawer,
                                nullptr));
        if (answer.plate && answer.insert) {
            const sheets::Table holes = sheets::drilling_table(job, answer);
            all.push_back(drawn(stem + "-plate-drilling.svg", sheets::plate_drilling(job, answer), job,
                                drawer, &holes));
        }
        if (answer.plate && answer.air)
            all.push_back(drawn(
                stem + "-where-air-stays.svg",
                sheets::pressure_plate(job, answer, sheets::Finish::washed, sheets::PlateGround::arrival),
                job, drawer, nullptr));
        if (plan::find_stock(plan.stock.get(), drawer.id) != nullptr)
            all.push_back(drawn(stem + "-box-and-cuts.svg", sheets::box_and_cuts(job, *plan.stock, drawer.id),
                                job, drawer, nullptr));
        if (const auto mold = sheets::build_up_of(job, answer))
            all.push_back(drawn(stem + "-build-up.svg",
                                sheets::build_up(sheets::seen_mold(*mold, {}), px_per_mm), job, drawer,
                                nullptr));
    }
    return all;
}

std::vector<DrawingFile> drawing_files(const job::Job& job, const plan::Plan& plan) {
    std::vector<DrawingFile> files;
    for (const Drawing& drawing : drawings(job, plan))
        files.push_back({drawing.file, sheets::svg_of(drawing.inks_mm, drawing.size_mm, drawing.title)});
    return files;
}

} // namespace drawercast::print
