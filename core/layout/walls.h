// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/insert.h"
#include "layout/pocket.h"

#include <memory>
#include <vector>

namespace drawercast::layout {

/// By how much an object sticks into the foam around one of its levels, mm; 0 where it is looser than that.
struct Squeeze {
    double side_mm = 0;
    double end_mm = 0;      ///< where the wall faces along the long axis, within 45°
    shape::Vec long_axis{}; ///< unit, drawer frame; zero: no ends (a circle)

    double toward(shape::Vec normal) const;
};

/// The foam outside one point of a pocket's boundary.
struct Beside {
    double height_mm = 0; ///< of the wall that is really there: 0 where another hollow is as deep
    double thickness_mm =
        0; ///< straight outward to the next hollow or the insert's edge; infinite where neither is
    double far_squeeze_mm = 0; ///< what the object on the other side does to the same wall
};

/// All walls of one drawer's foam, for asking what stands outside a point.
class Walls {
  public:
    /// `squeezes` by pocket and hollow; zero for notches, nothing stands in them.
    Walls(const std::vector<std::shared_ptr<const PlacedPocket>>& pockets,
          const std::vector<std::vector<Squeeze>>& squeezes, const Insert* insert);

    /// Outside `p` on the boundary of a hollow `depth_mm` deep, along the unit `normal`.
    Beside beside(shape::Vec p, shape::Vec normal, double depth_mm) const;

  private:
    struct Face {
        shape::Ring ring;
        shape::Box box;
        double depth_mm = 0; ///< of the hollow inside; 0: an edge of the insert
        Squeeze squeeze;
    };
    std::vector<Face> faces_;
};

} // namespace drawercast::layout
