// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/object_sheets.h"

#include "base/units.h"

#include "language/say.h"
#include "language/spoken.h"
#include "print/ruler.h"
#include "print/stamp.h"
#include "print/title_block.h"
#include "sheets/path.h"
#include "sheets/table.h"
#include "sheets/text.h"

#include <algorithm>
#include <cmath>

namespace drawercast::print {

using sheets::Align;
using theme::Face;
using theme::LineRole;

namespace {

constexpr double ruler_strip_mm = 10, foot_mm = 8, head_mm = 12;
constexpr double around_mm = 5, words_mm = 15, least_cell_mm = 52;

using language::tr;
using sheets::text;

/// An object's outlines about the lower left corner of their box, y up, mm.
struct Figure {
    const job::Object* object = nullptr;
    std::vector<shape::Contour> outlines;
    Vec size;
};

std::vector<shape::Contour> outlines_of(const job::Level& level) {
    std::vector<shape::Contour> outlines;
    const auto add = [&](const shape::Given& given, const shape::Pose& pose) {
        if (const auto contour = shape::contour_of(given)) outlines.push_back(shape::placed(*contour, pose));
    };
    if (const auto* lying = std::get_if<job::Lying>(&level.form)) {
        double length = 0;
        for (const auto& one : lying->cylinders) length += one.length_mm;
        double x = -length / 2;
        for (const auto& one : lying->cylinders) {
            const Vec middle = shape::placed({x + one.length_mm / 2, 0}, level.pose);
            add(shape::Rectangle{one.length_mm, one.diameter_mm, 0}, {middle, level.pose.turn_deg});
            x += one.length_mm;
        }
        return outlines;
    }
    const auto* sunk = std::get_if<job::Sunk>(&level.form);
    add(sunk != nullptr ? sunk->outline : std::get<job::Through>(level.form).outline, level.pose);
    return outlines;
}

Figure figure_of(const job::Object& object, double turn_deg) {
    Figure figure{&object, {}, {}};
    Box box;
    for (const auto& level : object.levels)
        for (const auto& outline : outlines_of(level)) {
            figure.outlines.push_back(shape::placed(outline, {{0, 0}, turn_deg}));
            box.add(shape::bounds(figure.outlines.back()));
        }
    if (box.empty()) return figure;
    for (auto& outline : figure.outlines) outline = shape::placed(outline, {box.min * -1, 0});
    figure.size = {box.width(), box.height()};
    return figure;
}

Vec cell_of(const Figure& figure) {
    return {std::max(figure.size.x, least_cell_mm) + 2 * around_mm, figure.size.y + 2 * around_mm + words_mm};
}

/// The sheet's page with its rulers, heading and foot; `room` is what is left, mm, y down.
class BenchPages {
  public:
    BenchPages(Paper paper, const Printing& printing, QString foot)
        : size_(size_mm(paper, Orientation::portrait)), printing_(printing), foot_(std::move(foot)),
          theme_(theme::printed_theme()) {}

    Box room() const {
        return {{safe_margin_mm + ruler_strip_mm, safe_margin_mm + head_mm},
                {size_.x - safe_margin_mm, size_.y - safe_margin_mm - foot_mm - ruler_strip_mm}};
    }
    sheets::Inks& add(const QString& heading, const QString& what) {
        pages_.push_back({size_, {}, what});
        auto& inks = pages_.back().inks;
        sheets::write(inks, heading, px(Vec{safe_margin_mm, safe_margin_mm + 5}), {Face::bold, 14},
                      theme_.ink);
        sheets::write(inks, tr("Print at 100 %, not scaled to the page; hold a ruler to both scale bars."),
                      px(Vec{safe_margin_mm, safe_margin_mm + 10}), {Face::regular, 11}, theme_.ink2);
        const double foot = size_.y - safe_margin_mm - foot_mm;
        write_ruler(inks, px(Vec{safe_margin_mm + ruler_strip_mm, foot - ruler_half_mm}), RulerWay::level,
                    theme_);
        write_ruler(inks, px(Vec{safe_margin_mm + ruler_half_mm, foot - ruler_strip_mm}), RulerWay::upright,
                    theme_);
        return inks;
    }
    const theme::Theme& theme() const { return theme_; }
    std::vector<Page> take() {
        for (std::size_t i = 0; i < pages_.size(); ++i)
            sheets::write(
                pages_[i].inks,
                tr("%1  ·  %2  ·  page %3 of %4").arg(foot_, printing_.at).arg(i + 1).arg(pages_.size()),
                px(Vec{safe_margin_mm, size_.y - safe_margin_mm - 1}), {Face::regular, 10}, theme_.ink2);
        return std::move(pages_);
    }

