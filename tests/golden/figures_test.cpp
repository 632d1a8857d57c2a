// SPDX-License-Identifier: GPL-3.0-or-later
// The demo jobs' figures against kept ones, number by number. After a change that is meant, write them anew
// with
//   DRAWERCAST_RENEW=1 ctest -R Golden
// and review the difference.
#include "base/number.h"
#include "job/json_tree.h"
#include "job/store.h"
#include "plan/figures.h"

#include "source_dir.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

namespace drawercast::plan {
namespace {

constexpr double share = 1e-6; ///< numbers may differ by this much of themselves from machine to machine
constexpr double least = 1e-6;

/// A leaf with its path: what a figure is called and what it says.
struct Leaf {
    std::string path;
    std::string raw;
    bool number = false;
};

void add_leaves(const job::JsonValue& value, std::vector<Leaf>& leaves) {
    switch (value.kind()) {
    case job::JsonKind::object:
        value.each_member(
            [&](std::string_view, const job::JsonValue& member) { add_leaves(member, leaves); });
        return;
    case job::JsonKind::array:
        value.each_item([&](const job::JsonValue& item) { add_leaves(item, leaves); });
        return;
    default:
        leaves.push_back({value.pointer(), std::string(value.raw()), value.kind() == job::JsonKind::number});
    }
}

std::vector<Leaf> leaves_of(const std::string& text) {
    const auto tree = job::parse_json(text);
    std::vector<Leaf> leaves;
    if (tree) add_leaves(tree->root(), leaves);
    return leaves;
}

void expect_same(const std::vector<Leaf>& now, const std::vector<Leaf>& kept) {
    ASSERT_EQ(now.size(), kept.size());
    for (std::size_t i = 0; i < now.size(); ++i) {
        ASSERT_EQ(now[i].path, kept[i].path);
        if (!now[i].number) {
            EXPECT_EQ(now[i].raw, kept[i].raw) << now[i].path;
            continue;
        }
        const double a = parse_number(now[i].raw).value();
        const double b = parse_number(kept[i].raw).value();
        EXPECT_NEAR(a, b, least + share * std::max(std::abs(a), std::abs(b))) << now[i].path;
    }
}

class Golden : public ::testing::TestWithParam<const char*> {};

TEST_P(Golden, figures_are_the_kept_ones) {
    const std::string top = DRAWERCAST_SOURCE_DIR;
    const auto demo = job::load_job(top + "/resources/demo/" + GetParam() + ".drawercast.json");
    ASSERT_TRUE(demo) << one_line(demo.error().front());
    const Plan plan = compute(*demo);
    EXPECT_FALSE(anything_to_mend(plan));
    const std::string now = figures_json(*demo, plan, "golden");
    const std::string kept_path = top + "/tests/data/golden/" + GetParam() + "-figures.json";
    if (std::getenv("DRAWERCAST_RENEW") != nullptr) {
        ASSERT_TRUE(job::write_file(kept_path, now));
    }
    const auto kept = job::read_file(kept_path, job::most_json_bytes);
    ASSERT_TRUE(kept) << one_line(kept.error());
    const auto leaves = leaves_of(now);
    EXPECT_GT(leaves.size(), 100u);
    expect_same(leaves, leaves_of(*kept));
}

INSTANTIATE_TEST_SUITE_P(Demo, Golden, ::testing::Values("field-service", "standard-objects"));

} // namespace
} // namespace drawercast::plan
