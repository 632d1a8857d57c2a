// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/title_strip.h"

#include "language/say.h"
#include "sheets/paint.h"
#include "sheets/signs.h"
#include "theme/lettering.h"
#include "theme/theme_of.h"

#include <QEvent>
#include <QMenu>
#include <QPainter>
#include <QPainterPath>
#include <QToolButton>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr int pad = 10;
constexpr int sign_px = 18;
constexpr int legend_px = 172;

int wide(const QFont& font, const QString& text) { return QFontMetrics(font).horizontalAdvance(text); }

} // namespace

TitleStrip::TitleStrip(QWidget* parent)
    : QWidget(parent), names_{tr("Scale"), tr("Grid"), tr("Snap"), tr("Unit")}, cells_(cell_count) {
    for (const auto& name : names_) {
        auto* button = new QToolButton(this);
        button->setPopupMode(QToolButton::InstantPopup);
        button->setToolButtonStyle(Qt::ToolButtonTextOnly);
        button->setAutoRaise(true);
        button->setToolTip(name);
        buttons_.push_back(button);
    }
    lay_out();
}

QFont TitleStrip::small() const {
    QFont font = this->font();
    font.setPixelSize(qMax(12, qRound(QFontInfo(font).pixelSize() * 12.0 / 13.0)));
    return font;
}

QFont TitleStrip::bold() const {
    QFont font = this->font();
    font.setBold(true);
    return font;
}

QFont TitleStrip::drafting() const {
    return theme::font_of(theme::Face::drafting, qRound(QFontInfo(font()).pixelSize() * 22.0 / 13.0));
}

void TitleStrip::set_menu(Cell cell, QMenu* menu) { buttons_[cell]->setMenu(menu); }

void TitleStrip::show(const Shown& shown) {
    if (shown == shown_) return;
    shown_ = shown;
    set_words();
    lay_out();
    update();
}

QString TitleStrip::job_caption() const { return shown_.changed ? tr("printed") : tr("job"); }
QString TitleStrip::job_words() const { return shown_.changed ? tr("before changes") : shown_.job; }

void TitleStrip::set_words() {
    const QStringList words{shown_.scale, shown_.grid, shown_.snap, shown_.unit};
    for (int cell = 0; cell < cell_count; ++cell) {
        auto* button = buttons_[static_cast<std::size_t>(cell)];
        button->setText(words[cell]);
        button->setAccessibleName(names_[cell] + QStringLiteral(": ") + words[cell]);
    }
}

/// From the left: name, seen, scale, grid, snap, unit, legend, job, drawer. What has no room is left out:
/// first job and drawer, then the legend, then unit, snap, grid; a job that has changed since it was printed
/// stays.
void TitleStrip::lay_out() {
    const int lines = QFontMetrics(small()).height() + QFontMetrics(bold()).height();
    setFixedHeight(std::max(46, lines + 16));
    int x = 0;
    const auto take = [&x](int width) {
        const Place place{x, width};
        x += width;
        return place;
    };
    name_ = take(wide(drafting(), shown_.sheet) + 2 * pad);
    const QString seen = seen_words(shown_.seen);
    seen_ = take(sign_px + 8 + wide(bold(), seen) + 2 * pad);
    const int caption = wide(small(), job_caption()) + 2 * pad;
    const int words = std::max(caption, wide(bold(), job_words()) + 2 * pad);
    const int kept = shown_.changed ? words : 0;
    const auto cell_width = [&](int cell) {
        return std::max(buttons_[static_cast<std::size_t>(cell)]->sizeHint().width(),
                        wide(small(), names_[cell])) +
               pad;
    };
    for (int cell = 0; cell < cell_count; ++cell) {
        auto& place = cells_[static_cast<std::size_t>(cell)];
        place.reset();
        const bool told = !buttons_[static_cast<std::size_t>(cell)]->text().isEmpty();
        if (told && (cell == scale_cell || x + cell_width(cell) + kept <= width()))
            place = take(cell_width(cell));
        auto* button = buttons_[static_cast<std::size_t>(cell)];
        button->setVisible(place.has_value());
        if (!place) continue;
        const int top = QFontMetrics(small()).height() + 5;
        button->setGeometry(place->left + 2, top, place->width - 4, height() - top - 2);
    }
    legend_.reset();
    job_.reset();
    drawer_.reset();
    if (shown_.ladder_mm > 0 && x + legend_px + kept <= width()) legend_ = take(legend_px);
    const int drawer = wide(bold(), shown_.drawer) + 2 * pad;
    if (x + words <= width())
        job_ = take(words);
    else if (shown_.changed)
        job_ = take(std::max(words, width() - x));
    if (job_ && x + drawer <= width()) drawer_ = take(drawer);
}

