// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"
#include "shape/region.h"

namespace drawercast::shape {

/// The two planes of a job. A point of one where the other is due does not compile: the mirrored layout is
/// the most expensive mistake of this trade. Drawer frame: looking down into the drawer, front at the bottom,
/// x right, y to the back, origin at the lower-left of the drawer outline's bounding box; finished (cured,
/// cooled) sizes.
struct InDrawer;
/// Mold frame: the pattern board seen from above, insert cast face down: mirrored left-right, enlarged by the
/// shrinkage, origin at the front-left inner corner of the box.
struct InMold;
/// An object's own plane: its outlines and notches about its own origin.
struct InObject;

template <class Frame>
struct Point {
    double x_mm = 0;
    double y_mm = 0;
    bool operator==(const Point&) const = default;
    Vec vec() const { return {x_mm, y_mm}; }
    static Point of(Vec v) { return {v.x, v.y}; }
};

template <class Frame>
struct Outline {
    Contour contour;
    bool operator==(const Outline&) const = default;
};

/// A ring of points in a frame (set operations, drawing).
template <class Frame>
struct Trace {
    Ring ring;
    bool operator==(const Trace&) const = default;
};

/// A region in a frame: the insert, the open floor, a filler.
template <class Frame>
struct Area {
    Region region;
    bool operator==(const Area&) const = default;
};

/// Drawer frame to mold frame and back: x_mold = (x1 − x)·k, y_mold = (y − y0)·k, depth·k, angles change
/// sign, with k = 1/(1 − shrinkage) and x1, y0 of the insert's bounding box. Shrinkage is linear, 0 ≤ s <
/// 0.2.
class MoldMap {
  public:
    MoldMap(Box insert_box, double shrinkage);

    double enlargement() const { return k_; }
    Point<InMold> to_mold(Point<InDrawer> p) const;
    Point<InDrawer> to_drawer(Point<InMold> p) const;
    /// Mirrored and enlarged, round radius included; counter-clockwise again.
    Outline<InMold> to_mold(const Outline<InDrawer>& outline) const;
    Outline<InDrawer> to_drawer(const Outline<InMold>& outline) const;
    Area<InMold> to_mold(const Area<InDrawer>& area) const;
    double length_to_mold(double mm) const { return mm * k_; }

    bool operator==(const MoldMap&) const = default;

  private:
    double x1_;
    double y0_;
    double k_;
};

} // namespace drawercast::shape
