// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/drawer_picture.h"

#include "shape/contour.h"

#include "forms/dimension_paint.h"
#include "sheets/paint.h"
#include "sheets/path.h"
#include "theme/lettering.h"
#include "theme/theme_of.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr double left_px = 24;
constexpr double top_px = 24;
constexpr double right_px = 70;
constexpr double bottom_px = 60;
constexpr double hatch_px = 5;

QPainterPath path_of(const shape::Contour& contour) { return sheets::painter_path(sheets::path_of(contour)); }

/// Lines at 135°, as obstructions are hatched on the sheets.
void paint_hatched(QPainter& painter, const QPainterPath& area, const theme::Theme& theme) {
    painter.save();
    painter.setClipPath(area);
    painter.setPen(QPen(theme.ink3, 1));
    const QRectF box = area.boundingRect();
    for (double x = box.left() - box.height(); x < box.right(); x += hatch_px)
        painter.drawLine(QPointF(x, box.top()), QPointF(x + box.height(), box.bottom()));
    painter.restore();
    painter.setPen(QPen(theme.ink2, 1));
    painter.drawPath(area);
}

} // namespace

DrawerPicture::DrawerPicture(const FormContext& context, QWidget* parent)
    : QWidget(parent), context_(context) {
    setAccessibleName(tr("Picture of the drawer from above"));
}

void DrawerPicture::set_drawer(const job::Drawer& drawer) {
    drawer_ = drawer;
    update();
}

void DrawerPicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& theme = theme::theme_of(this);
    painter.fillRect(rect(), theme.paper);
    painter.setPen(theme.edge);
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
    const auto contour = shape::contour_of(drawer_.outline);
    if (!contour) {
        painter.setPen(theme.ink3);
        painter.drawText(rect(), Qt::AlignCenter, tr("Sizes to come"));
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    const shape::Box box = shape::bounds(*contour);
    const double scale = std::min((width() - left_px - right_px) / box.width(),
                                  (height() - top_px - bottom_px) / box.height());
    const double x = left_px + (width() - left_px - right_px - box.width() * scale) / 2;
    const double y = top_px + (height() - top_px - bottom_px - box.height() * scale) / 2;
    QTransform map; // the drawer's lower-left corner is its origin
    map.translate(x, y + box.height() * scale);
    map.scale(scale, -scale);

    const QPainterPath inside = map.map(path_of(shape::placed(*contour, {{-box.min.x, -box.min.y}, 0})));
    painter.setBrush(theme.face);
    painter.setPen(QPen(theme.ink, 2));
    painter.drawPath(inside);
    painter.setBrush(Qt::NoBrush);
    for (const auto& obstruction : drawer_.obstructions)
        if (const auto outline = shape::contour_of(obstruction.outline))
            paint_hatched(painter, map.map(path_of(shape::placed(*outline, obstruction.pose))), theme);

    const QRectF drawn(x, y, box.width() * scale, box.height() * scale);
    paint_dimension(painter, drawn.bottomLeft(), drawn.bottomRight(), 14, context_.length(box.width()),
                    theme);
    paint_dimension(painter, drawn.topRight(), drawn.bottomRight(), 14, context_.length(box.height()), theme);
    painter.setPen(theme.ink3);
    painter.setFont(theme::font_of(theme::Face::drafting, 13));
    painter.drawText(QRectF(drawn.left(), drawn.bottom() + 26, drawn.width(), 20), Qt::AlignCenter,
                     tr("FRONT"));
}

} // namespace drawercast::app
