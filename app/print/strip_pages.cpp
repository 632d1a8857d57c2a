// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/strip_pages.h"

#include "plan/say.h"
#include "plan/stock_stage.h"
#include "stock/screws.h"

#include "print/ruler.h"
#include "print/title_block.h"
#include "sheets/box_and_cuts.h"
#include "sheets/inking.h"

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

    void add(const stock::Wall& wall, double thickness_mm) {
        const auto sheet = sheets::wall_strip(job_, wall, thickness_mm);
        const double length = 10 * std::floor((size_.x - 2 * safe_margin_mm) / 10);
        for (double from = 0; from < wall.length_mm; from += length)
            add_length(sheet, from, std::min(length, wall.length_mm - from), wall, thickness_mm);
    }
    std::vector<Page> take() { return std::move(pages_); }

  private:
    void add_length(const sheets::Sheet<sheets::OnBench>& sheet, double from, double length,
                    const stock::Wall& wall, double thickness_mm) {
        const double height = words_mm + thickness_mm + figures_mm;
        if (pages_.empty() || y_ + height > size_.y - safe_margin_mm - foot_mm) {
            pages_.push_back({size_, {}});
            y_ = safe_margin_mm;
        }
        sheets::Inks& inks = pages_.back().inks;
        const Vec origin{safe_margin_mm - from, y_ + words_mm + thickness_mm};
        const Box shown{{safe_margin_mm, y_ + words_mm - 0.5},
                        {safe_margin_mm + length, y_ + words_mm + thickness_mm + figures_mm}};
        inks.push_back(sheets::Clip{px(shown)});
        for (auto& ink : sheets::ink_of(sheet.marks, sheets::View::true_size(px(origin)), theme_))
            inks.push_back(std::move(ink));
        inks.push_back(sheets::Clip{});
        const auto say = [&](double mm) {
            return QString::fromStdString(plan::say_length_bare(mm, job_.display_units));
        };
        QString words = QString::fromStdString(wall.label) + QStringLiteral(", foot edge: ") +
                        say(wall.length_mm) + QStringLiteral(" long; figures from its left end");
        if (from > 0 || from + length < wall.length_mm)
            words += QStringLiteral("; this piece %1 to %2, join at the dash-dot line")
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

double thickness_of(const stock::DrawerStock& drawer) {
    for (const auto& part : drawer.box.parts)
        if (part.role == stock::Role::wall) return part.thickness_mm;
    return 0;
}

} // namespace

std::vector<Page> strip_pages(const job::Job& job, const plan::Plan& plan, Paper paper,
                              const Printing& printing) {
    if (!plan.stock) return {};
    Strips strips(job, paper);
    for (const auto& drawer : plan.stock->drawers)
        for (const auto& wall : drawer.box.walls) strips.add(wall, thickness_of(drawer));
    auto pages = strips.take();
    const theme::Theme theme = theme::printed_theme();
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const Vec size = pages[i].size_mm;
        write_ruler(pages[i].inks, px(Vec{safe_margin_mm, size.y - safe_margin_mm - 12}), RulerWay::level,
                    theme);
        const QString foot =
            QStringLiteral("Wall strips  ·  1 : 1, print without scaling and measure the "
                           "ruler  ·  %1, rev. %2  ·  %3  ·  page %4 of %5")
                .arg(QString::fromStdString(job.title))
                .arg(job.revision)
                .arg(printing.corrected.isEmpty()
                         ? printing.at
                         : QStringLiteral("%1, corrected for %2").arg(printing.at, printing.corrected))
                .arg(i + 1)
                .arg(pages.size());
        sheets::write(pages[i].inks, foot, px(Vec{safe_margin_mm, size.y - safe_margin_mm - 1}),
                      {Face::regular, 10}, theme.ink2);
    }
    return pages;
}

} // namespace drawercast::print
