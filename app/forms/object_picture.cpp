// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/object_picture.h"

#include "forms/dimension_paint.h"
#include "sheets/depth_ladder.h"
#include "theme/theme_of.h"

#include <QPainter>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr double margin_px = 14;
constexpr double caption_px = 20;
constexpr double dimension_px = 22;   ///< from an edge to its dimension line
constexpr double right_px = 78;       ///< room for upright dimensions and their figures
constexpr double foam_around_mm = 12; ///< of foam shown beside the object in the section

} // namespace

struct ObjectPicture::Layout {
    double scale = 1; ///< px per mm
    QRectF above;     ///< of the object from above
    QRectF side;      ///< of insert and object in section
    double face_y = 0;
    double left_x = 0; ///< px of views_.box.min.x

    QTransform from_above(const shape::Box& box) const {
        QTransform map;
        map.translate(above.center().x(), above.center().y());
        map.scale(scale, -scale);
        map.translate(-box.center().x, -box.center().y);
        return map;
    }
    QTransform from_side(const shape::Box& box) const {
        QTransform map;
        map.translate(left_x - box.min.x * scale, face_y);
        map.scale(scale, scale);
        return map;
    }
};

ObjectPicture::ObjectPicture(const FormContext& context, QWidget* parent)
    : QWidget(parent), context_(context) {
    setAccessibleName(tr("Picture of the object"));
}

void ObjectPicture::set_object(const job::Object& object) {
    views_ = object_views(object, context_.insert_mm);
    if (!views_.box.empty())
        setAccessibleDescription(
            tr("From above %1 × %2; from the side %3 deep, %4 proud")
                .arg(context_.length(views_.box.width()), context_.length(views_.box.height()),
                     context_.length(views_.greatest_depth_mm), context_.length(views_.proud_mm())));
    update();
}

/// The scale at which both views and their dimensions find room, one over the other.
ObjectPicture::Layout ObjectPicture::layout() const {
    const shape::Box& box = views_.box;
    const double over = std::max(0.0, views_.proud_mm());
    const double section = over + std::max(context_.insert_mm, views_.greatest_depth_mm);
    const double fixed = 2 * (margin_px + caption_px) + 2 * dimension_px + margin_px;
    Layout at;
    at.scale = std::min((width() - 2 * margin_px - right_px) / (box.width() + 2 * foam_around_mm),
                        (height() - fixed) / (box.height() + section));
    at.scale = std::clamp(at.scale, 0.02, 8.0);
    const double spare = std::max(0.0, height() - fixed - at.scale * (box.height() + section));
    const double center = (width() - right_px) / 2.0;
    at.above = QRectF(0, 0, box.width() * at.scale, box.height() * at.scale);
    at.above.moveCenter({center, 0});
    at.above.moveTop(margin_px + caption_px + spare / 4);
    const double foam = (box.width() + 2 * foam_around_mm) * at.scale;
    at.side = QRectF(center - foam / 2, at.above.bottom() + dimension_px + caption_px + margin_px + spare / 4,
                     foam, section * at.scale);
    at.face_y = at.side.top() + over * at.scale;
    at.left_x = center - box.width() * at.scale / 2;
    return at;
}

void ObjectPicture::paint_above(QPainter& painter, const Layout& at) const {
    const auto& theme = theme::theme_of(this);
    const double full = sheets::ladder_full_mm(context_.insert_mm, context_.units);
    const QTransform map = at.from_above(views_.box);
    painter.setPen(QPen(theme.ink, 1.6));
    for (const auto& level : views_.above) {
        painter.setBrush(theme.depth_wash(std::clamp(level.depth_mm / full, 0.001, 1.0)));
        painter.drawPath(map.map(level.outline));
    }
    painter.setBrush(Qt::NoBrush);
    paint_dimension(painter, at.above.bottomLeft(), at.above.bottomRight(), dimension_px / 2,
                    context_.length(views_.box.width()), theme);
    paint_dimension(painter, at.above.topRight(), at.above.bottomRight(), dimension_px / 2,
                    context_.length(views_.box.height()), theme);
}

void ObjectPicture::paint_side(QPainter& painter, const Layout& at) const {
    const auto& theme = theme::theme_of(this);
    const QTransform map = at.from_side(views_.box);
    const QRectF foam(at.side.left(), at.face_y, at.side.width(), context_.insert_mm * at.scale);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.face);
    painter.drawRect(foam);
    QPainterPath hollow;
    QPainterPath object;
    for (const auto& level : views_.side) {
        hollow = hollow.united(level.hollow);
        object = object.united(level.object);
    }
    painter.setBrush(theme.paper);
    painter.drawPath(map.map(hollow));
    painter.setPen(QPen(theme.ink, 2));
    painter.setBrush(Qt::NoBrush);
    painter.drawLine(foam.topLeft(), QPointF(map.map(hollow).boundingRect().left(), foam.top()));
    painter.drawLine(QPointF(map.map(hollow).boundingRect().right(), foam.top()), foam.topRight());
    painter.drawLine(foam.bottomLeft(), foam.bottomRight());
    painter.setPen(QPen(theme.ink, 1.6));
    painter.drawPath(map.map(hollow));
    if (views_.height_mm > 0) {
        painter.setPen(QPen(theme.ink2, 1, Qt::CustomDashLine));
        QPen dashed(theme.ink2, 1);
        dashed.setDashPattern({6, 3});
        painter.setPen(dashed);
        painter.drawPath(map.map(object));
    }
    const double x = at.side.right();
    const double bottom = at.face_y + views_.greatest_depth_mm * at.scale;
    paint_dimension(painter, {x, at.face_y}, {x, bottom}, dimension_px / 2,
                    context_.length(views_.greatest_depth_mm), theme);
    if (views_.height_mm > 0 && std::abs(views_.proud_mm()) > 0.05) {
        const double top = at.face_y - views_.proud_mm() * at.scale;
        paint_dimension(painter, {at.left_x + views_.box.width() * at.scale, top},
                        {at.left_x + views_.box.width() * at.scale, at.face_y},
                        x + dimension_px * 2.2 - (at.left_x + views_.box.width() * at.scale),
                        context_.length(views_.proud_mm()), theme);
    }
}

void ObjectPicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& theme = theme::theme_of(this);
    painter.fillRect(rect(), theme.paper);
    painter.setPen(theme.edge);
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
    if (views_.box.empty()) {
        painter.setPen(theme.ink3);
        painter.drawText(rect(), Qt::AlignCenter, tr("Sizes to come"));
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    const Layout at = layout();
    paint_above(painter, at);
    paint_side(painter, at);
    painter.setPen(theme.ink3);
    painter.drawText(QRectF(margin_px, at.above.top() - caption_px - 6, width() - 2 * margin_px, caption_px),
                     Qt::AlignLeft | Qt::AlignVCenter, tr("From above"));
    painter.drawText(QRectF(margin_px, at.side.top() - caption_px - 4, width() - 2 * margin_px, caption_px),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     tr("From the front, in an insert of %1").arg(context_.length(context_.insert_mm)));
}

} // namespace drawercast::app
