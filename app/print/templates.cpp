// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/templates.h"

#include "job/shown_name.h"
#include "plan/stock_stage.h"

#include "language/say.h"
#include "language/spoken.h"
#include "print/label_pages.h"
#include "print/stamp.h"
#include "print/strip_pages.h"
#include "print/template_sheet.h"
#include "sheets/drawer_plan.h"
#include "sheets/drilling.h"
#include "sheets/pattern_board.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace drawercast::print {

namespace {

/// What all templates of a drawer say.
TemplateWords words_of(const job::Job& job, const job::Drawer& drawer, const char* sheet) {
    TemplateWords words;
    words.sheet = language::tr(sheet);
    words.job = job.title.empty() ? language::tr("Untitled job") : QString::fromStdString(job.title);
    words.revision = stamp(job);
    words.drawer = QString::fromStdString(job::shown_name(drawer));
    words.units = job.display_units;
    return words;
}

/// `mends`: of the drawer and of the job as a whole, as each of them can cost this cast.
Template board_template(const job::Job& job, const job::Drawer& drawer, const casting::PatternBoard& board,
                        int mends) {
    TemplateWords words = words_of(job, drawer, "Pattern board");
    if (mends > 0) words.warning = language::tr("%1 to mend in the checks: mend before you cut").arg(mends);
    words.lay_on = {language::tr("top face of the pattern board, print up;"),
                    language::tr("the insert is cast FACE DOWN on it")};
    words.steps = {
        language::tr("Lay it on the top face of the pattern board, printed side up: datum 0, 0 in the "
                     "front-left inner corner of the box, arrow F to the drawer’s front."),
        language::tr("It is the mirror image of the drawer: the drawer’s RIGHT lies on the left. Do not "
                     "turn it over."),
        language::tr("Prick the screw points (ringed crosses) through the paper and drill them; trace the "
                     "blocks. Outlines are sealed sizes, “h” is the sealed height."),
        language::tr("Fix each block by its number; the dashed line is the edge of the clay.")};
    words.remark =
        language::tr("Enlarged %1 times for shrinkage.").arg(language::fixed(board.enlargement, 4));
    words.table = sheets::block_table(job, board);
    words.table_name = language::tr("blocks");
    words.table_head = language::tr("Blocks, from the datum 0, 0 in the front-left inner corner of the box");
    return template_of(sheets::pattern_board(job, board, sheets::Finish::lines_only), std::move(words));
}

Template check_template(const job::Job& job, const job::Drawer& drawer, const plan::DrawerPlan& plan) {
    TemplateWords words = words_of(job, drawer, "Trial sheet");
    words.lay_on = {language::tr("bottom of the drawer, print up;"),
                    language::tr("the insert will lie FACE UP")};
    words.steps = {
        language::tr("Lay it on the drawer’s bottom, printed side up, arrow F to the drawer’s front. The "
                     "outer line is the drawer, the dashed one the insert."),
        language::tr("It must lie flat and reach every wall. Where it does not, measure the drawer again."),
        language::tr("Set each object on its outline. Close the drawer: nothing may strike.")};
    return template_of(sheets::drawer_check(job, drawer, plan), std::move(words));
}

Template plate_template(const job::Job& job, const job::Drawer& drawer, const plan::DrawerPlan& plan) {
    TemplateWords words = words_of(job, drawer, "Pressure plate");
    words.lay_on = {language::tr("TOP FACE of the pressure plate, print up;"),
                    language::tr("the other face lies on the foam")};
    words.steps = {
        language::tr("Lay it on the top face of the plate, printed side up, its outer line on the plate’s "
                     "edges, arrow F to the drawer’s front. It is mirrored, as the board below is."),
        language::tr("Closures are numbered as they are tightened, and loosened in reverse. Drill them "
                     "through the plate; with the plate on the box, drill the pilots into the box walls."),
        language::tr("Drill the vents (double rings, V and a number) right through. No vent where a "
                     "stiffener stands."),
        language::tr("Lay the stiffeners on their outlines; at their ends the closure goes through both: "
                     "drill them together, each on the piece’s center line.")};
    const auto& design = plan.plate->answer.design;
    const auto is_rod = [](const job::Closure& one) { return one.kind == job::ClosureKind::rod; };
    if (is_rod(design.closure) || is_rod(design.end_closure))
        words.steps.push_back(language::tr(
            "Rods go right through: with the plate on the box, drill on through box wall and base. Under the "
            "base each ends in a nut on a wide washer, or on a piece of lumber like the one above."));
    words.table = sheets::drilling_table(job, plan);
    words.table_name = language::tr("holes");
    words.table_head = language::tr("Holes, from the datum 0, 0 over the front-left inner corner of the box");
    return template_of(sheets::plate_drilling(job, plan), std::move(words));
}

Template base_template(const job::Job& job, const job::Drawer& drawer, const plan::DrawerPlan& plan,
                       const casting::PatternBoard& board, const stock::DrawerStock& stock) {
    TemplateWords words = words_of(job, drawer, "Base");
    words.lay_on = {language::tr("TOP FACE of the base, print up;"),
                    language::tr("the insert is cast FACE DOWN on it")};
    words.steps = {
        language::tr("The base is the pattern board with what carries the walls. Lay it on its top face, "
                     "printed side up, its outer line on the edges, arrow F to the drawer’s front."),
        language::tr("Drill every ringed cross right through; screws go in from below. Block screws carry "
                     "the block’s number; those outside the inner line hold the walls."),
        language::tr("Blocks are drawn dashed: trace them from the pattern board’s template.")};
    if (plan.base && plan.base->answer.design.stiffener)
        words.steps.push_back(language::tr(
            "Bearers are drawn dashed too: sink every screw’s head, then put them under the base; they stand "
            "on "
            "the bench. Foam pushes the base down as hard as the plate up, and a bench holds only the mold’s "
            "weight."));
    words.table = sheets::base_table(job, plan, board, stock);
    words.table_name = language::tr("holes");
    words.table_head = language::tr("Holes, from the datum 0, 0 in the front-left inner corner of the box");
    return template_of(sheets::base_drilling(job, plan, board, stock), std::move(words));
}

Tiling tiling_for(const Template& drawing, const TemplateChoice& choice) {
    if (choice.orientation) return tiling_of(drawing, choice.paper, *choice.orientation);
    return fewest_tiles(tiling_of(drawing, choice.paper, Orientation::portrait),
                        tiling_of(drawing, choice.paper, Orientation::landscape));
}

bool wants(const TemplateChoice& choice, TemplateKind kind) { return !choice.only || choice.only == kind; }

} // namespace

