// SPDX-License-Identifier: GPL-3.0-or-later
#include "fuzz/targets.h"
#include "source_dir.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

namespace drawercast::fuzz {
namespace {

/// Every input kept for a target: seeds, finds, and whatever once failed.
std::vector<std::filesystem::path> corpus(const char* target) {
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(
             std::string(DRAWERCAST_SOURCE_DIR "/tests/fuzz/corpus/") + target))
        files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

std::string bytes_of(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

template <class Target>
void replay(const char* name, Target target) {
    const auto files = corpus(name);
    ASSERT_FALSE(files.empty());
    for (const auto& file : files) {
        SCOPED_TRACE(file.filename().string());
        const std::string bytes = bytes_of(file);
        target(bytes);
        for (std::size_t cut = 1; cut < bytes.size(); cut += 1 + bytes.size() / 64) // torn off anywhere
            target(std::string_view(bytes).substr(0, cut));
    }
}

TEST(Replay, read_job) { replay("read_job", read_job); }
TEST(Replay, parse_length) { replay("parse_length", parse_length); }
TEST(Replay, svg_outlines) { replay("svg_outlines", svg_outlines); }
TEST(Replay, pasted_list) { replay("pasted_list", pasted_list); }
TEST(Replay, plane) { replay("plane", plane); }
TEST(Replay, picture_header) { replay("picture_header", picture_header); }

} // namespace
} // namespace drawercast::fuzz
