// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/boxes.h"

#include "language/spoken.h"
#include "print/registration.h"
#include "print/ruler.h"
#include "print/template_sheet.h"
#include "print/title_block.h"
#include "sheets/inking.h"
#include "sheets/room.h"
#include "sheets/signs.h"

#include <algorithm>

namespace drawercast::print {

using sheets::Align;
using theme::Face;
using theme::LineRole;

namespace {

constexpr double title_mm = 25;       ///< height of the title block
constexpr double frame_row_mm = 13.5; ///< of which the frame in large letters
constexpr double strip_mm = 10;       ///< left of and below the window, for rulers

/// True where some outline passes through a part of the drawing, where a sign to drill or set by lies in it,
/// or the middle of what has a label; other words and dimensions alone don't count.
class Contents {
  public:
    explicit Contents(const std::vector<sheets::Mark>& marks) {
        for (const auto& mark : marks) {
            if (mark.layer == sheets::Layer::live) continue;
            if (const auto* path = std::get_if<sheets::PathMark>(&mark.kind); path && path->line)
                rings_.push_back({sheets::bounds(path->path), sheets::chords(path->path, 0.01)});
            if (const auto* sign = std::get_if<sheets::SignMark>(&mark.kind)) points_.push_back(sign->at.mm);
            if (const auto* label = std::get_if<sheets::LabelMark>(&mark.kind))
                points_.push_back(sheets::bounds(label->within).center());
        }
    }
    bool operator()(const Box& part) const {
        for (const auto& [box, rings] : rings_)
            if (shape::near(box, part) && sheets::crosses(rings, part)) return true;
        return std::any_of(points_.begin(), points_.end(), [&](Vec p) {
            return p.x >= part.min.x && p.x <= part.max.x && p.y >= part.min.y && p.y <= part.max.y;
        });
    }

