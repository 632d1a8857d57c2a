// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_beam.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace drawercast::mold {
namespace {

/// Lifts under a force at each node, some of them held.
std::vector<double> solved(const Square& stiffness, std::vector<double> force,
                           const std::vector<bool>& held) {
    const std::size_t n = stiffness.size;
    std::vector<double> k = stiffness.values;
    for (std::size_t i = 0; i < n; ++i) {
        if (!held[i]) continue;
        for (std::size_t j = 0; j < n; ++j) k[i * n + j] = k[j * n + i] = i == j ? 1 : 0;
        force[i] = 0;
    }
    for (std::size_t p = 0; p < n; ++p) {
        for (std::size_t i = p + 1; i < n; ++i) {
            const double times = k[i * n + p] / k[p * n + p];
            for (std::size_t j = p; j < n; ++j) k[i * n + j] -= times * k[p * n + j];
            force[i] -= times * force[p];
        }
    }
    for (std::size_t p = n; p-- > 0;) {
        for (std::size_t j = p + 1; j < n; ++j) force[p] -= k[p * n + j] * force[j];
        force[p] /= k[p * n + p];
    }
    return force;
}

std::vector<double> reactions(const Square& stiffness, const std::vector<double>& lift,
                              const std::vector<double>& force) {
    std::vector<double> out(lift.size());
    for (std::size_t i = 0; i < lift.size(); ++i) {
        for (std::size_t j = 0; j < lift.size(); ++j) out[i] += stiffness.at(i, j) * lift[j];
        out[i] -= force[i];
    }
    return out;
}

struct Beam {
    std::vector<double> at, force, lift, reaction;
    BeamSection section;
};

Beam continuous(int spans, int parts, const BeamSection& section, double span = 400, double load = 2) {
    Beam beam;
    beam.section = section;
    const int count = spans * parts + 1;
    std::vector<bool> held(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) {
        beam.at.push_back(span * i / parts);
        beam.force.push_back(load * span / parts * (i == 0 || i + 1 == count ? 0.5 : 1));
        held[static_cast<std::size_t>(i)] = i % parts == 0;
    }
    const Square k = beam_stiffness(section, beam.at);
    beam.lift = solved(k, beam.force, held);
    beam.reaction = reactions(k, beam.lift, beam.force);
    return beam;
}

const BeamSection slender{9000.0 * 45 * 45 * 45 * 45 / 12, 1e12, 1};

TEST(Beam, ContinuousOverEqualSpans) {
    struct Row {
        int spans;
        std::vector<double> reactions; ///< from one end, of what a span carries
        double support_moment;         ///< the greatest, /(w·L²)
        double lift;                   ///< the greatest, /(w·L⁴/EI)
    };
    // "Civil Engineering Formulas", table 2.1; exact by the three-moment equation.
    const std::vector<Row> rows{{1, {1.0 / 2}, 1.0 / 8, 5.0 / 384},
                                {2, {3.0 / 8, 5.0 / 4}, 1.0 / 8, 0.005416},
                                {3, {2.0 / 5, 11.0 / 10}, 1.0 / 10, 0.006884},
                                {4, {11.0 / 28, 8.0 / 7, 13.0 / 14}, 3.0 / 28, 0.006460},
                                {5, {15.0 / 38, 43.0 / 38, 37.0 / 38}, 2.0 / 19, 0.006572}};
    constexpr int parts = 80;
    constexpr double load = 2, span = 400;
    for (const Row& row : rows) {
        const Beam beam = continuous(row.spans, parts, slender, span, load);
        for (std::size_t i = 0; i < row.reactions.size(); ++i)
            EXPECT_NEAR(beam.reaction[i * parts] / (-load * span * row.reactions[i]), 1, 1e-3) << row.spans;
        const double moment = beam_moment(slender, beam.at, beam.lift) / (load * span * span);
        EXPECT_NEAR(moment / row.support_moment, 1, 1e-3) << row.spans;
        const double most = *std::max_element(beam.lift.begin(), beam.lift.end());
        const double scale = slender.bending_nmm2 / (load * std::pow(span, 4));
        EXPECT_NEAR(most * scale / row.lift, 1, 1e-3) << row.spans;
    }
}

TEST(Beam, OneSpanBendsAndShears) {
    const BeamSection section = beam_section({}, false, {}, 0);
    const double load = 2;
    for (const double span : {100.0, 400.0}) {
        const Beam beam = continuous(1, 40, section, span, load);
        const double bending = 5 * load * std::pow(span, 4) / (384 * section.bending_nmm2);
        const double g_a = section.shear_n * 6 / 5;
        const double wanted = bending * (1 + 11.52 * section.bending_nmm2 / (g_a * span * span));
        EXPECT_NEAR(beam.lift[20] / wanted, 1, 2e-3) << span;
        EXPECT_NEAR(beam_moment(section, beam.at, beam.lift) / (load * span * span / 8), 1, 2e-3);
    }
}

TEST(Beam, GluedIsStifferThanLoose) {
    const PlateSection plate{16, 2200, 0.25};
    const BeamSection loose = beam_section({}, false, plate, 90);
    const BeamSection glued = beam_section({}, true, plate, 90);
    // By hand: 90 mm of plate has 3168 kN, the piece 18225 kN, 30.5 mm apart.
    const double together = 3.168e6 * 18.225e6 / (3.168e6 + 18.225e6) * 30.5 * 30.5;
    EXPECT_NEAR(glued.bending_nmm2 - loose.bending_nmm2, together, 1e-9 * together);
    EXPECT_DOUBLE_EQ(glued.shear_n, loose.shear_n);
}

} // namespace
} // namespace drawercast::mold
