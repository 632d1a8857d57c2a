// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "print/page.h"
#include "print/registration.h"
#include "print/tiling.h"
#include "sheets/sheet.h"
#include "sheets/table.h"

#include <optional>
#include <string>
#include <vector>

namespace drawercast::print {

/// What the pages of one template say besides the drawing.
struct TemplateWords {
    QString sheet;               ///< "Pattern board"
    std::vector<QString> lay_on; ///< board and face to lay it on, two short lines
    std::vector<QString> steps;  ///< how to use it, after printing and joining
    QString job;
    QString revision; ///< "rev. 3"
    QString drawer;
    job::DisplayUnits units = job::DisplayUnits::mm;
    QString warning;                    ///< on the cover before all else; may be empty
    QString remark;                     ///< one line for the cover: "Enlarged 1.0040 …"; may be empty
    std::optional<sheets::Table> table; ///< of places from the datum
    QString table_name;                 ///< "blocks"
    QString table_head; ///< "Blocks, from the datum 0, 0 in the front-left inner corner of the box"
};

/// A drawing to be printed at true size, with its frame told apart for good.
struct Template {
    bool mirrored = false;
    Box area_mm;
    std::vector<sheets::Mark> marks;
    TemplateWords words;
};

template <class Frame>
Template template_of(const sheets::Sheet<Frame>& sheet, TemplateWords words) {
    return {sheets::is_mirrored(sheet), sheet.area, sheet.marks, std::move(words)};
}

/// The window of the drawing that a tile page shows, mm from the paper's upper left corner.
Box tile_window_mm(Paper paper, Orientation orientation);

/// A template tiled, and its drawing as ink: once for all tiles, so that they rejoin exactly.
struct LaidOut {
    Tiling tiling;
    sheets::Inks inks; ///< 1/96 in, the drawing's (0, 0) at the origin
    std::vector<RingMark> rings;
};
Tiling tiling_of(const Template& drawing, Paper paper, Orientation orientation);
LaidOut laid_out(const Template& drawing, Tiling tiling, const theme::Theme& theme);

/// A page of a template: of what, and which of the file's it is.
struct PageOf {
    const Template& drawing;
    const LaidOut& laid; ///< of the drawing
    Paper paper;
    int number; ///< of `total`: its place among all pages of the file
    int total;
    const Printing& printing;
    const theme::Theme& theme;
};

/// One tile's page.
Page tile_page(const PageOf& of, const Tile& tile);

/// The pages before the tiles: a cover with frame, map and steps, and more where the table is long. Their
/// count does not depend on `number`, which is the first one's, and `total`.
std::vector<Page> cover_pages(const PageOf& of);

} // namespace drawercast::print
