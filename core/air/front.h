// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/cells.h"
#include "air/links.h"
#include "air/liquid.h"
#include "air/multigrid.h"

namespace drawercast::air {

/// How far the foam has come when it has grown to `expansion` times its liquid.
struct Front {
    double expansion = 0;
    Values push; ///< W = ∫ p/(μE) dt, no unit: > 0 where the foam has filled the gap
    Values
        unfilled; ///< liquid that the cell still lacks to be full at this expansion, mm³; 0 where it is full
};

/// Thin-gap flow of evenly expanding foam, integrated over time, so that neither viscosity nor rate matter: W
/// ≥ 0 with div(M grad W) = h/E − l0 where W > 0, no flux at walls, and an unfilled rest h/E − l0 − div(M
/// grad W) ≥ 0 where W = 0. An obstacle problem: the full cells are found by projected Gauss-Seidel sweeps, W
/// in them by multigrid, in turn until neither changes. Sources: Richardson (1972), J. Fluid Mech. 56,
/// 609–618; Elliott and Janovsky (1981), Proc. Roy. Soc. Edinburgh 88A, 93–107 (the inequality); both from
/// memory.
class Rise {
  public:
    Rise(const Cells& cells, const Links& links, const Liquid& liquid, double full_expansion);

    double first_touch() const { return first_touch_; } ///< expansion at which the first cell is full
    double full_expansion() const { return full_expansion_; }

    Front start() const; ///< before anything touches the plate
    /// The front at a greater expansion than `before`'s, below full_expansion().
    Front at(double expansion, const Front& before);
    /// W when the mold is just full; least W is 0, where the last air was. In each piece by itself.
    Values full(const Pieces& pieces);

  private:
    double lacking(std::size_t cell, double expansion) const {
        return cells_.room_mm3[cell] / expansion - liquid_.mm3[cell];
    }
    double unfilled(const Values& push, std::size_t cell, double expansion) const;
    void sweep(Values& push, double expansion) const;

    const Cells& cells_;
    const Links& links_;
    const Liquid& liquid_;
    double full_expansion_ = 0;
    double first_touch_ = 0;
    double tolerance_mm3_ = 0;
    Values stiff_; ///< sum of each cell's links
    Multigrid multigrid_;
};

} // namespace drawercast::air
