// SPDX-License-Identifier: GPL-3.0-or-later
#include "language/spoken.h"
#include "sheets/inking.h"
#include "sheets/plate_place.h"
#include "sheets/room.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::sheets {

namespace {

constexpr double line_pitch = 1.28; // of the size
constexpr double sign_width = 0.62; // of the size, with the space after it
constexpr double beside_px = 7;     // between words on one line
constexpr double margin_px = 2.6;   // of a plate around its words
constexpr double key_margin_px = 1; // around a lone letter

/// The sign of a hole's depth: a bar over an arrow pointing down, standing on the base line.
Path depth_sign_lines(Vec at, double px, const shape::Turn& turn) {
    const auto place = [&](double x, double y) { // y up from the base line
        return at + Vec{turn.cosine * x - turn.sine * y, -turn.sine * x - turn.cosine * y} * px;
    };
    return joined(line(place(0.06, 0.72), place(0.46, 0.72)), line(place(0.26, 0.72), place(0.26, 0.2)));
}
Path depth_sign_head(Vec at, double px, const shape::Turn& turn) {
    const auto place = [&](double x, double y) {
        return at + Vec{turn.cosine * x - turn.sine * y, -turn.sine * x - turn.cosine * y} * px;
    };
    return polygon({place(0.26, -0.02), place(0.1, 0.32), place(0.42, 0.32)});
}

} // namespace

struct Inking::Block {
    struct Run {
        QString text;
        theme::Lettering face;
        bool depth_sign;
        double width; // with the sign, and with the space before it where it stands beside another
        double space;
    };
    struct Line {
        std::vector<Run> runs;
        double px = 0; // of the largest letters
        double width = 0;
    };
    std::vector<Line> lines;
    double width = 0;
    double height = 0;
    double margin = 0; // of the plate
};

Inking::Block Inking::measured(const std::vector<TextLine>& lines) const {
    Block block;
    for (const TextLine& text : lines) {
        const bool named =
            !text.depth_sign && text.role != theme::TextRole::figure; // a name stays as it was given
        Block::Run run{named ? QString::fromStdString(text.text) : language::figures(text.text),
                       lettering(text.role), text.depth_sign, 0, 0};
        const bool beside = text.beside && !block.lines.empty();
        run.space = beside ? px(beside_px) : 0;
        run.width =
            run.space + written_width(run.text, run.face) + (run.depth_sign ? sign_width * run.face.px : 0);
        if (!beside) block.lines.emplace_back();
        Block::Line& line = block.lines.back();
        line.px = std::max(line.px, run.face.px);
        line.width += run.width;
        line.runs.push_back(std::move(run));
    }
    const bool lone = lines.size() == 1 && (lines.front().role == theme::TextRole::key ||
                                            lines.front().role == theme::TextRole::key_small);
    block.margin = px(lone ? key_margin_px : margin_px);
    for (const Block::Line& line : block.lines) {
        block.width = std::max(block.width, line.width);
        block.height += line.px * (&line == &block.lines.front() ? theme::capital_share : line_pitch);
    }
    return block;
}

void Inking::write_block(const Block& block, Vec center, bool upright) {
    const shape::Turn turn = shape::Turn::of_degrees(upright ? 90 : 0);
    const Vec along{turn.cosine, -turn.sine}, down{turn.sine, turn.cosine};
    const Vec size = upright ? Vec{block.height, block.width} : Vec{block.width, block.height};
    const Vec margin{block.margin, block.margin};
    const Box box{center - size * 0.5 - margin, center + size * 0.5 + margin};
    plate(box, theme_.paper);
    taken_.words.push_back(box);
    double y = -block.height / 2;
    for (const Block::Line& line : block.lines) {
        y += line.px * (&line == &block.lines.front() ? theme::capital_share : line_pitch);
        Vec at = center + down * y - along * (line.width / 2);
        for (const Block::Run& run : line.runs) {
            at = at + along * run.space;
            if (run.depth_sign) {
                inks_.push_back(
                    Stroke{depth_sign_lines(at, run.face.px, turn), {theme_.ink, 0.1 * run.face.px, {}}});
                inks_.push_back(Fill{depth_sign_head(at, run.face.px, turn), theme_.ink});
            }
            const Vec words_at = at + along * (run.depth_sign ? sign_width * run.face.px : 0);
            write_turned(inks_, run.text, {words_at, Align::left, upright ? 90.0 : 0.0}, run.face,
                         theme_.ink);
            at = at + along * (run.width - run.space);
        }
    }
}

bool Inking::label_inside(const LabelMark& mark, bool uncover) {
    const double sagitta = px(0.2);
    const auto within = chords(view_(mark.within), sagitta);
    std::vector<std::vector<shape::Ring>> avoid;
    for (const Path& path : mark.avoid) avoid.push_back(chords(view_(path), sagitta));
    if (uncover)
        for (const Path& path : mark.uncovered) avoid.push_back(chords(view_(path), sagitta));
    const Box around = bounds(view_(mark.within));
    for (const Box& box : taken_.words)
        if (shape::near(box, around)) avoid.push_back(chords(path_of(box), sagitta));
    for (const Box& box : taken_.kept)
        if (shape::near(box, around)) avoid.push_back(chords(path_of(box), sagitta));
    for (const auto& lines : mark.tries) {
        const Block block = measured(lines);
        const double room = block.margin + px(0.8);
        for (const bool upright : {false, true}) {
            const Vec size = upright ? Vec{block.height, block.width} : Vec{block.width, block.height};
            const auto place = room_inside(within, avoid, size + Vec{2 * room, 2 * room});
            if (!place) continue;
            write_block(block, *place, upright);
            return true;
        }
    }
    return false;
}

void Inking::add(const LabelMark& mark) {
    if (mark.tries.empty()) return;
    if (!mark.uncovered.empty() && label_inside(mark, true)) return;
    if (label_inside(mark, false)) return;
    if (mark.outside) label_outside(mark);
}

void Inking::label_outside(const LabelMark& mark) {
    const Block block = measured(mark.tries.back());
    const Vec from = bounds(view_(mark.within)).center();
    const Vec margin{block.margin, block.margin};
    const Vec size = Vec{block.width, block.height} + margin * 2;
    const auto place = plate_place(from, size, taken_, view_.per_px, {});
    if (!place) return;
    const Vec to = leader_end(from, *place);
    stroke(line(from, to), theme::LineRole::thin);
    taken_.leaders.emplace_back(from, to);
    inks_.push_back(Fill{circle(from, px(1.5)), theme_.ink});
    write_block(block, place->center(), false);
}

} // namespace drawercast::sheets
