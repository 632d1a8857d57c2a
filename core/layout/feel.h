// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace drawercast::layout {

/// How a pocket holds its object (engineering estimate, our guess of friction 0.5).
enum class Grip { falls_out, easy, firm, two_hands };

struct Feel {
    std::string subject;
    double lift_out_n = 0; ///< friction force to pull the object out
    double weight_n = 0;
    bool beyond_curve = false; ///< somewhere squeezed past 40 %: the stress was held at its 40 % value
    Grip grip = Grip::easy;
    bool operator==(const Feel&) const = default;
};

} // namespace drawercast::layout
