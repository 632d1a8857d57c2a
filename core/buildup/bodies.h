// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "buildup/scene.h"

#include <vector>

/// The bodies a scene is put together from.
namespace drawercast::buildup {

shape::Region rectangle(const shape::Box& box);
shape::Region disc(shape::Vec center, double radius_mm); ///< sixteen chords
shape::Region strip(shape::Vec from, shape::Vec to, double width_mm);
/// `a` without `b`; a picture goes on with `a` where set operations fail.
shape::Region less(const shape::Region& a, const shape::Region& b);
shape::Region both(const shape::Region& a, const shape::Region& b);

/// What of a solid stands just above a height.
shape::Region plan_at(const Solid& solid, double height_mm);

std::vector<Solid> blocks_of(const casting::PatternBoard& board);
/// The fillets around all blocks, in four layers.
Solid clay_of(const casting::PatternBoard& board, double fillet_mm, const std::vector<Solid>& blocks);
/// What is left of the opening for foam.
Solid foam_of(const casting::PatternBoard& board, const std::vector<Solid>& blocks, const Solid& clay,
              const shape::Region& away);

} // namespace drawercast::buildup
