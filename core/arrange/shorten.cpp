// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/shorten.h"

#include "arrange/retry.h"

#include <algorithm>
#include <cmath>

namespace drawercast::arrange {

namespace {

constexpr double cut_at_most = 0.005;
constexpr double cut_at_least = 0.001;
constexpr double finest = 0.05; ///< of the least cut
constexpr int strikes = 3;
constexpr int tries = 200;
constexpr int fine_tries = 40;
constexpr std::size_t patience = 10; ///< failures in a row, before a smaller cut is tried

/// The stands with all that is right of `cut` moved by `by`.
Stands cut_at(const Search& search, double cut, double by) {
    Stands stands = search.stands();
    for (std::size_t i = 0; i < stands.size(); ++i)
        if (stands[i].at.x + search.figure(i).box.center().x > cut) stands[i].at.x -= by;
    return stands;
}

} // namespace

Shortening::Shortening(Search& search, const shape::Box& box, double enough, Clock clock)
    : search_(search), box_(box), enough_(enough), clock_(std::move(clock)) {}

bool Shortening::over(double share) const {
    return length_ <= enough_ || clock_.done() >= share || clock_.stop();
}

void Shortening::resize(double length) { search_.set_box({box_.min, {box_.min.x + length, box_.max.y}}); }

void Shortening::start(double length) {
    for (;; length *= 1.12) {
        resize(length);
        for (std::size_t i = 0; i < search_.size(); ++i)
            if (search_.may_move(i)) search_.put_anywhere(i);
        search_.forget_weights();
        if (search_.part(1, 25, [] { return false; })) break;
    }
    start(length, search_.stands());
}

void Shortening::start(double length, const Stands& stands) {
    length_ = length;
    stands_ = stands;
}

/// The best with as much cut out somewhere as it is to get shorter.
void Shortening::cut_out(double length) {
    resize(length_);
    search_.set_stands(stands_);
    const double cut = box_.min.x + search_.random().between(0, length_);
    search_.set_stands(cut_at(search_, cut, length_ - length));
    resize(length);
}

/// From the best into that length; where that fails, from what failed.
bool Shortening::squeeze(double length, double share) {
    const auto stop = [&] { return over(share); };
    cut_out(length);
    for (Retry retry;; retry.after_failure(search_)) {
        search_.forget_weights();
        if (search_.part(strikes, tries, stop)) break;
        if (retry.failures() == patience || stop()) return false;
    }
    start(length, search_.stands());
    return true;
}

void Shortening::explore(double until_done) {
    for (double cut = cut_at_most; !over(until_done);)
        cut = squeeze(length_ * (1 - cut), until_done) ? cut_at_most : std::max(cut_at_least, cut / 2);
}

void Shortening::refine(double until_done) {
    const double began = clock_.done();
    while (!over(until_done)) {
        const double late = (clock_.done() - began) / std::max(until_done - began, 1e-9);
        const double length = length_ * (1 - cut_at_least * std::pow(finest, late));
        cut_out(length);
        search_.forget_weights();
        if (search_.part(1, fine_tries, [&] { return over(until_done); })) start(length, search_.stands());
    }
}

} // namespace drawercast::arrange
