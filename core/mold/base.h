// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/plate_search.h"

#include <optional>

namespace drawercast::mold {

/// The base under a mold whose plate is known.
struct BaseIn {
    PlateIn mold;       ///< what the plate's answer read
    PlateDesign plate;  ///< what stands on the walls: the base keeps off its closures
    job::Closure joint; ///< the screws from below into the walls' feet, as long as the walls let them be
    bool operator==(const BaseIn&) const = default;
};

/// Foam pushes the base down as it pushes the plate up, and the walls pull the base's rim up with the same
/// force: a bench under it bears no more than the mold's weight, so the base bends like a plate held at its
/// rim. Blocks that stand on it make it stiffer by what nobody knows: they are not counted.
///
/// Of the box's board, held by the joint's screws as close as it takes; where it can't keep the plate's
/// limits bare, with bearers under it (the plate's stiffeners, or whatever of the shop's does), each held by
/// a closure through either end like a stiffener of the plate. A sealed joint may gape as far as a gasket's.
/// The walls' push sideways at their feet is not added to the screws' pull: a screw holds at least as much
/// sideways (our guess), so that with a push of nine tenths of the pull, as in a mold 180 mm deep, it bears
/// under half of what it holds where the pull is a third. Rods, clamps and straps hold the base where they
/// hold the plate; its bearers are the plate's stiffeners over again, else pieces with screws of their own.
///
/// `answer.design.stiffeners` are the bearers, `closures` the foot's screws and, at bearers' ends,
/// end_closures. Nothing where stopped.
std::optional<Plate> base_of(const BaseIn& in, PlateLooks& looks, const Stop& stop = {});

} // namespace drawercast::mold
