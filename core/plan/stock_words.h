// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/stock_stage.h"

#include <string_view>

/// The words of figures for what to cut and buy.
namespace drawercast::plan {

std::string_view word_of(stock::Make make);     ///< "stack", "discs", "tube", "half-tube", "shaped"
std::string_view word_of(stock::Rest rest);     ///< "on-board", "on-body", "butts"
std::string_view word_of(stock::Goods goods);   ///< "board", "stiffener", "tube", "screw", "closure", "pin"
std::string_view word_of(stock::Supply supply); ///< "sealer" …
std::string_view word_of(stock::Rate rate);     ///< "counted", "practice", "guess"

} // namespace drawercast::plan
