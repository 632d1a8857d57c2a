// SPDX-License-Identifier: GPL-3.0-or-later
#include "pourday/pour_paint.h"

#include "language/in_words.h"
#include "language/spoken.h"
#include "theme/lettering.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

using theme::Face;

constexpr double soon_s = 10; ///< as long before it is due the first sound comes

using language::tr;

struct Letters {
    Face face;
    double px; ///< at most: as large as fit
    QColor color;
};

/// Writes into `box`; returns the height taken.
double write(QPainter& painter, const QRectF& box, const QString& words, const Letters& letters,
             Qt::Alignment align = Qt::AlignLeft) {
    QRectF took;
    for (double size = letters.px; size >= 12; size *= 0.94) {
        painter.setFont(theme::font_of(letters.face, static_cast<int>(size)));
        took = painter.boundingRect(box, static_cast<int>(align | Qt::AlignTop) | Qt::TextWordWrap, words);
        if (took.height() <= box.height() && took.width() <= box.width()) break;
    }
    painter.setPen(letters.color);
    painter.drawText(box, static_cast<int>(align | Qt::AlignTop) | Qt::TextWordWrap, words);
    return took.height();
}

/// Time left for the step, or how late it is; the limit when it is the nearer one to be told.
struct Countdown {
    QString words;
    QString figure;
    bool late = false;
    bool too_late = false;
    bool soon = false; ///< within the seconds that are sounded: seen too, where no sound is heard
};

std::optional<Countdown> countdown_of(const PourPicture& picture) {
    if (picture.next == nullptr || !picture.stopwatch_s || !picture.next->due_s) return std::nullopt;
    const double left = *picture.next->due_s - *picture.stopwatch_s;
    const auto& limit = picture.next->limit_s;
    if (limit && *picture.stopwatch_s > *limit)
        return Countdown{tr("Too late to close: leave it open"), clock_text(*limit - *picture.stopwatch_s),
                         true, true, false};
    return Countdown{left >= 0 ? tr("done in") : tr("late by"), clock_text(std::abs(left)), left < 0, false,
                     left >= 0 && left <= soon_s};
}

void write_foot(QPainter& painter, const QRectF& foot, const PourPicture& picture, double unit,
                const theme::Theme& theme) {
    if (!picture.trouble.isEmpty()) {
        painter.fillRect(foot, theme.red_soft);
        write(painter, foot.adjusted(unit, unit / 4, -unit, 0), picture.trouble,
              {Face::bold, unit * 0.8, theme.red});
        return;
    }
    write(painter, foot.adjusted(0, unit / 4, 0, 0),
          tr("Space: done    Backspace: take back    Esc: leave, the clock goes on"),
          {Face::regular, unit * 0.95, theme.ink2});
}

} // namespace

QString step_words(const plan::PourStep& step) {
    QString words = in_words(step.what);
    if (!words.isEmpty()) words[0] = words[0].toUpper(); // gates are listed in lower case
    return words;
}

QString clock_text(double seconds) {
    const bool minus = seconds < -0.5;
    const auto whole = static_cast<long>(std::lround(std::abs(seconds)));
    const long hours = whole / 3600, minutes = whole / 60 % 60;
    const QString tail = QStringLiteral("%1").arg(whole % 60, 2, 10, QLatin1Char('0'));
    const QString head = hours > 0 ? QStringLiteral("%1:%2").arg(hours).arg(minutes, 2, 10, QLatin1Char('0'))
                                   : QString::number(minutes);
    return (minus ? QStringLiteral("−") : QString()) + head + QLatin1Char(':') + tail;
}

void paint_pour(QPainter& painter, const QRect& room, const PourPicture& picture, const theme::Theme& theme) {
    painter.fillRect(room, theme.paper);
    const double unit = std::min(room.height() / 22.0, room.width() / 36.0);
    const QRectF all = QRectF(room).adjusted(unit, unit * 0.7, -unit, -unit * 0.5);
    const QRectF head(all.left(), all.top(), all.width(), unit * 2.6);
    write(painter, head.adjusted(0, 0, -unit * 12, 0), picture.title, {Face::bold, unit, theme.ink2});
    if (picture.stopwatch_s)
        write(painter, head, clock_text(*picture.stopwatch_s), {Face::medium, unit * 2.2, theme.ink2},
              Qt::AlignRight);
    painter.setPen(QPen(theme.edge, 2));
    painter.drawLine(QPointF(all.left(), head.bottom()), QPointF(all.right(), head.bottom()));

    const QRectF foot(all.left(), all.bottom() - unit * 1.6, all.width(), unit * 1.6);
    QRectF body(all.left(), head.bottom() + unit * 0.7, all.width(), foot.top() - head.bottom() - unit);
    if (picture.next == nullptr) {
        write(painter, body, tr("All done."), {Face::bold, unit * 4, theme.ink});
        return write_foot(painter, foot, picture, unit, theme);
    }
    write(painter, body, tr("%1 of %2").arg(picture.done + 1).arg(picture.of),
          {Face::regular, unit * 0.9, theme.ink3});
    body.setTop(body.top() + unit * 1.4);
    const auto countdown = countdown_of(picture);
    QRectF words = body;
    if (countdown) {
        const QRectF right(body.right() - body.width() * 0.36, body.top(), body.width() * 0.36, unit * 8.4);
        words.setRight(right.left() - unit);
        const QRectF ground = right.adjusted(-unit / 2, 0, unit / 2, 0);
        if (countdown->too_late) painter.fillRect(ground, theme.red_soft);
        if (countdown->soon) painter.fillRect(ground, theme.ink);
        const QColor color = countdown->late ? theme.red : countdown->soon ? theme.paper : theme.ink;
        const double took = write(painter, {right.left(), right.top(), right.width(), unit * 3},
                                  countdown->words, {Face::bold, unit * 1.2, color}, Qt::AlignRight);
        write(painter, {right.left(), right.top() + took, right.width(), unit * 6}, countdown->figure,
              {Face::medium, unit * 5.5, color}, Qt::AlignRight);
        if (picture.next->limit_s && !countdown->too_late)
            write(painter, {right.left(), right.bottom() + unit * 0.2, right.width(), unit * 4},
                  tr("not on by %1: leave it off").arg(clock_text(*picture.next->limit_s)),
                  {Face::bold, unit * 1.6, theme.red}, Qt::AlignRight);
    }
    double y = words.top();
    y += write(painter, {words.left(), y, words.width(), unit * 8}, step_words(*picture.next),
               {Face::bold, unit * 3, theme.ink}) +
         unit * 0.4;
    for (const auto& detail : picture.next->details)
        y += write(painter, {words.left(), y, words.width(), std::max(unit, words.bottom() - y - unit * 2)},
                   in_words(detail), {Face::regular, unit * 1.5, theme.ink});
    if (picture.after != nullptr)
        write(painter, {words.left(), body.bottom() - unit * 1.9, body.width(), unit * 1.8},
              tr("then: %1").arg(step_words(*picture.after)), {Face::regular, unit * 1.2, theme.ink2});
    write_foot(painter, foot, picture, unit, theme);
}

} // namespace drawercast::app
