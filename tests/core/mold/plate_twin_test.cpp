// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_held.h"

#include "source_dir.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <locale>
#include <string>
#include <vector>

/// Two screwed plates against another program's finite elements: CalculiX with shells made of bricks, of one
/// mesh over the whole plate. Its answers are kept in tests/data/plate, with the script that writes its
/// decks.
namespace drawercast::mold {
namespace {

constexpr double width = 390;
constexpr double depth = 260;
constexpr double wall = 16;
constexpr double spring = 1500;
constexpr double alike = 0.03;
const PlateSection board{16, 2200, 0.25};

struct Answer {
    double bow_mm = 0;
    double gap_mm = 0;
    std::vector<double> pull_n;
};

Answer kept(const std::string& name) {
    std::ifstream file(std::string(DRAWERCAST_SOURCE_DIR) + "/tests/data/plate/" + name + ".txt");
    file.imbue(std::locale::classic()); // wherever this runs
    Answer out;
    std::string word;
    for (double value = 0; file >> word >> value;) {
        if (word == "bow") out.bow_mm = value;
        if (word == "gap") out.gap_mm = value;
        if (word == "pull") out.pull_n.push_back(value);
    }
    return out;
}

/// Counter-clockwise from the front-left corner.
std::vector<Hold> holds() {
    constexpr double out = wall / 2;
    std::vector<Hold> all;
    for (int i = 0; i < 7; ++i) all.push_back({{30.0 + 55 * i, -out}, spring});
    for (int i = 0; i < 5; ++i) all.push_back({{width + out, 30.0 + 50 * i}, spring});
    for (int i = 0; i < 7; ++i) all.push_back({{width - 30 - 55 * i, depth + out}, spring});
    for (int i = 0; i < 5; ++i) all.push_back({{-out, depth - 30 - 50 * i}, spring});
    return all;
}

Answer ours(const std::vector<Batten>& battens) {
    PlateShape shape{width, depth, 60, wall, 2200, {}, {}};
    shape.opening = shape::region_of(shape::Ring{{0, 0}, {width, 0}, {width, depth}, {0, depth}});
    const PlateOnBox box(board, shape, {width / 3, 2 * width / 3}, {});
    const Held held = box.held(holds(), battens);
    const auto unknowns = box.plate().unknowns(held.force_n);
    const PlateGrid& grid = box.plate().grid();
    Answer out;
    out.pull_n = held.pull_n;
    constexpr double near = 1e-6;
    for (std::size_t node = 0; node < grid.nodes(); ++node) {
        const double x = grid.x_mm[node % grid.columns()];
        const double y = grid.y_mm[node / grid.columns()];
        const double beside = std::min({x, width - x, y, depth - y}); // how far inside the opening
        if (beside < -near) continue;
        out.bow_mm = std::max(out.bow_mm, unknowns[node_unknowns * node]);
        if (beside < near) out.gap_mm = std::max(out.gap_mm, unknowns[node_unknowns * node]);
    }
    return out;
}

void expect_alike(const Answer& found, const Answer& wanted) {
    EXPECT_NEAR(found.bow_mm / wanted.bow_mm, 1, alike);
    EXPECT_NEAR(found.gap_mm / wanted.gap_mm, 1, alike);
    ASSERT_EQ(found.pull_n.size(), wanted.pull_n.size());
    const double worst = *std::max_element(wanted.pull_n.begin(), wanted.pull_n.end());
    EXPECT_NEAR(*std::max_element(found.pull_n.begin(), found.pull_n.end()) / worst, 1, alike);
    for (std::size_t i = 0; i < wanted.pull_n.size(); ++i)
        EXPECT_NEAR(found.pull_n[i], wanted.pull_n[i], alike * worst) << i;
}

TEST(PlateTwin, ScrewedOnABox) { expect_alike(ours({}), kept("bare")); }

TEST(PlateTwin, ScrewedWithTwoStiffeners) {
    constexpr double side = 45;
    constexpr double elasticity = 10000; // the twin's bricks are isotropic, Poisson 0.3
    const BeamSection section{elasticity * std::pow(side, 4) / 12, 5.0 / 6 * elasticity / 2.6 * side * side,
                              0};
    expect_alike(ours({{false, width / 3, section}, {false, 2 * width / 3, section}}), kept("stiffened"));
}

} // namespace
} // namespace drawercast::mold
