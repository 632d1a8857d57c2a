// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/mold.h"
#include "job/shop.h"
#include "stock/part.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

/// The box around the pattern board: base, four walls, plate and stiffeners. Mold frame, mm.
namespace drawercast::stock {

struct BoxIn {
    std::string drawer;
    double width_mm = 0;  ///< inside, along x
    double depth_mm = 0;  ///< inside, along y
    double height_mm = 0; ///< inside
    job::BoxCorner corner = job::BoxCorner::lapped;
    job::Board box_board;   ///< of base and walls, as measured
    job::Board plate_board; ///< of the plate
    std::optional<job::Stiffener> stiffener;
    std::vector<double> stiffener_lengths_mm; ///< as planned
    std::optional<job::Stiffener> bearer;     ///< under the base
    std::vector<double> bearer_lengths_mm;    ///< as planned
    /// Screws in each wall's foot (front, right, back, left), mm from its left or front end, where they are
    /// worked out; none: at joint_pitch_mm.
    std::array<std::vector<double>, 4> foot_mm{};
    double saw_step_mm = 0.5;
};

enum class Side { front, right, back, left }; ///< of the mold, seen from above

struct Wall {
    Side side = Side::front;
    double length_mm = 0;
    double height_mm = 0;
    std::vector<double> foot_mm; ///< screws from below through the base, from its left or front end
    int end_screws = 0; ///< driven through it into the next wall's end; 0: others are driven into its ends
    std::string label;
    bool operator==(const Wall&) const = default;
};

struct Box {
    double width_mm = 0; ///< inside, as cut
    double depth_mm = 0;
    double height_mm = 0;
    double outside_width_mm = 0;
    double outside_depth_mm = 0;
    double outside_height_mm = 0; ///< without stiffeners
    std::vector<Wall> walls;      ///< front, right, back, left
    std::vector<Part> parts;      ///< base, walls, plate
    std::vector<LengthPart> stiffeners;
    std::vector<LengthPart> bearers;
    std::vector<ScrewUse> screws; ///< of the joints
    double foot_screw_mm = 0;     ///< length; 0: none grips
    double end_screw_mm = 0;      ///< likewise
    double bead_mm = 0;           ///< seal: inner foot line and four corners
    bool operator==(const Box&) const = default;
};

/// Lapped: front and back run over the ends of the sides. Pinwheel: each wall runs over the end of the one
/// before, counter-clockwise, and all screws of a corner go one way round. Wall lengths and height are sawn
/// to the saw's step, and the inside follows from them and the boards' measured thickness.
Box box_of(const BoxIn& in);

/// Thickness of its walls, mm; 0 for a box without.
double wall_thickness_mm(const Box& box);

/// What a wall is screwed to base and neighbors with.
std::vector<ScrewUse> joint_screws_of(const Box& box, const Wall& wall);

} // namespace drawercast::stock
