// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/dose_gauge.h"

#include "casting/band.h"
#include "plan/say.h"

#include "language/spoken.h"
#include "sheets/text.h"
#include "theme/theme_of.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

constexpr int pad = 4;
constexpr int per_whole = 1000;     // steps of value() in an overpack of 1
constexpr double least_axis = 0.80; // of the fill
constexpr double most_axis = 1.65;
constexpr double most_overpack = 0.60; // that can be dragged to; a job may hold more

using sheets::fixed;

bool short_at(double low) { return low < casting::flow_index; }
bool hard_at(double high) { return high > casting::hard_fill; }

} // namespace

DoseGauge::DoseGauge(QWidget* parent) : QAbstractSlider(parent) {
    setOrientation(Qt::Horizontal);
    setRange(0, int(most_overpack * per_whole));
    setSingleStep(10);
    setPageStep(50);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("Overpack"));
    setToolTip(tr("Drag the mark or use the arrow keys; double-click for automatic"));
    setMouseTracking(true);
}

void DoseGauge::show(const Shown& shown) {
    if (shown == shown_) return;
    shown_ = shown;
    showing_ = true;
    setMaximum(std::max(int(most_overpack * per_whole), int(std::lround(shown.overpack * per_whole))));
    setValue(int(std::lround(shown.overpack * per_whole)));
    showing_ = false;
    setAccessibleDescription(
        tr("%1 %, full ×%2 at the low end and ×%3 at the high end")
            .arg(fixed(100 * shown.overpack, 0), fixed(shown.low_fill, 2), fixed(shown.high_fill, 2)));
    update();
}

QSize DoseGauge::sizeHint() const {
    const int line = fontMetrics().height();
    return {160, 2 * line + 20};
}

double DoseGauge::x_of(double fill) const {
    const double share = (std::clamp(fill, least_axis, most_axis) - least_axis) / (most_axis - least_axis);
    return pad + share * (width() - 2 * pad);
}

double DoseGauge::fill_at(double x) const {
    return least_axis + (x - pad) / (width() - 2 * pad) * (most_axis - least_axis);
}

int DoseGauge::line_y() const { return fontMetrics().height() + 10; }

// ---- drawing ----

/// A limit: its oblique tick, and under it what lies beyond.
void DoseGauge::paint_limit(QPainter& painter, double fill, bool least) const {
    const auto& theme = theme::theme_of(this);
    const double x = x_of(fill), y = line_y() + 0.5;
    painter.setPen(QPen(theme.ink2, theme.line(1.25)));
    painter.drawLine(QPointF(x - 5, y + 5), QPointF(x + 5, y - 5));
    painter.setPen(theme.ink3);
    const QString words =
        least ? tr("short under %1").arg(fixed(fill, 2)) : tr("hard over %1").arg(fixed(fill, 2));
    const double room = fontMetrics().horizontalAdvance(words);
    const double left = std::clamp(least ? x - room + 10 : x - 10, double(pad), width() - pad - room);
    painter.drawText(QPointF(left, line_y() + 7 + fontMetrics().ascent()), words);
}

