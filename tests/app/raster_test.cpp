// SPDX-License-Identifier: GPL-3.0-or-later
// The rulers of the templates as dots, as a printer's driver makes them of the PDF: at 300 dots per inch the
// centimeter ticks of both rulers stand where they should within a dot. DRAWERCAST_LONG=1: every sheet on
// every paper, upright and across.

#include "app/ink_jobs.h"
#include "core/plan/whole_plan.h"
#include "print/pdf.h"

#include <QImage>
#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>

namespace drawercast::print {
namespace {

constexpr double dots_per_mm = 300 / 25.4;

QImage dots_of(const std::string& pdf, std::size_t page) {
    const std::string number = std::to_string(page + 1);
    int exit = 0;
    const std::string png = test::output_of(
        "pdftoppm -r 300 -gray -png -f " + number + " -l " + number + " -singlefile '" + pdf + "'", &exit);
    EXPECT_EQ(exit, 0);
    return QImage::fromData(reinterpret_cast<const uchar*>(png.data()), static_cast<int>(png.size()), "PNG")
        .convertToFormat(QImage::Format_Grayscale8);
}

/// Middles of the slim dark marks along a row.
std::vector<double> ticks_in(const QImage& dots, int y) {
    constexpr int widest = 8;
    std::vector<double> middles;
    const uchar* row = dots.constScanLine(y);
    for (int x = 0; x < dots.width(); ++x) {
        double ink = 0, moment = 0;
        int end = x;
        for (; end < dots.width() && row[end] < 250; ++end) {
            ink += 255 - row[end];
            moment += (255 - row[end]) * (end + 0.5);
        }
        if (end > x && end - x <= widest) middles.push_back(moment / ink);
        x = end;
    }
    return middles;
}

/// Whether eleven ticks stand a centimeter apart, the last where 100 mm are: within a dot.
bool has_ruler(const QImage& dots) {
    for (int y = 0; y < dots.height(); ++y) {
        const auto ticks = ticks_in(dots, y);
        if (ticks.size() < 11) continue;
        for (const double first : ticks) {
            int found = 0;
            for (int cm = 1; cm <= 10; ++cm)
                for (const double tick : ticks)
                    if (std::abs(tick - first - cm * 10 * dots_per_mm) <= 1) {
                        ++found;
                        break;
                    }
            if (found == 10) return true;
        }
    }
    return false;
}

void hold_rulers(const job::Job& job, const plan::Plan& plan, const TemplateChoice& choice) {
    const auto pages =
        template_pages(job, plan, choice, {QStringLiteral("Drawercast"), QStringLiteral("today")});
    const std::string pdf =
        test::file_of(pdf_of(pages, QStringLiteral("t"), QStringLiteral("p")), "raster.pdf");
    int looked_at = 0;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (pages[i].name.contains(QLatin1Char(','))) continue; // a cover or a table
        ++looked_at;
        const QImage dots = dots_of(pdf, i);
        ASSERT_FALSE(dots.isNull());
        EXPECT_NEAR(dots.width(), pages[i].size_mm.x * dots_per_mm, 5); // whole points
        EXPECT_TRUE(has_ruler(dots)) << pages[i].name.toStdString() << ", level";
        const bool level_only = choice.only == TemplateKind::wall_strips; // as long as walls are
        EXPECT_TRUE(level_only || has_ruler(dots.transformed(QTransform().rotate(90))))
            << pages[i].name.toStdString() << ", upright";
        if (std::getenv("DRAWERCAST_LONG") == nullptr) break;
    }
    EXPECT_GT(looked_at, 0);
}

TEST(Raster, a_hundred_millimeters_are_that_within_a_dot) {
    const job::Job job = test::asymmetric_job(200, 120);
    const plan::Plan plan = plan::compute(job);
    for (const auto orientation : {Orientation::portrait, Orientation::landscape})
        hold_rulers(job, plan, {Paper::a4, orientation, TemplateKind::pattern_board});
}

TEST(Raster, of_every_sheet_on_every_paper) {
    if (std::getenv("DRAWERCAST_LONG") == nullptr) GTEST_SKIP() << "DRAWERCAST_LONG=1";
    const job::Job job = test::asymmetric_job(200, 120);
    const plan::Plan plan = plan::whole(job);
    for (const auto paper : {Paper::a4, Paper::letter, Paper::a3, Paper::tabloid})
        for (const auto orientation : {Orientation::portrait, Orientation::landscape})
            for (const auto kind :
                 {TemplateKind::pattern_board, TemplateKind::drawer_check, TemplateKind::pressure_plate,
                  TemplateKind::base_drilling, TemplateKind::wall_strips})
                hold_rulers(job, plan, {paper, orientation, kind});
}

} // namespace
} // namespace drawercast::print
