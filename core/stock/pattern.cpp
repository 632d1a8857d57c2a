// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/pattern.h"

#include "base/demand.h"

namespace drawercast::stock {

namespace {

class Freeing {
  public:
    Freeing(const std::vector<Pattern>& patterns, CutTree& tree, Micro kerf)
        : patterns_(patterns), tree_(tree), kerf_(kerf) {}

    void free(int node, int index) {
        const Pattern& pattern = patterns_[static_cast<std::size_t>(index)];
        node = trimmed(node, pattern.width - kerf_, pattern.height - kerf_);
        if (pattern.piece >= 0) {
            panel(node).piece = pattern.piece;
            panel(node).turned = pattern.turned;
            return;
        }
        const Pattern& first = patterns_[static_cast<std::size_t>(pattern.first)];
        const Micro at = (pattern.joint == Saw::upright ? first.width : first.height) - kerf_;
        const int part = tree_.cut(node, pattern.joint, at, kerf_);
        free(part, pattern.first);
        free(part + 1, pattern.second);
    }

  private:
    CutNode& panel(int node) { return tree_.nodes[static_cast<std::size_t>(node)]; }

    /// The panel cut down to width × height.
    int trimmed(int node, Micro width, Micro height) {
        const CutNode whole = panel(node);
        DRAWERCAST_DEMAND(whole.width >= width && whole.height >= height, "a pattern fits its panel");
        const bool in_width = whole.width > width, in_height = whole.height > height;
        const auto left_over = [](Micro a, Micro b) {
            return static_cast<double>(a) * static_cast<double>(b);
        };
        const bool width_first =
            left_over(whole.width - width, whole.height) >= left_over(whole.height - height, whole.width);
        for (const bool now_width : {width_first, !width_first}) {
            if (now_width && in_width) node = tree_.cut(node, Saw::upright, width, kerf_);
            if (!now_width && in_height) node = tree_.cut(node, Saw::level, height, kerf_);
        }
        return node;
    }

    const std::vector<Pattern>& patterns_;
    CutTree& tree_;
    Micro kerf_;
};

} // namespace

CutTree tree_of(const std::vector<Pattern>& patterns, int root, Micro width, Micro height, Micro kerf) {
    CutTree tree(width, height);
    if (root >= 0) Freeing(patterns, tree, kerf).free(0, root);
    return tree;
}

} // namespace drawercast::stock
