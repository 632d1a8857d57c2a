// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/stock_stage.h"

#include "app/ink_jobs.h"
#include "print/label_pages.h"
#include "print/strip_pages.h"
#include "sheets/bench_pen.h"
#include "sheets/box_and_cuts.h"
#include "sheets/inking.h"
#include "sheets/table.h"
#include "sheets/wall_strip.h"
#include "summary/summary.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace drawercast {
namespace {

struct Whole {
    job::Job job;
    plan::Plan plan;
};

/// One small drawer of two rounds with what to cut and buy.
Whole small() {
    const job::Job job = test::asymmetric_job(240, 150);
    Whole whole{job, plan::compute(job)};
    whole.plan.stock = std::make_shared<const plan::StockPlan>(plan::stock_of(whole.job, whole.plan));
    return whole;
}

const print::Printing printing{"Drawercast", "2031-03-04 14:32"};

std::string all_words(const std::vector<print::Page>& pages) {
    std::string words;
    for (const auto& page : pages)
        for (const auto& ink : page.inks)
            if (const auto* text = std::get_if<sheets::Words>(&ink)) words += text->text.toStdString() + "\n";
    return words;
}

/// The words drawn, none over another; letters do not fill their line, by `air_px` all around.
std::vector<std::string> words_apart(const std::vector<sheets::Ink>& inks, double air_px = 1.5) {
    std::vector<std::string> words;
    std::vector<shape::Box> taken;
    for (const auto& ink : inks) {
        const auto* text = std::get_if<sheets::Words>(&ink);
        if (text == nullptr) continue;
        const shape::Box box = sheets::reach_of(ink).grown(-air_px);
        for (std::size_t i = 0; i < taken.size(); ++i)
            EXPECT_FALSE(shape::near(box, taken[i])) << text->text.toStdString() << " over " << words[i];
        words.push_back(text->text.toStdString());
        taken.push_back(box);
    }
    return words;
}

TEST(Cuts, every_cut_line_lies_inside_its_sheet) {
    const Whole whole = small();
    const auto sheet = sheets::cut_sheet(whole.job, *whole.plan.stock, 0, 0, 0);
    const auto area = sheet.area.grown(21); // a break runs past the edges it breaks
    int paths = 0;
    for (const auto& mark : sheet.marks)
        if (const auto* path = std::get_if<sheets::PathMark>(&mark.kind)) {
            const auto box = sheets::bounds(path->path);
            EXPECT_TRUE(box.min.x >= area.min.x && box.min.y >= area.min.y && box.max.x <= area.max.x &&
                        box.max.y <= area.max.y);
            ++paths;
        }
    EXPECT_GT(paths, 12);
}

TEST(Cuts, a_wall_strip_shows_its_screws_at_true_size) {
    const Whole whole = small();
    const auto& drawer = whole.plan.stock->drawers.front();
    const auto sheet = sheets::wall_strip(whole.job, drawer.box.walls[0], 16, drawer.box.walls[0].foot_mm);
    std::multiset<double> at;
    for (const auto& mark : sheet.marks)
        if (const auto* sign = std::get_if<sheets::SignMark>(&mark.kind)) at.insert(sign->at.mm.x);
    ASSERT_EQ(at.size(), drawer.box.walls[0].foot_mm.size());
    EXPECT_NEAR(*at.begin(), 30, 1e-9);
    EXPECT_NEAR(*at.rbegin(), drawer.box.walls[0].length_mm - 30, 1e-9);
}

TEST(Cuts, a_walls_top_has_the_closures_that_are_screwed_into_it) {
    mold::PlateDesign design;
    design.box_board.thickness_mm = 16;
    design.closure.kind = design.end_closure.kind = job::ClosureKind::screw;
    for (const auto& [x, y] :
         {std::pair(100.0, -8.0), {30.0, -8.0}, {30.0, 208.0}, {-8.0, 50.0}, {308.0, 60.0}}) {
        mold::ClosureAt closure;
        closure.at = shape::Point<shape::InMold>::of({x, y});
        design.closures.push_back(closure);
    }
    const shape::Box inside{{0, 0}, {300, 200}};
    const auto holes = [&](stock::Side side, job::BoxCorner corner) {
        stock::Wall wall;
        wall.side = side;
        return sheets::wall_holes(wall, design, inside, corner).around_mm;
    };
    using Holes = std::vector<double>;
    EXPECT_EQ(holes(stock::Side::front, job::BoxCorner::lapped), (Holes{46, 116}));
    EXPECT_EQ(holes(stock::Side::back, job::BoxCorner::lapped), (Holes{46}));
    EXPECT_EQ(holes(stock::Side::left, job::BoxCorner::lapped), (Holes{50}));
    EXPECT_EQ(holes(stock::Side::right, job::BoxCorner::lapped), (Holes{60}));
    EXPECT_EQ(holes(stock::Side::back, job::BoxCorner::pinwheel), (Holes{30}));
    EXPECT_EQ(holes(stock::Side::right, job::BoxCorner::pinwheel), (Holes{76}));
    design.closures[0].stiffener_end = true;
    stock::Wall front;
    const auto both = sheets::wall_holes(front, design, inside, job::BoxCorner::lapped);
    EXPECT_EQ(both.around_mm, Holes{46});
    EXPECT_EQ(both.ends_mm, Holes{116});
    design.closure.kind = design.end_closure.kind = job::ClosureKind::clamp;
    EXPECT_TRUE(holes(stock::Side::front, job::BoxCorner::lapped).empty());
}

TEST(Cuts, every_cut_has_its_number_on_a_page) {
    const Whole whole = small();
    const auto& cut = whole.plan.stock->cuts.boards.at(0);
    const auto sheet = sheets::cut_sheet(whole.job, *whole.plan.stock, 0, 0, 0);
    const auto view = sheets::View::on_page(theme::px_per_mm / 4, {0, 2000});
    const theme::Theme theme = theme::printed_theme();
    std::multiset<std::string> words;
    for (const auto& ink : sheets::ink_of(sheet.marks, view, theme))
        if (const auto* text = std::get_if<sheets::Words>(&ink)) words.insert(text->text.toStdString());
    ASSERT_GT(cut.sheets.at(0).cuts.size(), 8u);
    for (std::size_t i = 1; i <= cut.sheets[0].cuts.size(); ++i)
        EXPECT_GE(words.count(std::to_string(i)), 1u) << i;
}

TEST(Cuts, a_sheet_that_is_mostly_left_over_is_broken_off) {
    Whole whole = small();
    const auto& cut = whole.plan.stock->cuts.boards.at(0);
    const auto drawn = sheets::drawn_sheet(cut, 0);
    EXPECT_FALSE(drawn.whole_length);
    EXPECT_LT(drawn.length_mm, cut.board.sheet_length_mm / 2);
    for (const auto& piece : cut.sheets.at(0).pieces) {
        EXPECT_LT(stock::mm_of(piece.x + piece.width), drawn.length_mm);
        EXPECT_LT(stock::mm_of(piece.y + piece.height), drawn.width_mm);
    }
    stock::BoardCut full = cut;
    full.board.sheet_length_mm = 1000, full.board.sheet_width_mm = 310; // hardly more than the parts take
    EXPECT_TRUE(sheets::drawn_sheet(full, 0).whole_length);
    EXPECT_DOUBLE_EQ(sheets::drawn_sheet(full, 0).length_mm, 1000);
}

TEST(Cuts, no_words_of_a_sheet_lie_over_one_another) {
    const Whole whole = small();
    const theme::Theme theme = theme::printed_theme();
    const auto& boards = whole.plan.stock->cuts.boards;
    for (std::size_t board = 0; board < boards.size(); ++board) {
        const auto sheet = sheets::cut_sheet(whole.job, *whole.plan.stock, board, 0, 0);
        const auto seen = words_apart(
            sheets::ink_of(sheet.marks, sheets::View::on_page(theme::px_per_mm / 4, {0, 2000}), theme));
        EXPECT_GT(seen.size(), 3u);
    }
}

TEST(Cuts, every_piece_comes_off_at_a_fence_setting) {
    const Whole whole = small();
    for (const auto& cut : whole.plan.stock->cuts.boards)
        for (const auto& sheet : cut.sheets) {
            std::multiset<int> freed;
            for (const auto& saw : sheet.cuts) {
                const bool upright = saw.saw == stock::Saw::upright;
                EXPECT_EQ(upright ? saw.y1 - saw.y0 : saw.x1 - saw.x0,
                          upright ? saw.panel_height : saw.panel_width);
                EXPECT_GT(saw.at, 0);
                EXPECT_LE(saw.at, upright ? saw.panel_width : saw.panel_height);
                for (const int piece : {saw.first, saw.second})
                    if (piece >= 0) freed.insert(piece);
                if (saw.first < 0) continue;
                const auto& piece = cut.pieces[static_cast<std::size_t>(saw.first)];
                const double at = stock::mm_of(saw.at);
                EXPECT_TRUE(std::abs(at - piece.length_mm) < 1e-3 || std::abs(at - piece.width_mm) < 1e-3);
            }
            EXPECT_EQ(freed.size(), sheet.pieces.size());
            EXPECT_EQ(std::set<int>(freed.begin(), freed.end()).size(), freed.size()) << "each once";
        }
}

TEST(Cuts, a_cut_is_drawn_on_the_bench_where_it_is_told_to_be) {
    const Whole whole = small();
    const auto sheet = sheets::box_and_cuts(whole.job, *whole.plan.stock, "d1");
    const auto& boards = whole.plan.stock->cuts.boards;
    for (std::size_t board = 0; board < boards.size(); ++board)
        for (std::size_t cut = 0; cut < boards[board].sheets[0].cuts.size(); ++cut) {
            const auto place = sheets::place_of_cut(whole.job, *whole.plan.stock, "d1", {board, 0, cut});
            EXPECT_TRUE(std::any_of(sheet.marks.begin(), sheet.marks.end(),
                                    [&](const sheets::Mark& mark) {
                                        const auto* path = std::get_if<sheets::PathMark>(&mark.kind);
                                        if (!path) return false;
                                        const auto box = sheets::bounds(path->path);
                                        return shape::length(box.min - place.min) < 1e-6 &&
                                               box.max.x <= place.max.x + 1e-6 &&
                                               box.max.y <= place.max.y + 1e-6 &&
                                               std::min(box.width(), box.height()) == 0;
                                    }))
                << board << ": " << cut + 1;
        }
}

TEST(Cuts, the_bench_says_more_numbers_closer_up_and_none_over_other_words) {
    const Whole whole = small();
    const auto sheet = sheets::box_and_cuts(whole.job, *whole.plan.stock, "d1");
    const auto numbers = [&](double reduction) {
        std::vector<std::pair<std::string, shape::Box>> all;
        for (const auto& ink :
             sheets::ink_of(sheet.marks, sheets::View::on_page(theme::px_per_mm / reduction, {0, 2000}),
                            theme::printed_theme()))
            if (const auto* text = std::get_if<sheets::Words>(&ink))
                all.emplace_back(text->text.toStdString(), sheets::reach_of(ink).grown(-1.5));
        std::set<std::string> seen;
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (all[i].first.find_first_not_of("0123456789") != std::string::npos) continue;
            seen.insert(all[i].first);
            for (std::size_t k = 0; k < all.size(); ++k)
                EXPECT_FALSE(k != i && shape::near(all[i].second, all[k].second))
                    << all[i].first << " over " << all[k].first << " at 1 : " << reduction;
        }
        return seen.size();
    };
    const auto far = numbers(14), near = numbers(0.25);
    EXPECT_GT(near, far);
    std::size_t most = 0;
    for (const auto& board : whole.plan.stock->cuts.boards)
        most = std::max(most, board.sheets.at(0).cuts.size());
    EXPECT_GE(near, most);
}

