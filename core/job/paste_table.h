// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// A list as a spreadsheet puts it on the clipboard or into a file, taken apart into cells; what they mean is
/// asked in paste_columns.h.
namespace drawercast::job {

inline constexpr std::size_t most_paste_bytes = 1 << 20;
inline constexpr std::size_t most_paste_rows = 2000; ///< as many kinds of object as any workshop keeps
inline constexpr std::size_t most_paste_columns = 64;

enum class Separator { tab, semicolon, comma };
char character_of(Separator separator);

struct PasteRow {
    int line = 1;                   ///< of the pasted text, from 1
    std::string text;               ///< as pasted, without the line end
    std::vector<std::string> cells; ///< trimmed, quotes taken off, line ends within as blanks
    bool operator==(const PasteRow&) const = default;
};

struct PasteTable {
    Separator separator = Separator::tab;
    std::vector<PasteRow> rows; ///< blank ones left out
    std::size_t columns = 0;    ///< of the widest row, at most most_paste_columns
    std::string beyond;         ///< what stands behind the last row that is read, as pasted
    int beyond_line = 0;
    bool operator==(const PasteTable&) const = default;
};

/// The cells of a text: `separator` or, where it is not given, the one most rows have (tab before semicolon
/// before comma). A cell in quotes may hold separators, line ends and doubled quotes; a quote that is not
/// closed, or not at a cell's start (3 1/4"), is an inch sign like any other. Takes time and memory in
/// proportion to the text. Problem "paste-large" over most_paste_bytes.
Expected<PasteTable> paste_table(std::string_view text, std::optional<Separator> separator = std::nullopt);

} // namespace drawercast::job
