// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/edit.h"
#include "job/read.h"
#include "job/write.h"
#include "plan/builder.h"
#include "plan/planner.h"

#include "core/plan/sample_job.h"
#include "core/plan/whole_plan.h"
#include "property/scribbler.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <random>
#include <vector>

namespace drawercast::plan {
namespace {

bool asked_long() { return std::getenv("DRAWERCAST_LONG") != nullptr; }

/// A long day at the editor, from a seed: edits, undo and redo, saving and opening again, other units.
class Session {
  public:
    explicit Session(unsigned seed) : scribbler_(seed), random_(seed), history_{testing::worked_job()} {}

    const job::Job& job() const { return history_[at_]; }

    void act() {
        const int which = std::uniform_int_distribution<int>(0, 19)(random_);
        if (which < 2 && at_ > 0) return undo();
        if (which < 4 && at_ + 1 < history_.size()) return void(++at_);
        if (which == 4) return save_and_open();
        if (which < 7) return switch_units();
        auto next = job();
        scribbler_.scribble(next);
        commit(std::move(next));
    }

  private:
    void undo() {
        const auto later = job();
        --at_;
        const auto earlier = job();
        ++at_;
        EXPECT_EQ(job(), later); // forward again is where one was
        --at_;
        EXPECT_EQ(job(), earlier);
    }
    void save_and_open() {
        const auto opened = job::read_job(job::write_job(job()));
        ASSERT_TRUE(opened);
        const auto again = job::read_job(job::write_job(*opened)); // lengths have met the file's grain by now
        ASSERT_TRUE(again);
        EXPECT_EQ(*again, *opened);
        commit(*opened);
    }
    /// What is to be mended does not depend on how lengths are written.
    void switch_units() {
        const auto units =
            std::vector{job::DisplayUnits::mm, job::DisplayUnits::inch, job::DisplayUnits::inch_32};
        const auto to = units[std::uniform_int_distribution<std::size_t>(0, 2)(random_)];
        auto next = job::in_units(job(), to);
        ASSERT_TRUE(same(compute(job()), compute(next)));
        commit(std::move(next));
    }
    void commit(job::Job next) {
        history_.resize(at_ + 1);
        history_.push_back(std::move(next));
        if (history_.size() > 200) history_.erase(history_.begin());
        at_ = history_.size() - 1;
    }

    testing::Scribbler scribbler_;
    std::mt19937 random_;
    std::vector<job::Job> history_;
    std::size_t at_ = 0;
};

/// DRAWERCAST_LONG=1 makes it 100,000 acts; the long answer is compared every 1,000th.
TEST(Session, every_answer_is_the_one_from_scratch) {
    const int acts = asked_long() ? 100'000 : 400;
    const int between = asked_long() ? 1000 : 200;
    Session session(11);
    Planner planner;
    Builder builder;
    for (int i = 1; i <= acts; ++i) {
        session.act();
        const auto quick = planner.fast(session.job());
        ASSERT_TRUE(same(quick, compute(session.job()))) << "act " << i;
        if (i % between != 0) continue;
        double told = 0;
        const auto built = builder.build(session.job(), quick, [&](double done) {
            EXPECT_GE(done, told); // progress goes forward, and to the end
            told = done;
            return false;
        });
        EXPECT_EQ(told, 1);
        ASSERT_TRUE(built);
        ASSERT_TRUE(same(*built, whole(session.job()))) << "act " << i;
    }
}

} // namespace
} // namespace drawercast::plan
