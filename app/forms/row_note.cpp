// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/row_note.h"

#include "theme/theme_of.h"

#include <QPainter>
#include <QTextLayout>

namespace drawercast::app {

namespace {

constexpr int badge_side = 14;
constexpr int lines = 2;

/// `text` broken at words into at most `lines` lines, the last one elided.
QStringList broken(const QString& text, const QFont& font, int width) {
    QStringList result;
    QTextLayout layout(text, font);
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        if (result.size() + 1 == lines) {
            result << QFontMetrics(font).elidedText(text.mid(line.textStart()), Qt::ElideRight, width);
            break;
        }
        result << text.mid(line.textStart(), line.textLength()).trimmed();
    }
    layout.endLayout();
    return result;
}

void paint_mend_badge(QPainter& painter, const QRect& where, const theme::Theme& theme) {
    painter.fillRect(where, theme.mend_fill);
    QFont bold = painter.font();
    bold.setBold(true);
    painter.setFont(bold);
    painter.setPen(theme.mend_figure);
    painter.drawText(where, Qt::AlignCenter, QStringLiteral("!"));
}

} // namespace

RowNote::RowNote(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void RowNote::set_hint(const QString& hint) {
    hint_ = hint;
    show_words();
}

void RowNote::set_problem(const QString& problem, Tone tone) {
    if (problem_ == problem && tone_ == tone) return;
    problem_ = problem;
    tone_ = tone;
    show_words();
}

void RowNote::show_words() {
    setToolTip(words());
    setAccessibleName(words());
    update();
}

QSize RowNote::sizeHint() const { return {310, lines * fontMetrics().height()}; }
QSize RowNote::minimumSizeHint() const { return {120, sizeHint().height()}; }

void RowNote::paintEvent(QPaintEvent*) {
    if (words().isEmpty()) return;
    QPainter painter(this);
    const auto& theme = theme::theme_of(this);
    QRect room = rect();
    const bool wrong = !problem_.isEmpty() && tone_ == Tone::wrong;
    if (wrong) {
        const int side = qMax(badge_side, fontMetrics().ascent() + 2);
        paint_mend_badge(painter, {0, (height() - side) / 2, side, side}, theme);
        painter.setFont(font());
        room.setLeft(side + 6);
    }
    painter.setPen(!isEnabled()         ? theme.disabled
                   : wrong              ? theme.red
                   : problem_.isEmpty() ? theme.ink3
                                        : theme.ink);
    const QStringList shown = broken(words(), font(), room.width());
    const int line = fontMetrics().height();
    int y = (height() - line * int(shown.size())) / 2;
    for (const QString& one : shown) {
        painter.drawText(QRect(room.left(), y, room.width(), line), Qt::AlignLeft | Qt::AlignVCenter, one);
        y += line;
    }
}

} // namespace drawercast::app
