// SPDX-License-Identifier: GPL-3.0-or-later
// Whether what is printed can be read: letters tall enough, each in its place, none over another.
#include "job/fields.h"
#include "plan/plan.h"

#include "app/ink_jobs.h"
#include "print/drawing_files.h"
#include "sheets/drawer_plan.h"
#include "sheets/inking.h"
#include "sheets/pattern_board.h"
#include "sheets/room.h"
#include "sheets/table.h"
#include "sheets/zones.h"
#include "summary/page_frame.h"
#include "summary/summary.h"

#include <QRegularExpression>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <string>
#include <vector>

namespace drawercast {
namespace {

using shape::Box;
using shape::Vec;
using sheets::Inks;

constexpr double least_capital_mm = 1.8;
const print::Printing printing{QStringLiteral("Drawercast"), QStringLiteral("2031-03-04 14:32")};

std::vector<job::Job> jobs() {
    std::vector<job::Job> all;
    for (const auto& name : test::demo_names) all.push_back(test::demo_job(name));
    all.back().display_units = job::DisplayUnits::inch;
    all.push_back(test::crowded_job());
    all.back().display_units = job::DisplayUnits::inch_32; // the longest figures where there is least room
    return all;
}

void expect_tall_enough(const std::vector<print::Page>& pages) {
    EXPECT_FALSE(pages.empty());
    for (std::size_t i = 0; i < pages.size(); ++i)
        for (const auto& ink : pages[i].inks)
            if (const auto* words = std::get_if<sheets::Words>(&ink)) {
                EXPECT_GE(words->lettering.px * theme::capital_share / theme::px_per_mm, least_capital_mm)
                    << "page " << i + 1 << ": " << words->text.toStdString();
            }
}

TEST(Letters, capitals_are_tall_enough_on_every_page) {
    for (const auto& job : jobs()) {
        const plan::Plan plan = plan::compute(job);
        const auto paper = // as it is sold where one measures so
            job.display_units == job::DisplayUnits::mm ? print::Paper::a4 : print::Paper::letter;
        expect_tall_enough(summary::summary_pages(job, plan, paper, printing));
        expect_tall_enough(print::template_pages(job, plan, {paper, {}, {}}, printing));
    }
}

TEST(Letters, capitals_are_tall_enough_in_every_drawing) {
    static const QRegularExpression size(QStringLiteral("font-size=\"([0-9.]+)\""));
    for (const auto& job : jobs())
        for (const auto& file : print::drawing_files(job, plan::compute(job))) {
            int count = 0;
            for (auto found = size.globalMatch(QString::fromUtf8(file.bytes)); found.hasNext(); ++count) {
                const double mm = found.next().captured(1).toDouble() * theme::capital_share;
                EXPECT_GE(mm, least_capital_mm) << file.name;
            }
            EXPECT_GT(count, 5) << file.name;
        }
}

/// Words with the subject they belong to and the box of their capitals.
struct Written {
    std::string text;
    std::string subject;
    Box box;
};

std::vector<Written> written(const Inks& inks) {
    std::vector<Written> all;
    std::string subject;
    for (const auto& ink : inks) {
        if (const auto* about = std::get_if<sheets::About>(&ink)) subject = about->subject;
        const auto* words = std::get_if<sheets::Words>(&ink);
        if (!words) continue;
        const double length = theme::width_of(words->text, words->lettering),
                     up = words->lettering.px * theme::capital_share;
        const shape::Turn turn = shape::Turn::of_degrees(words->turn_deg);
        const Vec along = Vec{turn.cosine, -turn.sine} * length, rise = Vec{-turn.sine, -turn.cosine} * up;
        Box box;
        for (const Vec corner : {words->at, words->at + along, words->at + rise, words->at + along + rise})
            box.add(corner);
        all.push_back({words->text.toStdString(), subject, box});
    }
    return all;
}

std::vector<Vec> corners(const Box& box) {
    return {box.min, {box.max.x, box.min.y}, box.max, {box.min.x, box.max.y}};
}

void expect_apart(const std::vector<Written>& words, const std::string& sheet) {
    for (std::size_t i = 0; i < words.size(); ++i)
        for (std::size_t k = 0; k < i; ++k) {
            const Box a = words[i].box.grown(-0.2), b = words[k].box;
            EXPECT_FALSE(!a.empty() && shape::near(a, b))
                << sheet << ": " << words[i].text << " over " << words[k].text;
        }
}

using Hollows = std::map<std::string, std::vector<std::vector<shape::Ring>>>;

/// Each label stands in one of its pocket's hollows, or on a leader clear of all pockets.
void expect_in_their_rooms(const std::vector<Written>& words, const Hollows& hollows, bool leaders,
                           const std::string& sheet) {
    int labels = 0;
    for (const auto& one : words) {
        const auto own = hollows.find(one.subject);
        if (own == hollows.end()) continue;
        ++labels;
        const auto points = corners(one.box);
        const auto holds = [&](const auto& rings) {
            return std::all_of(points.begin(), points.end(), [&](Vec p) { return sheets::inside(rings, p); });
        };
        const bool at_home = std::any_of(own->second.begin(), own->second.end(), holds);
        bool abroad = false;
        for (const auto& [subject, all] : hollows)
            for (const auto& rings : all)
                abroad |= std::any_of(points.begin(), points.end(),
                                      [&](Vec p) { return sheets::inside(rings, p); });
        EXPECT_TRUE(at_home || (leaders && !abroad)) << sheet << ": " << one.text << " of " << one.subject;
    }
    EXPECT_GT(labels, 5) << sheet;
}

void expect_plan_in_order(const sheets::Sheet<shape::InDrawer>& sheet, const plan::DrawerPlan& plan,
                          const sheets::View& view, const std::string& name) {
    Hollows hollows;
    for (const auto& pocket : plan.pockets)
        for (const auto& cut : pocket->cuts)
            hollows[pocket->subject].push_back(
                sheets::chords(view(sheets::path_of(cut.outline.contour)), 0.1));
    const auto words = written(sheets::ink_of(sheet.marks, view, theme::printed_theme()));
    expect_apart(words, name);
    expect_in_their_rooms(words, hollows, false, name);
}

TEST(Labels, stand_in_their_pockets_and_over_nothing_on_the_plan) {
    for (const auto& job : jobs()) {
        const plan::Plan plan = plan::compute(job);
        for (std::size_t i = 0; i < job.drawers.size(); ++i) {
            for (const double reduction : {2.5, 3.5, 4.0})
                expect_plan_in_order(
                    sheets::drawer_plan(job, *job.drawers[i], plan.drawers[i], sheets::Keys::letters),
                    plan.drawers[i], sheets::View::on_page(theme::px_per_mm / reduction, {}),
                    job.title + " plan 1:" + std::to_string(reduction));
            expect_plan_in_order(sheets::drawer_check(job, *job.drawers[i], plan.drawers[i]), plan.drawers[i],
                                 sheets::View::true_size({}), job.title + " drawer check");
        }
    }
}

/// Leaders of checks: single lines of the badge's weight.
std::vector<std::pair<Vec, Vec>> leaders_of(const Inks& inks) {
    std::vector<std::pair<Vec, Vec>> leaders;
    for (const auto& ink : inks) {
        const auto* stroke = std::get_if<sheets::Stroke>(&ink);
        if (!stroke || stroke->pen.width != 1.3 || stroke->path.strands.size() != 1) continue;
        const auto& strand = stroke->path.strands.front();
        if (strand.pieces.size() == 1 && !strand.closed)
            leaders.emplace_back(strand.start, strand.pieces.front().to);
    }
    return leaders;
}

TEST(Labels, leaders_of_many_checks_cross_neither_each_other_nor_words) {
    const job::Job job = test::crowded_job();
    const plan::Plan plan = plan::compute(job);
    const auto sheet = sheets::drawer_plan(job, *job.drawers[0], plan.drawers[0], sheets::Keys::letters);
    const auto inks = sheets::ink_of(sheet.marks, sheets::View::on_page(theme::px_per_mm / 3.5, {}),
                                     theme::printed_theme());
    const auto words = written(inks);
    const auto leaders = leaders_of(inks);
    ASSERT_GT(leaders.size(), 20u);
    for (std::size_t i = 0; i < leaders.size(); ++i) {
        const auto& [a, b] = leaders[i];
        for (const auto& one : words)
            EXPECT_FALSE(sheets::segment_meets(a, b, one.box.grown(-0.5))) << "over " << one.text;
        for (std::size_t k = 0; k < i; ++k) {
            const auto& [c, d] = leaders[k];
            const auto side = [](Vec from, Vec to, Vec p) { return shape::cross(to - from, p - from); };
            EXPECT_FALSE((side(a, b, c) > 0) != (side(a, b, d) > 0) &&
                         (side(c, d, a) > 0) != (side(c, d, b) > 0));
        }
    }
}

TEST(Labels, stand_on_their_blocks_and_over_nothing_on_the_board) {
    const sheets::View view = sheets::View::true_size({});
    for (const auto& job : jobs()) {
        const plan::Plan plan = plan::compute(job);
        for (std::size_t i = 0; i < job.drawers.size(); ++i) {
            const auto board = plan::pattern_board(job, plan.drawers[i]);
            ASSERT_TRUE(board);
            Hollows hollows;
            for (const auto& block : board->blocks)
                for (const auto& part : block.parts)
                    hollows[block.subject].push_back(
                        sheets::chords(view(sheets::path_of(part.cut.outline.contour)), 0.1));
            const auto sheet = sheets::pattern_board(job, *board, sheets::Finish::lines_only);
            const auto words = written(sheets::ink_of(sheet.marks, view, theme::printed_theme()));
            expect_apart(words, job.title + " board");
            expect_in_their_rooms(words, hollows, true, job.title + " board");
        }
    }
}

TEST(Summary, words_stay_within_the_frame_and_over_nothing) {
    for (const auto& job : jobs()) {
        const plan::Plan plan = plan::compute(job);
        for (const auto paper : {print::Paper::a4, print::Paper::letter}) {
            const auto pages = summary::summary_pages(job, plan, paper, printing);
            const Box room = summary::page_room(paper);
            for (std::size_t i = 0; i < pages.size(); ++i) {
                const std::string name = job.title + " page " + std::to_string(i + 1);
                const auto words = written(pages[i].inks);
                for (const auto& one : words)
                    EXPECT_TRUE(one.box.min.x >= room.min.x && one.box.max.x <= room.max.x)
                        << name << ": " << one.text;
                expect_apart(words, name);
            }
        }
    }
}

/// As many letters as there is room for, and no more of a very long name are looked at than that takes.
TEST(Elided, ends_where_the_room_does) {
    const theme::Lettering face{theme::Face::regular, 10};
    const QString text =
        QStringLiteral("Torque wrench, 5–25 Nm, ⌀ 12, with the long bit and its 𝟏 spare ring");
    for (const double width : {0.0, 3.0, 9.0, 40.0, 120.0, 250.0, 1000.0}) {
        QString longest = sheets::written_width(text, face) <= width ? text : QString();
        for (qsizetype n = text.size() - 1; n > 0 && longest.isEmpty(); --n) {
            const QString shorter = text.left(n).trimmed() + QChar(0x2026);
            if (!text[n - 1].isHighSurrogate() && sheets::written_width(shorter, face) <= width)
                longest = shorter;
        }
        EXPECT_EQ(sheets::elided(text, face, width).toStdString(), longest.toStdString()) << width;
    }
    const QString endless(job::most_text_characters, QLatin1Char('m'));
    const QString start = sheets::elided(endless, face, 200);
    EXPECT_LE(sheets::written_width(start, face), 200);
    EXPECT_GT(start.size(), 10);
    EXPECT_EQ(sheets::elided(endless.left(500), face, 200).toStdString(), start.toStdString());
}

TEST(Zones, are_round_in_the_units_of_the_job) {
    EXPECT_EQ(sheets::zone_side_mm(job::DisplayUnits::mm), 60);
    EXPECT_EQ(sheets::zone_side_mm(job::DisplayUnits::inch), 63.5);
    const Box drawer{{0, 0}, {600, 400}};
    const auto zone = [&](double x, double y, job::DisplayUnits units) {
        return sheets::zone_of(shape::Point<shape::InDrawer>::of({x, y}), drawer, units);
    };
    EXPECT_EQ(zone(61, 10, job::DisplayUnits::mm), "A2");
    EXPECT_EQ(zone(61, 10, job::DisplayUnits::inch), "A1");
    EXPECT_EQ(zone(64, 130, job::DisplayUnits::inch_32), "C2");
    EXPECT_EQ(zone(599, 399, job::DisplayUnits::mm), "G10");
}

} // namespace
} // namespace drawercast
