// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/links.h"
#include "air/mesh.h"

#include <vector>

namespace drawercast::air {

/// Solves Σ link·(x − x of the neighbor) = right side over some of the cells, x = 0 in the others: conjugate
/// gradients, preconditioned by one multigrid cycle over ever coarser cells (each 2 × 2 of the finer ones,
/// their links added up; symmetric Gauss-Seidel before and after). Sources: Hestenes and Stiefel (1952), J.
/// Res. NBS 49, 409–436; over-corrected aggregation: Braess (1995), Computing 55, 379–393.
class Multigrid {
  public:
    Multigrid(const Mesh& mesh, const Links& links);

    /// The cells to solve for; cells without links are never among them.
    void choose(const Marks& among);

    /// Adds the solution's correction to `x` for the residual `r`, which becomes what is left of it, until
    /// that is at most `tolerance` in every chosen cell (or it no longer gets less). Where the chosen cells
    /// are a whole piece with no neighbor left out, the residual must add up to 0 and x is known but for a
    /// constant. Iterations taken.
    int solve(Values& x, Values& r, double tolerance, int most = 400);

  private:
    struct Level {
        Mesh mesh;
        Links links{0};
        Values diagonal;
        Values inverse; ///< 0 in cells left out
        Values x, b;
    };

    void coarsen(const Level& fine, Level& coarse) const;
    void cycle(std::size_t depth);
    static void sweep_forward(Level& level);
    static void sweep_backward(Level& level);
    void precondition(const Values& r, Values& z);

    const Links& links_;
    std::vector<Level> levels_;
    Values direction_, applied_, z_;
};

} // namespace drawercast::air
