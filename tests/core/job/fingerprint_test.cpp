// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "job/fingerprint.h"

#include <gtest/gtest.h>

namespace drawercast::job {
namespace {

TEST(Fingerprint, TheHashIsThePublishedOne) {
    // test vectors of the IETF draft, draft-eastlake-fnv, FNV-1a 64
    EXPECT_EQ(fnv1a_64(""), 0xcbf29ce484222325ULL);
    EXPECT_EQ(fnv1a_64("a"), 0xaf63dc4c8601ec8cULL);
    EXPECT_EQ(fnv1a_64("foobar"), 0x85944171f73967e8ULL);
}

TEST(Fingerprint, ChangesWithWhatTheJobSaysNotWithItsLog) {
    Job job;
    job.title = "Drawers";
    const auto before = fingerprint(job);
    EXPECT_EQ(before.size(), 6u);
    EXPECT_EQ(before.find_first_not_of("0123456789abcdef"), std::string::npos);
    job.log.push_back({"d1", "start", 1000});
    EXPECT_EQ(fingerprint(job), before);
    job.title += "x";
    EXPECT_NE(fingerprint(job), before);
}

TEST(Fingerprint, OfADrawerChangesWithItsOwnPapersAlone) {
    Job job = new_job({400, 300, 90, 60});
    Drawer second = *job.drawers.front();
    second.id = "d2";
    job.drawers.emplace_back(second);
    const std::string first = job.drawers.front()->id;
    const auto before = drawer_fingerprint(job, first), other = drawer_fingerprint(job, "d2");
    second.name = "Changed";
    job.drawers.back() = second;
    ++job.revision;
    EXPECT_EQ(drawer_fingerprint(job, first), before);
    EXPECT_NE(drawer_fingerprint(job, "d2"), other);
    job.mold.board = "another";
    EXPECT_NE(drawer_fingerprint(job, first), before);
}

} // namespace
} // namespace drawercast::job
