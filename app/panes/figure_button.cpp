// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/figure_button.h"

#include "theme/gauge_paint.h"
#include "theme/lettering.h"
#include "theme/theme_of.h"

#include <QPainter>
#include <QStyle>

namespace drawercast::app {

namespace {

constexpr int pad = 4;
constexpr int focus_px = 2;

int scaled(const QFont& font, double px) { return qMax(12, qRound(QFontInfo(font).pixelSize() * px / 13.0)); }

} // namespace

FigureButton::FigureButton(Kind kind, QWidget* parent) : QAbstractButton(parent), kind_(kind) {
    setFocusPolicy(Qt::TabFocus);
    setAttribute(Qt::WA_Hover);
    setToolTip(tr("How this figure comes about"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void FigureButton::show(const FoamFigure& figure) {
    setVisible(true);
    if (figure.label == label_ && figure.value == value_) return;
    const bool wider = figure.value.size() != value_.size() || figure.label != label_;
    label_ = figure.label;
    value_ = figure.value;
    setAccessibleName(label_ + QStringLiteral(": ") + value_);
    if (wider) updateGeometry();
    update();
}

void FigureButton::show_gauge(double share, bool breached, bool decides) {
    if (share == share_ && breached == breached_ && decides == decides_) return;
    share_ = share;
    breached_ = breached;
    decides_ = decides;
    setAccessibleDescription(breached ? tr("over its limit") : decides ? tr("decides") : QString());
    update();
}

void FigureButton::set_open(bool open) {
    if (open == open_) return;
    open_ = open;
    update();
}

QFont FigureButton::small() const {
    QFont font = this->font();
    font.setPixelSize(scaled(font, 12));
    return font;
}

QFont FigureButton::large() const { return theme::font_of(theme::Face::medium, scaled(font(), 20)); }

QFont FigureButton::strong() const {
    QFont font = this->font();
    font.setBold(true);
    return font;
}

QSize FigureButton::sizeHint() const {
    const QFontMetrics body(font());
    if (kind_ == Kind::key) {
        const QFontMetrics figure(large());
        const int value = figure.horizontalAdvance(value_.section(u' ', 0, 0)) + pad +
                          QFontMetrics(small()).horizontalAdvance(value_.section(u' ', 1));
        return {qMax(value, QFontMetrics(small()).horizontalAdvance(label_)) + 2 * pad,
                QFontMetrics(small()).height() + figure.height() + 4};
    }
    const int words =
        body.horizontalAdvance(label_) + 2 * pad + QFontMetrics(strong()).horizontalAdvance(value_);
    const int height = kind_ == Kind::gauge ? theme::gauge_height(body) + 4 : qMax(22, body.height() + 6);
    return {words + 2 * pad, height};
}

QSize FigureButton::minimumSizeHint() const { return {40, sizeHint().height()}; }

void FigureButton::paint_key(QPainter& painter) const {
    const auto& theme = theme::theme_of(this);
    const QFontMetrics caption(small());
    painter.setFont(small());
    painter.setPen(theme.ink2);
    painter.drawText(QRect(pad, 2, width() - 2 * pad, caption.height()), Qt::AlignLeft | Qt::AlignVCenter,
                     caption.elidedText(label_, Qt::ElideRight, width() - 2 * pad));
    const QString number = value_.section(u' ', 0, 0), unit = value_.section(u' ', 1);
    const QFontMetrics figure(large());
    const int base = 2 + caption.height() + figure.ascent();
    painter.setFont(large());
    painter.setPen(theme.ink);
    painter.drawText(pad, base, number);
    painter.setFont(small());
    painter.setPen(theme.ink2);
    painter.drawText(pad + figure.horizontalAdvance(number) + pad, base, unit);
}

void FigureButton::paint_row(QPainter& painter) const {
    const auto& theme = theme::theme_of(this);
    const QRect line = rect().adjusted(pad, 0, -pad, 0);
    const QFontMetrics value(strong());
    painter.setFont(strong());
    painter.setPen(theme.ink);
    const QString said = value.elidedText(value_, Qt::ElideRight, line.width() * 3 / 4);
    painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, said);
    painter.setFont(font());
    painter.setPen(theme.ink2);
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetrics(font()).elidedText(label_, Qt::ElideRight,
                                                     line.width() - value.horizontalAdvance(said) - 2 * pad));
}

void FigureButton::paint_gauge(QPainter& painter) const {
    const QString of = tr(" of ");
    const auto cut = value_.indexOf(of);
    theme::Gauge gauge;
    gauge.label = label_;
    gauge.value = cut < 0 ? value_ : value_.left(cut);
    gauge.limit = cut < 0 ? QString() : value_.mid(cut + 1);
    gauge.share = share_;
    gauge.breached = breached_;
    if (decides_) gauge.decides = tr("decides");
    painter.setFont(font());
    theme::paint_gauge(painter, QRectF(rect()).adjusted(pad, 2, -pad, 0), gauge, theme::theme_of(this));
}

void FigureButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& theme = theme::theme_of(this);
    if (underMouse() || isDown()) painter.fillRect(rect(), theme.hover);
    if (kind_ == Kind::key)
        paint_key(painter);
    else if (kind_ == Kind::row)
        paint_row(painter);
    else
        paint_gauge(painter);
    if (open_) painter.fillRect(QRect(0, 0, 3, height()), theme.blue);
    if (!hasFocus()) return;
    painter.setPen(QPen(theme.blue, focus_px, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

} // namespace drawercast::app
