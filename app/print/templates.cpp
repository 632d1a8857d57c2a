// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/templates.h"

#include "plan/say.h"

#include "print/label_pages.h"
#include "print/strip_pages.h"
#include "print/template_sheet.h"
#include "sheets/drawer_plan.h"
#include "sheets/pattern_board.h"

#include <iterator>
#include <utility>

namespace drawercast::print {

namespace {

/// What all templates of a drawer say.
TemplateWords words_of(const job::Job& job, const job::Drawer& drawer, const char* sheet) {
    TemplateWords words;
    words.sheet = QString::fromLatin1(sheet);
    words.job = job.title.empty() ? QStringLiteral("Untitled job") : QString::fromStdString(job.title);
    words.revision = QStringLiteral("rev. %1").arg(job.revision);
    words.drawer = QString::fromStdString(drawer.name.empty() ? drawer.id : drawer.name);
    words.units = job.display_units;
    return words;
}

Template board_template(const job::Job& job, const job::Drawer& drawer, const casting::PatternBoard& board) {
    TemplateWords words = words_of(job, drawer, "Pattern board");
    words.lay_on = {QStringLiteral("top face of the pattern board, print up;"),
                    QStringLiteral("the insert is cast FACE DOWN on it")};
    words.steps = {
        QStringLiteral("Lay it on the top face of the pattern board, printed side up: datum 0, 0 in the "
                       "front-left inner corner of the box, arrow F to the drawer’s front."),
        QStringLiteral("It is the mirror image of the drawer: the drawer’s RIGHT lies on the left. Do not "
                       "turn it over."),
        QStringLiteral("Prick the screw points (ringed crosses) through the paper and drill them; trace the "
                       "blocks. Outlines are sealed sizes, “h” is the sealed height."),
        QStringLiteral("Fix each block by its number; the dashed line is the edge of the clay.")};
    words.remark = QStringLiteral("Enlarged %1 times for shrinkage.")
                       .arg(QString::fromStdString(plan::fixed(board.enlargement, 4)));
    words.table = sheets::block_table(job, board);
    return template_of(sheets::pattern_board(job, board, sheets::Finish::lines_only), std::move(words));
}

Template check_template(const job::Job& job, const job::Drawer& drawer, const plan::DrawerPlan& plan) {
    TemplateWords words = words_of(job, drawer, "Drawer check");
    words.lay_on = {QStringLiteral("bottom of the drawer, print up;"),
                    QStringLiteral("the insert will lie FACE UP")};
    words.steps = {
        QStringLiteral("Lay it on the drawer’s bottom, printed side up, arrow F to the drawer’s front. The "
                       "outer line is the drawer, the dashed one the insert."),
        QStringLiteral("It must lie flat and reach every wall. Where it does not, measure the drawer again."),
        QStringLiteral("Set each object on its outline. Close the drawer: nothing may strike.")};
    return template_of(sheets::drawer_check(job, drawer, plan), std::move(words));
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
        if (wants(choice, TemplateKind::pattern_board))
            if (const auto board = plan::pattern_board(job, plan.drawers[i]))
                templates.push_back(board_template(job, drawer, *board));
        if (wants(choice, TemplateKind::drawer_check) && plan.drawers[i].insert)
            templates.push_back(check_template(job, drawer, plan.drawers[i]));
    }
    std::vector<LaidOut> laid;
    int total = 0;
    for (const Template& drawing : templates) {
        laid.push_back(laid_out(drawing, tiling_for(drawing, choice), theme));
        total += laid.back().tiling.printed() +
                 static_cast<int>(cover_pages(drawing, laid.back(), paper, 0, 0, printing, theme).size());
    }
    std::vector<Page> pages;
    for (std::size_t i = 0; i < templates.size(); ++i) {
        for (Page& page : cover_pages(templates[i], laid[i], paper, static_cast<int>(pages.size()) + 1, total,
                                      printing, theme))
            pages.push_back(std::move(page));
        for (const Tile& tile : laid[i].tiling.tiles)
            if (!tile.empty)
                pages.push_back(tile_page(templates[i], laid[i], tile, paper,
                                          static_cast<int>(pages.size()) + 1, total, printing, theme));
    }
    const auto add = [&](std::vector<Page> more, const QString& name) {
        for (Page& page : more) page.name = name;
        std::move(more.begin(), more.end(), std::back_inserter(pages));
    };
    if (wants(choice, TemplateKind::wall_strips))
        add(strip_pages(job, plan, paper, printing), QStringLiteral("Wall strips"));
    if (wants(choice, TemplateKind::labels))
        add(label_pages(job, plan, paper, printing), QStringLiteral("Labels"));
    return pages;
}

} // namespace drawercast::print
