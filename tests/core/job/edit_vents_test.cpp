// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "job/edit.h"
#include "job/edit_vents.h"
#include "job/read.h"
#include "job/write.h"

#include <gtest/gtest.h>

namespace drawercast::job {
namespace {

struct Vented {
    Job job = new_job({400, 300, 90, 60});
    std::string id = job.drawers.front()->id;
    const Drawer& of(const Job& any) const { return *find_drawer(any, id); }
};

TEST(EditVents, added_ones_are_grained_and_numbered) {
    const Vented v;
    std::size_t made = 9;
    Job job = with_vent(v.job, v.id, {{100.00000049, 50}, 3, {}}, &made);
    EXPECT_EQ(made, 0u);
    EXPECT_EQ(kept_vents(v.of(job)).front().at, (shape::Vec{100, 50}));
    job = with_vent(job, v.id, {{10, 20}, 4, {}}, &made);
    EXPECT_EQ(made, 1u);
    EXPECT_TRUE(vents_automatic(v.of(job)));
}

TEST(EditVents, without_any_nothing_is_said_of_them_again) {
    const Vented v;
    const Job job = without_vent(with_vent(v.job, v.id, {{1, 2}, 3, {}}), v.id, 0);
    EXPECT_EQ(job, v.job);
    EXPECT_EQ(with_vents(v.job, v.id, {}, true), v.job);
}

TEST(EditVents, those_that_are_not_there_change_nothing) {
    const Vented v;
    const Job one = with_vent(v.job, v.id, {{1, 2}, 3, {}});
    EXPECT_EQ(with_vent_moved(one, v.id, 7, {5, 5}), one);
    EXPECT_EQ(with_vent_drilled(one, v.id, 7, 5), one);
    EXPECT_EQ(without_vent(one, v.id, 1), one);
    EXPECT_EQ(with_vent(v.job, "nobody", {{1, 2}, 3, {}}), v.job);
}

TEST(EditVents, moved_drilled_and_kept_as_they_are_survive_the_file) {
    const Vented v;
    Job job = with_vents(v.job, v.id, {{{10, 10}, 3, {}}, {{20, 20}, 3, {}}}, false);
    job = with_vent_moved(job, v.id, 1, {33.25, 44});
    job = with_vent_drilled(job, v.id, 0, 5);
    const auto read = read_job(write_job(job));
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, job);
    EXPECT_FALSE(vents_automatic(v.of(*read)));
    EXPECT_EQ(kept_vents(v.of(*read))[1].at, (shape::Vec{33.25, 44}));
    EXPECT_EQ(kept_vents(v.of(*read))[0].diameter_mm, 5);
}

} // namespace
} // namespace drawercast::job
