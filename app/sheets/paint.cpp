// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/paint.h"

#include <QPainter>
#include <QPainterPath>

#include <cmath>

namespace drawercast::sheets {

namespace {

QPointF point(Vec v) { return {v.x, v.y}; }

void add_arc(QPainterPath& path, Vec from, const Piece& piece) {
    const Vec center = arc_center(from, piece);
    const Vec a = from - center, b = piece.to - center;
    const double turn = std::atan2(cross(a, b), dot(a, b));
    const double reach = 4.0 / 3 * std::tan(turn / 4);
    path.cubicTo(point(from + Vec{-a.y, a.x} * reach), point(piece.to - Vec{-b.y, b.x} * reach),
                 point(piece.to));
}

QPen qt_pen(const theme::Pen& pen) {
    QPen out(pen.color, pen.width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
    if (pen.dashes.empty()) return out;
    QList<qreal> dashes;
    for (const double length : pen.dashes) dashes.append(length / pen.width); // Qt counts in pen widths
    out.setDashPattern(dashes);
    return out;
}

class Brush {
  public:
    explicit Brush(QPainter& painter) : painter_(painter) {}

    void operator()(const Fill& fill) { painter_.fillPath(painter_path(fill.path), fill.color); }
    void operator()(const Stroke& stroke) {
        painter_.strokePath(painter_path(stroke.path), qt_pen(stroke.pen));
    }
    void operator()(const Words& words) {
        painter_.save();
        painter_.translate(point(words.at));
        painter_.rotate(-words.turn_deg);
        const double px = words.lettering.px;
        const bool whole = px == std::round(px);
        const int size = whole ? static_cast<int>(px) : 64; // Qt's pixel sizes are whole
        if (!whole) painter_.scale(px / size, px / size);
        QFont font = theme::font_of(words.lettering.face, size);
        font.setLetterSpacing(QFont::PercentageSpacing, words.lettering.spacing * 100);
        painter_.setFont(font);
        painter_.setPen(words.color);
        painter_.drawText(QPointF(0, 0), words.text);
        painter_.restore();
    }
    void operator()(const Clip& clip) {
        if (clip.box.empty())
            painter_.setClipping(false);
        else
            painter_.setClipRect(QRectF(point(clip.box.min), point(clip.box.max)));
    }
    void operator()(const About&) {}

  private:
    QPainter& painter_;
};

} // namespace

QPainterPath painter_path(const Path& path) {
    QPainterPath out;
    out.setFillRule(Qt::OddEvenFill);
    for (const Strand& strand : path.strands) {
        out.moveTo(point(strand.start));
        Vec from = strand.start;
        for (const Piece& piece : strand.pieces) {
            if (piece.radius == 0)
                out.lineTo(point(piece.to));
            else
                add_arc(out, from, piece);
            from = piece.to;
        }
        if (strand.closed) out.closeSubpath();
    }
    return out;
}

void paint(const Inks& inks, QPainter& painter) {
    paint_some(inks, painter, [](const Ink&) { return true; });
}

void paint_some(const Inks& inks, QPainter& painter, const std::function<bool(const Ink&)>& wanted) {
    painter.save();
    Brush brush(painter);
    for (const Ink& ink : inks)
        if (wanted(ink)) std::visit(brush, ink);
    painter.restore();
}

} // namespace drawercast::sheets
