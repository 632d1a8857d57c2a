// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/table.h"

#include "theme/pens.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace drawercast::sheets {

using theme::Face;
using theme::Lettering;

namespace {

/// The first `letters` of a text, one fewer where they would end within a pair that is one letter.
QString start_of(const QString& text, qsizetype letters) {
    const bool within = letters > 0 && letters < text.size() && text[letters - 1].isHighSurrogate();
    return text.left(within ? letters - 1 : letters);
}

} // namespace

/// A name may have 100,000 letters, and each look at its width takes as long as what is looked at: so a start
/// that is too wide is looked for among short ones, and that is halved.
QString elided(const QString& text, const Lettering& lettering, double width) {
    constexpr qsizetype first_look = 64;
    qsizetype too_wide = first_look;
    while (too_wide < text.size() && written_width(start_of(text, too_wide), lettering) <= width)
        too_wide *= 2;
    if (too_wide >= text.size()) {
        if (written_width(text, lettering) <= width) return text;
        too_wide = text.size();
    }
    QString longest;
    for (qsizetype fits = 0; too_wide - fits > 1;) {
        const qsizetype middle = fits + (too_wide - fits) / 2;
        const QString shorter = start_of(text, middle).trimmed() + QChar(0x2026);
        const bool has_room = written_width(shorter, lettering) <= width;
        if (has_room) longest = shorter;
        (has_room ? fits : too_wide) = middle;
    }
    return longest;
}

std::vector<QString> broken(const QString& text, const Lettering& lettering, double width) {
    std::vector<QString> lines;
    for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        const QString longer = lines.empty() ? word : lines.back() + QLatin1Char(' ') + word;
        if (!lines.empty() && written_width(longer, lettering) <= width)
            lines.back() = longer;
        else
            lines.push_back(word);
    }
    return lines;
}

std::size_t Table::rows_fitting(std::size_t first, double height) const {
    const double fitting = (height - head_height()) / row_px;
    if (fitting < 1 || first >= rows.size()) return 0;
    return std::min(rows.size() - first, static_cast<std::size_t>(fitting));
}

namespace {

using Span = std::pair<double, double>; // left end and width of a column

double width_of(const Table& table, std::size_t column) {
    const Table::Column& one = table.columns[column];
    if (one.fixed_px > 0 || !one.fitted) return one.fixed_px;
    double width = written_width(one.head, {Face::regular, table.head_px});
    for (const auto& row : table.rows)
        if (column < row.size())
            width = std::max(width,
                             written_width(row[column].text,
                                           {row[column].bold ? Face::bold : Face::regular, table.text_px}));
    return std::ceil(width);
}

std::vector<Span> spans_of(const Table& table, double left, double width) {
    constexpr double gutter = 7; // between columns
    std::vector<Span> spans;
    double shares = 0, rest = width - gutter * static_cast<double>(table.columns.size() - 1);
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        spans.emplace_back(0, width_of(table, c));
        rest -= spans.back().second;
        if (spans.back().second == 0) shares += table.columns[c].share;
    }
    for (std::size_t c = 0; c < spans.size(); ++c) {
        if (spans[c].second == 0) spans[c].second = std::max(0.0, rest * table.columns[c].share / shares);
        spans[c].first = left;
        left += spans[c].second + gutter;
    }
    return spans;
}

/// Bold gives way to regular and that to the smallest size before a word is shortened.
Lettering face_for(const QString& text, bool bold, double px, double width) {
    constexpr double least_px = 9.5;
    for (const Lettering& face :
         {Lettering{bold ? Face::bold : Face::regular, px}, Lettering{Face::regular, px}})
        if (written_width(text, face) <= width) return face;
    return {Face::regular, std::min(px, least_px)};
}

} // namespace

Table folded(const Table& table, double width) {
    const auto spans = spans_of(table, 0, width);
    Table out = table;
    out.rows.clear();
    for (const auto& row : table.rows) {
        std::vector<std::vector<Table::Cell>> lines{row};
        for (std::size_t c = 0; c < std::min(row.size(), table.columns.size()); ++c) {
            if (!table.columns[c].folds) continue;
            const Lettering face{row[c].bold ? Face::bold : Face::regular, table.text_px};
            const auto words = broken(row[c].text, face, spans[c].second);
            if (words.size() > lines.size()) lines.resize(words.size());
            for (std::size_t i = 0; i < words.size(); ++i) {
                if (lines[i].size() <= c) lines[i].resize(c + 1);
                lines[i][c].text = words[i], lines[i][c].bold = row[c].bold;
            }
        }
        for (std::size_t i = 0; i < lines.size(); ++i) {
            out.rows.push_back(std::move(lines[i]));
            out.goes_on.push_back(i + 1 < lines.size());
        }
    }
    return out;
}

double Table::write(Inks& inks, Vec top_left, double width, std::size_t first, std::size_t count,
                    const theme::Theme& theme) const {
    const auto spans = spans_of(*this, top_left.x, width);
    const auto put = [&](const QString& text, std::size_t c, double base, const Lettering& face,
                         const QColor& color) {
        const auto [left, w] = spans[c];
        const Align align = columns[c].align;
        const double at = align == Align::left ? left : align == Align::center ? left + w / 2 : left + w;
        sheets::write(inks, elided(text, face, w + 0.5), {at, base}, face, color, align);
    };
    const auto rule = [&](double y, theme::LineRole role) {
        inks.push_back(Stroke{line({top_left.x, y}, {top_left.x + width, y}),
                              theme::pen_of(role, theme, theme::Medium::paper, 1)});
    };
    const double drop = row_px / 2 + text_px * theme::capital_share / 2;
    for (std::size_t c = 0; c < columns.size(); ++c)
        put(columns[c].head, c, top_left.y + drop, {Face::regular, head_px}, theme.ink3);
    double y = top_left.y + head_height();
    rule(y, theme::LineRole::thin);
    for (std::size_t r = first; r < std::min(rows.size(), first + count); ++r) {
        for (std::size_t c = 0; c < std::min(rows[r].size(), columns.size()); ++c) {
            const Cell& cell = rows[r][c];
            const auto [left, w] = spans[c];
            if (cell.sketch) cell.sketch(inks, {{left, y + 1.5}, {left + w, y + row_px - 1.5}});
            put(cell.text, c, y + drop, face_for(cell.text, cell.bold, text_px, w + 0.5), theme.ink);
        }
        y += row_px;
        if (r < goes_on.size() && goes_on[r]) continue;
        rule(y, theme::LineRole::rule);
    }
    return y - top_left.y;
}

} // namespace drawercast::sheets
