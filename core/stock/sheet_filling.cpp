// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/sheet_filling.h"

#include "base/demand.h"

#include <algorithm>
#include <limits>
#include <optional>

namespace drawercast::stock {

namespace {

struct Spot {
    std::size_t sheet = 0;
    int node = 0;
    bool turned = false;
    double left_over = std::numeric_limits<double>::infinity();
};

double area(Micro a, Micro b) { return static_cast<double>(a) * static_cast<double>(b); }

class Filling {
  public:
    Filling(const SheetsIn& in, const FillingRule& rule) : in_(in), rule_(rule) {}

    void lay(int index) {
        const SheetPiece& piece = in_.pieces[static_cast<std::size_t>(index)];
        auto spot = best_spot(piece);
        if (!spot) {
            sheets_.emplace_back(in_.width, in_.height);
            free_.push_back({0});
            spot = best_spot(piece);
            DRAWERCAST_DEMAND(spot.has_value(), "a piece fits an empty sheet");
        }
        const Micro w = spot->turned ? piece.height : piece.width;
        const Micro h = spot->turned ? piece.width : piece.height;
        auto& free = free_[spot->sheet];
        free.erase(std::find(free.begin(), free.end(), spot->node));
        const int node = cut_free(spot->sheet, spot->node, w, h);
        CutNode& panel = sheets_[spot->sheet].nodes[static_cast<std::size_t>(node)];
        panel.piece = index;
        panel.turned = spot->turned;
    }

    std::vector<CutTree> take() { return std::move(sheets_); }

  private:
    double left_over(const CutNode& panel, Micro w, Micro h) const {
        if (rule_.fit == Fit::area) return area(panel.width, panel.height) - area(w, h);
        return static_cast<double>(std::min(panel.width - w, panel.height - h));
    }

    std::optional<Spot> best_spot(const SheetPiece& piece) const {
        Spot best;
        for (std::size_t sheet = 0; sheet < sheets_.size(); ++sheet)
            for (const int node : free_[sheet]) {
                const CutNode& panel = sheets_[sheet].nodes[static_cast<std::size_t>(node)];
                for (const bool turned : {false, true}) {
                    if (turned && (!piece.may_turn || piece.width == piece.height)) continue;
                    const Micro w = turned ? piece.height : piece.width;
                    const Micro h = turned ? piece.width : piece.height;
                    if (w > panel.width || h > panel.height) continue;
                    const double over = left_over(panel, w, h);
                    if (over < best.left_over) best = {sheet, node, turned, over};
                }
            }
        if (best.left_over == std::numeric_limits<double>::infinity()) return std::nullopt;
        return best;
    }

    /// The two cuts that free w × h in the panel's corner; what is left over is free for others.
    int cut_free(std::size_t sheet, int node, Micro w, Micro h) {
        CutTree& tree = sheets_[sheet];
        const CutNode panel = tree.nodes[static_cast<std::size_t>(node)];
        const Micro right = std::max<Micro>(0, panel.width - w - in_.kerf);
        const Micro behind = std::max<Micro>(0, panel.height - h - in_.kerf);
        bool upright_first = right >= behind; // the longer rest stays whole
        if (rule_.split == Split::widest_rest)
            upright_first = std::max(area(right, panel.height), area(w, behind)) >=
                            std::max(area(right, h), area(panel.width, behind));
        for (const bool upright : {upright_first, !upright_first}) {
            const Micro at = upright ? w : h;
            if (at == (upright ? panel.width : panel.height)) continue;
            node = tree.cut(node, upright ? Saw::upright : Saw::level, at, in_.kerf);
            free_[sheet].push_back(node + 1);
        }
        return node;
    }

    const SheetsIn& in_;
    FillingRule rule_;
    std::vector<CutTree> sheets_;
    std::vector<std::vector<int>> free_; ///< of each sheet
};

} // namespace

std::vector<CutTree> filled(const SheetsIn& in, const std::vector<int>& order, const FillingRule& rule) {
    Filling filling(in, rule);
    for (const int piece : order) filling.lay(piece);
    return filling.take();
}

SheetsCost cost_of(const std::vector<CutTree>& sheets) {
    LeftOver most;
    for (const auto& sheet : sheets) {
        const LeftOver over = left_over(sheet);
        most = {std::max(most.largest, over.largest), std::max(most.across, over.across)};
    }
    return {static_cast<int>(sheets.size()), -most.across, -most.largest};
}

} // namespace drawercast::stock
