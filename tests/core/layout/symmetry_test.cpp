// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/layout/random_layout.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

/// What is wrong with a layout must not depend on which way round one looks at it.
namespace drawercast::layout {
namespace {

using namespace testing;
using shape::Pose;
using shape::Vec;

Pose mirrored(const Pose& pose, double width = 0) { return {{width - pose.at.x, pose.at.y}, -pose.turn_deg}; }

/// All outlines of the random layouts but free ones are their own mirror image.
shape::Given mirrored(const shape::Given& given) {
    const auto* polygon = std::get_if<shape::Polygon>(&given);
    if (!polygon) return given;
    shape::Polygon mirror;
    const std::size_t n = polygon->corners.size();
    for (std::size_t k = n; k-- > 0;) { // an arc starts at its other end now
        const Vec at = polygon->corners[k].at;
        mirror.corners.push_back({{-at.x, at.y}, polygon->corners[(k + n - 1) % n].sagitta_mm});
    }
    return mirror;
}

job::Object mirrored(job::Object object) {
    for (job::Level& level : object.levels) {
        level.pose = mirrored(level.pose);
        if (auto* sunk = std::get_if<job::Sunk>(&level.form)) sunk->outline = mirrored(sunk->outline);
        if (auto* through = std::get_if<job::Through>(&level.form))
            through->outline = mirrored(through->outline);
        if (auto* lying = std::get_if<job::Lying>(&level.form))
            std::reverse(lying->cylinders.begin(), lying->cylinders.end());
    }
    return object;
}

Scene mirrored(Scene scene) {
    for (auto& object : scene.objects) object = mirrored(object);
    for (auto& obstruction : scene.drawer.obstructions) obstruction.pose = mirrored(obstruction.pose, 600);
    for (auto& pocket : scene.drawer.pockets) {
        pocket.pose = mirrored(pocket.pose, 600);
        for (auto& notch : pocket.notches) notch.pose = mirrored(notch.pose);
    }
    return scene;
}

/// Turned a quarter counter-clockwise, the drawer put back to (0, 0): its height is 400.
Pose turned(const Pose& pose) { return {{400 - pose.at.y, pose.at.x}, pose.turn_deg + 90}; }

Scene turned(Scene scene) {
    auto& outline = std::get<shape::Rectangle>(scene.drawer.outline);
    std::swap(outline.width_mm, outline.height_mm);
    for (auto& obstruction : scene.drawer.obstructions) obstruction.pose = turned(obstruction.pose);
    for (auto& pocket : scene.drawer.pockets) pocket.pose = turned(pocket.pose);
    return scene;
}

/// The lists agree in all but places. Widths of overlaps come over the grid of set operations: a few
/// micrometers.
void expect_alike(std::vector<Check> some, std::vector<Check> others, const std::string& name) {
    const auto by_key = [](const Check& a, const Check& b) {
        return std::tie(a.code, a.subjects) < std::tie(b.code, b.subjects);
    };
    std::sort(some.begin(), some.end(), by_key);
    std::sort(others.begin(), others.end(), by_key);
    ASSERT_EQ(some.size(), others.size()) << name;
    for (std::size_t i = 0; i < some.size(); ++i) {
        const double tolerance =
            some[i].code == Code::overlap || some[i].code == Code::outside ? 0.005 : 1e-9;
        EXPECT_EQ(some[i].code, others[i].code) << name;
        EXPECT_EQ(some[i].subjects, others[i].subjects) << name;
        EXPECT_EQ(some[i].severity, others[i].severity) << name;
        EXPECT_NEAR(some[i].value, others[i].value, tolerance) << name << " " << text_of(some[i].code);
        EXPECT_NEAR(some[i].limit, others[i].limit, 1e-9) << name;
    }
}

class Symmetry : public ::testing::TestWithParam<std::uint64_t> {
  protected:
    Scene scene_ = any_scene(GetParam(), 24);
};

TEST_P(Symmetry, MirroredLayoutHasTheSameFaults) {
    expect_alike(scene_.checks(), mirrored(scene_).checks(), "mirrored");
}

TEST_P(Symmetry, TurnedLayoutHasTheSameFaults) {
    expect_alike(scene_.checks(), turned(scene_).checks(), "turned");
}

TEST_P(Symmetry, OrderOfThePocketsDoesNotMatter) {
    Scene shuffled = scene_;
    Dice dice(GetParam());
    auto& pockets = shuffled.drawer.pockets;
    for (std::size_t i = pockets.size(); i-- > 1;)
        std::swap(pockets[i], pockets[static_cast<std::size_t>(dice.below(static_cast<int>(i + 1)))]);
    auto before = scene_.checks();
    auto after = shuffled.checks();
    for (auto* checks : {&before, &after}) // a sum of masses may differ in its last bit
        for (Check& check : *checks)
            if (check.code == Code::overload) check.value = std::round(check.value * 1e9) / 1e9;
    EXPECT_EQ(before, after) << "the list is sorted by what it says, not by where it came from";
}

INSTANTIATE_TEST_SUITE_P(Seeds, Symmetry, ::testing::Range<std::uint64_t>(1, 41));

TEST(SymmetrySeeds, SeeEveryKindOfFault) {
    std::set<Code> seen;
    for (std::uint64_t seed = 1; seed < 41; ++seed)
        for (const Check& check : any_scene(seed, 24).checks()) seen.insert(check.code);
    for (const Code code :
         {Code::wall_thin, Code::edge_thin, Code::floor_thin, Code::overlap, Code::outside, Code::too_high,
          Code::notch_apart, Code::obstructed, Code::overload, Code::foot_pressure})
        EXPECT_TRUE(seen.count(code)) << text_of(code);
}

} // namespace
} // namespace drawercast::layout
