// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/ink.h"

#include <QStringList>

namespace drawercast::sheets {

namespace {

constexpr QChar diameter_sign(0x2300);
constexpr double diameter_width = 0.78; // of the size

/// The sign as a circle and an oblique stroke standing on the base line, between `at` and its width.
Path diameter_path(double px) {
    const double r = 0.28 * px;
    const Vec center{diameter_width * px / 2, -theme::capital_share * px / 2};
    const Vec reach = Vec{0.5, -0.87} * (0.4 * px);
    return joined(circle(center, r), line(center - reach, center + reach));
}

Path turned(Path path, Vec at, const shape::Turn& turn) {
    const auto place = [&](Vec p) {
        return at + Vec{turn.cosine * p.x + turn.sine * p.y, -turn.sine * p.x + turn.cosine * p.y};
    };
    for (Strand& strand : path.strands) {
        strand.start = place(strand.start);
        for (Piece& piece : strand.pieces) piece.to = place(piece.to);
    }
    return path;
}

Path grown(Path path, double factor, Vec by) {
    for (Strand& strand : path.strands) {
        strand.start = strand.start * factor + by;
        for (Piece& piece : strand.pieces) {
            piece.to = piece.to * factor + by;
            piece.radius *= factor;
        }
    }
    return path;
}

struct Mover {
    double factor;
    Vec by;
    void operator()(Fill& fill) const { fill.path = grown(std::move(fill.path), factor, by); }
    void operator()(Stroke& stroke) const {
        stroke.path = grown(std::move(stroke.path), factor, by);
        stroke.pen.width *= factor;
        for (double& length : stroke.pen.dashes) length *= factor;
    }
    void operator()(Words& words) const {
        words.at = words.at * factor + by;
        words.lettering.px *= factor;
    }
    void operator()(Clip& clip) const {
        if (!clip.box.empty()) clip.box = {clip.box.min * factor + by, clip.box.max * factor + by};
    }
    void operator()(About&) const {}
};

struct Reach {
    Box operator()(const Fill& fill) const { return bounds(fill.path); }
    Box operator()(const Stroke& stroke) const { return bounds(stroke.path).grown(stroke.pen.width); }
    Box operator()(const Words& words) const {
        const double px = words.lettering.px, length = theme::width_of(words.text, words.lettering);
        const shape::Turn turn = shape::Turn::of_degrees(words.turn_deg);
        Box box;
        for (const double along : {0.0, length})
            for (const double up : {px, -px * 0.3})
                box.add(words.at +
                        Vec{turn.cosine * along - turn.sine * up, -turn.sine * along - turn.cosine * up});
        return box;
    }
    Box operator()(const Clip&) const { return {}; }
    Box operator()(const About&) const { return {}; }
};

} // namespace

Inks moved(Inks inks, double factor, Vec by) {
    for (Ink& ink : inks) std::visit(Mover{factor, by}, ink);
    return inks;
}

Box reach_of(const Ink& ink) { return std::visit(Reach{}, ink); }

double written_width(const QString& text, const theme::Lettering& lettering) {
    const auto signs = text.count(diameter_sign);
    if (signs == 0) return theme::width_of(text, lettering);
    double width = static_cast<double>(signs) * diameter_width * lettering.px;
    for (const QString& part : text.split(diameter_sign)) width += theme::width_of(part, lettering);
    return width;
}

void write(Inks& inks, const QString& text, Vec at, const theme::Lettering& lettering, const QColor& color,
           Align align) {
    write_turned(inks, text, {at, align, 0}, lettering, color);
}

void write_turned(Inks& inks, const QString& text, const TurnedAt& where, const theme::Lettering& lettering,
                  const QColor& color) {
    if (text.isEmpty()) return;
    const double share = where.align == Align::left ? 0 : where.align == Align::center ? 0.5 : 1;
    const shape::Turn turn = shape::Turn::of_degrees(where.turn_deg);
    const Vec along{turn.cosine, -turn.sine}; // y points down
    Vec pen = where.at - along * (share > 0 ? share * written_width(text, lettering) : 0);
    const QStringList parts = text.split(diameter_sign);
    for (qsizetype i = 0; i < parts.size(); ++i) {
        if (i > 0) {
            const theme::Pen stroke{
                color, lettering.px * (lettering.face == theme::Face::bold ? 0.11 : 0.08), {}};
            inks.push_back(Stroke{turned(diameter_path(lettering.px), pen, turn), stroke});
            pen = pen + along * (diameter_width * lettering.px);
        }
        if (parts[i].isEmpty()) continue;
        inks.push_back(Words{parts[i], pen, lettering, color, where.turn_deg});
        pen = pen + along * theme::width_of(parts[i], lettering);
    }
}

} // namespace drawercast::sheets
