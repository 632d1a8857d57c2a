// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/cut_tree.h"
#include "stock/one_sheet.h"
#include "stock/unlimited_table.h"

#include <queue>

#include <cstdint>
#include <unordered_map>
#include <utility>
#include <vector>

namespace drawercast::stock {

/// The best-first search behind best_limited. Patterns are kept in the order they were made; those taken up
/// ("closed") have been joined with each other.
class LimitedSearch {
  public:
    explicit LimitedSearch(const OneSheetIn& in);
    OneSheetAnswer run(int most_steps);

  private:
    struct Pattern { ///< a piece, or two patterns side by side or one behind the other; grown as in the table
        Micro width = 0;
        Micro height = 0;
    };
    struct Promise { ///< the most that a pattern may become part of
        std::int64_t value = 0;
        int pattern = 0;
        bool operator<(const Promise& other) const {
            return value != other.value ? value < other.value : pattern > other.pattern;
        }
    };

    void fill_rest();
    void add_single_pieces();
    void join(int a, int b, Saw joint);
    bool within_limits() const;
    bool dominated(const Pattern& pattern) const;
    void keep(const Pattern& pattern, std::int64_t value);
    std::int64_t promise_of(const Pattern& pattern, std::int64_t value) const;
    std::uint64_t hash_of_counts() const;
    const std::uint16_t* counts_of(int pattern) const {
        return &counts_[static_cast<std::size_t>(pattern) * in_.pieces.size()];
    }

    OneSheetIn in_;
    Micro width_; ///< grown
    Micro height_;
    UnlimitedTable unlimited_;
    std::vector<std::int64_t> rest_; ///< by table row and column: most value outside a corner rectangle
    std::vector<Pattern> patterns_;
    std::vector<std::int64_t> values_;
    std::vector<std::uint16_t> counts_; ///< row by row, one row a pattern
    std::vector<std::uint16_t> joined_; ///< counts of the pattern being made
    std::int64_t value_of_all_ = 0;
    std::int64_t best_ = 0;
    std::priority_queue<Promise> open_;
    std::vector<int> closed_;
    std::unordered_map<std::uint64_t, std::vector<int>> by_counts_;
};

} // namespace drawercast::stock
