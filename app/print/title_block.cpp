// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/title_block.h"

#include "language/spoken.h"
#include "sheets/signs.h"
#include "sheets/table.h"

#include <algorithm>

namespace drawercast::print {

using sheets::Align;
using theme::Face;
using theme::LineRole;

void rule(sheets::Inks& inks, Vec from, Vec to, LineRole role, const theme::Theme& theme) {
    inks.push_back(
        sheets::Stroke{sheets::line(from, to), theme::pen_of(role, theme, theme::Medium::paper, 1)});
}

void frame(sheets::Inks& inks, const Box& box, LineRole role, const theme::Theme& theme) {
    inks.push_back(sheets::Stroke{sheets::path_of(box), theme::pen_of(role, theme, theme::Medium::paper, 1)});
}

void write_outline(sheets::Inks& inks, const Box& box, const theme::Theme& theme) {
    frame(inks, box, LineRole::thin, theme);
    rule(inks, box.min, {box.max.x, box.min.y}, LineRole::title_line, theme);
}

void write_cells(sheets::Inks& inks, const Box& box, const std::vector<TitleCell>& cells,
                 const theme::Theme& theme) {
    constexpr double pad = 6, caption_px = 9.5, pitch = 12.5;
    double shares = 0;
    for (const TitleCell& cell : cells) shares += cell.share;
    double x = box.min.x;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const TitleCell& cell = cells[i];
        const double width = box.width() * cell.share / shares;
        if (i > 0) rule(inks, {x, box.min.y}, {x, box.max.y}, LineRole::thin, theme);
        const Box inner{{x + pad, box.min.y}, {x + width - pad, box.max.y}};
        x += width;
        if (cell.draw) {
            cell.draw(inks, inner);
            continue;
        }
        sheets::write(inks, cell.caption, {inner.min.x, box.min.y + 11}, {Face::regular, caption_px},
                      theme.ink3);
        // the lines stand on the cell's foot
        double base = box.max.y - 7 - pitch * static_cast<double>(cell.lines.size() - 1);
        for (std::size_t k = 0; k < cell.lines.size(); ++k) {
            const bool bold = k == 0 && !cell.quiet;
            const theme::Lettering face{bold ? Face::bold : Face::regular, bold ? 12.0 : 10.0};
            sheets::write(inks, sheets::elided(cell.lines[k], face, inner.width()), {inner.min.x, base}, face,
                          theme.ink);
            base += pitch;
        }
    }
}

void write_frame(sheets::Inks& inks, const Box& box, bool mirrored, double capital_mm,
                 const theme::Theme& theme) {
    struct Word {
        QString text;
        double of_capitals; ///< share of the large letters
    };
    const std::vector<Word> words =
        mirrored ? std::vector<Word>{{language::tr("Mold,"), 0.7}, {language::tr("MIRRORED"), 1}}
                 : std::vector<Word>{{language::tr("Drawer,"), 0.85}, {language::tr("from above"), 0.7}};
    const auto face = [](double height, const Word& word) {
        return theme::Lettering{Face::drafting, height / theme::capital_share * word.of_capitals};
    };
    constexpr double sign_share = 1.25, lead = 0.45, sign_step = 0.62, after_sign = 0.5, gap = 0.3; // of them
    const auto whole = [&](double height) {
        double width = height * (lead + sign_share * sign_step + after_sign);
        for (const Word& word : words)
            width += sheets::written_width(word.text, face(height, word)) + face(height, word).px * gap;
        return width;
    };
    const double wanted = px(capital_mm);
    const double height =
        wanted * std::min(1.0, box.width() / whole(wanted)); // words of some languages are long
    const QColor ink = mirrored ? theme.paper : theme.ink;
    if (mirrored) inks.push_back(sheets::Fill{sheets::path_of(box), theme.ink});
    const double base = box.center().y + height / 2;
    const double sign = height * sign_share;
    double x = box.min.x + height * lead;
    inks.push_back(
        sheets::Fill{sheets::frame_sign({x + sign * sign_step / 2, box.center().y}, sign, mirrored), ink});
    x += sign * sign_step + height * after_sign;
    for (const Word& word : words) {
        sheets::write(inks, word.text, {x, base}, face(height, word), ink);
        x += sheets::written_width(word.text, face(height, word)) + face(height, word).px * gap;
    }
}

} // namespace drawercast::print
