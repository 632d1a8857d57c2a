// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/vents.h"

#include "shape/segments.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace drawercast::air {
namespace {

using shape::Vec;

constexpr int reach_mm = 60;   ///< how far from its pocket a vent is looked for
constexpr int tries = 300;     ///< places looked at there
constexpr double near_mm = 40; ///< a vent this close does for one of practice's (our guess)
constexpr int slide_mm = 30;   ///< how far a corner or wall vent may move along the wall

double strip_meat(Vec at, double diameter_mm, const KeptClear::Strip& strip) {
    return length(at - shape::nearest_on(at, strip.from, strip.to)) - strip.half_mm - diameter_mm / 2;
}

/// Steps on the millimeter near by, on every fourth further off, nearest first.
std::vector<Vec> steps_around() {
    constexpr int fine = 6, coarse = 4;
    std::vector<Vec> out;
    for (int y = -reach_mm; y <= reach_mm; ++y)
        for (int x = -reach_mm; x <= reach_mm; ++x) {
            const int square = x * x + y * y;
            const bool counted = square <= fine * fine || (x % coarse == 0 && y % coarse == 0);
            if (counted && square <= reach_mm * reach_mm)
                out.push_back({static_cast<double>(x), static_cast<double>(y)});
        }
    std::stable_sort(out.begin(), out.end(), [](Vec a, Vec b) { return dot(a, a) < dot(b, b); });
    return out;
}

class Placer {
  public:
    Placer(const VentsIn& in, const Floor& floor, const Cells& cells, const AirTree& tree,
           const std::vector<AirPocket>& pockets)
        : in_(in), floor_(floor), cells_(cells), tree_(tree), pockets_(pockets), vents_(in.kept) {}

    std::vector<Vent> place() {
        if (!in_.place_rest) return std::move(vents_);
        add_for_air();
        drop_needless();
        add_corners();
        add_walls();
        return std::move(vents_);
    }

  private:
    Trapped trapped(const std::vector<Vent>& vents) const {
        return trapped_by(tree_, pockets_, cells_under(vents, cells_.mesh));
    }
    bool stands_off(Vec at) const {
        return meat_mm(at, vent_drill_mm, in_.clear) >= meat_diameters * vent_drill_mm;
    }
    /// And not on the brink of a wall, a filler or a through block.
    bool over_foam(Vec at) const {
        const double clear = meat_diameters * vent_drill_mm;
        for (const Vec step : {Vec{0, 0}, Vec{clear, 0}, Vec{-clear, 0}, Vec{0, clear}, Vec{0, -clear}}) {
            const Vec p = at + step;
            if (p.x <= 0 || p.y <= 0 || p.x >= floor_.width_mm || p.y >= floor_.depth_mm) return false;
            if (!cells_.open(cells_.mesh.holding(p))) return false;
        }
        return true;
    }

    /// Time and again a vent for the pocket that keeps most.
    void add_for_air() {
        std::vector<char> hopeless(pockets_.size(), 0);
        for (std::size_t round = 0; round < 2 * pockets_.size(); ++round) {
            const Trapped now = trapped(vents_);
            std::size_t most = pockets_.size();
            for (std::size_t i = 0; i < pockets_.size(); ++i)
                if (!hopeless[i] && now.shares_ml[i] > vented_ml &&
                    (most == pockets_.size() || now.shares_ml[i] > now.shares_ml[most]))
                    most = i;
            if (most == pockets_.size()) return;
            if (const auto vent = vent_for(most, now.shares_ml[most]))
                vents_.push_back(*vent);
            else
                hopeless[most] = 1;
        }
    }

    /// The place nearest to the pocket that stands off and lets its air out; else the best there is.
    std::optional<Vent> vent_for(std::size_t pocket, double without_ml) const {
        const Vec cell = cells_.mesh.center(pockets_[pocket].cell);
        const bool inside = cells_.mesh.holding(pockets_[pocket].at) == pockets_[pocket].cell;
        const Vec wanted = inside ? pockets_[pocket].at : cell;
        const Vec whole{std::round(wanted.x), std::round(wanted.y)};
        const StaysIn stays_in(tree_, pockets_, pocket, cells_under(vents_, cells_.mesh));
        std::optional<Vent> best;
        double least = without_ml - vented_ml / 2; // or it is not worth a hole
        int tried = 0;
        for (const Vec step : steps_) {
            const Vent vent{whole + step, vent_drill_mm, VentFor::air};
            if (!over_foam(vent.at) || !stands_off(vent.at)) continue;
            if (++tried > tries) break;
            const double stays = stays_in.with(cells_.mesh.holding(vent.at));
            if (stays < least) best = vent, least = stays;
            if (stays <= vented_ml) break;
        }
        return best;
    }

