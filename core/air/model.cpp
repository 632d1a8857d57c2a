// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/model.h"

#include "air/widths.h"

#include <algorithm>
#include <utility>

namespace drawercast::air {
namespace {

constexpr int placing_rounds = 3;

double fit_pitch(const std::vector<Slot>& slots) {
    double pitch = coarsest_pitch_mm;
    for (const Slot& slot : slots) pitch = std::min(pitch, slot.width_mm / cells_per_slot);
    return std::max(pitch, least_pitch_mm);
}

std::vector<Puddle> puddles_of(const MapIn& in, const Cells& cells, const Channels& channels) {
    std::vector<Puddle> puddles;
    for (const SetPour& pour : in.pours) {
        Puddle puddle = puddle_at(pour.at, pour.ml / in.poured_ml, in.floor, cells, channels);
        if (!puddle.cells.empty()) puddles.push_back(std::move(puddle));
    }
    return puddles;
}

/// A floor up to the liquid in it.
struct Setup {
    explicit Setup(const MapIn& in)
        : slots(slots_of(in.floor)), cells(cells_of(in.floor, fit_pitch(slots))), pieces(pieces_of(cells)),
          widths(widths_of(in.floor, cells)), links(links_of(cells, widths)),
          channels(in.pours.empty() ? Channels{} : channels_of(cells, widths)),
          liquid(liquid_of(cells, pieces, in.full_expansion, puddles_of(in, cells, channels))),
          rise(cells, links, liquid, in.full_expansion) {}
    Setup(const Setup&) = delete;
    Setup& operator=(const Setup&) = delete;

    std::vector<Slot> slots;
    Cells cells;
    Pieces pieces;
    Values widths;
    Links links;
    Channels channels;
    Liquid liquid;
    Rise rise;
};

/// The last moment but one is the earliest that can be told: halfway between full and not.
Values arrival_of(const History& history) {
    const Cells& cells = history.cells();
    Values arrival(cells.mesh.size(), 0.0);
    const auto& moments = history.moments();
    for_each_cell(cells.mesh, [&](std::size_t cell) {
        if (!cells.open(cell)) return;
        double before = 0;
        for (const Moment& moment : moments) {
            const double now = moment.front.expansion;
            if (moment.dry.piece[cell] == 0) {
                arrival[cell] = before > 0 ? (before + now) / 2 : now;
                return;
            }
            before = now;
        }
        arrival[cell] = history.full_expansion();
    });
    return arrival;
}

} // namespace

struct Model::Parts {
    explicit Parts(MapIn given)
        : in(std::move(given)), setup(in), history(setup.cells, setup.pieces, setup.rise) {}

    MapIn in;
    Setup setup;
    History history;
    AirTree tree; ///< of the history as followed
    AirMap map;
};

Model::Model(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
Model::~Model() = default;

const MapIn& Model::in() const { return parts_->in; }
const AirMap& Model::map() const { return parts_->map; }

std::unique_ptr<Model> Model::make(MapIn in, const Watch& watch) {
    auto parts = std::make_unique<Parts>(std::move(in));
    Setup& setup = parts->setup;
    if (!parts->history.follow(watch)) return nullptr;
    parts->tree = air_tree_of(parts->history);
    AirMap& map = parts->map;
    map.mesh = setup.cells.mesh;
    map.first_touch = setup.rise.first_touch();
    map.full_expansion = parts->in.full_expansion;
    map.arrival = arrival_of(parts->history);
    map.pockets = air_pockets_of(parts->history);
    map.channels =
        parts->in.pours.empty() ? channels_of(setup.cells, setup.widths) : std::move(setup.channels);
    map.fed_by = fed_by(setup.cells, map.channels, parts->history.push_when_full());
    double room = 0;
    for (const double mm3 : setup.cells.room_mm3) room += mm3;
    join_small(room * least_pour_ml / parts->in.poured_ml, setup.cells, setup.widths, map.channels,
               map.fed_by);
    map.pour = pour_map_of(parts->in.poured_ml, parts->in.pours, parts->in.floor.height_mm, setup.cells,
                           map.channels, map.fed_by);
    map.shut = shut_channels_of(map.pour, map.channels);
    map.narrow = setup.slots;
    map.slow = slowness_of(parts->in.floor, setup.cells);
    return std::unique_ptr<Model>(new Model(std::move(parts)));
}

std::optional<Vented> Model::vent(const VentsIn& in, const Watch& watch) const {
    const Cells& cells = parts_->setup.cells;
    const auto& pockets = parts_->map.pockets;
    History finer = parts_->history;
    if (!finer.refine_at(cells_under(in.kept, cells.mesh), watch)) return std::nullopt;
    Vented out;
    std::vector<std::size_t> under;
    for (int round = 0; round < placing_rounds;
         ++round) { // where vents get full must be known well to place them
        out.vents = vents_of(in, parts_->in.floor, cells, air_tree_of(finer), pockets);
        under = cells_under(out.vents, cells.mesh);
        if (!finer.refine_at(under, watch)) return std::nullopt;
    }
    const Trapped trapped = trapped_by(air_tree_of(finer), pockets, under);
    out.air_ml = trapped.air_ml;
    out.shares_ml = trapped.shares_ml;
    return out;
}

Vented Model::sketch(const VentsIn& in) const {
    const Cells& cells = parts_->setup.cells;
    const auto& pockets = parts_->map.pockets;
    Vented out;
    out.vents = vents_of(in, parts_->in.floor, cells, parts_->tree, pockets);
    const Trapped trapped = trapped_by(parts_->tree, pockets, cells_under(out.vents, cells.mesh));
    out.air_ml = trapped.air_ml;
    out.shares_ml = trapped.shares_ml;
    return out;
}

std::optional<shape::Vec> last_place(const MapIn& in) {
    Setup setup(in);
    const Values push = setup.rise.full(setup.pieces);
    std::optional<std::size_t> least;
    for_each_cell(setup.cells.mesh, [&](std::size_t cell) {
        if (setup.cells.open(cell) && (!least || push[cell] < push[*least])) least = cell;
    });
    if (!least) return std::nullopt;
    return setup.cells.mesh.center(*least);
}

} // namespace drawercast::air
