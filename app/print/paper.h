// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

#include <optional>
#include <string_view>

namespace drawercast::print {

enum class Paper { a4, letter, a3, tabloid };
enum class Orientation { portrait, landscape };

std::optional<Paper> paper_named(std::string_view name);             ///< "a4", "letter", "a3", "tabloid"
std::optional<Orientation> orientation_named(std::string_view name); ///< "portrait", "landscape"

/// Trimmed size, mm (ISO 216; 8.5 × 11 in and 11 × 17 in).
shape::Vec size_mm(Paper paper, Orientation orientation);

/// What is printed stays this far from the paper's edge, mm: most printers reach to 6.35 (1/4 in).
inline constexpr double safe_margin_mm = 10;

} // namespace drawercast::print