    /// A vent whose pockets the others serve too.
    void drop_needless() {
        const auto all_vented = [&](const Trapped& now, const Trapped& than) {
            for (std::size_t i = 0; i < pockets_.size(); ++i)
                if (now.shares_ml[i] > std::max(vented_ml, than.shares_ml[i])) return false;
            return true;
        };
        const Trapped now = trapped(vents_);
        for (std::size_t i = vents_.size(); i-- > in_.kept.size();) {
            std::vector<Vent> without = vents_;
            without.erase(without.begin() + static_cast<std::ptrdiff_t>(i));
            if (all_vented(trapped(without), now)) vents_ = std::move(without);
        }
    }

    bool another_near(Vec at) const {
        return std::any_of(vents_.begin(), vents_.end(),
                           [&](const Vent& vent) { return length(vent.at - at) < near_mm; });
    }

    /// At `wanted`, or as near to it along the wall as it can stand.
    void add_practice(Vec wanted, Vec along, VentFor why) {
        if (another_near(wanted)) return;
        for (int i = 0; i <= 2 * slide_mm; ++i) {
            const int step = (i + 1) / 2; // 0, 1, 1, 2, 2, …
            const double aside = i % 2 == 0 ? step : -step;
            const Vec at{std::round(wanted.x + along.x * aside), std::round(wanted.y + along.y * aside)};
            if (!over_foam(at) || !stands_off(at)) continue;
            if (!another_near(at)) vents_.push_back({at, vent_drill_mm, why});
            return;
        }
    }

    void add_corners() {
        const double right = floor_.width_mm - vent_inside_mm;
        const double back = floor_.depth_mm - vent_inside_mm;
        if (right < vent_inside_mm || back < vent_inside_mm) return; // too small for any
        for (const Vec corner : {Vec{vent_inside_mm, vent_inside_mm}, Vec{right, vent_inside_mm},
                                 Vec{right, back}, Vec{vent_inside_mm, back}})
            add_practice(corner, {1, 0}, VentFor::corner);
    }

    void add_walls() {
        const double right = floor_.width_mm - vent_inside_mm;
        const double back = floor_.depth_mm - vent_inside_mm;
        const auto side = [&](Vec from, Vec to) {
            const double mm = length(to - from);
            if (mm <= in_.spacing_mm) return;
            const int pitches = static_cast<int>(std::ceil(mm / in_.spacing_mm - 1e-9));
            const Vec along = (to - from) * (1 / mm);
            for (int i = 1; i < pitches; ++i)
                add_practice(from + (to - from) * (static_cast<double>(i) / pitches), along, VentFor::wall);
        };
        side({vent_inside_mm, vent_inside_mm}, {right, vent_inside_mm});
        side({right, vent_inside_mm}, {right, back});
        side({right, back}, {vent_inside_mm, back});
        side({vent_inside_mm, back}, {vent_inside_mm, vent_inside_mm});
    }

    const VentsIn& in_;
    const Floor& floor_;
    const Cells& cells_;
    const AirTree& tree_;
    const std::vector<AirPocket>& pockets_;
    const std::vector<Vec> steps_ = steps_around();
    std::vector<Vent> vents_;
};

} // namespace

double meat_mm(Vec at, double diameter_mm, const KeptClear& clear) {
    double least = std::numeric_limits<double>::infinity();
    for (const KeptClear::Hole& hole : clear.holes)
        least = std::min(least, length(at - hole.at) - hole.radius_mm - diameter_mm / 2);
    for (const KeptClear::Strip& strip : clear.strips)
        least = std::min(least, strip_meat(at, diameter_mm, strip));
    return least;
}

bool on_strip(Vec at, double diameter_mm, const KeptClear& clear) {
    return std::any_of(clear.strips.begin(), clear.strips.end(),
                       [&](const KeptClear::Strip& strip) { return strip_meat(at, diameter_mm, strip) < 0; });
}

std::vector<std::size_t> cells_under(std::span<const Vent> vents, const Mesh& mesh) {
    std::vector<std::size_t> cells;
    for (const Vent& vent : vents) cells.push_back(mesh.holding(vent.at));
    return cells;
}

std::vector<Vent> vents_of(const VentsIn& in, const Floor& floor, const Cells& cells, const AirTree& tree,
                           const std::vector<AirPocket>& pockets) {
    return Placer(in, floor, cells, tree, pockets).place();
}

} // namespace drawercast::air
