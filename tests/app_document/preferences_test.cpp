// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/preferences.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

TEST(Preferences, the_grid_follows_the_unit_until_one_is_chosen) {
    QTemporaryDir folder;
    Preferences preferences(folder.filePath("settings.ini"));
    EXPECT_EQ(preferences.grid_mm(job::DisplayUnits::mm), 10);
    EXPECT_EQ(preferences.grid_mm(job::DisplayUnits::inch), 12.7);
    EXPECT_EQ(preferences.grid_mm(job::DisplayUnits::inch_32), 12.7);
    preferences.set_grid_mm(5);
    for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch, job::DisplayUnits::inch_32})
        EXPECT_EQ(preferences.grid_mm(units), 5);
}

} // namespace
} // namespace drawercast::app
