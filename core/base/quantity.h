// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "base/typed.h"

#include <span>
#include <string_view>

namespace drawercast {

/// What a typed number measures, by the unit in which a job keeps it. Lengths have their own reader
/// (length.h).
enum class Quantity {
    mass_g,
    load_kg,
    volume_ml,
    pressure_kpa,
    temperature_c,
    warmer_k,
    altitude_m,
};

/// A unit's word as typed behind a number (lower case): value in the job's unit = typed × scale + zero.
struct Unit {
    std::string_view word;
    double scale = 1;
    double zero = 0;
};

/// The units understood for a quantity; the first is the job's own.
std::span<const Unit> units_of(Quantity quantity);

/// The unit of that word (any case), or nullptr.
const Unit* find_unit(Quantity quantity, std::string_view word);

/// A typed quantity in the job's unit: a number as parse_typed_number reads it, then one of its units in any
/// case, else in `bare`. "1 lb 4 oz" is not understood. Problems: "number", "number-ambiguous".
Expected<double> parse_quantity(std::string_view typed, Quantity quantity, const Unit& bare,
                                DecimalMark mark = DecimalMark::point);

} // namespace drawercast
