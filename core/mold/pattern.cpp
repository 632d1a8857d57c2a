// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/pattern.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <deque>
#include <utility>

namespace drawercast::mold {

namespace {

using MoldPoint = shape::Point<shape::InMold>;

enum class Side { front, right, back, left };
constexpr std::array sides{Side::front, Side::right, Side::back, Side::left};
constexpr bool across(Side side) { return side == Side::front || side == Side::back; }

double length_of(const PatternIn& in, Side side) { return across(side) ? in.width_mm : in.depth_mm; }

/// The point on a wall's center line, `s` along it counter-clockwise from its inner corner.
MoldPoint on_side(const PatternIn& in, Side side, double s) {
    const double out = in.wall_mm / 2;
    switch (side) {
    case Side::front:
        return {s, -out};
    case Side::right:
        return {in.width_mm + out, s};
    case Side::back:
        return {in.width_mm - s, in.depth_mm + out};
    case Side::left:
        break;
    }
    return {-out, in.depth_mm - s};
}

Side side_of(const PatternIn& in, MoldPoint p) {
    if (p.y_mm < 0) return Side::front;
    if (p.x_mm > in.width_mm) return Side::right;
    return p.y_mm > in.depth_mm ? Side::back : Side::left;
}

/// How far along a side from that point on its wall: the inverse of on_side().
double along_side(const PatternIn& in, Side side, shape::Vec p) {
    switch (side) {
    case Side::front:
        return p.x;
    case Side::right:
        return p.y;
    case Side::back:
        return in.width_mm - p.x;
    case Side::left:
        break;
    }
    return in.depth_mm - p.y;
}

/// How far the first and the last stand from their corners, counter-clockwise. Lapped: front and back run
/// over the ends of the sides. Pinwheel: each wall's far end stands against the next.
std::pair<double, double> from_corners(const PatternIn& in, Side side) {
    const bool pinwheel = in.corner == job::BoxCorner::pinwheel;
    const bool butted = in.corner == job::BoxCorner::lapped && !across(side);
    return {butted ? first_from_butt_mm : first_from_corner_mm,
            butted || pinwheel ? first_from_butt_mm : first_from_corner_mm};
}

std::vector<double> even_places(const PatternIn& in, Side side) {
    const double length = length_of(in, side);
    const auto [first, last] = from_corners(in, side);
    const double between = length - first - last;
    if (between <= 0) return {length / 2};
    const int gaps = std::max(1, static_cast<int>(std::ceil(between / in.spacing_mm - 1e-9)));
    std::vector<double> out;
    for (int i = 0; i <= gaps; ++i) out.push_back(first + between * i / gaps);
    return out;
}

/// The place nearest to `even` that stands apart from all of `others`, by whole millimeters.
double moved_apart(const PatternIn& in, Side side, double even, const std::vector<double>& others) {
    const auto apart = [&](double place) {
        return std::all_of(others.begin(), others.end(),
                           [&](double other) { return std::abs(other - place) >= in.apart_mm; });
    };
    const auto [first, last] = from_corners(in, side);
    const double least = first, most = length_of(in, side) - last;
    for (int i = 0; i <= static_cast<int>(in.spacing_mm); ++i) {
        const int step = (i + 1) / 2;
        const double place = even + (i % 2 == 0 ? -step : step);
        if (place >= least && place <= most && apart(place)) return place;
    }
    return even;
}

/// The middle, both ends, then the middle of each part, and so on.
std::vector<int> halving(int count) {
    std::vector<int> out;
    if (count == 0) return out;
    const int middle = (count - 1) / 2;
    out.push_back(middle);
    if (middle != 0) out.push_back(0);
    if (count - 1 != middle) out.push_back(count - 1);
    std::deque<std::pair<int, int>> parts{{0, middle}, {middle, count - 1}};
    while (!parts.empty()) {
        const auto [from, to] = parts.front();
        parts.pop_front();
        if (to - from < 2) continue;
        const int half = (from + to) / 2;
        out.push_back(half);
        parts.emplace_back(from, half);
        parts.emplace_back(half, to);
    }
    return out;
}

} // namespace

bool stiffeners_along_y(const PatternIn& in) {
    const bool short_is_y = in.depth_mm <= in.width_mm;
    return short_is_y == (in.along == job::Along::short_side);
}

namespace {

bool off_all(const PatternIn& in, double place) {
    const bool along_y = stiffeners_along_y(in);
    return std::all_of(in.keep_off.begin(), in.keep_off.end(), [&](shape::Vec p) {
        return std::abs((along_y ? p.x : p.y) - place) >= in.stand_off_mm;
    });
}

/// The nearest place to `even` that stands off, by whole millimeters.
double moved_off(const PatternIn& in, double even, double least, double most_move) {
    for (int i = 0; i <= 2 * static_cast<int>(most_move); ++i) {
        const int step = (i + 1) / 2; // 0, 1, 1, 2, 2, …
        const double place = even + (i % 2 == 0 ? -step : step);
        if (place >= least && off_all(in, place)) return place;
    }
    return even;
}

} // namespace

std::vector<double> stiffener_places(const PatternIn& in) {
    const double side = stiffeners_along_y(in) ? in.width_mm : in.depth_mm;
    const double pitch = side / (in.stiffeners + 1);
    std::vector<double> out;
    double least = 0;
    for (int i = 1; i <= in.stiffeners; ++i) {
        out.push_back(moved_off(in, side * i / (in.stiffeners + 1), least, pitch / 3));
        least = out.back() + pitch / 2;
    }
    return out;
}

bool stands_off(const PatternIn& in) {
    const auto places = stiffener_places(in);
    return std::all_of(places.begin(), places.end(), [&](double place) { return off_all(in, place); });
}

std::vector<StiffenerAt> stiffeners_of(const PatternIn& in) {
    std::vector<StiffenerAt> out;
    for (const double at : stiffener_places(in)) {
        if (stiffeners_along_y(in))
            out.push_back({{at, -in.wall_mm}, {at, in.depth_mm + in.wall_mm}});
        else
            out.push_back({{-in.wall_mm, at}, {in.width_mm + in.wall_mm, at}});
    }
    return out;
}

std::vector<ClosureAt> closures_of(const PatternIn& in) {
    std::vector<ClosureAt> out;
    const bool along_y = stiffeners_along_y(in);
    const double covered = in.stiffener_width_mm / 2 + in.head_radius_mm;
    for (const Side side : sides) {
        const double length = length_of(in, side);
        std::vector<std::pair<double, bool>> places; // along the side, whether at a stiffener's end
        if (across(side) == along_y)
            for (const double at : stiffener_places(in)) // the pattern is the same from either end
                places.emplace_back(side == Side::front || side == Side::right ? at : length - at, true);
        const auto ends = places;
        std::vector<double> others;
        for (const shape::Vec p : in.apart_from)
            if (side_of(in, MoldPoint::of(p)) == side) others.push_back(along_side(in, side, p));
        for (const double at : even_places(in, side)) {
            const bool free = std::all_of(ends.begin(), ends.end(), [&](const auto& end) {
                return std::abs(end.first - at) >= covered;
            });
            if (free) places.emplace_back(moved_apart(in, side, at, others), false);
        }
        std::sort(places.begin(), places.end());
        for (const auto& [at, end] : places) out.push_back({on_side(in, side, at), end});
    }
    return out;
}

std::vector<int> driving_order(const PatternIn& in, const std::vector<ClosureAt>& closures) {
    std::array<std::vector<int>, 4> of_side;
    for (std::size_t i = 0; i < closures.size(); ++i)
        of_side[static_cast<std::size_t>(side_of(in, closures[i].at))].push_back(static_cast<int>(i));
    std::array<std::vector<int>, 4> ordered;
    std::size_t longest = 0;
    for (std::size_t side = 0; side < 4; ++side) {
        for (const int place : halving(static_cast<int>(of_side[side].size())))
            ordered[side].push_back(of_side[side][static_cast<std::size_t>(place)]);
        longest = std::max(longest, ordered[side].size());
    }
    std::vector<int> out;
    for (std::size_t round = 0; round < longest; ++round)
        for (const Side side : {Side::front, Side::back, Side::left, Side::right})
            if (const auto& list = ordered[static_cast<std::size_t>(side)]; round < list.size())
                out.push_back(list[round]);
    return out;
}

} // namespace drawercast::mold