  private:
    Vec size_;
    const Printing& printing_;
    QString foot_;
    theme::Theme theme_;
    std::vector<Page> pages_;
};

void write_tick(sheets::Inks& inks, Vec at_mm, const QString& words, const theme::Theme& theme) {
    constexpr double side_mm = 3.5;
    frame(inks, px(Box{at_mm, at_mm + Vec{side_mm, side_mm}}), LineRole::pocket_edge, theme);
    sheets::write(inks, words, px(at_mm + Vec{side_mm + 1.5, side_mm - 0.5}), {Face::regular, 11}, theme.ink);
}

/// `corner`: the cell's upper left, mm.
void write_figure(sheets::Inks& inks, const Figure& figure, Vec corner, double wide_mm, const QString& sizes,
                  const theme::Theme& theme) {
    const double bottom = corner.y + around_mm + figure.size.y;
    const auto to_page = [&](Vec p) { return px(Vec{corner.x + around_mm + p.x, bottom - p.y}); };
    const auto pen = theme::pen_of(LineRole::trace, theme, theme::Medium::paper, 1);
    for (const auto& outline : figure.outlines) {
        shape::Ring ring = shape::traced(outline, 0.01);
        for (Vec& p : ring) p = to_page(p);
        inks.push_back(sheets::Stroke{sheets::path_of(ring), pen});
    }
    const double left = corner.x + around_mm, width = px(wide_mm - 2 * around_mm);
    const theme::Lettering name{Face::bold, 12}, small{Face::regular, 11};
    sheets::write(inks, sheets::elided(text(figure.object->name), name, width), px(Vec{left, bottom + 6}),
                  name, theme.ink);
    sheets::write(inks, sheets::elided(sizes, small, width), px(Vec{left, bottom + 10.5}), small, theme.ink2);
    write_tick(inks, {left, bottom + 12.5}, tr("laid on, fits"), theme);
}

QString sizes_of(const Figure& figure, job::DisplayUnits units) {
    const auto said = [units](double mm) { return language::say_length_bare(mm, units); };
    return tr("%1 × %2, %3 high")
        .arg(said(figure.size.x), said(figure.size.y), said(figure.object->height_mm));
}

} // namespace

std::vector<Page> object_sheets(const job::Job& job, Paper paper, const Printing& printing) {
    BenchPages pages(paper, printing, tr("%1, %2").arg(text(job.title), stamp(job)));
    const Box room = pages.room();
    sheets::Inks* inks = nullptr;
    Vec at = room.min;
    double row_mm = 0;
    QStringList too_large;
    for (const auto& object : job.objects) {
        Figure figure = figure_of(*object, 0);
        const auto fits = [&] {
            return cell_of(figure).x <= room.width() && cell_of(figure).y <= room.height();
        };
        if (!fits()) figure = figure_of(*object, 90);
        if (figure.outlines.empty()) continue;
        if (!fits()) {
            too_large << text(object->name);
            continue;
        }
        const Vec cell = cell_of(figure);
        if (at.x + cell.x > room.max.x) at = {room.min.x, at.y + row_mm}, row_mm = 0;
        if (inks == nullptr || at.y + cell.y > room.max.y) {
            inks = &pages.add(tr("Objects at true size"), tr("Object sheet"));
            at = room.min;
            row_mm = 0;
        }
        write_figure(*inks, figure, at, cell.x, sizes_of(figure, job.display_units), pages.theme());
        at.x += cell.x;
        row_mm = std::max(row_mm, cell.y);
    }
    if (too_large.isEmpty()) return pages.take();
    auto& last = pages.add(tr("Larger than this paper"), tr("Object sheet"));
    double y = room.min.y + 6;
    for (const QString& name : too_large) {
        sheets::write(last, name, px(Vec{room.min.x, y}), {Face::regular, 12}, pages.theme().ink);
        y += 6;
    }
    return pages.take();
}

std::vector<Page> measuring_sheet(job::DisplayUnits units, Paper paper, const Printing& printing) {
    BenchPages pages(paper, printing, printing.program);
    const Box room = pages.room();
    auto& inks = pages.add(tr("Form to write measures on"), tr("Form to write measures on"));
    const bool metric = units == job::DisplayUnits::mm;
    const struct {
        QString head;
        double share;
    } columns[] = {{tr("Object"), 3},
                   {tr("Length"), 1.2},
                   {tr("Width"), 1.2},
                   {tr("Height"), 1.2},
                   {metric ? tr("Mass (g)") : tr("Mass (lb)"), 1.3},
                   {tr("How many"), 1.2},
                   {tr("Note"), 3}};
    constexpr int rows = 12;
    constexpr double row_mm = 8.5;
    double shares = 0;
    for (const auto& column : columns) shares += column.share;
    const double bottom = room.min.y + (rows + 1) * row_mm;
    double x = room.min.x;
    for (const auto& column : columns) {
        sheets::write(inks, column.head, px(Vec{x + 1, room.min.y + 6}), {Face::bold, 11}, pages.theme().ink);
        rule(inks, px(Vec{x, room.min.y}), px(Vec{x, bottom}), LineRole::thin, pages.theme());
        x += room.width() * column.share / shares;
    }
    rule(inks, px(Vec{room.max.x, room.min.y}), px(Vec{room.max.x, bottom}), LineRole::thin, pages.theme());
    for (int i = 0; i <= rows + 1; ++i)
        rule(inks, px(Vec{room.min.x, room.min.y + i * row_mm}), px(Vec{room.max.x, room.min.y + i * row_mm}),
             LineRole::thin, pages.theme());
    const double step = metric ? 5 : units::mm_per_inch / 4;
    const double top = bottom + 9;
    const double wide = std::floor(room.width() / step) * step;
    const double high = std::floor((room.max.y - top) / step) * step;
    sheets::write(inks,
                  metric ? tr("Trace an outline here: squares of 5 mm")
                         : tr("Trace an outline here: squares of 1/4 in"),
                  px(Vec{room.min.x, top - 2.5}), {Face::regular, 11}, pages.theme().ink2);
    for (int i = 0; i * step <= wide + 1e-9; ++i)
        rule(inks, px(Vec{room.min.x + i * step, top}), px(Vec{room.min.x + i * step, top + high}),
             LineRole::soft, pages.theme());
    for (int i = 0; i * step <= high + 1e-9; ++i)
        rule(inks, px(Vec{room.min.x, top + i * step}), px(Vec{room.min.x + wide, top + i * step}),
             LineRole::soft, pages.theme());
    return pages.take();
}

} // namespace drawercast::print
