// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What was marked as done on a pour day, as the job's log keeps it: marks with the wall clock's time, so
/// that whoever opens the job again, be it after a crash, goes on at the same step with the clock right.
namespace drawercast::plan {

inline constexpr std::string_view begin_pour = "begin";         ///< a run for the mold begins
inline constexpr std::string_view begin_rehearsal = "rehearse"; ///< likewise, with nothing in it
inline constexpr std::string_view clock_step = "start";         ///< A meets B: the stopwatch starts
inline constexpr std::string_view last_step = "open";           ///< nothing comes after it

struct Done {
    std::string step;
    double at_s = 0; ///< since 1970, UTC
    bool operator==(const Done&) const = default;
};

/// One run through a drawer's pour: what stands after taking back what was taken back, oldest first.
struct PourRun {
    bool rehearsal = false;
    double begun_s = 0;
    std::vector<Done> done;
    bool operator==(const PourRun&) const = default;

    const Done* find(std::string_view step) const; ///< nullptr: not done
    bool is_done(std::string_view step) const { return find(step) != nullptr; }
    /// Seconds on the stopwatch at that moment; nothing before A met B.
    std::optional<double> stopwatch_s(double now_s) const;
};

/// The drawer's last run; nothing where none was begun.
std::optional<PourRun> last_run(const std::vector<job::Mark>& log, std::string_view drawer);

/// Whether somebody stands at the mold: the clock runs, not all is done, and it started less than `fresh_s`
/// ago.
inline constexpr double fresh_s = 12 * 3600;
bool is_running(const PourRun& run, double now_s);

/// A drawer whose pour is running, the one that was begun last; empty: none.
std::string running_drawer(const job::Job& job, double now_s);

job::Job with_mark(job::Job job, const std::string& drawer, std::string_view step, double at_s);
/// The run's last mark taken back; the log keeps both. Unchanged where nothing is left to take back.
job::Job with_last_taken_back(job::Job job, const std::string& drawer, double at_s);

/// What a dry run was of, as planned: the other drawers' amounts are others.
struct Rehearsed {
    double batch_ml = 0; ///< poured of each
    int closures = 0;
    double close_s = 0;       ///< for all of them
    bool own_seconds = false; ///< some of them take a time of their own, whatever the shop's is
};
Rehearsed rehearsed_of(const job::Job& job, const DrawerPlan& drawer);

/// The shop with what a rehearsal tells in place of its own: the rate of pouring, setting the plate on,
/// seconds a closure, all kinds in proportion. What was not marked stays. Rounded to 0.1 s and 0.001 L/s.
job::Shop with_rehearsed_times(job::Shop shop, const PourRun& run, const Rehearsed& of);

} // namespace drawercast::plan
