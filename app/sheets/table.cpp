// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/table.h"

#include "theme/pens.h"

#include <QStringList>

#include <algorithm>

namespace drawercast::sheets {

using theme::Face;
using theme::Lettering;

QString elided(const QString& text, const Lettering& lettering, double width) {
    if (written_width(text, lettering) <= width) return text;
    for (qsizetype n = text.size() - 1; n > 0; --n) {
        const QString shorter = text.left(n).trimmed() + QChar(0x2026);
        if (written_width(shorter, lettering) <= width) return shorter;
    }
    return {};
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

double Table::write(Inks& inks, Vec top_left, double width, std::size_t first, std::size_t count,
                    const theme::Theme& theme) const {
    constexpr double gutter = 6; // between columns
    double shares = 0, rest = width - gutter * static_cast<double>(columns.size() - 1);
    for (const Column& column : columns) {
        shares += column.fixed_px > 0 ? 0 : column.share;
        rest -= column.fixed_px;
    }
    std::vector<std::pair<double, double>> spans; // left end and width of each column
    double x = top_left.x;
    for (const Column& column : columns) {
        const double w = column.fixed_px > 0 ? column.fixed_px : rest * column.share / shares;
        spans.emplace_back(x, w);
        x += w + gutter;
    }
    const auto put = [&](const QString& text, std::size_t c, double base, const Lettering& face,
                         const QColor& color) {
        const auto [left, w] = spans[c];
        const Align align = columns[c].align;
        const double at = align == Align::left ? left : align == Align::center ? left + w / 2 : left + w;
        sheets::write(inks, elided(text, face, w), {at, base}, face, color, align);
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
            if (cell.sketch)
                cell.sketch(inks,
                            {{spans[c].first, y + 1}, {spans[c].first + spans[c].second, y + row_px - 1}});
            put(cell.text, c, y + drop, {cell.bold ? Face::bold : Face::regular, text_px}, theme.ink);
        }
        y += row_px;
        rule(y, theme::LineRole::rule);
    }
    return y - top_left.y;
}

} // namespace drawercast::sheets
