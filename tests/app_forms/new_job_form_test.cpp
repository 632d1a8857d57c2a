// SPDX-License-Identifier: GPL-3.0-or-later
#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "forms/new_job_form.h"

#include <gtest/gtest.h>

namespace drawercast::app {

TEST(NewJobForm, sizes_are_typed_as_people_write_them) {
    test::dressed_application();
    NewJobForm form({}, FormContext{});
    test::open(form);
    test::type(form, "Width", "19 1/2 in");
    test::type(form, "Depth", "38,5 cm");
    ASSERT_TRUE(form.value());
    EXPECT_DOUBLE_EQ(form.value()->width_mm, 19.5 * 25.4);
    EXPECT_DOUBLE_EQ(form.value()->depth_mm, 385);
    EXPECT_EQ(form.value()->insert_mm, job::DrawerSize{}.insert_mm);
}

TEST(NewJobForm, an_insert_thicker_than_the_drawer_is_refused) {
    test::dressed_application();
    NewJobForm form({}, FormContext{});
    test::open(form);
    test::type(form, "Clear height", "40");
    EXPECT_FALSE(form.value());
    ASSERT_EQ(form.problems().size(), 1U);
    EXPECT_EQ(form.problems()[0].path, "/insert_mm");
    test::type(form, "Insert's thickness", "30");
    EXPECT_TRUE(form.value());
}

} // namespace drawercast::app
