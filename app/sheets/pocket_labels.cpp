// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/pocket_labels.h"

#include <algorithm>
#include <cmath>

namespace drawercast::sheets {

std::vector<std::vector<std::string>> name_lines(const std::string& name) {
    std::vector<std::vector<std::string>> ways{{name}};
    std::size_t best = std::string::npos;
    const auto off_middle = [&](std::size_t i) {
        return std::abs(2.0 * static_cast<double>(i) - static_cast<double>(name.size()));
    };
    for (std::size_t i = name.find(' '); i != std::string::npos; i = name.find(' ', i + 1))
        if (best == std::string::npos || off_middle(i) < off_middle(best)) best = i;
    if (best != std::string::npos) ways.push_back({name.substr(0, best), name.substr(best + 1)});
    return ways;
}

std::vector<std::vector<TextLine>> label_tries(const std::string& name, const TextLine& figure,
                                               theme::TextRole name_role, theme::TextRole small_role) {
    std::vector<std::vector<TextLine>> tries;
    TextLine small_figure = figure;
    small_figure.role = small_role;
    if (!name.empty()) {
        for (const auto role : {name_role, small_role})
            for (const auto& names : name_lines(name)) {
                std::vector<TextLine> lines;
                for (const auto& part : names) lines.push_back({part, role, false});
                lines.push_back(role == name_role ? figure : small_figure);
                tries.push_back(std::move(lines));
            }
    }
    tries.push_back({figure});
    tries.push_back({small_figure});
    return tries;
}

bool lies_within(const shape::Contour& inner, const shape::Contour& outer) {
    if (!shape::near(shape::bounds(inner), shape::bounds(outer))) return false;
    constexpr double fine_enough_mm = 0.5;
    const auto ring = shape::traced(inner, fine_enough_mm);
    return std::all_of(ring.begin(), ring.end(), [&](Vec p) { return shape::contains(outer, p); });
}

} // namespace drawercast::sheets
