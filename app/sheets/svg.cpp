// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/svg.h"

namespace drawercast::sheets {

namespace {

/// Six decimals, trailing zeros dropped, no negative zero.
QByteArray number(double value) {
    QByteArray text = QByteArray::number(value, 'f', 6);
    while (text.endsWith('0')) text.chop(1);
    if (text.endsWith('.')) text.chop(1);
    return text == "-0" ? QByteArray("0") : text;
}

QByteArray point(Vec p) { return number(p.x) + " " + number(p.y); }

/// XML 1.0 has no place for control characters, halves of letters and what is no character, however they are
/// escaped: one of them in a name, and no program opens the drawing.
QByteArray escaped(QString text) {
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QChar c = text[i];
        const bool pair = c.isHighSurrogate() && i + 1 < text.size() && text[i + 1].isLowSurrogate();
        if (pair)
            ++i;
        else if (c.category() == QChar::Other_Control || c.isSurrogate() || c.isNonCharacter())
            text[i] = QLatin1Char(' ');
    }
    return text.toHtmlEscaped().toUtf8();
}

QByteArray path_data(const Path& path) {
    QByteArray data;
    for (const Strand& strand : path.strands) {
        data += "M" + point(strand.start);
        for (const Piece& piece : strand.pieces) {
            if (piece.radius == 0) {
                data += "L" + point(piece.to);
                continue;
            }
            const QByteArray r = number(std::abs(piece.radius));
            // with y down, a turn from x toward y is SVG's positive direction; never more than a quarter turn
            data += "A" + r + " " + r + " 0 0 " + (piece.radius > 0 ? "1 " : "0 ") + point(piece.to);
        }
        if (strand.closed) data += "Z";
    }
    return data;
}

QByteArray color(const char* what, const QColor& color) {
    QByteArray text = QByteArray(" ") + what + "=\"" + color.name(QColor::HexRgb).toUtf8() + "\"";
    if (color.alpha() < 255) text += QByteArray(" ") + what + "-opacity=\"" + number(color.alphaF()) + "\"";
    return text;
}

class Writer {
  public:
    explicit Writer(QByteArray& out) : out_(out) {}

    void operator()(const Fill& fill) {
        out_ += "<path" + color("fill", fill.color) + " fill-rule=\"evenodd\" d=\"" + path_data(fill.path) +
                "\"/>\n";
    }
    void operator()(const Stroke& stroke) {
        out_ += "<path fill=\"none\"" + color("stroke", stroke.pen.color) + " stroke-width=\"" +
                number(stroke.pen.width) + "\"";
        if (!stroke.pen.dashes.empty()) {
            QByteArray dashes;
            for (const double length : stroke.pen.dashes)
                dashes += (dashes.isEmpty() ? "" : " ") + number(length);
            out_ += " stroke-dasharray=\"" + dashes + "\"";
        }
        out_ += " d=\"" + path_data(stroke.path) + "\"/>\n";
    }
    void operator()(const Words& words) {
        const theme::Face face = words.lettering.face;
        out_ += "<text x=\"" + number(words.at.x) + "\" y=\"" + number(words.at.y) + "\"" +
                color("fill", words.color) + " font-size=\"" + number(words.lettering.px) +
                "\" font-family=\"" +
                (face == theme::Face::drafting ? "Routed Gothic, Go, sans-serif" : "Go, sans-serif") + "\"";
        if (face == theme::Face::bold) out_ += " font-weight=\"bold\"";
        // whatever face the reader has, the words keep their length
        out_ += " textLength=\"" + number(theme::width_of(words.text, words.lettering)) +
                "\" lengthAdjust=\"spacingAndGlyphs\"";
        if (words.turn_deg != 0)
            out_ += " transform=\"rotate(" + number(-words.turn_deg) + " " + point(words.at) + ")\"";
        out_ += ">" + escaped(words.text) + "</text>\n";
    }
    void operator()(const Clip&) {} // drawings at true size are whole
    void operator()(const About& about) {
        close();
        if (about.subject.empty()) return;
        out_ += "<g><title>" + escaped(QString::fromStdString(about.subject)) + "</title>\n";
        open_ = true;
    }
    void close() {
        if (open_) out_ += "</g>\n";
        open_ = false;
    }

  private:
    QByteArray& out_;
    bool open_ = false;
};

} // namespace

QByteArray svg_of(const Inks& inks_mm, Vec size_mm, const QString& title) {
    const QByteArray width = number(size_mm.x), height = number(size_mm.y);
    QByteArray out = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" "
                     "version=\"1.1\" width=\"" +
                     width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + " " + height +
                     "\">\n<title>" + escaped(title) + "</title>\n";
    Writer writer(out);
    for (const Ink& ink : inks_mm) std::visit(writer, ink);
    writer.close();
    return out + "</svg>\n";
}

} // namespace drawercast::sheets
