// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/phrase.h"

#include <gtest/gtest.h>

namespace drawercast {
namespace {

TEST(Phrase, PutsItsValuesWhereTheyGo) {
    EXPECT_EQ(english(phrase("Wall %1, needs %2", figure("6.2 mm"), figure("8 mm"))),
              "Wall 6.2 mm, needs 8 mm");
    EXPECT_EQ(english(phrase("%2 before %1", verbatim("a"), verbatim("b"))), "b before a");
    EXPECT_EQ(english(phrase("%1.", phrase("%1 (%2)", phrase("Thin"), verbatim("Barometer")))),
              "Thin (Barometer).");
    EXPECT_TRUE(Phrase{}.empty());
}

// What the maker called a thing is no place for a value, whatever it is called.
TEST(Phrase, ReadsNoValueAgain) {
    EXPECT_EQ(english(phrase("%1 beside %2", verbatim("Box %2"), verbatim("100 %"))), "Box %2 beside 100 %");
    EXPECT_EQ(english(verbatim("50 %1")), "50 %1");
    EXPECT_EQ(english(phrase("%1 of %2", verbatim("a"))), "a of %2");
    EXPECT_EQ(english(phrase("100 %", verbatim("a"))), "100 %");
}

} // namespace
} // namespace drawercast
