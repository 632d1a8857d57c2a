// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/without_controls.h"

#include <gtest/gtest.h>

#include <string>
#include <string_view>

namespace drawercast {
namespace {

using namespace std::string_view_literals;

TEST(WithoutControls, leaves_letters_and_nothing_that_breaks_a_line) {
    EXPECT_EQ(without_controls("für 5 × 9 … 𝟏"), "für 5 × 9 … 𝟏");
    EXPECT_EQ(without_controls("a\nb\r\tc\x7F"), "a b  c ");
    EXPECT_EQ(without_controls("a\0b\x1b[2J"sv), "a b [2J");
    EXPECT_EQ(without_controls("a\xC2\x85z\xC2\xA0\xE2\x80\xA8"), "a z\xC2\xA0 ");
    EXPECT_EQ(without_controls("\xC2"), "\xC2");
    EXPECT_EQ(without_controls(""), "");
}

} // namespace
} // namespace drawercast
