// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/ink.h"
#include "sheets/marks.h"
#include "sheets/view.h"
#include "theme/palette.h"

#include <optional>
#include <vector>

namespace drawercast::sheets {

/// Turns marks to ink for one view in one theme. Words look for room among what was inked before them, so
/// marks come in the order in which they are to lie on each other, checks last.
class Inking {
  public:
    Inking(const View& view, const theme::Theme& theme) : view_(view), theme_(theme) {}

    void ink(const Mark& mark);
    Inks take() { return std::move(inks_); }

  private:
    void add(const PathMark& mark);
    void add(const HatchMark& mark);
    void add(const LabelMark& mark);
    void add(const TextMark& mark);
    void add(const DimensionMark& mark);
    void add(const GapMark& mark);
    void add(const FlagMark& mark);
    void add(const CenterMark& mark);
    void add(const SignMark& mark);
    void add(const LegendMark& mark);

    struct Block; // lines of words measured together
    Block measured(const std::vector<TextLine>& lines) const;
    void write_block(const Block& block, Vec center, bool upright);
    bool label_inside(const LabelMark& mark, bool uncover);
    void label_outside(const LabelMark& mark);
    void plate(const Box& box, const QColor& color);

    /// Where a plate of `size` finds free face near `at`: clear of words, and of pockets if it can be.
    std::optional<Box> free_place(Vec at, Vec size) const;
    void check_plate(Vec from, const CheckTag& tag);
    void badge(Vec center, const CheckTag& tag);
    Vec badge_size() const;

    void stroke(const Path& device, theme::LineRole role);
    void arrow_head(Vec tip, Vec direction, const QColor& color, double px = 8);
    theme::Lettering lettering(theme::TextRole role) const;
    double px(double logical) const { return logical * view_.per_px; }

    const View& view_;
    const theme::Theme& theme_;
    Inks inks_;
    std::string about_;
    std::vector<Box> words_;    ///< boxes of what must not be covered
    std::vector<Box> pockets_;  ///< boxes of washed areas with a subject
    std::optional<Box> ground_; ///< of the face: where plates like to be
};

/// Inks of `marks` (of one layer or all) in their order.
Inks ink_of(const std::vector<Mark>& marks, const View& view, const theme::Theme& theme);
Inks ink_of(const std::vector<Mark>& marks, Layer layer, const View& view, const theme::Theme& theme);

} // namespace drawercast::sheets
