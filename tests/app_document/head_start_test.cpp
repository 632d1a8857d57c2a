// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/store.h"
#include "plan/plan.h"

#include "document/document.h"
#include "document/head_start.h"
#include "source_dir.h"

#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

const std::string demo = std::string(DRAWERCAST_SOURCE_DIR) + "/resources/demo/field-service.drawercast.json";

TEST(HeadStart, answers_as_a_planner_that_had_none) {
    plan::Planner planner = head_start(demo).get();
    const auto job = job::load_job(demo);
    ASSERT_TRUE(job);
    EXPECT_TRUE(same(planner.fast(*job), plan::compute(*job)));
}

TEST(HeadStart, of_what_cannot_be_read_is_a_fresh_planner) {
    Document document;
    document.plan_with(head_start("/nowhere/at/all.json").get());
    EXPECT_FALSE(document.open(QStringLiteral("/nowhere/at/all.json")).empty());
    EXPECT_TRUE(document.open(QString::fromStdString(demo)).empty());
    EXPECT_TRUE(same(document.plan(), plan::compute(document.job())));
}

} // namespace
} // namespace drawercast::app
