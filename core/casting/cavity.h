// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/answers.h"
#include "casting/contacts.h"
#include "casting/crowds.h"
#include "layout/insert.h"
#include "layout/pocket.h"

#include <memory>
#include <optional>
#include <unordered_map>
#include <vector>

namespace drawercast::casting {

struct CavityPocket {
    std::shared_ptr<const layout::PlacedPocket> pocket; ///< by instance
    std::optional<double> volume_ml;                    ///< of the object, measured
    bool operator==(const CavityPocket&) const = default;
};

struct CavityIn {
    std::shared_ptr<const layout::Insert> insert; ///< by instance
    double fillet_mm = 5;                         ///< radius as made
    double enlargement = 1;                       ///< k
    std::vector<CavityPocket> pockets;
    bool operator==(const CavityIn&) const = default;
};

/// What the mold holds: V_net = A_insert·H − V_blocks − V_fillet. V_fillet = ∫₀^r [area(∪(B ⊕ x_B(z)) ∩
/// opening) − area(∪B ∩ opening)] dz over the feet B of all blocks; none at box walls or fillers. Where
/// pockets stand alone this is their sum; see correction.h for the rest. From scratch.
Cavity cavity_of(const CavityIn& in);

/// The same, quickly, after few pockets changed. The answer never depends on what was asked before: bit for
/// bit that of cavity_of.
class CavityMemory {
  public:
    Cavity update(const CavityIn& in);

    /// Where `liquid_ml` in the mold of the last update stands over the board, mm; fillets left out.
    double liquid_level_mm(double liquid_ml) const;

  private:
    struct KnownForm {
        FormIn in;
        std::shared_ptr<const FormCasting> casting;
    };

    bool on_same_ground(const CavityIn& in) const;
    void start_anew(const CavityIn& in);
    std::vector<int> take_over(const CavityIn& in, std::vector<shape::Box>& dirty);
    Place place_of(const CavityPocket& pocket);
    std::shared_ptr<const FormCasting> casting_for(const CavityPocket& pocket);
    void drop_unused_forms();
    void sum_up();
    double room_below_mm3(double height_mm) const;
    double room_at_mm2(double height_mm) const;

    double enlargement_ = 1;
    std::unique_ptr<Ground> ground_;
    std::unordered_multimap<const layout::PocketForm*, KnownForm> forms_;
    std::vector<CavityPocket> pockets_;
    std::vector<Place> places_; ///< as pockets_
    Contacts contacts_;
    Crowds crowds_;
    Cavity finished_;    ///< the answer in finished sizes
    double even_mm_ = 0; ///< no block ends or narrows below this height
};

} // namespace drawercast::casting
