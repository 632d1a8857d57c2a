// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/box.h"

#include "base/number.h"
#include "stock/saw.h"
#include "stock/screws.h"

#include <algorithm>

namespace drawercast::stock {

namespace {

constexpr Side all_sides[] = {Side::front, Side::right, Side::back, Side::left};

bool along_x(Side side) { return side == Side::front || side == Side::back; }

/// How many thicknesses a wall is longer than the inside.
int laps_of(Side side, job::BoxCorner corner) {
    if (corner == job::BoxCorner::pinwheel) return 1;
    return along_x(side) ? 2 : 0;
}

Part part(const BoxIn& in, const char* name, Role role, const job::Board& board, double a, double b) {
    return {in.drawer + " " + name, in.drawer,        0, role, board.name, std::max(a, b), std::min(a, b),
            board.thickness_mm,     Finish::rectangle};
}

const char* name_of(Side side) {
    switch (side) {
    case Side::front:
        return "wall front";
    case Side::right:
        return "wall right";
    case Side::back:
        return "wall back";
    case Side::left:
        return "wall left";
    }
    return "";
}

Wall wall_of(const BoxIn& in, Side side, double height_mm) {
    const double t = in.box_board.thickness_mm;
    const int laps = laps_of(side, in.corner);
    Wall wall;
    wall.side = side;
    wall.length_mm = sawn_mm((along_x(side) ? in.width_mm : in.depth_mm) + laps * t, in.saw_step_mm);
    wall.height_mm = height_mm;
    wall.foot_mm = in.foot_mm[static_cast<std::size_t>(side)];
    if (wall.foot_mm.empty())
        wall.foot_mm = spread_mm(wall.length_mm, first_joint_mm,
                                 screws_along(wall.length_mm, first_joint_mm, joint_pitch_mm));
    const int up = screws_along(height_mm, std::min(first_joint_mm, height_mm / 4), corner_pitch_mm);
    wall.end_screws = laps * up;
    wall.label = in.drawer + " " + name_of(side);
    return wall;
}

std::vector<LengthPart> pieces(const BoxIn& in, const std::string& name, const job::Stiffener& piece,
                               const std::vector<double>& lengths_mm) {
    std::vector<LengthPart> parts;
    for (const double length : lengths_mm)
        parts.push_back({in.drawer + " " + name + std::to_string(parts.size() + 1), in.drawer, 0,
                         Role::stiffener, piece.name, sawn_mm(length, in.saw_step_mm)});
    return parts;
}

void add_joint_screws(Box& box, double thickness_mm) {
    const double whole = 1000; // a wall seen from its end: any screw keeps its skin
    box.foot_screw_mm = screw_length_mm(thickness_mm, box.height_mm, joint_grip_mm).value_or(0);
    box.end_screw_mm = screw_length_mm(thickness_mm, whole, joint_grip_mm).value_or(0);
    for (const Wall& wall : box.walls)
        for (const ScrewUse& use : joint_screws_of(box, wall)) add_screws(box.screws, use);
}

} // namespace

double wall_thickness_mm(const Box& box) {
    for (const Part& part : box.parts)
        if (part.role == Role::wall) return part.thickness_mm;
    return 0;
}

std::vector<ScrewUse> joint_screws_of(const Box& box, const Wall& wall) {
    std::vector<ScrewUse> screws;
    if (box.foot_screw_mm > 0)
        screws.push_back({joint_screw_mm, box.foot_screw_mm, static_cast<int>(wall.foot_mm.size())});
    if (box.end_screw_mm > 0) screws.push_back({joint_screw_mm, box.end_screw_mm, wall.end_screws});
    return screws;
}

Box box_of(const BoxIn& in) {
    Box box;
    const double t = in.box_board.thickness_mm;
    box.height_mm = sawn_mm(in.height_mm, in.saw_step_mm);
    for (const Side side : all_sides) box.walls.push_back(wall_of(in, side, box.height_mm));
    box.width_mm = grained(box.walls[0].length_mm - laps_of(Side::front, in.corner) * t);
    box.depth_mm = grained(box.walls[1].length_mm - laps_of(Side::right, in.corner) * t);
    box.outside_width_mm = grained(box.width_mm + 2 * t);
    box.outside_depth_mm = grained(box.depth_mm + 2 * t);
    box.outside_height_mm = grained(t + box.height_mm + in.plate_board.thickness_mm);

    const double base_width = sawn_mm(box.outside_width_mm, in.saw_step_mm);
    const double base_depth = sawn_mm(box.outside_depth_mm, in.saw_step_mm);
    box.parts.push_back(part(in, "base", Role::base, in.box_board, base_width, base_depth));
    for (const Wall& wall : box.walls)
        box.parts.push_back(
            part(in, name_of(wall.side), Role::wall, in.box_board, wall.length_mm, wall.height_mm));
    box.parts.push_back(part(in, "plate", Role::plate, in.plate_board, base_width, base_depth));
    if (in.stiffener) box.stiffeners = pieces(in, "stiffener ", *in.stiffener, in.stiffener_lengths_mm);
    if (in.bearer) box.bearers = pieces(in, "bearer ", *in.bearer, in.bearer_lengths_mm);
    add_joint_screws(box, t);
    box.bead_mm = 2 * (box.width_mm + box.depth_mm) + 4 * box.height_mm;
    return box;
}

} // namespace drawercast::stock
