// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "arrange/figure.h"
#include "arrange/pair_table.h"
#include "arrange/random.h"
#include "arrange/room.h"
#include "base/watch.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace drawercast::arrange {

/// Where a figure stands: its origin, which of its turns, and how much further it is turned.
struct Stand {
    shape::Vec at;
    std::size_t turn = 0;
    double further_deg = 0; ///< of figures that may stand at any angle
    bool operator==(const Stand&) const = default;
};
using Stands = std::vector<Stand>;

/// Figures that overlap are parted, one moved at a time to where its weighted overlaps are least, while the
/// overlaps that stay grow heavier: guided local search (Voudouris and Tsang 1999) on nesting as in Egeblad,
/// Nielsen and Odgaard, EJOR 183 (2007), and Umetani et al., Int. Trans. Oper. Res. 16 (2009); overlaps
/// weighed by discs and places found by sampling and descent after Gardeyn and Vanden Berghe, arXiv
/// 2509.13329. How many samples, and how fast weights grow and fade: our guess. Deterministic by seed.
class Search {
  public:
    Search(Room room, std::vector<std::vector<TurnedFigure>> figures, std::uint64_t seed);

    std::size_t size() const { return figures_.size(); }
    const Stands& stands() const { return stands_; }
    const TurnedFigure& figure(std::size_t i) const { return turned_at(i, stands_[i]).figure; }
    Random& random() { return random_; }
    std::uint64_t evaluations() const { return evaluations_; }

    void set_box(const shape::Box& box); ///< another for the room; figures are put back within it
    void set_stands(Stands stands);      ///< likewise
    void set_fixed(std::vector<bool> fixed) { fixed_ = std::move(fixed); }
    bool may_move(std::size_t i) const { return !fixed_[i] && !out_[i]; }
    void set_any_angle(std::vector<bool> any) { any_angle_ = std::move(any); } ///< turned finely too
    void set_left_out(std::vector<bool> out); ///< these neither stand anywhere nor are in the way
    void put_anywhere(std::size_t i);         ///< at random
    void forget_weights();
    void swap(std::size_t a, std::size_t b);

    /// Until nothing overlaps (true), `strikes` tries in a row have not got better, or `stop` says so. Where
    /// it fails, the stands with the least overlap are kept.
    bool part(int strikes, int tries, const std::function<bool()>& stop);

    double total() const;                   ///< of all overlaps, not weighted; 0 where nothing is too near
    double overlap_of(std::size_t i) const; ///< of that figure with all others
    /// Of two; `j` = size(): with the room.
    double overlap(std::size_t i, std::size_t j) const { return loss(i, j); }

  private:
    /// A figure at a turn, and where its origin may be then.
    struct Turned {
        TurnedFigure figure;
        shape::Box origins;
    };
    const Turned& turned_at(std::size_t i, const Stand& stand) const;
    Turned turned_further(std::size_t i, const Stand& stand) const;
    void turn_finely(std::size_t i, Stand& stand, double& value);
    void number_figures();
    double pair(std::size_t i, const Stand& stand, const TurnedFigure& figure, std::size_t j, double enough);
    double outside(const TurnedFigure& figure, shape::Vec at) const;
    void look_around(const shape::Box& box);
    double price(std::size_t i, const Stand& stand, double enough);
    Stand descended(std::size_t i, Stand from, double& value, double step, double least);
    void move(std::size_t i);
    void move_all();
    void renew(std::size_t i);
    void renew_all();
    void weigh();
    Stand clamped(std::size_t i, Stand stand) const;
    double& weight(std::size_t i, std::size_t j) { return weights_[i * (size() + 1) + j]; }
    double& loss(std::size_t i, std::size_t j) { return losses_[i * (size() + 1) + j]; }
    double loss(std::size_t i, std::size_t j) const { return losses_[i * (size() + 1) + j]; }

    Room room_;
    std::vector<std::vector<Turned>> figures_;
    std::vector<Turned> further_; ///< as it stands, where that is between its turns
    std::vector<bool> any_angle_;
    Turned trial_; ///< the figure and further turn that are looked at now
    Stand trial_stand_;
    std::size_t trial_of_ = 0;
    Stands stands_;
    std::vector<shape::Box> boxes_;
    std::vector<std::size_t> near_; ///< looked up last
    std::vector<bool> fixed_;
    std::vector<bool> out_;
    std::vector<double> weights_; ///< of pairs; the last column: with the room
    std::vector<double> losses_;
    std::vector<double> sizes_;        ///< of pairs: what their overlap is worth, by the figures' sizes
    std::vector<std::size_t> numbers_; ///< of each figure's first turn among all turned figures there are
    std::optional<PairTables> tables_; ///< by those numbers; none where there are very many
    double soft_ = 1;
    double widest_wall_ = 0;
    Random random_;
    std::uint64_t evaluations_ = 0;
};

} // namespace drawercast::arrange
