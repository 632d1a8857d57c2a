// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/edit.h"
#include "job/shown_name.h"
#include "stock/screws.h"

#include "language/spoken.h"
#include "sheets/bench_pen.h"
#include "sheets/edge_words.h"
#include "sheets/part_words.h"

namespace drawercast::sheets {

using WallSide = stock::Side;
using theme::LineRole;
using theme::TextRole;
using theme::WashRole;

Box wall_box(const Box& box, const stock::Wall& wall, job::BoxCorner corner, double t) {
    const bool pinwheel = corner == job::BoxCorner::pinwheel;
    switch (wall.side) {
    case WallSide::front: // pinwheel: from the left corner, short of the right wall
        return {box.min, {pinwheel ? box.max.x - t : box.max.x, box.min.y + t}};
    case WallSide::right:
        return {{box.max.x - t, pinwheel ? box.min.y : box.min.y + t}, {box.max.x, box.max.y - t}};
    case WallSide::back:
        return {{pinwheel ? box.min.x + t : box.min.x, box.max.y - t}, box.max};
    case WallSide::left:
        return {{box.min.x, box.min.y + t}, {box.min.x + t, pinwheel ? box.max.y : box.max.y - t}};
    }
    return box;
}

namespace {

bool along_x(WallSide side) { return side == WallSide::front || side == WallSide::back; }

void add_wall(BenchPen& pen, const Box& box, const stock::Wall& wall, const job::Job& job, double times) {
    pen.put(PathMark{path_of(box), LineRole::pocket_edge, theme::Wash{WashRole::wood}});
    const bool level = along_x(wall.side);
    for (const double along : wall.foot_mm) {
        const Vec at = level ? Vec{box.min.x + along * times, box.center().y}
                             : Vec{box.center().x, box.min.y + along * times};
        pen.put(SignMark{Sign::screw, {at}});
    }
    const std::string name = part_name(wall.label).toStdString();
    const double off = 12;
    const Vec inward = level ? Vec{0, wall.side == WallSide::front ? off : -off}
                             : Vec{wall.side == WallSide::left ? off : -off, 0};
    const Vec edge{level ? box.center().x : (wall.side == WallSide::left ? box.max.x : box.min.x),
                   level ? (wall.side == WallSide::front ? box.max.y : box.min.y) : box.center().y};
    const Place spot{edge, inward};
    TextMark words{spot,
                   name + "  " + size_words(job, wall.length_mm, wall.height_mm),
                   TextRole::name,
                   Side::center,
                   level ? 0.0 : 90.0,
                   true,
                   {}};
    words.elsewhere = {{{spot, Side::center}}, {}, true, name}; // the cut list has the size too
    pen.put(std::move(words));
}

std::string inside_words(const job::Job& job, const stock::DrawerStock& drawer) {
    const auto say = [&](double mm) { return length_words(job, mm); };
    return language::tr("inside ").toStdString() + size_words(job, drawer.box.width_mm, drawer.box.depth_mm) +
           " × " + say(drawer.box.height_mm);
}

} // namespace

QString name_of(const job::Job& job, const std::string& drawer) {
    return QString::fromStdString(job::shown_name(job, drawer));
}

void add_box(BenchPen& pen, Vec at, const job::Job& job, const stock::DrawerStock& drawer,
             double thickness_mm, double times) {
    const stock::Box& made = drawer.box;
    const Box outside{at, at + Vec{made.outside_width_mm, made.outside_depth_mm} * times};
    const auto say = [&](double mm) { return length_words(job, mm); };
    pen.turn_to(Layer::ground);
    pen.put(PathMark{path_of(outside), LineRole::cavity_edge, theme::Wash{WashRole::paper}});
    add_edge_words(pen, outside, EdgeWords::mold_once);
    pen.turn_to(Layer::still);
    for (const auto& wall : made.walls)
        add_wall(pen, wall_box(outside, wall, job.mold.corner, thickness_mm * times), wall, job, times);
    const std::string corner = job.mold.corner == job::BoxCorner::pinwheel
                                   ? language::tr("pinwheel corners").toStdString()
                                   : language::tr("butted corners").toStdString();
    const std::vector<std::string> words{
        language::tr("MIRRORED").toStdString(), // as its walls are named: left and right of the mold
        language::tr("Box of %1, from above").arg(name_of(job, drawer.drawer)).toStdString(),
        inside_words(job, drawer),
        corner,
        language::tr("board ").toStdString() + say(thickness_mm) + language::tr(" as measured").toStdString(),
        language::tr("foot screws %1")
            .arg(screw_size(job, stock::joint_screw_mm, made.foot_screw_mm))
            .toStdString(),
        language::tr("closed height ").toStdString() + say(made.outside_height_mm)};
    const Box inside = outside.grown(-thickness_mm * times);
    for (std::size_t i = 0; i < words.size(); ++i) {
        const Place spot{outside.center(), {0, 56 - 16 * static_cast<double>(i)}};
        TextMark line{spot,  words[i], i <= 1 ? TextRole::name : TextRole::caption, Side::center, 0,
                      false, {}};
        line.elsewhere = {{{spot, Side::center}}, inside, true, {}}; // a small picture says less
        if (i == 0)                                                  // but this
            for (const double up : {40.0, 24.0, 8.0})
                line.elsewhere.spots.push_back({{outside.center(), {0, up}}, Side::center});
        pen.put(std::move(line));
    }
    pen.put(DimensionMark{
        outside.min, {outside.max.x, outside.min.y}, {{}, {0, -36}}, say(made.outside_width_mm), 0.5});
    pen.put(DimensionMark{
        outside.min, {outside.min.x, outside.max.y}, {{}, {-36, 0}}, say(made.outside_depth_mm), 0.5});
}

} // namespace drawercast::sheets
