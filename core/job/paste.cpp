// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/paste.h"

#include "base/ascii.h"
#include "base/number.h"
#include "base/quantity.h"
#include "job/write.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace drawercast::job {

namespace {

constexpr double most_count = 100000;

std::string replaced(std::string text, std::string_view what, std::string_view by) {
    for (auto at = text.find(what); at != std::string::npos; at = text.find(what, at + by.size()))
        text.replace(at, what.size(), by);
    return text;
}

/// A cell of figures with what offices make of them put back: vulgar fractions, curly quotes, special blanks,
/// capitals.
std::string plain(std::string_view cell) {
    constexpr std::array<std::array<std::string_view, 2>, 12> pairs{{{"½", " 1/2"},
                                                                     {"¼", " 1/4"},
                                                                     {"¾", " 3/4"},
                                                                     {"⅛", " 1/8"},
                                                                     {"⅜", " 3/8"},
                                                                     {"⅝", " 5/8"},
                                                                     {"⅞", " 7/8"},
                                                                     {"”", "\""},
                                                                     {"⁄", "/"},
                                                                     {"×", "x"},
                                                                     {"\xC2\xA0", " "},
                                                                     {"\xE2\x80\xAF", " "}}};
    std::string text(cell.substr(0, 200));
    for (const auto& [what, by] : pairs) text = replaced(std::move(text), what, by);
    for (char& c : text) c = small_letter(c);
    return std::string(trimmed(text));
}

bool bare(std::string_view cell) {
    return !cell.empty() && (is_digit(cell.back()) || cell.back() == '.' || cell.back() == ',');
}

/// The cell with its column's unit where it says none itself.
std::string with_unit(std::string cell, const std::string& unit) {
    if (bare(cell) && !unit.empty()) cell += " " + unit;
    return cell;
}

/// Reads the cells of one row into an object.
class RowReader {
  public:
    RowReader(const PasteTable& table, const PasteMeaning& meaning, const PasteUnits& units)
        : table_(table), meaning_(meaning), units_(units) {}

    Expected<Object> read(const PasteRow& row) {
        object_ = {};
        sizes_ = {};
        problem_.reset();
        for (std::size_t i = 0; i < row.cells.size() && i < meaning_.fields.size(); ++i)
            if (!row.cells[i].empty()) take(row.cells[i], i);
        require(0, "length", phrase("it has no length"));
        require(1, "width", phrase("it has no width"));
        require(2, "height", phrase("it has no height"));
        if (problem_) return *problem_;
        object_.height_mm = *sizes_[2];
        object_.levels = {{Sunk{shape::Rectangle{*sizes_[0], *sizes_[1], 0},
                                sizes_[3].value_or(grained(paste_depth_share * *sizes_[2]))},
                           {},
                           {}}};
        return object_;
    }

  private:
    void take(const std::string& cell, std::size_t i) {
        const PasteField& field = meaning_.fields[i];
        switch (field.column) {
        case PasteColumn::name:
            object_.name += object_.name.empty() ? cell : " " + cell;
            break;
        case PasteColumn::length:
            take_length(cell, field, 0, "length");
            break;
        case PasteColumn::width:
            take_length(cell, field, 1, "width");
            break;
        case PasteColumn::height:
            take_length(cell, field, 2, "height");
            break;
        case PasteColumn::pocket:
            take_length(cell, field, 3, "pocket depth");
            break;
        case PasteColumn::size:
            take_size(cell, field);
            break;
        case PasteColumn::mass:
            take_mass(cell, field);
            break;
        case PasteColumn::count:
            take_count(cell);
            break;
        case PasteColumn::note:
            take_note(cell, i);
            break;
        case PasteColumn::ignored:
            break;
        }
    }

    void take_length(const std::string& cell, const PasteField& field, std::size_t which, const char* where) {
        const auto mm = parse_length(with_unit(plain(cell), field.unit), units_.length, meaning_.mark);
        if (!mm) return refuse(mm.error(), where);
        if (!(*mm > 0))
            return refuse({"paste-size", "", phrase("\"%1\" is no size", verbatim(cell)),
                           phrase("Use a length above 0")},
                          where);
        sizes_[which] = *mm;
    }

    /// "140 x 90 x 45 mm": a unit behind the last part holds for those without one.
    void take_size(const std::string& cell, const PasteField& field) {
        std::vector<std::string> parts(1);
        for (const char c : plain(cell)) {
            if (c == 'x' || c == '*')
                parts.emplace_back();
            else
                parts.back() += c;
        }
        for (std::string& part : parts) part = std::string(trimmed(part));
        if (parts.size() != 3)
            return refuse({"paste-size", "", phrase("\"%1\" is not three sizes", verbatim(cell)),
                           phrase("Type it like 140 x 90 x 45")},
                          "size");
        std::string unit = field.unit;
        if (!bare(parts[2]))
            unit = parts[2].substr(std::min(parts[2].size(), parts[2].find_last_of("0123456789.,") + 1));
        constexpr std::array words{"length", "width", "height"};
        for (std::size_t i = 0; i < parts.size(); ++i)
            take_length(parts[i], {field.column, unit}, i, words[i]);
    }

