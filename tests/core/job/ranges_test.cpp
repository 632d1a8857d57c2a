// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "job/ranges.h"
#include "job/read.h"

#include "core/job/full_job.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace drawercast::job {
namespace {

TEST(Ranges, each_is_a_range) {
    for (const auto& range : ranges()) EXPECT_LT(range.least, range.most) << range.path;
}

/// Whether the full job with `raw` as the number of that range is refused there for its size.
bool refused_there(const Range& range, const std::string& raw, const char* code) {
    const std::string place = testing::place_of_range(range.path);
    const std::string text = testing::with_value(write_job(testing::full_job()), place, raw);
    if (text.empty()) ADD_FAILURE() << "the full job has nothing at " << place;
    const auto job = read_job(text);
    if (job) return false;
    const Problems problems = job.error();
    return std::any_of(problems.begin(), problems.end(), [&](const Problem& problem) {
        return problem.code == code && problem.where.name == place && !problem.where.spot.empty();
    });
}

TEST(Ranges, the_reader_takes_both_ends_and_nothing_beyond) {
    ASSERT_TRUE(read_job(write_job(testing::full_job())));
    for (const auto& range : ranges()) {
        SCOPED_TRACE(range.path);
        const double step = range.whole ? 1 : 1e-3;
        const auto refused = [&](double value) {
            return refused_there(range, number_text(value), "number-range");
        };
        EXPECT_EQ(refused(range.least), range.open_least);
        EXPECT_FALSE(refused(range.least + step));
        EXPECT_TRUE(refused(range.least - step));
        EXPECT_FALSE(refused(range.most));
        EXPECT_TRUE(refused(range.most + step));
        EXPECT_TRUE(refused_there(range, "1e300", "number-range"));
        EXPECT_TRUE(refused_there(range, "1e400", "number"));
        EXPECT_TRUE(refused_there(range, "\"7\"", "number"));
        EXPECT_TRUE(refused_there(range, "true", "number"));
        if (range.whole) {
            EXPECT_TRUE(refused_there(range, number_text(range.least + 0.5), "number-whole"));
        }
    }
}

} // namespace
} // namespace drawercast::job
