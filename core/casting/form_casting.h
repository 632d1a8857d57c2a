// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/fillet.h"
#include "casting/footprint.h"
#include "casting/layers.h"
#include "layout/pocket.h"

#include <memory>
#include <optional>
#include <vector>

namespace drawercast::casting {

/// Heights at which clay that meets other clay is looked at; see clay_nodes.
inline constexpr int shared_clay_nodes = 12;
/// Heights for a pocket's own clay where it has no closed form, between any two heights of fillets.
inline constexpr int own_clay_nodes = 16;

struct FormIn {
    std::shared_ptr<const layout::PocketForm> form; ///< by instance
    std::optional<double> volume_ml; ///< of the object, measured: stands for its levels' volume
    double insert_mm = 0;            ///< thickness
    double fillet_mm = 0;            ///< radius as if it shrank like the insert: made radius/enlargement
    bool operator==(const FormIn&) const = default;
};

/// What one pocket's form takes of a mold when it stands alone, wherever that is. Object's plane, finished
/// sizes.
struct FormCasting {
    double footprint_mm2 = 0; ///< at the face
    double blocks_mm3 = 0;
    double fillet_mm3 = 0;
    Layers layers;      ///< of the blocks as outlined
    double even_mm = 0; ///< height up to which no block ends or narrows
    std::vector<double>
        reach_mm; ///< how far the clay of each cut reaches: least of the radius and its height
    double greatest_reach_mm = 0;
    Footprint foot;              ///< as clay, without the clay
    std::vector<Footprint> clay; ///< at clay_nodes(fillet_mm, shared_clay_nodes)
};

FormCasting casting_of(const FormIn& in);

/// Volume of a form's levels as outlined, mm³, notches left out.
double levels_mm3(const layout::PocketForm& form, double insert_mm);

/// The fillet of cuts that stand together, by integration over plan areas with `nodes` heights between any
/// two heights of fillets. casting_of uses it where there is no closed form.
double fillet_by_areas(const std::vector<layout::Cut<shape::InObject>>& cuts, double insert_mm,
                       double fillet_mm, int nodes);

} // namespace drawercast::casting
