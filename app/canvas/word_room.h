// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/inking.h"

#include <vector>

namespace drawercast::app {

/// Where the blue pencil's words stand: never over names and checks while there is another place, off the
/// pockets where that can be. View pixels.
class WordRoom {
  public:
    /// `seen`: what of the sheet is in view.
    WordRoom(sheets::Taken taken, const shape::Box& seen) : taken_(std::move(taken)), seen_(seen) {}

    /// Something drawn that words keep off.
    void keep_off(const shape::Box& box) { taken_.words.push_back(box); }
    /// The best of some middles for words of `size`, the first where several are as good; others keep off it
    /// from then on.
    shape::Box place(const std::vector<shape::Vec>& middles, shape::Vec size);

  private:
    double harm(const shape::Box& box) const;

    sheets::Taken taken_;
    shape::Box seen_;
};

} // namespace drawercast::app
