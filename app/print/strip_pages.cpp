// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/strip_pages.h"

#include "mold/plate_judge.h"
#include "plan/stock_stage.h"

#include "language/say.h"
#include "language/spoken.h"
#include "print/ruler.h"
#include "print/stamp.h"
#include "print/title_block.h"
#include "sheets/box_and_cuts.h"
#include "sheets/inking.h"
#include "sheets/part_words.h"
#include "sheets/plate_marks.h"
#include "sheets/wall_strip.h"

#include <algorithm>
#include <cmath>

namespace drawercast::print {

using sheets::Align;
using theme::Face;
using theme::LineRole;

namespace {

constexpr double foot_mm = 22, words_mm = 9, figures_mm = 9;

/// Pages filled from the top, strip below strip.
class Strips {
  public:
    Strips(const job::Job& job, Paper paper)
        : job_(job), size_(size_mm(paper, Orientation::landscape)), theme_(theme::printed_theme()) {}

    /// One edge of a wall. `edge`: which, and what its holes are for.
    void add(const stock::Wall& wall, double thickness_mm, const QString& edge,
             const std::vector<double>& holes_mm, const std::vector<double>& ringed_mm = {}) {
        const auto sheet = sheets::wall_strip(job_, wall, thickness_mm, holes_mm, ringed_mm);
        const double length = 10 * std::floor((size_.x - 2 * safe_margin_mm) / 10);
        for (double from = 0; from < wall.length_mm; from += length)
            add_length(sheet, from, std::min(length, wall.length_mm - from), wall, edge, thickness_mm);
    }
    std::vector<Page> take() { return std::move(pages_); }

  private:
    void add_length(const sheets::Sheet<sheets::OnBench>& sheet, double from, double length,
                    const stock::Wall& wall, const QString& edge, double thickness_mm) {
        const double height = words_mm + thickness_mm + figures_mm;
        if (pages_.empty() || y_ + height > size_.y - safe_margin_mm - foot_mm) {
            pages_.push_back({size_, {}});
            y_ = safe_margin_mm;
        }
        sheets::Inks& inks = pages_.back().inks;
        const Vec origin{safe_margin_mm - from, y_ + words_mm + thickness_mm};
        constexpr double line_mm = 0.5; // the strip's own edges show whole
        const Box shown{{safe_margin_mm - line_mm, y_ + words_mm - line_mm},
                        {safe_margin_mm + length + line_mm, y_ + words_mm + thickness_mm + figures_mm}};
        inks.push_back(sheets::Clip{px(shown)});
        for (auto& ink : sheets::ink_of(sheet.marks, sheets::View::true_size(px(origin)), theme_))
            inks.push_back(std::move(ink));
        inks.push_back(sheets::Clip{});
        const auto say = [&](double mm) { return language::say_length_bare(mm, job_.display_units); };
        const bool side = wall.side == stock::Side::left || wall.side == stock::Side::right;
        QString words = language::tr("%1, %2: %3 long; figures from its %4 end")
                            .arg(sheets::part_words(wall.label), edge, say(wall.length_mm),
                                 side ? language::tr("front") : language::tr("left"));
        if (from > 0 || from + length < wall.length_mm)
            words += language::tr("; this piece %1 to %2, join at the dash-dot line")
                         .arg(say(from), say(from + length));
        sheets::write(inks, words, px(Vec{safe_margin_mm, y_ + 5.5}), {Face::bold, 11}, theme_.ink);
        for (const double joint : {from, from + length})
            if (joint > 0 && joint < wall.length_mm)
                rule(inks, px(Vec{safe_margin_mm + joint - from, shown.min.y}),
                     px(Vec{safe_margin_mm + joint - from, shown.max.y}), LineRole::center, theme_);
        y_ += height;
    }

    const job::Job& job_;
    Vec size_;
    theme::Theme theme_;
    std::vector<Page> pages_;
    double y_ = 0;
};

/// The edges of one drawer's walls, where screws go into them.
class Edges {
  public:
    Edges(const job::Job& job, const plan::DrawerPlan& answer, const stock::DrawerStock& made)
        : job_(job), answer_(answer), made_(made) {}

    void add_feet(Strips& strips) const {
        for (const auto& wall : made_.box.walls) {
            const auto ends =
                answer_.base ? holes(wall, answer_.base->answer.design).ends_mm : std::vector<double>();
            QString words = language::tr("foot edge");
            if (!ends.empty())
                words += language::tr(", pilot holes of %1 in rings for the bearers’ ends")
                             .arg(pilot(answer_.base->answer.design.end_closure));
            strips.add(wall, stock::wall_thickness_mm(made_.box), words, wall.foot_mm, ends);
        }
    }

    void add_tops(Strips& strips) const {
        if (!answer_.plate) return;
        const auto& design = answer_.plate->answer.design;
        const QString around =
            language::tr("top edge, pilot holes of %1 for the plate’s closures").arg(pilot(design.closure));
        const QString ends =
            language::tr(", of %1 in rings at the stiffeners").arg(pilot(design.end_closure));
        for (const auto& wall : made_.box.walls) {
            const auto at = holes(wall, design);
            if (at.around_mm.empty() && at.ends_mm.empty()) continue;
            strips.add(wall, stock::wall_thickness_mm(made_.box), at.ends_mm.empty() ? around : around + ends,
                       at.around_mm, at.ends_mm);
        }
    }

  private:
    sheets::WallHoles holes(const stock::Wall& wall, const mold::PlateDesign& design) const {
        return sheets::wall_holes(wall, design, sheets::box_inside(job_, answer_), job_.mold.corner);
    }
    QString pilot(const job::Closure& closure) const {
        const double mm = mold::holes_of(closure, job_.shop->drills_mm).pilot_mm;
        return mm > 0 ? language::say_length_bare(mm, job_.display_units) : QStringLiteral("?"); // drill-none
    }

    const job::Job& job_;
    const plan::DrawerPlan& answer_;
    const stock::DrawerStock& made_;
};

} // namespace

std::vector<Page> strip_pages(const job::Job& job, const plan::Plan& plan, Paper paper,
                              const Printing& printing) {
    if (!plan.stock) return {};
    Strips strips(job, paper);
    for (const auto& drawer : plan.stock->drawers) {
        const auto* answer = plan::find_drawer(plan, drawer.drawer);
        if (answer == nullptr || !answer->insert) continue;
        const Edges edges(job, *answer, drawer);
        edges.add_feet(strips);
        edges.add_tops(strips);
    }
    auto pages = strips.take();
    const theme::Theme theme = theme::printed_theme();
    const QString of_job = stamp(job);
    const QString how = printing.corrected.isEmpty()
                            ? printing.at
                            : language::tr("%1, corrected for %2").arg(printing.at, printing.corrected);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const Vec size = pages[i].size_mm;
        write_ruler(pages[i].inks, px(Vec{safe_margin_mm, size.y - safe_margin_mm - 12}), RulerWay::level,
                    theme);
        const QString foot = language::tr("Wall strips  ·  1 : 1, print without scaling and measure the "
                                          "scale  ·  %1, %2  ·  %3  ·  page %4 of %5")
                                 .arg(QString::fromStdString(job.title), of_job, how, QString::number(i + 1),
                                      QString::number(pages.size()));
        sheets::write(pages[i].inks, foot, px(Vec{safe_margin_mm, size.y - safe_margin_mm - 1}),
                      {Face::regular, 10}, theme.ink2);
    }
    return pages;
}

} // namespace drawercast::print
