// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/pocket.h"

#include "sheets/marks.h"

#include <algorithm>
#include <string>
#include <vector>

/// Which words stand in which hollow of a pocket, the same on the plan and on both templates.
namespace drawercast::sheets {

/// `name` on one line, and broken at a blank near its middle where it has one.
std::vector<std::vector<std::string>> name_lines(const std::string& name);

/// The words to try in a hollow, from all to least. `figure`: its depth or height; `depth_sign` before it.
/// An empty `name`: the figure alone. `key` stands for the name where that has no room; may be empty.
std::vector<std::vector<TextLine>> label_tries(const std::string& name, const std::string& key,
                                               const TextLine& figure, theme::TextRole name_role,
                                               theme::TextRole small_role);

/// The hollow that carries the name: the first level of the largest area.
template <class Frame>
std::size_t named_cut(const std::vector<layout::Cut<Frame>>& cuts) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < cuts.size(); ++i) {
        if (cuts[i].kind != layout::Cut<Frame>::Kind::level) continue;
        if (shape::area(cuts[i].outline.contour) > shape::area(cuts[best].outline.contour) * (1 + 1e-9))
            best = i;
    }
    return best;
}

/// Indices of `cuts` from shallow to deep, in file order where equal: the order of drawing.
template <class Frame>
std::vector<std::size_t> by_depth(const std::vector<layout::Cut<Frame>>& cuts) {
    std::vector<std::size_t> order(cuts.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return cuts[a].depth_mm < cuts[b].depth_mm; });
    return order;
}

/// Whether every point of `inner` lies within `outer`: then its edge is a step, not the pocket's own edge.
bool lies_within(const shape::Contour& inner, const shape::Contour& outer);

} // namespace drawercast::sheets
