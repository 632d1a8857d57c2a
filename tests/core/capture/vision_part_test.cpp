// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/vision_part.h"

#include <gtest/gtest.h>

#include <fstream>
#include <string>

namespace drawercast::capture {
namespace {

bool mapped(const std::string& name) {
    std::ifstream maps("/proc/self/maps");
    for (std::string line; std::getline(maps, line);)
        if (line.find(name) != std::string::npos) return true;
    return false;
}

/// Each test is a process of its own under ctest; in one process the order is the file's.
TEST(VisionPart, asking_whether_it_is_there_loads_nothing) {
    available();
    EXPECT_FALSE(mapped("/lib/drawercast/vision.so"));
}

TEST(VisionPart, a_picture_loads_it_or_says_why_not) {
    const auto flat = flattened("no picture", {});
    ASSERT_FALSE(flat);
    EXPECT_EQ(mapped("/lib/drawercast/vision.so"), available());
    EXPECT_EQ(flat.error().code == "capture-not-built", !available()) << english(flat.error().what);
    EXPECT_NE(flat.error().code, "capture-not-loaded") << english(flat.error().what);
}

} // namespace
} // namespace drawercast::capture
