// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/rail.h"

#include "casting/band.h"

#include "document/document.h"
#include "document/selection.h"
#include "panes/explain/deciding.h"
#include "sheets/badge.h"
#include "sheets/paint.h"
#include "theme/icons.h"
#include "theme/theme_of.h"

#include <QPainter>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr int wide = 52;
constexpr int icon_px = 20;
constexpr int badge_step = 30;
constexpr int bar_px = 64; // from 0 to the limit
constexpr int over_px = 16;

void count(const std::vector<layout::Check>& checks, int& mends, int& looks, int& notes) {
    for (const auto& check : checks) {
        if (check.left_as_is) continue;
        ++(check.severity == layout::Severity::mend   ? mends
           : check.severity == layout::Severity::look ? looks
                                                      : notes);
    }
}

} // namespace

Rail::Rail(const Document& document, const Selection& selection, QWidget* parent)
    : QAbstractButton(parent), document_(document), selection_(selection) {
    setFocusPolicy(Qt::TabFocus);
    setAttribute(Qt::WA_Hover);
    setFixedWidth(wide);
    connect(&document, &Document::shown_changed, this, &Rail::refresh);
    connect(&selection, &Selection::changed, this, &Rail::refresh);
    refresh();
}

QSize Rail::sizeHint() const { return {wide, 200}; }

Rail::Shown Rail::shown_now() const {
    Shown now;
    count(document_.plan().checks, now.mends, now.looks, now.notes);
    const auto* drawer = plan::find_drawer(document_.plan(), selection_.drawer());
    if (drawer == nullptr) return now;
    count(drawer->checks, now.mends, now.looks, now.notes);
    const auto answer = explain::Answer::of(document_.shown(), document_.plan(), *drawer, DosingUnit::mass);
    if (!answer) return now;
    if (drawer->band)
        now.gauges = {{tr("full"), casting::flow_index / drawer->band->low.fill},
                      {tr("hard"), drawer->band->high.fill / casting::hard_fill}};
    now.gauges.push_back({tr("pour"), explain::pour_share(*answer)});
    return now;
}

void Rail::refresh() {
    auto now = shown_now();
    if (now == shown_ && !accessibleName().isEmpty()) return;
    shown_ = std::move(now);
    QStringList words{tr("Checks and foam: %1 to mend, %2 to look at, notes: %3")
                          .arg(shown_.mends)
                          .arg(shown_.looks)
                          .arg(shown_.notes)};
    for (const auto& gauge : shown_.gauges)
        words << tr("%1 %2 % of its limit").arg(gauge.name).arg(qRound(100 * gauge.share));
    setAccessibleName(words.join(QStringLiteral("; ")));
    setToolTip(words.join(u'\n') + u'\n' + tr("Click or F8 to open"));
    update();
}

int Rail::paint_counts(QPainter& painter, int top) const {
    const auto& theme = theme::theme_of(this);
    sheets::Inks inks;
    const auto badge = [&](layout::Severity severity, int number) {
        if (number == 0) return;
        sheets::CheckTag tag;
        tag.number = number;
        tag.severity = severity;
        sheets::write_badge(inks, {wide / 2.0, top + badge_step / 2.0}, 1.15, tag, {theme::Face::bold, 12},
                            theme);
        top += badge_step;
    };
    badge(layout::Severity::mend, shown_.mends);
    badge(layout::Severity::look, shown_.looks);
    badge(layout::Severity::note, shown_.notes);
    painter.setRenderHint(QPainter::Antialiasing);
    sheets::paint(inks, painter);
    return top;
}

/// Upright: tick at 0 and at the limit, a bar past the limit in red beside a "!", its name under it.
void Rail::paint_gauge(QPainter& painter, int top, const Gauge& gauge) const {
    const auto& theme = theme::theme_of(this);
    const bool breached = gauge.share > 1;
    const double x = wide / 2.0, zero = top + over_px + bar_px, limit = top + over_px;
    const double bar = std::min(gauge.share * bar_px, double(bar_px + over_px));
    painter.fillRect(QRectF(x - 0.5, top, 1, zero - top), theme.edge);
    painter.fillRect(QRectF(x - 2, zero - bar, 4, bar), breached ? theme.red : theme.ink);
    painter.setPen(QPen(theme.ink2, theme.line(1.25)));
    for (const double y : {zero, limit}) painter.drawLine(QPointF(x - 5, y + 5), QPointF(x + 5, y - 5));
    painter.setPen(breached ? theme.red : theme.ink2);
    if (breached) painter.drawText(QRectF(x + 6, top, 16, 18), Qt::AlignCenter, QStringLiteral("!"));
    painter.drawText(QRectF(0, zero + 5, wide, fontMetrics().height()), Qt::AlignCenter, gauge.name);
}

void Rail::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& theme = theme::theme_of(this);
    painter.fillRect(rect(), underMouse() ? theme.hover : theme.pane);
    painter.fillRect(QRect(0, 0, 1, height()), theme.rule);
    theme::icon(QStringLiteral("pane-right"))
        .paint(&painter, QRect((wide - icon_px) / 2, 10, icon_px, icon_px));
    int top = paint_counts(painter, 44) + 12;
    const int step = over_px + bar_px + fontMetrics().height() + 16;
    for (const auto& gauge : shown_.gauges) {
        if (top + step > height()) break;
        paint_gauge(painter, top, gauge);
        top += step;
    }
    if (!hasFocus()) return;
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(theme.blue, 2, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

} // namespace drawercast::app
