// SPDX-License-Identifier: GPL-3.0-or-later
#include "subcommands/worked_out.h"

#include "plan/builder.h"

#include "subcommands/output.h"

#include <string>

namespace drawercast::subcommands {

WorkedOut worked_out(const job::Job& job, std::chrono::seconds most) {
    using Clock = std::chrono::steady_clock;
    constexpr auto between_words = std::chrono::seconds(10);
    const auto began = Clock::now();
    auto told = began;
    const auto watch = [&](double done) {
        const auto now = Clock::now();
        if (now - told >= between_words) {
            told = now;
            complain(std::to_string(static_cast<int>(100 * done)) + " % worked out");
        }
        return now - began >= most;
    };
    plan::Plan quick = plan::compute(job);
    if (auto plan = plan::Builder().build(job, quick, watch)) return {*std::move(plan), true};
    complain("where air stays, plates, vents, what to cut and buy are left out: that takes longer than " +
             std::to_string(most.count()) + " s. Split the job by its drawers");
    return {std::move(quick), false};
}

} // namespace drawercast::subcommands
