// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/behind.h"

#include <gtest/gtest.h>

#ifdef __linux__
#include <sys/resource.h>
#include <thread>

namespace drawercast::app {
namespace {

int niceness() { return getpriority(PRIO_PROCESS, 0); }

TEST(Behind, a_worker_and_its_helpers_are_nicer_than_the_window) {
    const int window = niceness();
    if (window > 9) GTEST_SKIP() << "nothing is nicer";
    int once = 0, twice = 0, helper = 0, glimpse = 0;
    std::thread worker([&] {
        work_behind_window(Behind::answer);
        once = niceness();
        work_behind_window(Behind::answer);
        twice = niceness();
        std::thread([&] { helper = niceness(); }).join();
        work_behind_window(Behind::glimpse);
        glimpse = niceness();
    });
    worker.join();
    EXPECT_EQ(once, window + 10);
    EXPECT_EQ(twice, once);
    EXPECT_EQ(helper, once);
    EXPECT_EQ(glimpse, 19);
    EXPECT_EQ(niceness(), window);
}

} // namespace
} // namespace drawercast::app
#endif
