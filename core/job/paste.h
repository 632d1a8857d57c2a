// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/length.h"
#include "job/job.h"
#include "job/paste_columns.h"
#include "job/paste_table.h"

/// Objects from a pasted list. Nothing of the list is lost: each row becomes an object, or stays as its own
/// text with what keeps it from being read.
namespace drawercast::job {

/// How deep a pasted object is let in, as a share of its height: two fifths stand out to take hold of (our
/// guess; each object's levels can be changed afterwards).
inline constexpr double paste_depth_share = 0.6;

/// What bare numbers are in where neither the cell nor the header says it.
struct PasteUnits {
    LengthUnit length = LengthUnit::mm;
    std::string_view mass = "g"; ///< a unit word of Quantity::mass_g
};
PasteUnits paste_units(DisplayUnits units); ///< mm and g, else inches and pounds

struct PastedRow {
    int line = 1;          ///< of the pasted text
    std::string text;      ///< as pasted
    Expected<Object> read; ///< without an id; the problem's `where` names the column
};

/// Objects of the rows: rectangles length × width, `paste_depth_share` of the height deep where no depth of
/// the pocket is said, one of each where no count is said, no mass where none is said. Cells of unknown
/// columns go to the note as "header: cell". Each object has passed the job reader, so that it can be added
/// and saved as it is. Rows beyond most_paste_rows come as one row "paste-many".
std::vector<PastedRow> read_pasted(const PasteTable& table, const PasteMeaning& meaning,
                                   const PasteUnits& units);

/// Table, guess and rows in one: what a program without a window needs.
Expected<std::vector<PastedRow>> read_pasted(std::string_view text, const PasteUnits& units);

} // namespace drawercast::job
