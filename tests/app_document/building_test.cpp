// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "job/edit.h"

#include "core/plan/whole_plan.h"
#include "document/document.h"

#include <QCoreApplication>
#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

namespace drawercast::app {

namespace {

QCoreApplication& application() {
    static int count = 1;
    static char name[] = "test";
    static char* names[] = {name, nullptr};
    static QCoreApplication one(count, names);
    return one;
}

job::Job job_of(double width_mm) {
    job::DrawerSize size;
    size.width_mm = width_mm;
    return job::new_job(size);
}

} // namespace

TEST(Building, only_the_last_job_asked_about_is_told) {
    application();
    Building building;
    std::vector<std::size_t> told;
    QObject::connect(&building, &Building::built, &building,
                     [&](const plan::Plan& plan) { told.push_back(plan.drawers.size()); });
    const auto one = job_of(300);
    const auto two = job::with_drawer(one, [&] {
        auto drawer = *one.drawers.front();
        drawer.id = "d2";
        return drawer;
    }());
    building.ask(one, plan::compute(one));
    building.ask(two, plan::compute(two));
    EXPECT_TRUE(building.busy());
    building.wait();
    EXPECT_FALSE(building.busy());
    EXPECT_EQ(told, std::vector<std::size_t>{2});
}

TEST(Building, the_document_shows_it_until_the_next_edit) {
    application();
    Document document;
    document.replace(job_of(400), {}, true);
    EXPECT_FALSE(document.last_built());
    document.building().wait();
    ASSERT_TRUE(document.last_built());
    EXPECT_TRUE(plan::same(document.plan(), plan::whole(document.job())));
    document.preview(job_of(420));
    EXPECT_TRUE(plan::same(document.plan(), plan::compute(job_of(420)))) << "a preview has the quick answer";
    document.preview(std::nullopt);
    EXPECT_TRUE(plan::same(document.plan(), *document.last_built())) << "and leaves the long one standing";
}

TEST(Building, a_mark_in_the_log_does_not_begin_it_anew) {
    application();
    Document document;
    document.replace(job_of(400), {}, true);
    std::vector<double> done;
    QObject::connect(&document.building(), &Building::progressed,
                     [&](double share) { done.push_back(share); });
    while (done.empty() || done.back() == 0) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    auto marked = document.job();
    marked.log.push_back({});
    document.commit("Mark", std::move(marked));
    document.building().wait();
    EXPECT_TRUE(std::is_sorted(done.begin(), done.end()));
    ASSERT_TRUE(document.last_built());
    EXPECT_EQ(document.last_built_job().log.size(), 1U);
}

} // namespace drawercast::app
