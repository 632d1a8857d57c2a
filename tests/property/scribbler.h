// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <random>

namespace drawercast::plan::testing {

/// One random act on a job, of the kinds a maker does; the job stays readable (ids unique, pockets of known
/// objects).
class Scribbler {
  public:
    explicit Scribbler(unsigned seed) : random_(seed) {}

    void scribble(job::Job& job) {
        switch (pick(9)) {
        case 0:
        case 1:
        case 2:
            return move(job);
        case 3:
            return turn(job);
        case 4:
            return add(job);
        case 5:
            return remove(job);
        case 6:
            return change_object(job);
        case 7:
            return change_setting(job);
        default:
            return change_drawer(job);
        }
    }

  private:
    /// More than a drawer holds; without a bound a long session wanders off to hundreds, each act slower.
    static constexpr std::size_t most_pockets = 40;

    int pick(int n) { return std::uniform_int_distribution<int>(0, n - 1)(random_); }
    double real(double lo, double hi) { return std::uniform_real_distribution<double>(lo, hi)(random_); }

    template <class Change>
    void with_pocket(job::Job& job, Change change) {
        auto& drawer = job.drawers[static_cast<std::size_t>(pick(static_cast<int>(job.drawers.size())))];
        if (drawer->pockets.empty()) return;
        const auto which = static_cast<std::size_t>(pick(static_cast<int>(drawer->pockets.size())));
        drawer.edit([&](job::Drawer& d) { change(d.pockets[which]); });
    }
    void move(job::Job& job) {
        const shape::Vec by{real(-30, 30), real(-30, 30)};
        with_pocket(job, [&](job::Pocket& pocket) { pocket.pose.at = pocket.pose.at + by; });
    }
    void turn(job::Job& job) {
        const double by = 15 * pick(24);
        with_pocket(job, [&](job::Pocket& pocket) { pocket.pose.turn_deg = by; });
    }
    void add(job::Job& job) {
        auto& drawer = job.drawers[static_cast<std::size_t>(pick(static_cast<int>(job.drawers.size())))];
        if (drawer->pockets.size() >= most_pockets) return remove(job);
        const auto& object =
            job.objects[static_cast<std::size_t>(pick(static_cast<int>(job.objects.size())))];
        job::Pocket pocket{object->id, ++next_, {{real(30, 450), real(30, 330)}, 0}, false, {}, {}};
        if (pick(3) == 0)
            pocket.notches = {{shape::Capsule{50, 28}, {{real(-30, 30), real(-30, 30)}, 0}, real(5, 25), {}}};
        drawer.edit([&](job::Drawer& d) {
            const auto at = static_cast<std::ptrdiff_t>(pick(static_cast<int>(d.pockets.size()) + 1));
            d.pockets.insert(d.pockets.begin() + at, pocket);
        });
    }
    void remove(job::Job& job) {
        auto& drawer = job.drawers[static_cast<std::size_t>(pick(static_cast<int>(job.drawers.size())))];
        if (drawer->pockets.size() < 2) return;
        const auto which = static_cast<std::ptrdiff_t>(pick(static_cast<int>(drawer->pockets.size())));
        drawer.edit([&](job::Drawer& d) { d.pockets.erase(d.pockets.begin() + which); });
    }
    void change_object(job::Job& job) {
        auto& object = job.objects[static_cast<std::size_t>(pick(static_cast<int>(job.objects.size())))];
        object.edit([&](job::Object& o) {
            o.mass_g = real(10, 900);
            o.fit_mm = real(-2, 1);
            if (auto* sunk = std::get_if<job::Sunk>(&o.levels[0].form)) sunk->depth_mm = real(10, 50);
        });
    }
    void change_setting(job::Job& job) {
        switch (pick(4)) {
        case 0:
            job.foam.edit([&](job::Foam& foam) { foam.expansion = real(4, 15); });
            break;
        case 1:
            job.mold.fillet_mm = real(0, 8);
            break;
        case 2:
            job.shop.edit([&](job::Shop& shop) { shop.altitude_m = real(0, 2500); });
            break;
        default:
            job.minimums.wall_mm = real(6, 15);
            break;
        }
    }
    void change_drawer(job::Job& job) {
        job.drawers[0].edit([&](job::Drawer& drawer) {
            drawer.insert_mm = real(50, 80);
            drawer.gap_mm = real(0, 2);
        });
    }

    std::mt19937 random_;
    int next_ = 1;
};

} // namespace drawercast::plan::testing
