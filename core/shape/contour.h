// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "shape/vec.h"

#include <variant>
#include <vector>

namespace drawercast::shape {

/// Largest distance between an arc and the chords that stand for it, mm. Below what any saw or pen can show.
inline constexpr double chord_sagitta_mm = 0.001;

/// A closed outline as the set of points within `round_mm` of a core: one vertex is a point (a circle), two a
/// segment (a capsule), three or more a simple counter-clockwise ring (a sharp or rounded polygon).
/// Rectangles, rounded rectangles, circles and capsules are exact in this form; only drawing and set
/// operations see chords.
struct Contour {
    std::vector<Vec> core;
    double round_mm = 0;
    bool operator==(const Contour&) const = default;
};

// ---- outlines as a maker gives them, centered on their own origin (polygons: as given) ----
struct Rectangle {
    double width_mm = 0;  ///< along x
    double height_mm = 0; ///< along y
    double corner_mm = 0; ///< corner radius, at most half the lesser side
    bool operator==(const Rectangle&) const = default;
};
struct Circle {
    double diameter_mm = 0;
    bool operator==(const Circle&) const = default;
};
struct Capsule { ///< two half circles and the straight sides between them, long axis along x
    double length_mm = 0;
    double width_mm = 0; ///< at most the length
    bool operator==(const Capsule&) const = default;
};
struct Corner {
    Vec at;
    double sagitta_mm = 0; ///< of the arc from here to the next corner; > 0 bulges outward, 0 is straight
    bool operator==(const Corner&) const = default;
};
struct Polygon { ///< free outline, either way round
    std::vector<Corner> corners;
    bool operator==(const Polygon&) const = default;
};
using Given = std::variant<Rectangle, Circle, Capsule, Polygon>;

/// The contour of a given outline about its own origin. Refuses sizes that are not positive, a corner radius
/// over half the lesser side, a capsule wider than long, and free outlines that are not simple (the reason
/// and the place are in the problem: repeated corners and spikes are removed first, crossings are refused).
Expected<Contour> contour_of(const Given& given);

/// `contour` where it stands at `pose`.
Contour placed(const Contour& contour, const Pose& pose);

/// Enclosed area, mm². Steiner's formula A + Pρ + πρ² of the core where that is convex (exact); for a reflex
/// ring with ρ > 0 each reflex turn counts −ρ²·tan(turn/2) (exact while no two sides' offsets meet).
double area(const Contour& contour);

/// Length of the boundary, mm; same form and limits as area().
double perimeter(const Contour& contour);

/// Exact bounding box.
Box bounds(const Contour& contour);

/// Centroid of the enclosed area; exact for convex symmetric families, by the traced ring otherwise.
Vec centroid(const Contour& contour);

/// Whether `p` lies inside or on the outline.
bool contains(const Contour& contour, Vec p);

/// Whether the core is a convex ring, a segment or a point.
bool convex(const Contour& contour);

/// A simple counter-clockwise ring, first vertex not repeated, whose arcs are chords no further than
/// `sagitta_mm` from the true arc (inscribed: vertices lie on the arc). A reflex core whose rounding closes a
/// slot has no simple trace: region_of() then asks offset_round().
using Ring = std::vector<Vec>;
Ring traced(const Contour& contour, double sagitta_mm = chord_sagitta_mm);

double area(const Ring& ring);      ///< signed: > 0 counter-clockwise
double perimeter(const Ring& ring); ///< mm
Box bounds(const Ring& ring);
double turn_at(const Ring& ring, std::size_t i); ///< radians at that vertex, −π … π: > 0 turns left

} // namespace drawercast::shape
