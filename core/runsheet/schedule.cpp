// SPDX-License-Identifier: GPL-3.0-or-later
#include "runsheet/schedule.h"

#include "base/demand.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace drawercast::runsheet {

namespace {

constexpr double day_min = 24 * 60;
constexpr std::size_t none = static_cast<std::size_t>(-1);

/// The shop's clock: hands work only while it is open.
class Clock {
  public:
    explicit Clock(const Hours& hours) : opens_(hours.opens_h * 60), closes_(hours.closes_h * 60) {
        DRAWERCAST_DEMAND(opens_ >= 0 && opens_ < closes_ && closes_ <= day_min, "a day with an open shop");
    }

    double day_min_open() const { return closes_ - opens_; }

    /// The first moment from `min` on at which hands can begin.
    double open_from(double min) const {
        const double day = std::floor(min / day_min) * day_min;
        if (min < day + opens_) return day + opens_;
        if (min >= day + closes_) return day + day_min + opens_;
        return min;
    }
    double closing_after(double open_min) const { return std::floor(open_min / day_min) * day_min + closes_; }

    double begin_of(const Task& task, double earliest) const {
        double begin = open_from(earliest);
        if (task.in_one_go && begin + task.hands_min > closing_after(begin))
            begin = open_from(closing_after(begin));
        return begin;
    }
    double end_of(const Task& task, double begin) const {
        double left = task.hands_min;
        double now = begin;
        while (now + left > closing_after(now)) {
            left -= closing_after(now) - now;
            now = open_from(closing_after(now));
        }
        return now + left;
    }

  private:
    double opens_;
    double closes_;
};

using Before = std::vector<std::vector<std::size_t>>; ///< of each task the indices it waits for

Before before_of(const std::vector<Task>& tasks) {
    std::map<std::string, std::size_t> index;
    for (std::size_t i = 0; i < tasks.size(); ++i)
        DRAWERCAST_DEMAND(index.emplace(tasks[i].id, i).second, "a task's id is its own");
    Before before(tasks.size());
    for (std::size_t i = 0; i < tasks.size(); ++i)
        for (const auto& id : tasks[i].after) {
            const auto found = index.find(id);
            DRAWERCAST_DEMAND(found != index.end(), "what comes before is a task");
            before[i].push_back(found->second);
        }
    return before;
}

/// The longest way from each task to the end, minutes, as if the shop never closed.
std::vector<double> tails_of(const std::vector<Task>& tasks, const Before& before) {
    std::vector<double> tail(tasks.size(), 0);
    for (std::size_t round = 0; round <= tasks.size(); ++round) {
        bool changed = false;
        for (std::size_t i = 0; i < tasks.size(); ++i)
            for (const std::size_t b : before[i]) {
                const double longer = tail[i] + tasks[i].hands_min + tasks[i].wait_min;
                if (longer > tail[b]) {
                    tail[b] = longer;
                    changed = true;
                }
            }
        if (!changed) return tail;
    }
    demand_failed("tasks wait for each other in a circle", __FILE__, __LINE__);
}

/// Puts the tasks one after another; remembers what each had to wait for.
class Crew {
  public:
    Crew(const std::vector<Task>& tasks, const Hours& hours)
        : tasks_(tasks), clock_(hours), before_(before_of(tasks)), tail_(tails_of(tasks, before_)),
          slots_(tasks.size()), cause_(tasks.size(), none), done_(tasks.size(), false) {
        for (const Task& task : tasks)
            DRAWERCAST_DEMAND(!task.in_one_go || task.hands_min <= clock_.day_min_open(),
                              "what is done in one go fits into a day");
    }

    Schedule run() {
        for (std::size_t n = 0; n < tasks_.size(); ++n) put(next());
        mark_critical();
        Schedule schedule;
        for (const std::size_t i : order_) schedule.entries.push_back(slots_[i]);
        for (const Slot& slot : slots_) schedule.days = std::max(schedule.days, day_of(slot.ready_min));
        return schedule;
    }

  private:
    /// When it could begin, and what it waits for; nothing while something before it has no slot yet.
    struct Chance {
        double begin;
        std::size_t cause;
    };
    std::optional<Chance> chance(std::size_t i) const {
        double earliest = order_.empty() ? 0 : slots_[order_.back()].left_min;
        std::size_t cause = order_.empty() ? none : order_.back();
        for (const std::size_t b : before_[i]) {
            if (!done_[b]) return std::nullopt;
            if (slots_[b].ready_min >= earliest) {
                earliest = slots_[b].ready_min;
                cause = b;
            }
        }
        return Chance{clock_.begin_of(tasks_[i], earliest), cause};
    }

    std::size_t next() const {
        std::size_t best = none;
        double begin = 0;
        for (std::size_t i = 0; i < tasks_.size(); ++i) {
            if (done_[i]) continue;
            const auto now = chance(i);
            if (!now) continue;
            if (best == none || now->begin < begin || (now->begin == begin && tail_[i] > tail_[best])) {
                best = i;
                begin = now->begin;
            }
        }
        DRAWERCAST_DEMAND(best != none, "a task whose turn it is");
        return best;
    }

    void put(std::size_t i) {
        const auto now = chance(i);
        const double left = clock_.end_of(tasks_[i], now->begin);
        slots_[i] = {i, now->begin, left, left + tasks_[i].wait_min, false};
        cause_[i] = now->cause;
        done_[i] = true;
        order_.push_back(i);
    }

    /// Back from what is ready last, along what each had to wait for.
    void mark_critical() {
        if (order_.empty()) return;
        std::size_t i = *std::max_element(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) {
            return slots_[a].ready_min < slots_[b].ready_min;
        });
        for (; i != none; i = cause_[i]) slots_[i].critical = true;
    }

    const std::vector<Task>& tasks_;
    Clock clock_;
    Before before_;
    std::vector<double> tail_;
    std::vector<Slot> slots_;
    std::vector<std::size_t> cause_;
    std::vector<bool> done_;
    std::vector<std::size_t> order_;
};

} // namespace

Schedule schedule(const std::vector<Task>& tasks, const Hours& hours) { return Crew(tasks, hours).run(); }

int day_of(double min) { return static_cast<int>(std::floor(min / day_min)) + 1; }
double minute_of_day(double min) { return min - std::floor(min / day_min) * day_min; }

} // namespace drawercast::runsheet
