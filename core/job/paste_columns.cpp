// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/paste_columns.h"

#include "base/ascii.h"
#include "base/contains.h"

#include <algorithm>
#include <array>
#include <optional>

namespace drawercast::job {

namespace {

enum class Word { name, length, width, height, depth, pocket, size, mass, count, note };

struct Known {
    std::string_view text;
    Word word;
};
constexpr std::array known_words{
    Known{"name", Word::name},
    Known{"object", Word::name},
    Known{"objects", Word::name},
    Known{"item", Word::name},
    Known{"items", Word::name},
    Known{"what", Word::name},
    Known{"thing", Word::name},
    Known{"description", Word::name},
    Known{"equipment", Word::name},
    Known{"part", Word::name},
    Known{"tool", Word::name},
    Known{"device", Word::name},
    Known{"length", Word::length},
    Known{"long", Word::length},
    Known{"l", Word::length},
    Known{"len", Word::length},
    Known{"x", Word::length},
    Known{"width", Word::width},
    Known{"wide", Word::width},
    Known{"w", Word::width},
    Known{"breadth", Word::width},
    Known{"b", Word::width},
    Known{"y", Word::width},
    Known{"height", Word::height},
    Known{"high", Word::height},
    Known{"h", Word::height},
    Known{"tall", Word::height},
    Known{"thickness", Word::height},
    Known{"thick", Word::height},
    Known{"z", Word::height},
    Known{"depth", Word::depth},
    Known{"deep", Word::depth},
    Known{"d", Word::depth},
    Known{"pocket", Word::pocket},
    Known{"recess", Word::pocket},
    Known{"sunk", Word::pocket},
    Known{"size", Word::size},
    Known{"sizes", Word::size},
    Known{"dimensions", Word::size},
    Known{"dimension", Word::size},
    Known{"mass", Word::mass},
    Known{"weight", Word::mass},
    Known{"weighs", Word::mass},
    Known{"wt", Word::mass},
    Known{"m", Word::mass},
    Known{"count", Word::count},
    Known{"quantity", Word::count},
    Known{"qty", Word::count},
    Known{"pieces", Word::count},
    Known{"pcs", Word::count},
    Known{"number", Word::count},
    Known{"amount", Word::count},
    Known{"many", Word::count},
    Known{"no", Word::count},
    Known{"n", Word::count},
    Known{"note", Word::note},
    Known{"notes", Word::note},
    Known{"remark", Word::note},
    Known{"remarks", Word::note},
    Known{"comment", Word::note},
    Known{"id", Word::note},
    Known{"serial", Word::note},
    Known{"code", Word::note},
    // German
    Known{"bezeichnung", Word::name},
    Known{"gegenstand", Word::name},
    Known{"teil", Word::name},
    Known{"gerät", Word::name},
    Known{"werkzeug", Word::name},
    Known{"länge", Word::length},
    Known{"breite", Word::width},
    Known{"höhe", Word::height},
    Known{"dicke", Word::height},
    Known{"tiefe", Word::depth},
    Known{"tasche", Word::pocket},
    Known{"taschentiefe", Word::pocket},
    Known{"größe", Word::size},
    Known{"maße", Word::size},
    Known{"masse", Word::mass},
    Known{"gewicht", Word::mass},
    Known{"anzahl", Word::count},
    Known{"stück", Word::count},
    Known{"menge", Word::count},
    Known{"notiz", Word::note},
    Known{"bemerkung", Word::note},
};
constexpr std::array<std::string_view, 6> length_units{"mm", "cm", "m", "in", "inch", "inches"};
constexpr std::array<std::string_view, 8> mass_units{"g", "gram", "grams", "kg", "oz", "ounces", "lb", "lbs"};

char lower(char c, char from, char to) {
    return c >= from && c <= to ? static_cast<char>(c + ('a' - 'A')) : c;
}

/// The lower-case letter that begins there, in one or two bytes of UTF-8: a to z, à to ÿ; empty: none.
std::string letter_at(std::string_view cell, std::size_t at) {
    constexpr char accented = '\xC3', times = '\x97';
    if (cell[at] == accented && at + 1 < cell.size() && cell[at + 1] != times)
        return {accented, lower(cell[at + 1], '\x80', '\x9E')};
    const char low = lower(cell[at], 'A', 'Z');
    return low >= 'a' && low <= 'z' ? std::string(1, low) : std::string();
}

/// Lower-case words and inch signs of a header cell.
std::vector<std::string> words_of(std::string_view cell) {
    std::vector<std::string> words(1);
    cell = cell.substr(0, 200);
    for (std::size_t at = 0; at < cell.size(); ++at) {
        if (const std::string letter = letter_at(cell, at); !letter.empty()) {
            words.back() += letter;
            at += letter.size() - 1;
            continue;
        }
        if (!words.back().empty()) words.emplace_back();
        if (cell[at] == '"') words.back() = "in", words.emplace_back();
        if (cell[at] == '#') words.back() = "count", words.emplace_back();
    }
    if (words.back().empty()) words.pop_back();
    return words;
}

struct Heading {
    std::optional<Word> word;
    std::string unit;
};

/// The unit is the last word that is one, so that "length in mm" is in mm; "m" alone, heading a column, is
/// the mass. "Depth of the pocket" is the pocket's, whatever stands first.
Heading heading_of(std::string_view cell) {
    Heading heading;
    for (const std::string& word : words_of(cell)) {
        if (heading.word && (contains(length_units, word) || contains(mass_units, word))) {
            heading.unit = word;
            continue;
        }
        const auto known = std::find_if(known_words.begin(), known_words.end(),
                                        [&](const Known& k) { return k.text == word; });
        if (known == known_words.end()) continue;
        if (!heading.word || (heading.word == Word::depth && known->word == Word::pocket))
            heading.word = known->word;
    }
    const bool is_mass = heading.word == Word::mass;
    if (!(is_mass ? contains(mass_units, heading.unit) : contains(length_units, heading.unit)))
        heading.unit.clear();
    if (heading.unit == "inch" || heading.unit == "inches") heading.unit = "in";
    if (heading.unit == "gram" || heading.unit == "grams") heading.unit = "g";
    if (heading.unit == "ounces") heading.unit = "oz";
    return heading;
}

std::vector<Heading> headings_of(const PasteRow& row) {
    std::vector<Heading> headings;
    for (const std::string& cell : row.cells) headings.push_back(heading_of(cell));
    return headings;
}

bool has(const std::vector<Heading>& headings, Word word) {
    return std::any_of(headings.begin(), headings.end(), [&](const Heading& h) { return h.word == word; });
}

/// "Depth" is front to back where a list says height and one other size, the pocket's where it says all
/// three, else it is how far down the object reaches.
PasteColumn column_of(Word word, const std::vector<Heading>& headings) {
    const bool has_height = has(headings, Word::height);
    const bool all_three = has(headings, Word::length) && has(headings, Word::width) && has_height;
    const bool depth_is_across = has_height && has(headings, Word::depth) && !all_three;
    switch (word) {
    case Word::name:
        return PasteColumn::name;
    case Word::length:
        return PasteColumn::length;
    case Word::width: // width, depth, height: the width is what stands first
        return depth_is_across && !has(headings, Word::length) ? PasteColumn::length : PasteColumn::width;
    case Word::height:
        return PasteColumn::height;
    case Word::depth:
        if (all_three) return PasteColumn::pocket;
        return depth_is_across ? PasteColumn::width : PasteColumn::height;
    case Word::pocket:
        return PasteColumn::pocket;
    case Word::size:
        return PasteColumn::size;
    case Word::mass:
        return PasteColumn::mass;
    case Word::count:
        return PasteColumn::count;
    case Word::note:
        return PasteColumn::note;
    }
    return PasteColumn::note;
}

bool figures(const PasteRow& row) { return std::any_of(row.cells.begin(), row.cells.end(), is_figure); }

bool looks_like_header(const PasteTable& table) {
    if (table.rows.empty() || figures(table.rows.front())) return false;
    const auto headings = headings_of(table.rows.front());
    const bool known =
        std::any_of(headings.begin(), headings.end(), [](const Heading& h) { return h.word.has_value(); });
    return known || (table.rows.size() > 1 && figures(table.rows[1]));
}

/// The first column that is words in most rows.
std::optional<std::size_t> first_words(const PasteTable& table, std::size_t first_row) {
    for (std::size_t column = 0; column < table.columns; ++column) {
        std::size_t words = 0;
        for (std::size_t r = first_row; r < table.rows.size(); ++r) {
            const auto& cells = table.rows[r].cells;
            if (column < cells.size() && !cells[column].empty() && !is_figure(cells[column])) ++words;
        }
        if (2 * words > table.rows.size() - first_row) return column;
    }
    return std::nullopt;
}

void take_in_order(PasteMeaning& meaning, const PasteTable& table) {
    constexpr std::array order{PasteColumn::name,   PasteColumn::length, PasteColumn::width,
                               PasteColumn::height, PasteColumn::mass,   PasteColumn::count};
    const auto name = first_words(table, meaning.header ? 1 : 0);
    std::size_t next = name ? 0 : 1; // figures alone: objects without a name
    for (std::size_t column = name.value_or(0); column < meaning.fields.size() && next < order.size();
         ++column)
        meaning.fields[column].column = order[next++];
}

/// A column that an earlier one has the meaning of already goes to the note.
void take_by_words(PasteMeaning& meaning, const std::vector<Heading>& headings) {
    std::vector<PasteColumn> taken;
    for (std::size_t i = 0; i < headings.size() && i < meaning.fields.size(); ++i) {
        if (!headings[i].word) continue;
        const PasteColumn column = column_of(*headings[i].word, headings);
        if (column == PasteColumn::note || contains(taken, column)) continue;
        taken.push_back(column);
        meaning.fields[i] = {column, headings[i].unit};
    }
}

bool holds_figures(PasteColumn column) {
    return column != PasteColumn::name && column != PasteColumn::note && column != PasteColumn::ignored;
}

struct Marks {
    bool comma = false;
    bool point = false;
};
void look_for_marks(Marks& marks, std::string_view cell) {
    const auto digit = [&](std::size_t i) { return i < cell.size() && is_digit(cell[i]); };
    for (std::size_t i = 1; i < cell.size(); ++i) {
        if ((cell[i] != ',' && cell[i] != '.') || !digit(i - 1) || !digit(i + 1)) continue;
        std::size_t behind = 1;
        while (digit(i + 1 + behind)) ++behind;
        const bool may_be_thousands = behind == 3 && cell.front() != '0';
        if (cell[i] == '.')
            marks.point = true;
        else if (!may_be_thousands)
            marks.comma = true;
        i += behind;
    }
}

} // namespace

bool is_figure(std::string_view cell) {
    cell = trimmed(cell);
    while (!cell.empty() && (cell.front() == '-' || cell.front() == '+' || cell.front() == '.'))
        cell.remove_prefix(1);
    return !cell.empty() && is_digit(cell.front());
}

PasteMeaning guess_meaning(const PasteTable& table) { return guess_meaning(table, looks_like_header(table)); }

PasteMeaning guess_meaning(const PasteTable& table, bool header) {
    PasteMeaning meaning;
    meaning.header = header && !table.rows.empty();
    meaning.fields.resize(table.columns);
    const auto headings = meaning.header ? headings_of(table.rows.front()) : std::vector<Heading>{};
    const bool sizes = has(headings, Word::length) || has(headings, Word::width) ||
                       has(headings, Word::height) || has(headings, Word::depth) || has(headings, Word::size);
    if (sizes)
        take_by_words(meaning, headings);
    else
        take_in_order(meaning, table);

    Marks marks;
    for (const PasteRow& row : table.rows)
        for (std::size_t i = 0; i < row.cells.size(); ++i)
            if (holds_figures(meaning.fields[i].column)) look_for_marks(marks, row.cells[i]);
    if (marks.comma && !marks.point) meaning.mark = DecimalMark::comma;
    return meaning;
}

} // namespace drawercast::job