TEST(Cuts, a_small_box_says_less_and_never_two_words_in_one_place) {
    const Whole whole = small();
    const auto& drawer = whole.plan.stock->drawers.front();
    sheets::Sheet<sheets::OnBench> sheet;
    sheets::BenchPen pen(sheet);
    sheets::add_box(pen, {}, whole.job, drawer, 16, 1);
    const auto said = [&](double reduction) {
        const auto view = sheets::View::on_page(theme::px_per_mm / reduction, {0, 2000});
        return words_apart(sheets::ink_of(sheet.marks, view, theme::printed_theme()), 3);
    };
    const auto near = said(1.5), far = said(6.5);
    const auto sizes = [](const std::vector<std::string>& words) {
        return std::count_if(words.begin(), words.end(),
                             [](const auto& line) { return line.find(" × ") != std::string::npos; });
    };
    EXPECT_GE(sizes(near), 4);
    EXPECT_LT(sizes(far), sizes(near));
    EXPECT_LT(far.size(), near.size());
    EXPECT_GT(far.size(), 2u);
}

TEST(Tables, what_is_too_long_for_its_column_goes_on_below) {
    sheets::Table table;
    table.columns = {{"a", sheets::Align::left, 0, 40}, {"b", sheets::Align::left, 1, 0, false, true}};
    const QString words = QStringLiteral("d1: wall front, wall back, wall left, wall right, 7a.1, 7a.2");
    table.rows = {{{"1", false, {}}, {words, false, {}}}, {{"2", false, {}}, {"short", false, {}}}};
    const auto written = sheets::folded(table, 140);
    ASSERT_GT(written.rows.size(), 3u);
    QStringList lines;
    for (std::size_t row = 0; row + 1 < written.rows.size(); ++row) {
        lines.append(written.rows[row].at(1).text);
        EXPECT_LE(sheets::written_width(lines.back(), {theme::Face::regular, table.text_px}), 93);
        EXPECT_EQ(written.goes_on.at(row), row + 2 < written.rows.size());
    }
    EXPECT_EQ(lines.join(QLatin1Char(' ')), words);
    EXPECT_EQ(written.rows.back().at(1).text, QStringLiteral("short"));
}

