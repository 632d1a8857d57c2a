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

std::vector<std::vector<TextLine>> label_tries(const std::string& name, const std::string& key,
                                               const TextLine& figure, theme::TextRole name_role,
                                               theme::TextRole small_role) {
    std::vector<std::vector<TextLine>> tries;
    TextLine small_figure = figure;
    small_figure.role = small_role;
    for (const auto role : {name_role, small_role}) {
        if (name.empty()) break;
        const TextLine& its_figure = role == name_role ? figure : small_figure;
        TextLine beside = its_figure;
        beside.beside = true;
        tries.push_back({{name, role}, its_figure});
        tries.push_back({{name, role}, beside});
        for (const auto& names : name_lines(name)) {
            if (names.size() < 2) continue;
            tries.push_back({{names[0], role}, {names[1], role}, its_figure});
            tries.push_back({{names[0], role}, {names[1], role}, beside});
        }
    }
    if (!key.empty()) {
        TextLine beside = small_figure;
        beside.beside = true;
        tries.push_back({{key, theme::TextRole::key}, figure});
        tries.push_back({{key, theme::TextRole::key}, beside});
        tries.push_back({{key, theme::TextRole::key}, small_figure});
        tries.push_back({{key, theme::TextRole::key}});
        tries.push_back({{key, theme::TextRole::key_small}});
        return tries;
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
