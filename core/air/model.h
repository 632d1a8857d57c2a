// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/channels.h"
#include "air/pour_map.h"
#include "air/torsion.h"
#include "air/vents.h"

#include <memory>
#include <optional>
#include <vector>

namespace drawercast::air {

inline constexpr double coarsest_pitch_mm = 4; ///< of the mesh
inline constexpr double cells_per_slot = 3;    ///< across the narrowest slot
inline constexpr double least_pour_ml = 10;    ///< of a channel of its own (our guess)
inline constexpr double least_pitch_mm = 2.5; ///< finer would help only slots that foam does not come through

struct MapIn {
    Floor floor;
    double poured_ml = 0;
    double full_expansion = 0; ///< E_c = V_net/V_L
    std::vector<SetPour> pours;
    bool operator==(const MapIn&) const = default;
};

/// Where air stays and when each place gets full.
struct AirMap {
    Mesh mesh;
    double first_touch = 0;
    double full_expansion = 0;
    Values arrival; ///< expansion at which each cell gets full; 0 in walls
    std::vector<AirPocket> pockets;
    Channels channels;
    std::vector<int> fed_by; ///< the channel whose foam fills each cell, −1 in walls
    PourMap pour;
    std::vector<ShutChannel> shut;
    std::vector<Slot> narrow; ///< slots; Qt takes that word for its own
    std::vector<Slowness> slow;
};

/// Vents and what they leave.
struct Vented {
    std::vector<Vent> vents;
    double air_ml = 0;             ///< V_air
    std::vector<double> shares_ml; ///< of each air pocket
    bool operator==(const Vented&) const = default;
};

/// A floor worked out, and kept to ask about vents.
class Model {
  public:
    /// Nothing where `watch` asked to stop.
    static std::unique_ptr<Model> make(MapIn in, const Watch& watch);
    ~Model();

    const MapIn& in() const;
    const AirMap& map() const;
    /// Nothing where `watch` asked to stop. The answer does not depend on what was asked before.
    std::optional<Vented> vent(const VentsIn& in, const Watch& watch) const;
    /// The same without a solve, for a vent that follows the hand: when the places under the vents get full
    /// is read off the moments the map was made of, so that shares are rougher than vent()'s. Any thread, any
    /// time.
    Vented sketch(const VentsIn& in) const;

  private:
    struct Parts;
    explicit Model(std::unique_ptr<Parts> parts);
    std::unique_ptr<Parts> parts_;
};

/// The last place to fill alone, without the way there: one solve, for a picture that follows the hand.
std::optional<shape::Vec> last_place(const MapIn& in);

} // namespace drawercast::air