TEST(Cuts, every_body_has_its_label) {
    const Whole whole = small();
    const std::string words =
        "\n" + all_words(print::label_pages(whole.job, whole.plan, print::Paper::a4, printing));
    for (const auto& drawer : whole.plan.stock->drawers)
        for (const auto& block : drawer.blocks)
            for (const auto& body : block.bodies)
                EXPECT_NE(words.find("\n" + body.label + "\n"), std::string::npos) << body.label;
}

TEST(Cuts, shared_walls_are_labelled_once_and_said_to_be_shared) {
    for (const bool share : {false, true}) {
        Whole whole = small();
        job::Drawer twin = *whole.job.drawers.front();
        twin.id = "d2", twin.pockets.clear();
        whole.job.drawers.emplace_back(twin);
        whole.job.mold.share_walls = share;
        whole.plan = plan::compute(whole.job);
        whole.plan.stock = std::make_shared<const plan::StockPlan>(plan::stock_of(whole.job, whole.plan));
        const auto count = [](const std::string& words, const std::string& sought) {
            std::size_t found = 0;
            for (auto at = words.find(sought); at != std::string::npos; at = words.find(sought, at + 1))
                ++found;
            return found;
        };
        const std::string labels =
            all_words(print::label_pages(whole.job, whole.plan, print::Paper::a4, printing));
        EXPECT_EQ(count(labels, "wall front\n"), share ? 1U : 2U);
        const std::string said =
            all_words(summary::summary_pages(whole.job, whole.plan, print::Paper::a4, printing));
        EXPECT_EQ(count(said, ", shared\n"), share ? 2U : 0U);
    }
}

TEST(Cuts, the_summary_says_what_to_cut_and_buy_only_once_it_is_known) {
    Whole whole = small();
    const auto said = [&] {
        return all_words(summary::summary_pages(whole.job, whole.plan, print::Paper::a4, printing));
    };
    const std::string words = said();
    for (const char* head : {"To buy", "Used up", "Saw, fence by fence", "Cut sheets", "Particleboard 16"})
        EXPECT_NE(words.find(head), std::string::npos) << head;
    whole.plan.stock = nullptr;
    EXPECT_EQ(said().find("Saw, fence by fence"), std::string::npos);
    EXPECT_TRUE(print::strip_pages(whole.job, whole.plan, print::Paper::a4, printing).empty());
}

} // namespace
} // namespace drawercast
