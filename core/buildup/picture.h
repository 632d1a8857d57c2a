// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "buildup/scene.h"

#include <string>
#include <utility>
#include <vector>

/// What is seen of a scene: an orthographic axonometric projection (ISO 5456-3), seen from above.
namespace drawercast::buildup {

struct Look {
    double turn_deg = 45; ///< of the scene counter-clockwise, seen from above; 0: front toward the viewer
    double apart = 0;     ///< 0 closed, 1 wholly exploded
    bool operator==(const Look&) const = default;
};

/// Height of the sight line over the horizontal: the one of the isometric projection, whose axes are all
/// shortened alike, sin e = 1/√3 (ISO 5456-3).
inline constexpr double sight_sine = 0.57735026918962576;

/// From the mold frame to the picture (right, up); `depth` grows away from the viewer on level ground.
class Projection {
  public:
    explicit Projection(double turn_deg) : turn_(shape::Turn::of_degrees(turn_deg)) {}
    shape::Vec turned(shape::Vec plan) const { return turn_(plan); } ///< x right, y depth
    shape::Vec operator()(shape::Vec plan, double height_mm) const;

  private:
    shape::Turn turn_;
};

/// The quarter that faces the viewer.
Quarter facing_quarter(double turn_deg);

enum class Face { top, side, cut };

/// Something to paint over what was painted before.
struct Painted {
    Part part = Part::base;
    std::string subject;
    Face face = Face::top;
    std::vector<shape::Ring> area; ///< in the picture, even-odd
    std::vector<std::pair<shape::Vec, shape::Vec>> edges;
};

/// All faces toward the viewer, each after all it may hide. Exact: level faces cut the scene into storeys,
/// and in a storey upright faces are in the order of their plan, which is never circular for segments that do
/// not cross. An upright face that goes on above its storey is painted up to its top each time, so that
/// its parts show no seam.
std::vector<Painted> painted(const Scene& scene, const Look& look);

/// What is seen at a point of the picture: index of the last that covers it, or −1.
int seen_at(const std::vector<Painted>& all, shape::Vec point);

/// A point of the part that is seen, well inside; false where none is.
bool visible_point(const std::vector<Painted>& all, Part part, shape::Vec& point);

shape::Box bounds(const std::vector<Painted>& all);

} // namespace drawercast::buildup
