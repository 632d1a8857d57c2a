// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/build_up.h"

#include "plan/plate_parts.h"
#include "plan/stock_stage.h"

#include "language/spoken.h"
#include "sheets/ink.h"

#include <algorithm>
#include <utility>

namespace drawercast::sheets {

using buildup::Face;
using buildup::Part;
using theme::LineRole;
using theme::WashRole;

namespace {

theme::Wash wash_of(const buildup::Painted& face) {
    if (face.part == Part::foam)
        return face.face == Face::top ? theme::Wash{WashRole::face} : theme::Wash{WashRole::depth, 0.15};
    if (face.part == Part::closure) return {WashRole::wall};
    if (face.part == Part::clay) return {WashRole::ochre_soft};
    return {WashRole::wood};
}

std::optional<Hatch> hatch_of(const buildup::Painted& face) {
    if (face.face != Face::cut) return std::nullopt;
    switch (face.part) {
    case Part::foam:
        return Hatch::wall;
    case Part::plate:
        return Hatch::block_other;
    case Part::filler:
        return Hatch::filler;
    case Part::stiffener:
        return Hatch::notch;
    default:
        return Hatch::block;
    }
}

Path path_of_rings(const std::vector<shape::Ring>& rings) {
    Path path;
    for (const auto& ring : rings) path = joined(std::move(path), polygon(ring));
    return path;
}

LineRole line_of(Part part) {
    if (part == Part::clay) return LineRole::clay;
    return part == Part::block || part == Part::closure ? LineRole::thin : LineRole::pocket_edge;
}

void put_face(Drafter<InPicture>& pen, const buildup::Painted& face) {
    const Path area = path_of_rings(face.area);
    pen.put(PathMark{area, std::nullopt, wash_of(face)});
    if (const auto hatch = hatch_of(face)) pen.put(HatchMark{area, *hatch});
    Path edges;
    for (const auto& [from, to] : face.edges) edges = joined(std::move(edges), line(from, to));
    if (!edges.empty()) pen.put(PathMark{std::move(edges), line_of(face.part), std::nullopt});
}

using language::tr;

QString counted(std::size_t count, const char* one, const char* more) {
    return count == 1 ? tr(one) : tr(more).arg(count);
}

QString name_of(Part part, const buildup::SceneIn& in) {
    switch (part) {
    case Part::base:
        return tr("Base");
    case Part::block:
        return counted(in.board.blocks.size(), QT_TRANSLATE_NOOP("BuildUp", "One pattern block"),
                       QT_TRANSLATE_NOOP("BuildUp", "%1 pattern blocks"));
    case Part::clay:
        return tr("Clay fillet");
    case Part::filler:
        return tr("Filler");
    case Part::wall:
        return tr("Box wall");
    case Part::foam:
        return tr("Foam");
    case Part::plate:
        if (in.vents.empty()) return tr("Pressure plate");
        return counted(in.vents.size(), QT_TRANSLATE_NOOP("BuildUp", "Pressure plate, one vent"),
                       QT_TRANSLATE_NOOP("BuildUp", "Pressure plate, %1 vents"));
    case Part::stiffener:
        return counted(in.design ? in.design->stiffeners.size() : 0,
                       QT_TRANSLATE_NOOP("BuildUp", "One stiffener"),
                       QT_TRANSLATE_NOOP("BuildUp", "%1 stiffeners"));
    case Part::closure:
        return counted(in.design ? in.design->closures.size() : 0,
                       QT_TRANSLATE_NOOP("BuildUp", "One closure"),
                       QT_TRANSLATE_NOOP("BuildUp", "%1 closures"));
    case Part::bearer:
        return counted(in.base ? in.base->stiffeners.size() : 0, QT_TRANSLATE_NOOP("BuildUp", "One bearer"),
                       QT_TRANSLATE_NOOP("BuildUp", "%1 bearers"));
    }
    return {};
}

using Name = SeenMold::Name;

double widest_px(const std::vector<Name>& names) {
    constexpr double rim_px = 6;
    double widest = 0;
    for (const auto medium : {theme::Medium::screen, theme::Medium::paper})
        for (const auto& name : names)
            widest = std::max(
                widest, written_width(name.text, theme::lettering_of(theme::TextRole::name_small, medium)));
    return widest + rim_px;
}

/// A column of names beside the picture, from the top down in the order of what they name, so that no two
/// leaders cross; each at least `pitch` below the one before.
struct Column {
    double x = 0;
    Side anchor = Side::left;
    double pitch = 0;
    double gap = 0; ///< between names and leaders
};
void put_column(Drafter<InPicture>& pen, std::vector<Name> names, const Column& column, Box& area) {
    const auto [x, anchor, pitch, gap] = column;
    std::sort(names.begin(), names.end(), [](const Name& a, const Name& b) {
        return a.point.y != b.point.y ? a.point.y > b.point.y : a.text < b.text;
    });
    double below = area.max.y;
    const double bottom = area.min.y;
    for (std::size_t i = 0; i < names.size(); ++i) {
        const double room = pitch * static_cast<double>(names.size() - 1 - i);
        const double y = std::min(below, std::max(names[i].point.y, bottom + room));
        below = y - pitch;
        const Vec at{x, y};
        const Vec end = at + Vec{anchor == Side::left ? -gap : gap, 0};
        pen.put(PathMark{line(names[i].point, end), LineRole::thin, std::nullopt});
        pen.put(PathMark{circle(names[i].point, gap / 3), std::nullopt, theme::Wash{WashRole::ink}});
        pen.put(
            TextMark{{at, {}}, names[i].text.toStdString(), theme::TextRole::name_small, anchor, 0, false});
        area.add(at);
    }
}

} // namespace

std::optional<buildup::SceneIn> build_up_of(const job::Job& job, const plan::DrawerPlan& plan) {
    auto board = plan::pattern_board(job, plan);
    if (!board) return std::nullopt;
    const auto parts = plan::plate_parts(job, plan);
    buildup::SceneIn in;
    in.board = std::move(*board);
    in.fillet_mm = job.mold.fillet_mm;
    in.corner = job.mold.corner;
    in.wall_mm = parts.box_board.thickness_mm;
    in.plate_mm = parts.board.thickness_mm;
    if (plan.plate) in.design = plan.plate->answer.design;
    if (plan.base) in.base = plan.base->answer.design;
    if (plan.air && plan.plate) in.vents = plan.air->vented.vents;
    return in;
}

SeenMold seen_mold(const buildup::SceneIn& in, const buildup::Look& look) {
    SeenMold seen;
    seen.faces = buildup::painted(buildup::scene_of(in, buildup::facing_quarter(look.turn_deg)), look);
    for (int i = 0; i < buildup::part_count; ++i) {
        const auto part = static_cast<Part>(i);
        Vec point;
        if (buildup::visible_point(seen.faces, part, point)) seen.names.push_back({point, name_of(part, in)});
    }
    seen.plate = in.design.has_value();
    return seen;
}

Sheet<InPicture> build_up(const SeenMold& mold, double px_per_mm) {
    Sheet<InPicture> sheet;
    sheet.name = "Build-up";
    Drafter<InPicture> pen(sheet);
    for (const auto& face : mold.faces) put_face(pen, face);

    const Box picture = buildup::bounds(mold.faces);
    sheet.area = picture;
    constexpr double pitch_px = 22, gap_px = 6, column_px = 24;
    const double px = 1 / px_per_mm;
    std::vector<Name> left, right;
    for (const auto& name : mold.names) (name.point.x < picture.center().x ? left : right).push_back(name);
    const double left_px = widest_px(left), right_px = widest_px(right);
    put_column(pen, std::move(left),
               {picture.min.x - column_px * px, Side::right, pitch_px * px, gap_px * px}, sheet.area);
    put_column(pen, std::move(right),
               {picture.max.x + column_px * px, Side::left, pitch_px * px, gap_px * px}, sheet.area);
    if (!mold.plate)
        pen.put(TextMark{{{picture.center().x, sheet.area.min.y}, {0, -16}},
                         tr("Without the pressure plate, its closures and vents: they are not worked out yet")
                             .toStdString(),
                         theme::TextRole::caption,
                         Side::center,
                         0,
                         false});
    sheet.lower_room_px = {left_px, 30};
    sheet.upper_room_px = {right_px, 16};
    return sheet;
}

} // namespace drawercast::sheets
