// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/typed.h"
#include "job/paste_table.h"

#include <string>
#include <string_view>
#include <vector>

/// What the columns of a pasted list hold: guessed from its header and its cells, and open to correction.
namespace drawercast::job {

enum class PasteColumn {
    name,
    length, ///< along the object, x
    width,  ///< across, y
    height,
    pocket, ///< how deep the pocket goes, from the insert's face
    size,   ///< all three in one cell, "140 x 90 x 45"
    mass,
    count,
    note,   ///< kept in the object's note, with the header's word before it
    ignored ///< left out: the maker's choice, never guessed
};

struct PasteField {
    PasteColumn column = PasteColumn::note;
    std::string
        unit; ///< of bare numbers, as the header says it: "mm", "cm", "in", "g", "lb" …; empty: the job's
    bool operator==(const PasteField&) const = default;
};

struct PasteMeaning {
    bool header = false; ///< the first row names the columns
    DecimalMark mark = DecimalMark::point;
    std::vector<PasteField> fields; ///< one for each column of the table
    bool operator==(const PasteMeaning&) const = default;
};

/// A header is a first row without figures, over rows with some, or with a word known here. Columns are known
/// by the words of their header ("Depth" is the height where there is none other, the width where that is the
/// one size missing, else the pocket's); without one they are taken in the order name, length, width, height,
/// mass, count from the first column that is not figures. Columns that are not known go to the note. The
/// decimal mark is the comma where cells show it as one ("82,5") and no cell a point.
PasteMeaning guess_meaning(const PasteTable& table);

/// The same with the header taken as said: another guess of the columns.
PasteMeaning guess_meaning(const PasteTable& table, bool header);

/// Whether the cell begins like a figure.
bool is_figure(std::string_view cell);

} // namespace drawercast::job
