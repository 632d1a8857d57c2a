// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/paste_table.h"

#include "base/typed.h"

#include <algorithm>
#include <array>

namespace drawercast::job {

namespace {

bool line_end(char c) { return c == '\n' || c == '\r'; }

/// Walks over the text cell by cell.
class Scanner {
  public:
    Scanner(std::string_view text, char separator) : text_(text), separator_(separator) {}

    bool done() const { return at_ >= text_.size(); }
    std::size_t at() const { return at_; }
    int line() const { return line_; }

    PasteRow row() {
        PasteRow row;
        row.line = line_;
        const std::size_t start = at_;
        do {
            if (row.cells.size() < most_paste_columns)
                row.cells.push_back(cell());
            else
                cell();
        } while (take_separator());
        row.text = text_.substr(start, at_ - start);
        take_line_end();
        return row;
    }

  private:
    std::string cell() {
        if (auto quoted = quoted_cell()) return *quoted;
        const std::size_t start = at_;
        while (!done() && text_[at_] != separator_ && !line_end(text_[at_])) ++at_;
        return std::string(trimmed(text_.substr(start, at_ - start)));
    }

    /// Stops at the first quote that neither closes nor is doubled: so no text is searched more than twice.
    std::optional<std::string> quoted_cell() {
        std::size_t p = blanks_from(at_);
        if (p >= text_.size() || text_[p] != '"') return std::nullopt;
        std::string content;
        int lines = 0;
        for (++p; p < text_.size(); ++p) {
            const char c = text_[p];
            if (c == '"' && p + 1 < text_.size() && text_[p + 1] == '"') {
                content += '"';
                ++p;
            } else if (c == '"') {
                const std::size_t end = blanks_from(p + 1);
                if (end < text_.size() && text_[end] != separator_ && !line_end(text_[end]))
                    return std::nullopt;
                at_ = end;
                line_ += lines;
                return std::string(trimmed(content));
            } else if (line_end(c)) {
                if (c == '\r' && p + 1 < text_.size() && text_[p + 1] == '\n') ++p;
                ++lines;
                content += ' ';
            } else {
                content += c;
            }
        }
        return std::nullopt;
    }

    std::size_t blanks_from(std::size_t p) const {
        while (p < text_.size() && text_[p] != separator_ && (text_[p] == ' ' || text_[p] == '\t')) ++p;
        return p;
    }

    bool take_separator() {
        if (done() || text_[at_] != separator_) return false;
        ++at_;
        return true;
    }

    void take_line_end() {
        if (done()) return;
        if (text_[at_] == '\r' && at_ + 1 < text_.size() && text_[at_ + 1] == '\n') ++at_;
        ++at_;
        ++line_;
    }

    std::string_view text_;
    char separator_;
    std::size_t at_ = 0;
    int line_ = 1;
};

bool blank(const PasteRow& row) {
    return std::all_of(row.cells.begin(), row.cells.end(),
                       [](const std::string& cell) { return cell.empty(); });
}

/// How many of the first rows have a separator at least twice, and how many at all: a list has a size in
/// three cells.
struct Score {
    int twice = 0;
    int once = 0;
};
Score score_of(std::string_view text, char separator) {
    constexpr int most_rows = 50;
    Score score;
    Scanner scanner(text, separator);
    for (int n = 0; n < most_rows && !scanner.done(); ++n) {
        const auto cells = scanner.row().cells.size();
        score.twice += cells > 2 ? 1 : 0;
        score.once += cells > 1 ? 1 : 0;
    }
    return score;
}

Separator guessed_separator(std::string_view text) {
    Separator best = Separator::tab;
    Score most;
    for (const auto separator : {Separator::tab, Separator::semicolon, Separator::comma}) {
        const Score score = score_of(text, character_of(separator));
        if (score.twice > most.twice || (score.twice == most.twice && score.once > most.once)) {
            best = separator;
            most = score;
        }
    }
    return best;
}

} // namespace

char character_of(Separator separator) {
    constexpr std::array characters{'\t', ';', ','};
    return characters[static_cast<std::size_t>(separator)];
}

Expected<PasteTable> paste_table(std::string_view text, std::optional<Separator> separator) {
    if (text.size() > most_paste_bytes)
        return Problem{"paste-large", "", phrase("That is more text than any list of objects"),
                       phrase("Copy the rows of the objects alone")};
    constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
    if (text.substr(0, byte_order_mark.size()) == byte_order_mark) text.remove_prefix(byte_order_mark.size());

    PasteTable table;
    table.separator = separator ? *separator : guessed_separator(text);
    Scanner scanner(text, character_of(table.separator));
    while (!scanner.done()) {
        const std::size_t start = scanner.at();
        const int line = scanner.line();
        PasteRow row = scanner.row();
        if (blank(row)) continue;
        if (table.rows.size() == most_paste_rows) {
            table.beyond = text.substr(start);
            table.beyond_line = line;
            break;
        }
        table.columns = std::max(table.columns, row.cells.size());
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace drawercast::job
