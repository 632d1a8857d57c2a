// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/footprint.h"
#include "shape/vec.h"

#include <span>
#include <vector>

namespace drawercast::casting {

/// A footprint where it stands.
struct Placed {
    const Footprint* footprint = nullptr;
    shape::Turn turn;
    shape::Vec at;
};

/// What a point under `depth` footprints counts.
enum class Counting {
    any,    ///< 1 where there is any: the area of the union
    shared, ///< the number of pairs that share it: what adding up areas counts too often, by pairs
    crowded, ///< what the pairs then take off too much: (depth − 1)(depth − 2)/2. any = Σ areas − shared +
             ///< crowded
};

/// Where points count at all.
struct Field {
    shape::Box window;
    const Footprint* opening = nullptr; ///< null: everywhere in the window; not turned
    bool outside = false;               ///< only outside the opening instead of only inside
};

/// Areas of many footprints at once, exact for their paths: a sweep over strips between corners and
/// crossings, in which every length is linear. Nothing is snapped or repaired, so flush, tangent and doubled
/// sides need no care. Keeps its working memory between calls; the answer does not depend on it.
class Coverage {
  public:
    /// ∫ counting(depth) over the field, mm².
    double area(std::span<const Placed> footprints, const Field& field, Counting counting);

  private:
    /// A side, left to right; or a side of the window or the opening (owner < 0).
    struct Side {
        double from = 0;
        double to = 0;
        double height = 0; ///< at `from`
        double slope = 0;
        int owner = 0;
        int step = 0; ///< what the winding changes by where the sweep line passes it upward
        double at(double s) const { return height + slope * (s - from); }
    };
    struct Crossing { ///< a side where it crosses the strip at hand
        double left = 0;
        double right = 0;
        double between = 0; ///< where the sweep line stands
        const Side* side = nullptr;
    };

    void add_path(const shape::Ring& path, const shape::Turn& turn, shape::Vec at, int owner);
    void add_side(shape::Vec a, shape::Vec b, int owner);
    void add_window();
    static bool upward(const Crossing& a, const Crossing& b);
    void enter_strip(double from, double to, std::size_t& next);
    double strip_area(double from, double to);
    double split_strip_area(double from, double to);
    void find_splits();
    double counted_length(double share);
    double counted(int depth) const;

    shape::Box window_;
    bool swapped_ = false; ///< the sweep runs along y
    bool has_opening_ = false;
    bool outside_ = false;
    Counting counting_ = Counting::any;
    std::vector<Side> sides_;
    std::vector<double> stops_;
    std::vector<Crossing> strip_; ///< in order upward
    std::vector<Crossing> leaving_;
    std::vector<double> splits_;
    std::vector<int> winding_;
};

/// Area of what the paths wind around, mm².
double union_area(const Footprint& footprint);

} // namespace drawercast::casting