void TitleStrip::resizeEvent(QResizeEvent*) { lay_out(); }

void TitleStrip::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) lay_out();
    QWidget::changeEvent(event);
}

void TitleStrip::paint_cell(QPainter& painter, const Place& place, const QString& caption,
                            const QString& words) const {
    const auto& theme = theme::theme_of(this);
    painter.setPen(theme.edge);
    painter.drawLine(place.left, 2, place.left, height());
    painter.setFont(small());
    painter.setPen(theme.ink3);
    const int top = QFontMetrics(small()).height();
    painter.drawText(QRect(place.left + pad, 6, place.width - pad, top), Qt::AlignLeft | Qt::AlignVCenter,
                     caption);
    painter.setFont(bold());
    painter.setPen(theme.ink);
    painter.drawText(QRect(place.left + pad, 6 + top, place.width - pad, height() - top - 8),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(words, Qt::ElideRight, place.width - pad));
}

void TitleStrip::paint_legend(QPainter& painter, const Place& place) const {
    const auto& theme = theme::theme_of(this);
    constexpr int steps = 6;
    painter.setPen(theme.edge);
    painter.drawLine(place.left, 2, place.left, height());
    painter.setFont(small());
    painter.setPen(theme.ink3);
    painter.drawText(QRect(place.left + pad, 6, 50, 16), Qt::AlignLeft | Qt::AlignVCenter, tr("depth"));
    const double left = place.left + pad + 46, step = (place.width - pad - 46 - 16) / double(steps);
    for (int i = 0; i < steps; ++i) {
        painter.setPen(theme.edge);
        painter.setBrush(theme.depth_wash((i + 1.0) / steps));
        painter.drawRect(QRectF(left + i * step, 9.5, step, 10));
    }
    painter.setPen(theme.ink2);
    for (int i = 0; i <= steps; i += 2)
        painter.drawText(QRectF(left + i * step - 24, 21, 48, height() - 23), Qt::AlignHCenter | Qt::AlignTop,
                         language::say_length_bare(shown_.ladder_mm * i / steps, shown_.units));
    painter.setBrush(Qt::NoBrush);
}

void TitleStrip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& theme = theme::theme_of(this);
    painter.fillRect(rect(), theme.paper);
    painter.fillRect(QRect(0, 0, width(), 2), theme.ink);
    painter.setFont(drafting());
    painter.setPen(theme.ink);
    painter.drawText(QRect(name_.left + pad, 2, name_.width, height() - 2), Qt::AlignLeft | Qt::AlignVCenter,
                     shown_.sheet);
    const Place words{seen_.left + sign_px + 8, seen_.width - sign_px - 8};
    paint_cell(painter, words, tr("seen"), seen_words(shown_.seen));
    painter.fillRect(QRect(words.left, 2, 1, height()), theme.paper);
    painter.setPen(theme.edge);
    painter.drawLine(seen_.left, 2, seen_.left, height());
    painter.setRenderHint(QPainter::Antialiasing);
    const auto sign = sheets::frame_sign({seen_.left + pad + sign_px / 2.0 - 2, height() / 2.0 + 1}, sign_px,
                                         shown_.seen == Seen::mold);
    if (shown_.seen == Seen::drawer || shown_.seen == Seen::mold)
        painter.fillPath(sheets::painter_path(sign), theme.ink);
    painter.setRenderHint(QPainter::Antialiasing, false);
    const QStringList captions{tr("scale"), tr("grid"), tr("snap"), tr("unit")};
    for (int cell = 0; cell < cell_count; ++cell)
        if (const auto& place = cells_[static_cast<std::size_t>(cell)])
            paint_cell(painter, *place, captions[cell], {});
    if (legend_) paint_legend(painter, *legend_);
    if (job_) paint_cell(painter, *job_, job_caption(), job_words());
    if (drawer_) paint_cell(painter, *drawer_, tr("drawer"), shown_.drawer);
}

} // namespace drawercast::app
