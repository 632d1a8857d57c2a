// SPDX-License-Identifier: GPL-3.0-or-later
#include "subcommands/arrange_report.h"

#include "arrange/drawer.h"
#include "arrange/need.h"
#include "base/without_controls.h"
#include "job/edit.h"
#include "plan/slots.h"

#include <algorithm>
#include <chrono>
#include <cmath>

namespace drawercast::subcommands {

namespace {

/// About what a machine of today looks at in a second; the search plans its patience by it.
constexpr std::uint64_t evaluations_a_second = 2'000'000;

/// The clock is a cap alone: a job that needs less is answered alike on every machine. No drawer takes the
/// time of the ones after it.
class Clock {
  public:
    Clock(int seconds, std::size_t drawers)
        : drawers_(static_cast<double>(std::max<std::size_t>(drawers, 1))), seconds_(seconds) {}

    bool operator()(double done) const {
        const double drawer = std::min(std::floor(done * drawers_ + 1e-9) + 1, drawers_);
        const std::chrono::duration<double> gone = std::chrono::steady_clock::now() - began_;
        return gone.count() >= seconds_ * drawer / drawers_;
    }

  private:
    double drawers_;
    double seconds_;
    std::chrono::steady_clock::time_point began_ = std::chrono::steady_clock::now();
};

std::string takes(const arrange::Trial& trial) {
    const int all = trial.arranged.placed + trial.arranged.left;
    return without_controls(trial.drawer) + " takes " + std::to_string(trial.arranged.placed) + " of " +
           std::to_string(all) + "\n";
}

/// By area alone: says why something found no room.
std::string needed(const arrange::Need& need) {
    const auto percent = [](double share) { return std::to_string(std::lround(share * 100)) + " %"; };
    return "of the room within the edges: objects need " + percent(need.objects) + ", with their fit " +
           percent(need.with_fit) + ", with walls " + percent(need.with_walls) + "\n";
}

/// A shop may ask for walls that its foam does not flow through.
std::string too_narrow(const job::Job& job) {
    const int count = plan::narrow_slots(job, plan::compute(job));
    if (count == 0) return {};
    return "slots too narrow for foam to flow through by itself, by the walls this job asks for: " +
           std::to_string(count) + "\n";
}

} // namespace

Expected<ArrangeReport> arrange_report(const Command& command, const job::Job& job) {
    using arrange::Moving;
    const bool single = !command.into.empty();
    if (single && job::find_drawer(job, command.into) == nullptr)
        return Problem{"usage",
                       {},
                       verbatim("there is no drawer \"" + command.into + "\""),
                       verbatim("Say the id of a drawer as drawercast check prints it, such as d1")};
    const arrange::Budget budget{static_cast<std::uint64_t>(command.seconds) * evaluations_a_second, 1};
    const Clock late(command.seconds, single ? 1 : job.drawers.size());
    arrange::Arranged arranged{job, 0, 0, arrange::not_placed_yet(job)};
    std::string told;
    if (command.one_drawer) {
        const auto trials = arrange::each_drawer(job, budget, late);
        for (const arrange::Trial& trial : trials) told += takes(trial);
        if (!trials.empty()) arranged = trials.front().arranged;
    } else if (single) {
        arranged = arrange::arranged(job, command.into, Moving::unlocked_if_needed, budget, late);
    } else {
        arranged = arrange::arranged(job, Moving::unlocked_if_needed, budget, late);
    }
    told += "placed: " + std::to_string(arranged.placed) +
            "\nfound no room: " + std::to_string(arranged.left) + "\n";
    if (arranged.left > 0)
        told += needed(single ? arrange::need_of(job, {command.into}) : arrange::need_of(job));
    told += too_narrow(arranged.job);
    return ArrangeReport{std::move(arranged.job), std::move(told), arranged.left == 0};
}

} // namespace drawercast::subcommands
