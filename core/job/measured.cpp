// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/measured.h"

#include "base/number.h"
#include "shape/vec.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <initializer_list>
#include <string>
#include <vector>

namespace drawercast::job {
namespace {

using shape::Vec;

constexpr double most_mm = 5000;

struct Corners {
    Vec front_left, front_right, back_left, back_right;
    double disagree_mm = 0;
};

std::array<double, 8> readings(const Taped& t) {
    return {t.front_mm,        t.middle_width_mm, t.back_mm,   t.left_mm,
            t.middle_depth_mm, t.right_mm,        t.rising_mm, t.falling_mm};
}

Problem disagree(const std::string& where) {
    return {"measured-disagree", where, phrase("The diagonals do not fit the sides as they were read"),
            phrase("Read both diagonals and the four sides again, corner to corner")};
}

/// The third corner of a triangle on the front: `side` from the near end, squared distance `far2` from the
/// far end. `lean` is how far it leads out over the near end, along the front; nothing where there is no such
/// triangle.
std::optional<Vec> lean_and_depth(double front, double side, double far2) {
    const double lean = (far2 - front * front - side * side) / (2 * front);
    if (std::abs(lean) >= side) return std::nullopt;
    return Vec{lean, std::sqrt(side * side - lean * lean)};
}

std::optional<Corners> corners_at(const Taped& t, double shift) {
    const auto left = lean_and_depth(t.front_mm, t.left_mm, t.falling_mm * t.falling_mm + shift);
    const auto right = lean_and_depth(t.front_mm, t.right_mm, t.rising_mm * t.rising_mm + shift);
    if (!left || !right) return std::nullopt;
    return Corners{{0, 0}, {t.front_mm, 0}, {-left->x, left->y}, {t.front_mm + right->x, right->y}, 0};
}

/// The quadrilateral of the four sides and the difference of the squared diagonals. The back grows with the
/// shift, so bisection finds it wherever it exists within what a tape can be wrong by.
std::optional<Corners> corners_of(const Taped& t) {
    const double least = std::min(t.rising_mm, t.falling_mm);
    double low = -4 * misread_share * least * least;
    double high = -low;
    const auto back_too_wide = [&t](double shift) -> std::optional<bool> {
        const auto corners = corners_at(t, shift);
        if (!corners) return std::nullopt;
        return shape::length(corners->back_right - corners->back_left) > t.back_mm;
    };
    if (back_too_wide(low).value_or(true) || !back_too_wide(high).value_or(false)) return std::nullopt;
    for (int halving = 0; halving < 60; ++halving) {
        const double middle = (low + high) / 2;
        (back_too_wide(middle).value_or(true) ? high : low) = middle;
    }
    auto corners = corners_at(t, low);
    if (corners) corners->disagree_mm = std::abs(std::sqrt(least * least + low) - least);
    return corners;
}

/// One height as walls of points: what a rectangle in a turned frame must keep clear of.
struct Walls {
    std::array<Vec, 4> corner; ///< front left, front right, back left, back right
    double bow_width_mm = 0;
    double bow_depth_mm = 0;
};

Walls walls_of(const Corners& c, const Taped& t) {
    const Vec u = (c.front_right - c.front_left + c.back_right - c.back_left) * 0.5;
    const Vec v = (c.back_left - c.front_left + c.back_right - c.front_right) * 0.5;
    return {{c.front_left, c.front_right, c.back_left, c.back_right},
            std::max(0.0, shape::length(u) - t.middle_width_mm),
            std::max(0.0, shape::length(v) - t.middle_depth_mm)};
}

/// Clear distance between a low wall a–b and a high wall c–d along an axis, the middle bowed in on either.
double clear(double a, double b, double c, double d, double bow) {
    const double low = std::max(a, b);
    const double high = std::min(c, d);
    const double low_bowed = std::max(low, (a + b) / 2 + bow);
    const double high_bowed = std::min(high, (c + d) / 2 - bow);
    return std::min(high - low_bowed, high_bowed - low);
}

/// The rectangle's sides in a frame turned by the direction `along` (unit).
Vec sides_along(const Walls& w, Vec along) {
    std::array<Vec, 4> p;
    for (std::size_t i = 0; i < 4; ++i)
        p[i] = {shape::dot(w.corner[i], along), shape::cross(along, w.corner[i])};
    return {clear(p[0].x, p[2].x, p[1].x, p[3].x, w.bow_width_mm),
            clear(p[0].y, p[1].y, p[2].y, p[3].y, w.bow_depth_mm)};
}

/// The angles in which a rectangle lies flush with each wall.
void add_flush(std::vector<double>& angles, const Walls& w) {
    const auto along = [&angles](Vec d) { angles.push_back(std::atan2(d.y, d.x)); };
    const auto across = [&angles](Vec d) { angles.push_back(std::atan2(-d.x, d.y)); };
    const auto& [front_left, front_right, back_left, back_right] = w.corner;
    along(front_right - front_left);
    along(back_right - back_left);
    across(back_left - front_left);
    across(back_right - front_right);
}

/// Sides that every height can hold at this angle.
Vec sides_at(const std::vector<Walls>& heights, double angle) {
    Vec sides{most_mm, most_mm};
    for (const Walls& height : heights) {
        const Vec here = sides_along(height, {std::cos(angle), std::sin(angle)});
        sides = {std::min(sides.x, here.x), std::min(sides.y, here.y)};
    }
    return {std::max(0.0, sides.x), std::max(0.0, sides.y)};
}

/// The best angle lies between the outermost flush ones; both sides are concave in it, so the area has one
/// hill.
Vec largest(const std::vector<Walls>& heights) {
    std::vector<double> angles;
    for (const Walls& height : heights) add_flush(angles, height);
    double low = *std::min_element(angles.begin(), angles.end());
    double high = *std::max_element(angles.begin(), angles.end());
    const auto area = [&heights](double angle) {
        const Vec sides = sides_at(heights, angle);
        return sides.x * sides.y;
    };
    for (int third = 0; third < 90; ++third) {
        const double step = (high - low) / 3;
        if (area(low + step) < area(high - step))
            low += step;
        else
            high -= step;
    }
    return sides_at(heights, (low + high) / 2);
}

/// The readings of one direction at all heights.
struct Span {
    double least = most_mm;
    double greatest = 0;
    void add(std::initializer_list<double> read) {
        least = std::min(least, std::min(read));
        greatest = std::max(greatest, std::max(read));
    }
};

std::optional<Problem> range_problem(const Taped& taped, const std::string& where) {
    for (const double reading : readings(taped))
        if (!(reading > 0 && reading <= most_mm))
            return Problem{"measured-range", where,
                           phrase("Every reading must be above 0 and at most 5000 mm"),
                           phrase("Fill in all three widths, three depths and both diagonals")};
    return std::nullopt;
}

} // namespace

Expected<Inside> largest_inside(const Taped& top, const std::optional<Taped>& bottom) {
    std::vector<Walls> heights;
    Span width;
    Span depth;
    double worst = 0;
    const auto take = [&](const Taped& t, const std::string& where) -> std::optional<Problem> {
        if (auto problem = range_problem(t, where)) return problem;
        const auto corners = corners_of(t);
        const double longest = std::max(t.rising_mm, t.falling_mm);
        if (!corners || corners->disagree_mm > misread_share * longest) return disagree(where);
        heights.push_back(walls_of(*corners, t));
        width.add({t.front_mm, t.middle_width_mm, t.back_mm});
        depth.add({t.left_mm, t.middle_depth_mm, t.right_mm});
        worst = std::max(worst, corners->disagree_mm);
        return std::nullopt;
    };
    if (auto problem = take(top, "top")) return *problem;
    if (bottom)
        if (auto problem = take(*bottom, "bottom")) return *problem;

    const Vec sides = largest(heights);
    const double across = grained(std::min(sides.x, width.least));
    const double back = grained(std::min(sides.y, depth.least));
    if (across <= 0 || back <= 0)
        return Problem{"measured-nothing", "top", phrase("No rectangle fits inside these readings"),
                       phrase("Read the drawer again, both diagonals from corner to corner")};
    return Inside{across,
                  back,
                  {grained(width.greatest - width.least), grained(width.least - across)},
                  {grained(depth.greatest - depth.least), grained(depth.least - back)},
                  grained(worst)};
}

} // namespace drawercast::job
