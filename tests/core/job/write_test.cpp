// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/read.h"
#include "job/write.h"

#include "core/job/random_job.h"

#include <gtest/gtest.h>

namespace drawercast::job {
namespace {

TEST(WriteJob, what_is_written_reads_back_equal_and_is_written_the_same_again) {
    for (unsigned seed = 0; seed < 300; ++seed) {
        const Job job = testing::RandomJob(seed).make();
        const std::string text = write_job(job);
        const auto back = read_job(text);
        ASSERT_TRUE(back) << "seed " << seed << ": " << one_line(back.error().front()) << "\n" << text;
        ASSERT_EQ(*back, job) << "seed " << seed << "\n" << text;
        ASSERT_EQ(write_job(*back), text) << "seed " << seed;
    }
}

TEST(WriteJob, checked_text_is_the_text_or_all_there_is_against_it) {
    Job job = new_job({});
    EXPECT_EQ(*checked_text(job), write_job(job));
    job.mold.fillet_mm = 1e-9; // not grained: would read back as 0
    EXPECT_EQ(checked_text(job).error().front().code, "unsavable");
    job.mold.fillet_mm = -1;
    job.foam.edit([](Foam& foam) { foam.expansion = 0; });
    const Problems problems = checked_text(job).error();
    ASSERT_EQ(problems.size(), 2u);
    EXPECT_EQ(problems[0].code, "number-range");
    EXPECT_NE(problems[0].where.name.find("/foam/expansion"), std::string::npos);
}

TEST(WriteJob, unknown_members_stay_word_for_word) {
    const std::string raw = R"({"z":  [1.50, 2e3 ,"\u00e9"], "y":null})";
    const auto job = read_job(R"({"format": "drawercast-job", "version": 1, "from_later": )" + raw + "}");
    ASSERT_TRUE(job);
    EXPECT_NE(write_job(*job).find("\"from_later\": " + raw), std::string::npos);
}

TEST(WriteJob, short_things_stay_on_one_line) {
    Job job = new_job({});
    const std::string text = write_job(job);
    EXPECT_NE(text.find("\"outline\": {\"rect\": [480, 360, 0]}"), std::string::npos) << text;
}

TEST(Catalog, everything_built_in_can_be_read) {
    ASSERT_EQ(builtin_foams().size(), 3u);
    EXPECT_EQ(builtin_foams()[0].expansion, 13);
    EXPECT_EQ(builtin_foams()[1].expansion, 10);
    EXPECT_EQ(builtin_foams()[2].expansion, 7);
    EXPECT_GE(builtin_boards().size(), 5u);
    EXPECT_GE(builtin_stiffeners().size(), 3u);
    EXPECT_GE(builtin_closures().size(), 5u);
    for (const auto& object : standard_objects()) EXPECT_FALSE(object.note.empty()) << object.id;
}

} // namespace
} // namespace drawercast::job
