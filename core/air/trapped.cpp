// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/trapped.h"

#include "base/demand.h"

#include <algorithm>
#include <limits>
#include <tuple>

namespace drawercast::air {
namespace {

/// What one piece of air holds at a moment, mL: the room that foam has not filled.
std::vector<double> air_ml(const Moment& moment) {
    std::vector<double> out(static_cast<std::size_t>(moment.dry.count) + 1, 0.0);
    for (std::size_t cell = 0; cell < moment.dry.piece.size(); ++cell)
        out[static_cast<std::size_t>(moment.dry.piece[cell])] +=
            moment.front.expansion * moment.front.unfilled[cell] / 1000;
    out[0] = 0;
    return out;
}

std::vector<int> children_of(const std::vector<int>& parents, int pieces) {
    std::vector<int> count(static_cast<std::size_t>(pieces) + 1, 0);
    for (std::size_t i = 1; i < parents.size(); ++i) ++count[static_cast<std::size_t>(parents[i])];
    return count;
}

AirPocket pocket_of(const Moment& moment, int piece, const Mesh& mesh) {
    AirPocket pocket;
    std::vector<std::size_t> last;
    double sum = 0;
    for_each_cell(mesh, [&](std::size_t cell) {
        if (moment.dry.piece[cell] != piece) return;
        last.push_back(cell);
        pocket.at = pocket.at + mesh.center(cell) * moment.front.unfilled[cell];
        sum += moment.front.unfilled[cell];
    });
    pocket.at = pocket.at * (1 / sum);
    double nearest = std::numeric_limits<double>::infinity();
    for (const std::size_t cell : last) {
        const double mm = length(mesh.center(cell) - pocket.at);
        if (mm < nearest) nearest = mm, pocket.cell = cell;
    }
    return pocket;
}

} // namespace

std::vector<AirPocket> air_pockets_of(const History& history) {
    const auto& moments = history.moments();
    std::vector<AirPocket> pockets;
    std::vector<double> parted; // air of each piece of the moment when it parted from others
    for (std::size_t k = 0; k < moments.size(); ++k) {
        const std::vector<double> air = air_ml(moments[k]);
        std::vector<double> now = air;
        if (k > 0) {
            const std::vector<int> parents = parents_of(moments[k].dry, moments[k - 1].dry);
            const std::vector<int> children = children_of(parents, moments[k - 1].dry.count);
            for (std::size_t i = 1; i < now.size(); ++i) {
                const auto parent = static_cast<std::size_t>(parents[i]);
                if (children[parent] == 1) now[i] = parted[parent];
            }
        }
        parted = std::move(now);
        std::vector<int> children(parted.size(), 0);
        double gone_by = history.full_expansion();
        if (k + 1 < moments.size()) {
            children = children_of(parents_of(moments[k + 1].dry, moments[k].dry), moments[k].dry.count);
            gone_by = moments[k + 1].front.expansion;
        }
        for (std::size_t i = 1; i < children.size(); ++i) {
            if (children[i] > 0 || parted[i] < least_pocket_ml) continue;
            pockets.push_back(pocket_of(moments[k], static_cast<int>(i), history.cells().mesh));
            pockets.back().expansion = (moments[k].front.expansion + gone_by) / 2;
            pockets.back().air_ml = parted[i];
        }
    }
    std::stable_sort(pockets.begin(), pockets.end(), [](const AirPocket& a, const AirPocket& b) {
        return std::tie(a.expansion, a.cell) < std::tie(b.expansion, b.cell);
    });
    return pockets;
}

AirTree air_tree_of(const History& history) {
    AirTree tree;
    tree.mesh = history.cells().mesh;
    const auto& moments = history.moments();
    for (std::size_t k = 0; k < moments.size(); ++k) {
        const Moment& moment = moments[k];
        tree.moments.push_back({moment.front.expansion, moment.dry.piece, air_ml(moment),
                                k > 0 ? parents_of(moment.dry, moments[k - 1].dry)
                                      : std::vector<int>(static_cast<std::size_t>(moment.dry.count) + 1, 0)});
    }
    return tree;
}

namespace {

/// Shares out what some pieces of air hold among the pockets that they end in. Once over the pockets for all
/// of them: a mold of a thousand blocks has hundreds of both, and is asked hundreds of times.
void share_out(const AirTree::Moment& moment, const std::vector<char>& stays,
               const std::vector<AirPocket>& pockets, Trapped& out) {
    std::vector<double> own(stays.size(), 0.0);
    const auto ends_in = [&](const AirPocket& p) {
        return p.expansion > moment.expansion ? static_cast<std::size_t>(moment.piece[p.cell]) : 0;
    };
    for (const AirPocket& p : pockets) own[ends_in(p)] += p.air_ml;
    for (std::size_t i = 0; i < pockets.size(); ++i) {
        const std::size_t piece = ends_in(pockets[i]);
        if (stays[piece]) out.shares_ml[i] += moment.air_ml[piece] * pockets[i].air_ml / own[piece];
    }
}

} // namespace

Trapped trapped_by(const AirTree& tree, const std::vector<AirPocket>& pockets,
                   const std::vector<std::size_t>& vents) {
    Trapped out;
    out.shares_ml.assign(pockets.size(), 0.0);
    std::vector<char> shut(1, 0); // pieces of the moment before that are counted already
    for (const AirTree::Moment& moment : tree.moments) {
        std::vector<char> vented(moment.air_ml.size(), 0);
        for (const std::size_t cell : vents) vented[static_cast<std::size_t>(moment.piece[cell])] = 1;
        std::vector<char> now(moment.air_ml.size(), 0);
        std::vector<char> stays(moment.air_ml.size(), 0); // from this moment on
        bool any = false;
        for (std::size_t i = 1; i < now.size(); ++i) {
            now[i] = shut[static_cast<std::size_t>(moment.parents[i])];
            if (now[i] || vented[i]) continue;
            now[i] = stays[i] = 1;
            any = true;
            out.air_ml += moment.air_ml[i];
        }
        if (any) share_out(moment, stays, pockets, out);
        shut = std::move(now);
    }
    return out;
}

StaysIn::StaysIn(const AirTree& tree, const std::vector<AirPocket>& pockets, std::size_t pocket,
                 const std::vector<std::size_t>& vents) {
    const AirPocket& own = pockets[pocket];
    for (const AirTree::Moment& moment : tree.moments) {
        const int piece = moment.piece[own.cell];
        if (own.expansion <= moment.expansion || piece == 0) return;
        if (std::any_of(vents.begin(), vents.end(),
                        [&](std::size_t cell) { return moment.piece[cell] == piece; }))
            continue;
        double all = 0;
        for (const AirPocket& p : pockets)
            if (p.expansion > moment.expansion && moment.piece[p.cell] == piece) all += p.air_ml;
        steps_.push_back({&moment, piece, moment.air_ml[static_cast<std::size_t>(piece)] * own.air_ml / all});
    }
}

double StaysIn::with(std::size_t cell) const {
    for (const Step& step : steps_)
        if (step.moment->piece[cell] != step.piece) return step.share_ml;
    return 0;
}

} // namespace drawercast::air