/// The band from end to end in ink, what is beyond a limit in red and hatched by its double width.
void DoseGauge::paint_band(QPainter& painter) const {
    const auto& theme = theme::theme_of(this);
    const double y = line_y() + 0.5;
    const double low = x_of(shown_.low_fill), high = x_of(shown_.high_fill);
    painter.fillRect(QRectF(low, y - 2, high - low, 4), theme.ink);
    if (short_at(shown_.low_fill))
        painter.fillRect(QRectF(low, y - 4, x_of(std::min(casting::flow_index, shown_.high_fill)) - low, 8),
                         theme.red);
    if (hard_at(shown_.high_fill)) {
        const double from = x_of(std::max(casting::hard_fill, shown_.low_fill));
        painter.fillRect(QRectF(from, y - 4, high - from, 8), theme.red);
    }
    for (const double x : {low, high}) {
        painter.setPen(QPen(theme.ink, theme.line(1.25)));
        painter.drawLine(QPointF(x, y - 6), QPointF(x, y + 6));
    }
    const double x = x_of(1 + shown_.overpack);
    const bool live = dragging_ || hasFocus() || underMouse();
    const QPolygonF mark{QPointF(x, y + 7), QPointF(x + 6, y), QPointF(x + 6, y - 8), QPointF(x - 6, y - 8),
                         QPointF(x - 6, y)};
    painter.setPen(
        QPen(live ? theme.blue : theme.ink, theme.line(1.6), Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.setBrush(dragging_ ? theme.blue_soft : theme.base);
    painter.drawPolygon(mark);
}

/// The three figures over the line; the outer ones give way to the middle one.
void DoseGauge::paint_ends(QPainter& painter) const {
    const auto& theme = theme::theme_of(this);
    QFont bold = font();
    bold.setBold(true);
    const QFontMetrics metrics(bold);
    const auto words = [&](double fill, double center, bool wrong, const QFont& font) {
        const QString said =
            (wrong ? QStringLiteral("! ") : QString()) + QStringLiteral("×") + fixed(fill, 2);
        const double room = metrics.horizontalAdvance(said);
        const double left = std::clamp(center - room / 2, 0.0, width() - room);
        painter.setFont(font);
        painter.setPen(wrong ? theme.red : theme.ink2);
        painter.drawText(QPointF(left, 1 + metrics.ascent()), said);
    };
    const double middle = x_of(1 + shown_.overpack);
    const double apart = metrics.horizontalAdvance(QStringLiteral("! ×0.00")) + 2;
    const bool low = short_at(shown_.low_fill), high = hard_at(shown_.high_fill);
    words(shown_.low_fill, std::min(x_of(shown_.low_fill), middle - apart), low, low ? bold : font());
    words(shown_.high_fill, std::max(x_of(shown_.high_fill), middle + apart), high, high ? bold : font());
    painter.setFont(bold);
    painter.setPen(theme.ink);
    const QString said = QStringLiteral("×") + fixed(1 + shown_.overpack, 2);
    painter.drawText(QPointF(middle - metrics.horizontalAdvance(said) / 2.0, 1 + metrics.ascent()), said);
}

void DoseGauge::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& theme = theme::theme_of(this);
    painter.fillRect(QRectF(0, line_y() + 0.5 - theme.line(1) / 2, width(), theme.line(1)), theme.edge);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font());
    paint_limit(painter, casting::flow_index, true);
    paint_limit(painter, casting::hard_fill, false);
    paint_band(painter);
    paint_ends(painter);
    if (!hasFocus() || dragging_) return;
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.blue, 2, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

// ---- mouse and keys ----

void DoseGauge::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return drop();
    dragging_ = true;
    moved_ = false;
    update();
}

void DoseGauge::mouseMoveEvent(QMouseEvent* event) {
    if (!dragging_) return;
    const double wished = fill_at(event->position().x()) - 1;
    const double overpack = std::clamp(std::round(wished * 100) / 100, 0.0, maximum() / double(per_whole));
    moved_ = true;
    emit tried(overpack);
}

void DoseGauge::mouseReleaseEvent(QMouseEvent* event) {
    if (!dragging_ || event->button() != Qt::LeftButton) return;
    dragging_ = false;
    update();
    if (moved_) emit chosen(shown_.overpack); // what is shown is what is stored
}

void DoseGauge::mouseDoubleClickEvent(QMouseEvent*) {
    drop();
    emit automatic_wanted();
}

void DoseGauge::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && dragging_) return drop();
    if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace) return emit automatic_wanted();
    QAbstractSlider::keyPressEvent(event);
}

void DoseGauge::focusOutEvent(QFocusEvent* event) {
    drop();
    QAbstractSlider::focusOutEvent(event);
}

void DoseGauge::wheelEvent(QWheelEvent* event) {
    event->ignore();
} // scrolls the pane: a dose is not changed by chance

/// By keys or by an aid that sets the value; a step ends on a whole percent.
void DoseGauge::sliderChange(SliderChange change) {
    QAbstractSlider::sliderChange(change);
    if (change == SliderValueChange && !showing_ && !dragging_) emit chosen(std::round(value() / 10.0) / 100);
}

void DoseGauge::drop() {
    if (!dragging_) return;
    dragging_ = false;
    update();
    if (moved_) emit dropped();
}

} // namespace drawercast::app
