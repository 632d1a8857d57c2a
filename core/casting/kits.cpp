// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/kits.h"

#include "base/demand.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <optional>
#include <span>

namespace drawercast::casting {
namespace {

using Whole = std::int64_t; // whole grains, so that equal sums are equal whatever their order
Whole price_grains(double price) { return std::llround(price * 10000); }
Whole whole_up(double ml) { return static_cast<Whole>(std::ceil(ml)); }

struct Kind {
    Whole volume = 0;
    Whole price = 0;
    Whole most = 0; ///< pieces there are
};

struct Choice {
    Whole price = 0;
    Whole pieces = 0;
    std::vector<int> counts; ///< of each kind so far, in file order
};

/// Of two ways to the same volume.
bool better(const Choice& a, const Choice& b) {
    if (a.price != b.price) return a.price < b.price;
    if (a.pieces != b.pieces) return a.pieces < b.pieces;
    return a.counts > b.counts; // more of those listed first
}

/// Over all sums of volumes: the best choice for each sum below `need`, and the best set that covers it.
class Cover {
  public:
    explicit Cover(Whole need) : need_(need) {
        open_[0] = {};
        if (need <= 0) best_ = Choice{};
    }

    void add(const Kind& kind) {
        for (auto& [sum, choice] : open_) choice.counts.push_back(0);
        if (best_) best_->counts.push_back(0);
        // Any number of pieces up to `most` is a sum of some of these lots, so each lot is only taken or
        // left.
        Whole rest = kind.most;
        for (Whole lot = 1; rest > 0; lot *= 2) {
            take_or_leave(kind, std::min(lot, rest));
            rest -= lot;
        }
    }

    /// Nothing where all there is does not cover the need.
    const std::optional<Choice>& best() const { return best_; }

  private:
    void take_or_leave(const Kind& kind, Whole lot) {
        std::map<Whole, Choice> next = open_;
        for (const auto& [sum, from] : open_) {
            Choice choice = from;
            choice.price += lot * kind.price;
            choice.pieces += lot;
            choice.counts.back() += static_cast<int>(lot);
            if (best_ && choice.price > best_->price) continue;
            const Whole total = sum + lot * kind.volume;
            if (total >= need_) {
                finish(total, choice);
                continue;
            }
            const auto [at, fresh] = next.try_emplace(total, choice);
            if (!fresh && better(choice, at->second)) at->second = choice;
        }
        open_ = std::move(next);
    }

    void finish(Whole sum, const Choice& choice) {
        if (best_ && !covers_better(sum, choice)) return;
        best_sum_ = sum;
        best_ = choice;
    }

    bool covers_better(Whole sum, const Choice& choice) const {
        if (choice.price != best_->price) return choice.price < best_->price;
        return sum != best_sum_ ? sum < best_sum_ : better(choice, *best_);
    }

    Whole need_;
    std::map<Whole, Choice> open_;
    std::optional<Choice> best_;
    Whole best_sum_ = 0;
};

std::optional<std::vector<int>> cheapest(std::span<const Kind> kinds, Whole need) {
    Cover cover(need);
    for (const Kind& kind : kinds) cover.add(kind);
    if (!cover.best()) return std::nullopt;
    return cover.best()->counts;
}

std::vector<KitCount> named(const std::vector<job::Kit>& kits, const std::vector<int>& counts) {
    std::vector<KitCount> out;
    for (std::size_t i = 0; i < counts.size(); ++i)
        if (counts[i] > 0) out.push_back({kits[i].name, counts[i]});
    return out;
}

double volume_ml(const std::vector<job::Kit>& kits, const std::vector<int>& counts) {
    double sum = 0;
    for (std::size_t i = 0; i < counts.size(); ++i) sum += counts[i] * kits[i].volume_ml;
    return sum;
}

} // namespace

Purchase purchase_of(const PurchaseIn& in) {
    DRAWERCAST_DEMAND(!in.kits.empty(), "a purchase needs kits to choose from");
    Purchase out;
    out.needed_ml = in.mixed_ml * (1 + spare_share);
    const Whole need = whole_up(out.needed_ml);

    std::vector<Kind> shelf;
    std::vector<Kind> shop;
    std::vector<int> all;
    for (const job::Kit& kit : in.kits) {
        const auto volume = static_cast<Whole>(kit.volume_ml);
        shelf.push_back({volume, 0, kit.at_hand});
        shop.push_back({volume, price_grains(kit.price), volume > 0 ? need / volume + 1 : 0});
        all.push_back(kit.at_hand);
    }
    const auto enough = cheapest(shelf, need);
    const std::vector<int> opened = enough.value_or(all);
    double covered_ml = volume_ml(in.kits, opened);
    out.from_shelf = named(in.kits, opened);
    if (!enough) {
        const auto bought =
            cheapest(shop, whole_up(out.needed_ml - covered_ml)).value_or(std::vector<int>(in.kits.size()));
        covered_ml += volume_ml(in.kits, bought);
        out.kits = named(in.kits, bought);
        for (std::size_t i = 0; i < bought.size(); ++i) out.price += bought[i] * in.kits[i].price;
    }
    out.left_over_ml = covered_ml - out.needed_ml;
    return out;
}

} // namespace drawercast::casting
