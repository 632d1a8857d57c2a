// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

#include <optional>
#include <string_view>

namespace drawercast::job {

/// An affine map (a c e; b d f), columns as in SVG's matrix(a b c d e f).
struct SvgMap {
    double a = 1, b = 0, c = 0, d = 1, e = 0, f = 0;

    shape::Vec operator()(shape::Vec p) const { return {a * p.x + c * p.y + e, b * p.x + d * p.y + f}; }
    double determinant() const { return a * d - b * c; }
    /// Circles stay circles.
    bool keeps_angles() const;
    /// First `inner`, then this one.
    SvgMap after(const SvgMap& inner) const;
};

/// The `transform` attribute (SVG 1.1, 7.6): matrix, translate, scale, rotate, skewX, skewY, in a row.
/// Nothing where it cannot be read.
std::optional<SvgMap> svg_transform(std::string_view text);

/// The next number of a list as SVG writes them ("1.5.5-2e-1" are three), blanks and one comma before it
/// passed over; nothing where there is none. `at` moves behind it.
std::optional<double> svg_number(std::string_view text, std::size_t& at);

/// A length in mm (SVG 1.1, 7.10; CSS: 96 px are one inch); nothing for percentages and font sizes.
std::optional<double> svg_length_mm(std::string_view text);

} // namespace drawercast::job
