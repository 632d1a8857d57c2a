// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/store.h"
#include "plan/stock_stage.h"

#include "print/label_pages.h"
#include "print/strip_pages.h"
#include "sheets/box_and_cuts.h"
#include "sheets/inking.h"
#include "sheets/wall_strip.h"
#include "summary/summary.h"

#include <gtest/gtest.h>

#include <set>

namespace drawercast {
namespace {

struct Whole {
    job::Job job;
    plan::Plan plan;
};

/// The demo drawers with what to cut and buy.
Whole demo() {
    const auto job = job::load_job(DRAWERCAST_SOURCE_DIR "/resources/demo/field-service.drawercast.json");
    EXPECT_TRUE(job);
    Whole whole{*job, plan::compute(*job)};
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

TEST(Cuts, every_cut_line_lies_inside_its_sheet) {
    const Whole whole = demo();
    const auto sheet = sheets::cut_sheet(whole.job, *whole.plan.stock, 0, 0, 0);
    const auto area = sheet.area.grown(1e-6);
    int paths = 0;
    for (const auto& mark : sheet.marks)
        if (const auto* path = std::get_if<sheets::PathMark>(&mark.kind)) {
            const auto box = sheets::bounds(path->path);
            EXPECT_TRUE(box.min.x >= area.min.x && box.min.y >= area.min.y && box.max.x <= area.max.x &&
                        box.max.y <= area.max.y);
            ++paths;
        }
    EXPECT_GT(paths, 50);
}

TEST(Cuts, a_wall_strip_shows_its_screws_at_true_size) {
    const Whole whole = demo();
    const auto& drawer = whole.plan.stock->drawers.front();
    const auto sheet =
        sheets::wall_strip(whole.job, drawer.box.walls[0], 16, sheets::foot_holes_mm(drawer.box.walls[0]));
    std::multiset<double> at;
    for (const auto& mark : sheet.marks)
        if (const auto* sign = std::get_if<sheets::SignMark>(&mark.kind)) at.insert(sign->at.mm.x);
    ASSERT_EQ(static_cast<int>(at.size()), drawer.box.walls[0].foot_screws);
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
        return sheets::top_holes_mm(wall, design, inside, corner);
    };
    using Holes = std::vector<double>;
    EXPECT_EQ(holes(stock::Side::front, job::BoxCorner::lapped), (Holes{46, 116}));
    EXPECT_EQ(holes(stock::Side::back, job::BoxCorner::lapped), (Holes{46}));
    EXPECT_EQ(holes(stock::Side::left, job::BoxCorner::lapped), (Holes{50}));
    EXPECT_EQ(holes(stock::Side::right, job::BoxCorner::lapped), (Holes{60}));
    EXPECT_EQ(holes(stock::Side::back, job::BoxCorner::pinwheel), (Holes{30}));
    EXPECT_EQ(holes(stock::Side::right, job::BoxCorner::pinwheel), (Holes{76}));
    design.closure.kind = job::ClosureKind::clamp;
    EXPECT_TRUE(holes(stock::Side::front, job::BoxCorner::lapped).empty());
}

TEST(Cuts, every_cut_has_its_number_on_a_page) {
    const Whole whole = demo();
    const auto& cut = whole.plan.stock->cuts.boards.at(0);
    const auto sheet = sheets::cut_sheet(whole.job, *whole.plan.stock, 0, 0, 0);
    const auto view = sheets::View::reduced(4, {0, 2000});
    const theme::Theme theme = theme::printed_theme();
    std::multiset<std::string> words;
    for (const auto& ink : sheets::ink_of(sheet.marks, view, theme))
        if (const auto* text = std::get_if<sheets::Words>(&ink)) words.insert(text->text.toStdString());
    ASSERT_GT(cut.sheets.at(0).cuts.size(), 20u);
    for (std::size_t i = 1; i <= cut.sheets[0].cuts.size(); ++i)
        EXPECT_GE(words.count(std::to_string(i)), 1u) << i;
}

TEST(Cuts, every_body_has_its_label) {
    const Whole whole = demo();
    const std::string words =
        "\n" + all_words(print::label_pages(whole.job, whole.plan, print::Paper::a4, printing));
    for (const auto& drawer : whole.plan.stock->drawers)
        for (const auto& block : drawer.blocks)
            for (const auto& body : block.bodies)
                EXPECT_NE(words.find("\n" + body.label + "\n"), std::string::npos) << body.label;
}

TEST(Cuts, the_summary_says_what_to_cut_and_buy_only_once_it_is_known) {
    Whole whole = demo();
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