  private:
    std::vector<std::pair<Box, std::vector<shape::Ring>>> rings_;
    std::vector<Vec> points_;
};

void write_left_strip(sheets::Inks& inks, const Box& window, bool mirrored, const theme::Theme& theme) {
    const double x = safe_margin_mm + ruler_half_mm + 0.5;
    write_ruler(inks, px(Vec{x, window.max.y}), RulerWay::upright, theme);
    const Vec arrow = px(Vec{x, window.max.y - ruler_length_mm - 9});
    inks.push_back(sheets::Stroke{sheets::front_arrow(arrow, 40),
                                  theme::pen_of(LineRole::thin, theme, theme::Medium::paper, 1)});
    inks.push_back(sheets::Fill{sheets::frame_sign(arrow - Vec{0, 7}, 14, mirrored), theme.ink});
    sheets::write_turned(inks, language::tr("FRONT"), {arrow + Vec{4, -24}, Align::left, 90},
                         {Face::drafting, 13, 1.16}, theme.ink);
}

void write_lower_strip(sheets::Inks& inks, const Box& window, double right_mm, const theme::Theme& theme) {
    const double y = window.max.y + strip_mm / 2 + 0.3;
    write_ruler(inks, px(Vec{window.min.x, y}), RulerWay::level, theme);
    const double left = window.min.x + ruler_length_mm + 2;
    const theme::Lettering bold{Face::bold, 10.5}, plain{Face::regular, 9.5};
    const double width = px(right_mm - left);
    const Vec at = px(Vec{left, y});
    sheets::write(inks, sheets::elided(language::tr("Print at 100 %, not scaled to the page."), bold, width),
                  at + Vec{0, -2}, bold, theme.ink);
    sheets::write(
        inks, sheets::elided(language::tr("Hold a ruler to both scale bars before you cut."), plain, width),
        at + Vec{0, 11}, plain, theme.ink2);
}

void write_title(sheets::Inks& inks, const Box& block_mm, const PageOf& of, const Tile& tile) {
    const Box block = px(block_mm);
    const double middle = px(block_mm.min.y + frame_row_mm);
    const Box frame_cell{block.min, {block.min.x + px(84), middle}};
    write_frame(inks, frame_cell, of.drawing.mirrored, 7, of.theme);
    const QString tile_name = QString::fromStdString(tile.name());
    const auto name = [&](sheets::Inks& into, const Box& box) {
        const theme::Lettering face{Face::drafting, 22};
        sheets::write(into, sheets::elided(of.drawing.words.sheet, face, box.width()),
                      {box.min.x + 3, box.center().y + 8}, face, of.theme.ink);
    };
    const auto which = [&](sheets::Inks& into, const Box& box) {
        const theme::Lettering large{Face::bold, 27}, small{Face::regular, 13};
        sheets::write(into, tile_name, {box.min.x, box.center().y + 10}, large, of.theme.ink);
        const double x = box.min.x + sheets::written_width(tile_name, large) + 6;
        sheets::write(into, language::tr("of ") + QString::fromStdString(of.laid.tiling.extent()),
                      {x, box.center().y + 10}, small, of.theme.ink2);
    };
    TitleCell name_cell, which_cell;
    name_cell.share = 1.25;
    name_cell.draw = name;
    which_cell.draw = which;
    write_cells(inks, {{frame_cell.max.x, block.min.y}, {block.max.x, middle}}, {name_cell, which_cell},
                of.theme);
    rule(inks, {block.min.x, middle}, {block.max.x, middle}, LineRole::thin, of.theme);
    rule(inks, {frame_cell.max.x, block.min.y}, {frame_cell.max.x, middle}, LineRole::thin, of.theme);
    const std::vector<TitleCell> cells{
        {language::tr("lay on"), of.drawing.words.lay_on, 58, true, {}},
        {language::tr("job"), {of.drawing.words.job, of.drawing.words.revision}, 38, false, {}},
        {language::tr("drawer"), {of.drawing.words.drawer}, 31, false, {}},
        {language::tr("scale"), {"1 : 1"}, 12.5, false, {}},
        {language::tr("printed"),
         of.printing.corrected.isEmpty()
             ? std::vector{of.printing.at}
             : std::vector{of.printing.at, language::tr("corrected for ") + of.printing.corrected},
         31,
         false,
         {}},
        {language::tr("page"), {language::tr("%1 of %2").arg(of.number).arg(of.total)}, 20, false, {}}};
    write_cells(inks, {{block.min.x, middle}, block.max}, cells, of.theme);
    write_outline(inks, block, of.theme);
}

} // namespace

Box tile_window_mm(Paper paper, Orientation orientation) {
    const Vec size = size_mm(paper, orientation);
    return {{safe_margin_mm + strip_mm, safe_margin_mm},
            {size.x - safe_margin_mm, size.y - safe_margin_mm - title_mm - strip_mm - 1}};
}

LaidOut laid_out(const Template& drawing, Tiling tiling, const theme::Theme& theme) {
    // words make way for the joints, so that none is cut in two if there is room beside
    std::vector<sheets::Mark> marks = drawing.marks;
    const auto strips = joint_strips(tiling, drawing.area_mm);
    for (auto& mark : marks)
        if (auto* label = std::get_if<sheets::LabelMark>(&mark.kind))
            for (const Box& strip : strips) label->uncovered.push_back(sheets::path_of(strip));
    sheets::Inks inks = sheets::ink_of(marks, sheets::View::true_size({}), theme);
    std::vector<RingMark> rings = ring_marks(tiling, inks, drawing.words.units);
    return {std::move(tiling), std::move(inks), std::move(rings)};
}

Tiling tiling_of(const Template& drawing, Paper paper, Orientation orientation) {
    const Contents contents(drawing.marks);
    const Box window = tile_window_mm(paper, orientation);
    return tiled(drawing.area_mm, {window.width(), window.height()}, orientation,
                 [&](const Box& part) { return contents(part); });
}

Page tile_page(const PageOf& of, const Tile& tile) {
    Page page{size_mm(of.paper, of.laid.tiling.orientation),
              {},
              of.drawing.words.sheet + QLatin1Char(' ') + QString::fromStdString(tile.name()),
              of.drawing.words.drawer};
    sheets::Inks& inks = page.inks;
    const Box window = tile_window_mm(of.paper, of.laid.tiling.orientation);
    const Box shown = px(window);
    // from the drawing's (0, 0) at the origin to its tile in the window; y of the page points down
    const Vec by = shown.min + px(Vec{-tile.area_mm.min.x, tile.area_mm.max.y});
    inks.push_back(sheets::Clip{shown});
    for (const auto& ink : of.laid.inks) {
        const Box reach = sheets::reach_of(ink);
        if (reach.empty() || !shape::near(shape::moved(reach, by), shown)) continue;
        sheets::Inks one = sheets::moved({ink}, 1, by);
        inks.push_back(std::move(one.front()));
    }
    write_joints(inks, of.laid.tiling, tile, of.laid.rings, by, of.theme);
    inks.push_back(sheets::Clip{});
    frame(inks, shown, LineRole::soft, of.theme);
    write_left_strip(inks, window, of.drawing.mirrored, of.theme);
    write_lower_strip(inks, window, page.size_mm.x - safe_margin_mm, of.theme);
    const Box block{{safe_margin_mm, page.size_mm.y - safe_margin_mm - title_mm},
                    {page.size_mm.x - safe_margin_mm, page.size_mm.y - safe_margin_mm}};
    write_title(inks, block, of, tile);
    return page;
}

} // namespace drawercast::print