    void take_mass(const std::string& cell, const PasteField& field) {
        const Unit* unit =
            find_unit(Quantity::mass_g, field.unit.empty() ? units_.mass : std::string_view(field.unit));
        const auto g =
            parse_quantity(plain(cell), Quantity::mass_g,
                           unit != nullptr ? *unit : units_of(Quantity::mass_g).front(), meaning_.mark);
        if (!g) return refuse(g.error(), "mass");
        object_.mass_g = *g;
    }

    void take_count(const std::string& cell) {
        const auto count = parse_typed_number(plain(cell), meaning_.mark);
        if (!count) return refuse(count.error(), "count");
        if (*count < 0 || *count > most_count || *count != std::floor(*count))
            return refuse({"paste-count", "", phrase("\"%1\" is no number of pieces", verbatim(cell)),
                           phrase("Use a whole number")},
                          "count");
        object_.count = static_cast<int>(*count);
    }

    void take_note(const std::string& cell, std::size_t i) {
        if (!object_.note.empty()) object_.note += "; ";
        const auto& head = table_.rows.front().cells;
        if (meaning_.header && i < head.size() && !head[i].empty()) object_.note += head[i] + ": ";
        object_.note += cell;
    }

    void require(std::size_t which, const char* word, Phrase what) {
        if (!problem_ && !sizes_[which])
            refuse(
                {"paste-missing", "", std::move(what), phrase("Give each object length, width and height")},
                word);
    }

    /// The first problem of a row is told: the others may come of it.
    void refuse(Problem problem, std::string where) {
        if (problem_) return;
        problem.where = std::move(where);
        problem_ = std::move(problem);
    }

    const PasteTable& table_;
    const PasteMeaning& meaning_;
    const PasteUnits& units_;
    Object object_;
    std::array<std::optional<double>, 4> sizes_; ///< length, width, height; the pocket's depth
    std::optional<Problem> problem_;
};

/// "/objects/0/levels/0/depth_mm" as a column's word.
std::string column_word(const std::string& where) {
    constexpr std::array<std::array<std::string_view, 2>, 6> words{{{"/name", "name"},
                                                                    {"/note", "note"},
                                                                    {"/count", "count"},
                                                                    {"/mass_g", "mass"},
                                                                    {"/depth_mm", "height"},
                                                                    {"/height_mm", "height"}}};
    for (const auto& [path, word] : words)
        if (where.find(path) != std::string::npos) return std::string(word);
    return where.find("/outline") != std::string::npos ? "length" : "";
}

/// What keeps the job reader from taking the objects, alone in a job.
std::optional<Problem> refused(const std::vector<Object>& objects) {
    Job job;
    for (Object object : objects) {
        object.id = "i" + std::to_string(job.objects.size() + 1);
        job.objects.emplace_back(std::move(object));
    }
    const auto text = checked_text(job);
    if (text) return std::nullopt;
    const Problems problems = text.error();
    return problems.front();
}

/// Turns each object the job reader would not take into its problem. All are asked about at once, since a job
/// costs as much to write and read as a hundred objects; one by one where that finds something.
void ask_job_reader(std::vector<PastedRow>& rows) {
    std::vector<Object> objects;
    for (const PastedRow& row : rows)
        if (row.read) objects.push_back(*row.read);
    if (objects.empty() || !refused(objects)) return;
    for (PastedRow& row : rows) {
        if (!row.read) continue;
        if (auto problem = refused({*row.read})) {
            problem->where = column_word(problem->where.name);
            row.read = *problem;
        }
    }
}

} // namespace

PasteUnits paste_units(DisplayUnits units) {
    switch (units) {
    case DisplayUnits::mm:
        return {};
    case DisplayUnits::inch:
        return {LengthUnit::inch, "lb"};
    case DisplayUnits::inch_32:
        return {LengthUnit::inch_32, "lb"};
    }
    return {};
}

std::vector<PastedRow> read_pasted(const PasteTable& table, const PasteMeaning& meaning,
                                   const PasteUnits& units) {
    std::vector<PastedRow> rows;
    RowReader reader(table, meaning, units);
    for (std::size_t i = meaning.header ? 1 : 0; i < table.rows.size(); ++i) {
        const PasteRow& row = table.rows[i];
        rows.push_back({row.line, row.text, reader.read(row)});
    }
    ask_job_reader(rows);
    if (!table.beyond.empty())
        rows.push_back(
            {table.beyond_line, table.beyond,
             Problem{"paste-many", "",
                     phrase("a list is read %1 rows at a time", figure(std::to_string(most_paste_rows))),
                     phrase("Add the rows above, then paste these")}});
    return rows;
}

Expected<std::vector<PastedRow>> read_pasted(std::string_view text, const PasteUnits& units) {
    const auto table = paste_table(text);
    if (!table) return table.error();
    return read_pasted(*table, guess_meaning(*table), units);
}

} // namespace drawercast::job
