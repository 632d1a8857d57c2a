// SPDX-License-Identifier: GPL-3.0-or-later
// Sheets for the bench, read back from their PDF.
#include "job/catalog.h"
#include "job/edit.h"

#include "app/ink_jobs.h"
#include "print/object_sheets.h"
#include "print/pdf.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace drawercast::print {
namespace {

const Printing today{QStringLiteral("Drawercast"), QStringLiteral("today")};

std::vector<test::InkPage> read(const std::vector<Page>& pages) {
    return test::read_pdf(pdf_of(pages, QStringLiteral("test"), today.program));
}

int of_size(const std::vector<test::InkPage>& pages, double width, double height) {
    int found = 0;
    for (const auto& page : pages)
        for (const auto& path : page.paths) {
            const auto box = path.box();
            found += path.stroked && std::abs(box.width() - width) < 0.05 &&
                     std::abs(box.height() - height) < 0.05;
        }
    return found;
}

bool ruled(const test::InkPage& page) {
    const auto has = [&](bool upright) {
        return std::any_of(page.paths.begin(), page.paths.end(), [&](const auto& path) {
            const auto box = path.box();
            return path.stroked && std::abs((upright ? box.height() : box.width()) - 100) < 0.05 &&
                   (upright ? box.width() : box.height()) < 10;
        });
    };
    return has(false) && has(true);
}

job::Job with_boxes(const std::vector<shape::Rectangle>& sizes) {
    job::Job job = job::new_job({});
    for (const auto& size : sizes) {
        job::Object object;
        object.id = job::free_object_id(job);
        object.name = object.id;
        object.height_mm = 30;
        object.fit_mm = -2; // what is laid on has none
        object.levels = {{job::Sunk{size, 20}, {{3, 4}, 0}, {}}};
        job = job::with_object(std::move(job), object);
    }
    return job;
}

TEST(ObjectSheets, things_are_drawn_as_large_as_they_are) {
    const auto pages =
        read(object_sheets(with_boxes({{80, 50, 0}, {150, 120, 0}, {42, 31, 0}}), Paper::a4, today));
    ASSERT_GE(pages.size(), 1U);
    EXPECT_EQ(of_size(pages, 80, 50), 1);
    EXPECT_EQ(of_size(pages, 150, 120), 1);
    EXPECT_EQ(of_size(pages, 42, 31), 1);
    for (const auto& page : pages) EXPECT_TRUE(ruled(page));
}

TEST(ObjectSheets, long_ones_are_turned_and_the_largest_listed) {
    const auto made = object_sheets(with_boxes({{210, 60, 0}, {500, 400, 0}}), Paper::a4, today);
    const auto pages = read(made);
    EXPECT_EQ(of_size(pages, 60, 210), 1);
    EXPECT_EQ(of_size(pages, 500, 400) + of_size(pages, 400, 500), 0);
    EXPECT_EQ(pages.size(), 2U);
}

TEST(ObjectSheets, nothing_leaves_the_paper_and_nothing_lies_on_another) {
    const auto job = test::demo_job("field-service");
    for (const auto paper : {Paper::a4, Paper::letter}) {
        const auto pages = read(object_sheets(job, paper, today));
        ASSERT_GE(pages.size(), 2U);
        const shape::Box safe = shape::Box{{0, 0}, size_mm(paper, Orientation::portrait)}.grown(-6.35);
        for (const auto& page : pages)
            for (const auto& path : page.paths) {
                const auto box = path.box();
                EXPECT_GE(box.min.x, safe.min.x);
                EXPECT_GE(box.min.y, safe.min.y);
                EXPECT_LE(box.max.x, safe.max.x);
                EXPECT_LE(box.max.y, safe.max.y);
            }
    }
    EXPECT_TRUE(object_sheets(job::Job{}, Paper::a4, today).empty());
}

TEST(MeasuringSheet, its_squares_are_what_it_says) {
    const auto metric = read(measuring_sheet(job::DisplayUnits::mm, Paper::a4, today));
    ASSERT_EQ(metric.size(), 1U);
    EXPECT_TRUE(ruled(metric[0]));
    const auto inches = read(measuring_sheet(job::DisplayUnits::inch, Paper::letter, today));
    const auto pitch = [](const test::InkPage& page) {
        std::vector<double> at; // upright lines of one length that are the most
        for (const auto& path : page.paths) {
            const auto box = path.box();
            if (path.stroked && box.width() < 0.1 && box.height() > 60 && box.height() < 160 &&
                std::abs(box.height() - 100) > 0.2)
                at.push_back(box.min.x);
        }
        std::sort(at.begin(), at.end());
        std::vector<double> steps;
        for (std::size_t i = 1; i < at.size(); ++i) steps.push_back(at[i] - at[i - 1]);
        std::sort(steps.begin(), steps.end());
        return steps.empty() ? 0 : steps[steps.size() / 2];
    };
    EXPECT_NEAR(pitch(metric[0]), 5, 0.02);
    EXPECT_NEAR(pitch(inches[0]), 6.35, 0.02);
}

} // namespace
} // namespace drawercast::print
