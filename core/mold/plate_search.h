// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/plate_judge.h"
#include "mold/plate_looks.h"

#include <functional>
#include <optional>

namespace drawercast::mold {

/// Asked between solves; true: give up.
using Stop = std::function<bool()>;

/// The cheapest plate of the shop's boards, stiffeners and closures that keeps every limit and can be closed
/// in time; else the cheapest that keeps every limit; else the one that misses them least. What the maker set
/// is taken as it is. Ties: the thinner board, fewer parts, the shop's order. Nothing where stopped.
///
/// Stiffeners stand off the last places of air, unless nothing of a like price holds that way. `looks` only
/// save time: those of the same mold are not done again, whatever the pressure.
std::optional<Plate> plate_of(const PlateIn& in, PlateLooks& looks, const Stop& stop = {});
std::optional<Plate> plate_of(const PlateIn& in, const Stop& stop = {});

/// The design as it stands under other pressures (air shut in after all), not searched again.
Plate rechecked(const PlateIn& in, const PlateDesign& design, PlateLooks& looks);
Plate rechecked(const PlateIn& in, const PlateDesign& design);

} // namespace drawercast::mold
