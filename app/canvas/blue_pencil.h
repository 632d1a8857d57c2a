// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/ink.h"
#include "theme/palette.h"

#include <QString>

#include <vector>

namespace drawercast::app {

/// Draws in blue, cased in paper so that it shows on any wash. Points in view pixels, y down.
class BluePencil {
  public:
    explicit BluePencil(const theme::Theme& theme) : theme_(theme) {}

    /// `path` in px; dashes in px, none: continuous.
    void line(const sheets::Path& path, double width, std::vector<double> dashes = {});
    void fill(const sheets::Path& path);
    /// Words on a plate of paper.
    void words(const QString& text, const shape::Box& plate);
    /// Size of the plate `words` wants.
    shape::Vec plate_size(const QString& text) const;

    sheets::Inks take();

  private:
    const theme::Theme& theme_;
    sheets::Inks casings_; ///< under all lines, so that no line is cut by another's casing
    sheets::Inks lines_;
    sheets::Inks words_;
};

} // namespace drawercast::app