std::vector<Page> template_pages(const job::Job& job, const plan::Plan& plan, const TemplateChoice& choice,
                                 const Printing& printing) {
    const Paper paper = choice.paper;
    const theme::Theme theme = theme::printed_theme();
    std::vector<Template> templates;
    for (std::size_t i = 0; i < job.drawers.size() && i < plan.drawers.size(); ++i) {
        const job::Drawer& drawer = *job.drawers[i];
        const plan::DrawerPlan& answer = plan.drawers[i];
        const bool wants_board = wants(choice, TemplateKind::pattern_board),
                   wants_base = wants(choice, TemplateKind::base_drilling);
        const auto board = wants_board || wants_base ? plan::pattern_board(job, answer) : std::nullopt;
        if (wants_board && board)
            templates.push_back(board_template(
                job, drawer, *board, plan::count_to_mend(answer.checks) + plan::count_to_mend(plan.checks)));
        if (wants(choice, TemplateKind::drawer_check) && answer.insert)
            templates.push_back(check_template(job, drawer, answer));
        if (wants(choice, TemplateKind::pressure_plate) && answer.insert && answer.plate)
            templates.push_back(plate_template(job, drawer, answer));
        if (const auto* stock = plan::find_stock(plan.stock.get(), drawer.id); wants_base && board && stock)
            templates.push_back(base_template(job, drawer, answer, *board, *stock));
    }
    std::vector<LaidOut> laid;
    int total = 0;
    for (const Template& drawing : templates) {
        laid.push_back(laid_out(drawing, tiling_for(drawing, choice), theme));
        total += laid.back().tiling.printed() +
                 static_cast<int>(cover_pages({drawing, laid.back(), paper, 0, 0, printing, theme}).size());
    }
    std::vector<Page> pages;
    for (std::size_t i = 0; i < templates.size(); ++i) {
        const auto next = [&] {
            return PageOf{templates[i], laid[i],  paper, static_cast<int>(pages.size()) + 1,
                          total,        printing, theme};
        };
        for (Page& page : cover_pages(next())) pages.push_back(std::move(page));
        for (const Tile& tile : laid[i].tiling.tiles)
            if (!tile.empty) pages.push_back(tile_page(next(), tile));
    }
    const auto add = [&](std::vector<Page> more, const QString& name) {
        for (Page& page : more) page.name = name;
        std::move(more.begin(), more.end(), std::back_inserter(pages));
    };
    if (wants(choice, TemplateKind::wall_strips))
        add(strip_pages(job, plan, paper, printing), language::tr("Wall strips"));
    if (wants(choice, TemplateKind::labels))
        add(label_pages(job, plan, paper, printing), language::tr("Labels"));
    return pages;
}

} // namespace drawercast::print
