// SPDX-License-Identifier: GPL-3.0-or-later
// What a printer that is off gets: its pages stretched, so that on its paper 100 mm are 100 mm.
#include "app/ink_jobs.h"
#include "print/correction.h"
#include "print/pdf.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace drawercast::print {
namespace {

/// A page of tiles, corrected, as the PDF's reader finds it.
std::vector<test::InkPage> corrected(Paper paper, Orientation orientation, const Correction& correction) {
    const auto job = test::asymmetric_job(200, 120);
    auto pages = template_pages(job, plan::compute(job), {paper, orientation, TemplateKind::pattern_board},
                                {QStringLiteral("Drawercast"), QStringLiteral("today")});
    for (Page& page : pages) page.stretch = stretch_of(correction, page.size_mm);
    return test::read_pdf(pdf_of(pages, QStringLiteral("t"), QStringLiteral("p")));
}

bool has_length(const test::InkPage& page, double mm, bool upright) {
    return std::any_of(page.paths.begin(), page.paths.end(), [&](const test::InkPath& path) {
        const Box box = path.box();
        return path.stroked && (upright ? box.width() : box.height()) < 0.5 &&
               std::abs((upright ? box.height() : box.width()) - mm) < 0.02;
    });
}

TEST(Correction, a_printer_that_is_off_prints_true_scales) {
    const Correction off{100.8, 99.4};
    for (const auto orientation : {Orientation::portrait, Orientation::landscape}) {
        const bool turned = orientation == Orientation::landscape;
        const auto pages = corrected(Paper::a4, orientation, off);
        ASSERT_GT(pages.size(), 1u);
        for (std::size_t i = 1; i < pages.size(); ++i) { // the cover has no scales
            // the printer makes off/100 of it: 100 mm again
            EXPECT_TRUE(has_length(pages[i], 100 * 100 / (turned ? off.long_mm : off.short_mm), false));
            EXPECT_TRUE(has_length(pages[i], 100 * 100 / (turned ? off.short_mm : off.long_mm), true));
        }
    }
}

TEST(Correction, none_changes_no_number_of_a_page) {
    const Page page{{210, 297}, {}};
    EXPECT_EQ(stretch_of({}, page.size_mm), page.stretch);
    EXPECT_TRUE(stretched(page).isIdentity());
}

TEST(Correction, the_most_that_is_corrected_stays_off_the_papers_edge) {
    const double least = 100 - correctable_mm;
    EXPECT_TRUE(is_sound({least, least}));
    EXPECT_FALSE(is_sound({least - 0.01, 100}));
    EXPECT_FALSE(is_sound({100, 100 + correctable_mm + 0.01}));
    for (const auto paper : {Paper::a4, Paper::letter, Paper::a3, Paper::tabloid}) {
        const Box safe = Box{{0, 0}, size_mm(paper, Orientation::portrait)}.grown(-6.35);
        const auto pages = corrected(paper, Orientation::portrait, {least, least});
        for (const auto& path : pages.front().paths) {
            const Box box = path.box();
            if (!path.stroked && !path.filled) continue;
            EXPECT_GE(box.min.x, safe.min.x);
            EXPECT_GE(box.min.y, safe.min.y);
            EXPECT_LE(box.max.x, safe.max.x);
            EXPECT_LE(box.max.y, safe.max.y);
        }
    }
}

} // namespace
} // namespace drawercast::print
