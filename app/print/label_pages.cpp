// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/label_pages.h"

#include "plan/stock_stage.h"

#include "language/goods.h"
#include "language/say.h"
#include "language/spoken.h"
#include "print/stamp.h"
#include "print/title_block.h"
#include "sheets/length_words.h"
#include "sheets/part_words.h"
#include "sheets/signs.h"
#include "sheets/table.h"
#include "sheets/text.h"

#include <algorithm>

namespace drawercast::print {

using sheets::Align;
using theme::Face;
using theme::LineRole;

namespace {

constexpr int columns = 3;
constexpr double row_mm = 36, foot_mm = 8;

struct Label {
    QString number; ///< "7a"
    QString drawer;
    QString name;
    QString size;
    QString remark;
    bool on_board = true; ///< has a front and a top
};

using sheets::text;

class Labels {
  public:
    Labels(const job::Job& job, const plan::StockPlan& stock) : job_(job), stock_(stock) {}

    void add(const stock::DrawerStock& drawer) {
        for (const auto& block : drawer.blocks)
            for (const auto& body : block.bodies) add(drawer, block, body);
        for (const auto& filler : drawer.fillers)
            labels_.push_back({text(filler.label),
                               text(drawer.drawer),
                               language::tr("filler"),
                               sheets::sizes_words(job_, {filler.panel.length_mm, filler.panel.width_mm,
                                                          filler.stack.height_mm}),
                               {},
                               true});
        for (const auto& part : drawer.box.parts)
            if (plan::is_cut(stock_, part.label))
                labels_.push_back(
                    {sheets::part_name(part.label),
                     text(drawer.drawer),
                     {},
                     sheets::sizes_words(job_, {part.length_mm, part.width_mm, part.thickness_mm}),
                     language::goods_name(part.board),
                     true});
        for (const auto& part : drawer.box.stiffeners)
            labels_.push_back({sheets::part_name(part.label),
                               text(drawer.drawer),
                               {},
                               sheets::sizes_words(job_, {part.length_mm}),
                               language::goods_name(part.stock),
                               false});
    }
    std::vector<Label> take() { return std::move(labels_); }

  private:
    void add(const stock::DrawerStock& drawer, const stock::BlockByStock& block, const stock::Body& body) {
        QStringList remarks;
        if (body.stack.saw_off_mm > 0)
            remarks.append(language::tr("saw off %1").arg(said(body.stack.saw_off_mm)));
        for (const auto& other : block.bodies)
            if (body.rest != stock::Rest::on_board && other.of == body.other) {
                remarks.append(
                    (body.rest == stock::Rest::butts ? language::tr("butts ") : language::tr("stands on ")) +
                    text(other.label));
                break;
            }
        labels_.push_back({text(body.label), text(drawer.drawer), text(block.name),
                           sheets::sizes_words(job_, {body.panel.length_mm, body.panel.width_mm}) +
                               QStringLiteral("  h ") + said(body.height_mm),
                           remarks.join(QStringLiteral(", ")), true});
    }
    QString said(double mm) const { return language::say_length_bare(mm, job_.display_units); }

    const job::Job& job_;
    const plan::StockPlan& stock_;
    std::vector<Label> labels_;
};

void write_label(sheets::Inks& inks, const Box& box, const Label& label, const theme::Theme& theme) {
    frame(inks, box, LineRole::thin, theme);
    const double left = box.min.x + 10, width = box.width() - 20;
    const double mark = label.on_board ? 48 : 0;
    const bool letters = label.number.size() > 4;
    const theme::Lettering big{Face::bold, letters ? 16.0 : 28.0};
    sheets::write(inks, sheets::elided(label.number, big, width - mark), {left, box.min.y + 34}, big,
                  theme.ink);
    sheets::write(inks, label.drawer, {box.max.x - 10, box.min.y + 18}, {Face::regular, 10}, theme.ink2,
                  Align::right);
    const theme::Lettering name{Face::medium, 12};
    sheets::write(inks, sheets::elided(label.name, name, width - mark), {left, box.min.y + 56}, name,
                  theme.ink);
    const theme::Lettering size{Face::bold, 13};
    sheets::write(inks, sheets::elided(label.size, size, width - mark), {left, box.min.y + 78}, size,
                  theme.ink);
    const theme::Lettering small{Face::regular, 10.5};
    sheets::write(inks, sheets::elided(label.remark, small, width - mark), {left, box.min.y + 96}, small,
                  theme.ink2);
    sheets::write(inks, language::tr("this side UP"), {left, box.max.y - 9}, small, theme.ink2);
    if (!label.on_board) return;
    const double x = box.max.x - 32;
    inks.push_back(sheets::Stroke{sheets::front_arrow({x, box.max.y - 40}, 34),
                                  theme::pen_of(LineRole::thin, theme, theme::Medium::paper, 1)});
    sheets::write(inks, language::tr("FRONT"), {x, box.max.y - 8}, {Face::drafting, 12, 1.16}, theme.ink,
                  Align::center);
}

} // namespace

std::vector<Page> label_pages(const job::Job& job, const plan::Plan& plan, Paper paper,
                              const Printing& printing) {
    if (!plan.stock) return {};
    Labels made(job, *plan.stock);
    for (const auto& drawer : plan.stock->drawers) made.add(drawer);
    const auto labels = made.take();
    const theme::Theme theme = theme::printed_theme();
    const Vec size = size_mm(paper, Orientation::portrait);
    const Box room{{safe_margin_mm, safe_margin_mm},
                   {size.x - safe_margin_mm, size.y - safe_margin_mm - foot_mm}};
    const auto rows = static_cast<std::size_t>(room.height() / row_mm);
    const std::size_t on_page = rows * columns;
    std::vector<Page> pages;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const std::size_t at = i % on_page;
        if (at == 0) pages.push_back({size, {}});
        const double width = room.width() / columns;
        const Vec corner{room.min.x + static_cast<double>(at % columns) * width,
                         room.min.y + static_cast<double>(at / columns) * row_mm};
        write_label(pages.back().inks, px(Box{corner, corner + Vec{width, row_mm}}), labels[i], theme);
    }
    const QString of_job = stamp(job);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const QString foot = language::tr("Labels  ·  %1, %2  ·  %3  ·  page %4 of %5")
                                 .arg(text(job.title), of_job, printing.at, QString::number(i + 1),
                                      QString::number(pages.size()));
        sheets::write(pages[i].inks, foot, px(Vec{room.min.x, size.y - safe_margin_mm - 1}),
                      {Face::regular, 10}, theme.ink2);
    }
    return pages;
}

} // namespace drawercast::print
