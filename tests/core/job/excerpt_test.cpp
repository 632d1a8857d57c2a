// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "job/excerpt.h"
#include "job/read.h"
#include "job/write.h"

#include <gtest/gtest.h>

namespace drawercast::job {
namespace {

Object box_object(const std::string& id, const std::string& name, double length_mm) {
    Object object;
    object.id = id;
    object.name = name;
    object.height_mm = 30;
    object.levels = {{Sunk{shape::Rectangle{length_mm, 40, 0}, 20}, {}, {}}};
    return object;
}

/// Two loggers and a probe, one logger with a notch.
Job workshop() {
    Job job = new_job({});
    job = with_object(std::move(job), box_object("i1", "Logger", 60));
    job = with_object(std::move(job), box_object("i2", "Probe", 90));
    job = placed(std::move(job), "d1", "i1", {{100, 100}, 0});
    job = placed(std::move(job), "d1", "i1", {{200, 100}, 90});
    job = placed(std::move(job), "d1", "i2", {{300, 200}, 15});
    return with_notch(std::move(job), "i1#2", {shape::Capsule{50, 28}, {{0, 20}, 0}, 10, {}});
}

TEST(Excerpt, is_a_job_of_its_own_and_survives_its_file_text) {
    const Job part = excerpt(workshop(), {"i1#2", "i2#1"});
    ASSERT_EQ(part.drawers.size(), 1U);
    EXPECT_EQ(part.drawers[0]->pockets.size(), 2U);
    EXPECT_EQ(find_object(part, "i1")->count, 1) << "as often as it comes along";
    const auto read = read_job(write_job(part));
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(*read, part);
}

TEST(Excerpt, merged_into_its_own_job_makes_no_second_object) {
    const Job job = workshop();
    const auto merged = job::merged(job, excerpt(job, {"i1#2"}), "d1", {10, -10});
    EXPECT_EQ(merged.job.objects.size(), job.objects.size());
    ASSERT_EQ(merged.pockets, Subjects{"i1#3"});
    const auto& copy = *find_pocket(merged.job, "i1#3").pocket;
    EXPECT_EQ(copy.pose, (shape::Pose{{210, 90}, 90}));
    EXPECT_EQ(copy.notches.size(), 1U);
    EXPECT_EQ(find_object(merged.job, "i1")->count, 3);
}

TEST(Excerpt, merged_into_another_job_brings_its_objects_under_free_ids) {
    Job other = new_job({});
    other = with_object(std::move(other), box_object("i1", "Anvil", 120)); // the same id, another thing
    const auto merged = job::merged(other, excerpt(workshop(), {"i1#1", "i1#2", "i2#1"}), "d1", {});
    ASSERT_EQ(merged.job.objects.size(), 3U);
    EXPECT_EQ(merged.job.objects[0], other.objects[0]);
    EXPECT_EQ(merged.pockets.size(), 3U);
    for (const auto& subject : merged.pockets) {
        const auto found = find_pocket(merged.job, subject);
        ASSERT_NE(found.pocket, nullptr);
        EXPECT_NE(found.pocket->object, "i1");
    }
    EXPECT_TRUE(checked_text(merged.job).has_value());
}

TEST(Excerpt, what_was_changed_since_is_another_thing) {
    const Job job = workshop();
    Object changed = *find_object(job, "i1");
    changed.mass_g = 77;
    const auto merged = job::merged(with_object(job, changed), excerpt(job, {"i1#1"}), "d1", {});
    EXPECT_EQ(merged.job.objects.size(), 3U);
    EXPECT_EQ(find_pocket(merged.job, merged.pockets.front()).pocket->object, "i3");
}

TEST(Excerpt, objects_alone_need_no_drawer_but_pockets_do) {
    const Job job = workshop();
    const auto objects = job::merged(Job{}, excerpt(job, {}, {"i2"}), "", {});
    ASSERT_EQ(objects.job.objects.size(), 1U);
    EXPECT_EQ(objects.job.objects[0]->name, "Probe");
    EXPECT_EQ(job::merged(Job{}, excerpt(job, {"i2#1"}), "d1", {}).job, Job{});
}

} // namespace
} // namespace drawercast::job
