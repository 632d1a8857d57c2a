// SPDX-License-Identifier: GPL-3.0-or-later
#include "guide/framing.h"

#include "sheets/inking.h"
#include "sheets/paint.h"
#include "theme/lettering.h"

#include <QPainter>
#include <QWidget>

#include <algorithm>
#include <cmath>

namespace drawercast::app::guide {

namespace {

constexpr double pad = 10;
constexpr double most_high = 0.85;   ///< of the width
constexpr double waiting_high = 0.4; ///< likewise
constexpr double page_share = 0.55;  ///< of the width: a page upright is narrow
constexpr double chart_high = 0.42;  ///< without its words
constexpr shape::Vec least_chart{20, 20};

QImage blank(QSize size, const QColor& ground, const PictureLook& look) {
    QImage image(size * look.ratio, QImage::Format_RGB32);
    image.setDevicePixelRatio(look.ratio);
    image.fill(ground);
    return image;
}

void paint_edge(QPainter& painter, QSize size, const PictureLook& look) {
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(look.theme.rule, 1));
    painter.drawRect(0, 0, size.width() - 1, size.height() - 1);
}

QImage painted(const std::vector<sheets::Mark>& marks, const sheets::View& view, QSize size,
               const PictureLook& look) {
    QImage image = blank(size, look.theme.paper, look);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    sheets::paint(sheets::ink_of(marks, view, look.theme), painter);
    paint_edge(painter, size, look);
    return image;
}

} // namespace

double scale_of(const AnySheet& sheet, const PictureLook& look) {
    const shape::Vec rooms = sheet.lower_px + sheet.upper_px + shape::Vec{2 * pad, 2 * pad};
    return std::max(0.05, std::min((look.width_px - rooms.x) / sheet.area.width(),
                                   (most_high * look.width_px - rooms.y) / sheet.area.height()));
}

std::optional<QImage> framed(const AnySheet& sheet, const PictureLook& look) {
    if (sheet.marks.empty() || sheet.area.empty()) return std::nullopt;
    const double per_mm = scale_of(sheet, look);
    const shape::Vec drawn{sheet.area.width() * per_mm, sheet.area.height() * per_mm};
    const double wide = drawn.x + sheet.lower_px.x + sheet.upper_px.x;
    const double left = (look.width_px - wide) / 2 + sheet.lower_px.x;
    const double bottom = pad + sheet.upper_px.y + drawn.y;
    const sheets::View view{theme::Medium::screen,
                            per_mm,
                            1,
                            {left - sheet.area.min.x * per_mm, bottom + sheet.area.min.y * per_mm}};
    const QSize size(look.width_px, static_cast<int>(std::ceil(bottom + sheet.lower_px.y + pad)));
    return painted(sheet.marks, view, size, look);
}

std::optional<QImage> charted(const MakeChart& make, const PictureLook& look) {
    constexpr double per_mm = theme::px_per_mm;
    const auto rooms = make(least_chart); // the room its words take is always the same
    if (rooms.marks.empty()) return std::nullopt;
    const double wide = look.width_px - rooms.lower_room_px.x - rooms.upper_room_px.x - 2 * pad;
    const auto chart = make({wide / per_mm, chart_high * look.width_px / per_mm});
    const double bottom = pad + chart.upper_room_px.y + chart.area.height() * per_mm;
    const sheets::View view{theme::Medium::screen, per_mm, 1, {pad + chart.lower_room_px.x, bottom}};
    const QSize size(look.width_px, static_cast<int>(std::ceil(bottom + chart.lower_room_px.y + pad)));
    return painted(chart.marks, view, size, look);
}

QImage paged(const print::Page& page, const PictureLook& look) {
    const double factor = page_share * look.width_px / print::px(page.size_mm.x);
    const QSize size(static_cast<int>(print::px(page.size_mm.x) * factor),
                     static_cast<int>(print::px(page.size_mm.y) * factor));
    QImage image = blank(size, Qt::white, look);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.save();
    painter.scale(factor, factor);
    sheets::paint(page.inks, painter);
    painter.restore();
    paint_edge(painter, size, look);
    return image;
}

QImage grabbed(QWidget& widget, QSize size, const PictureLook& look) {
    widget.resize(size);
    QImage image = blank(size, look.theme.paper, look);
    QPainter painter(&image);
    widget.render(&painter, {}, {}, QWidget::DrawChildren);
    paint_edge(painter, size, look);
    return image;
}

QImage waiting(const QString& words, const PictureLook& look) {
    const QSize size(look.width_px, static_cast<int>(waiting_high * look.width_px));
    QImage image = blank(size, look.theme.paper, look);
    QPainter painter(&image);
    painter.setPen(look.theme.ink2);
    painter.setFont(theme::font_of(theme::Face::regular, 13));
    painter.drawText(QRect(QPoint(), size), Qt::AlignCenter, words);
    paint_edge(painter, size, look);
    return image;
}

} // namespace drawercast::app::guide
