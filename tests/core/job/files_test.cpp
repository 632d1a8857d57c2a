// SPDX-License-Identifier: GPL-3.0-or-later
// Files of this version, kept: each must load for as long as the program is, and be saved as its twin.
//   DRAWERCAST_RENEW=1 ctest -R JobFiles
// writes the twins anew, to be looked at as a difference.
#include "job/read.h"
#include "job/store.h"

#include "core/job/full_job.h"
#include "source_dir.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <vector>

namespace drawercast::job {
namespace {

namespace fs = std::filesystem;

const fs::path kept = DRAWERCAST_SOURCE_DIR "/tests/data/jobs/v1";

std::string bytes_of(const fs::path& path) {
    const auto bytes = read_file(path.string(), most_json_bytes);
    if (!bytes) {
        ADD_FAILURE() << one_line(bytes.error());
        return {};
    }
    return *bytes;
}

void expect_file(const fs::path& path, const std::string& text) {
    if (std::getenv("DRAWERCAST_RENEW") != nullptr) {
        ASSERT_TRUE(write_file(path.string(), text));
    }
    EXPECT_EQ(bytes_of(path), text) << path;
}

std::vector<fs::path> jobs_in(const fs::path& folder) {
    std::vector<fs::path> jobs;
    for (const auto& entry : fs::directory_iterator(folder)) {
        const std::string name = entry.path().filename().string();
        if (name.size() > 16 && name.substr(name.size() - 16) == ".drawercast.json")
            jobs.push_back(entry.path());
    }
    std::sort(jobs.begin(), jobs.end());
    return jobs;
}

TEST(JobFiles, every_key_is_written_as_before) {
    expect_file(kept / "every-key.drawercast.json", write_job(testing::full_job()));
}

TEST(JobFiles, one_written_by_hand_is_saved_in_order_with_nothing_lost) {
    const auto job = read_job(bytes_of(kept / "by-hand.json"));
    ASSERT_TRUE(job) << one_line(job.error().front());
    expect_file(kept / "by-hand.drawercast.json", write_job(*job));
    EXPECT_EQ(job->objects[0]->id, "mast-foot");
    EXPECT_EQ(job->objects[0]->name, "Mast \"foot\"\tA/B 🌧");
    EXPECT_EQ(std::get<Sunk>(job->objects[0]->levels[0].form).depth_mm, 20);
    EXPECT_EQ(job->left_as_is[0].subjects, (std::vector<std::string>{"mast-foot#1", "tube#2"}));
    EXPECT_EQ(job->unknown.size(), 1u);
}

TEST(JobFiles, what_the_program_wrote_is_the_same_after_opening_and_saving) {
    for (const fs::path& folder : {kept, fs::path(DRAWERCAST_SOURCE_DIR "/resources/demo")}) {
        const auto jobs = jobs_in(folder);
        EXPECT_FALSE(jobs.empty()) << folder;
        for (const auto& path : jobs) {
            const auto job = load_job(path.string());
            ASSERT_TRUE(job) << path << one_line(job.error().front());
            EXPECT_EQ(write_job(*job), bytes_of(path)) << path;
        }
    }
}

} // namespace
} // namespace drawercast::job
