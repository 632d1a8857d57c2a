// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/live_marks.h"

#include "job/edit.h"
#include "plan/say.h"
#include "shape/gap.h"

#include "canvas/hit.h"
#include "sheets/paint.h"
#include "sheets/path.h"

#include <QFontMetricsF>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

constexpr double corner_px = 9;
constexpr double outside_px = 4.5;
constexpr double live_margin_px = 60; ///< room for the ring and for figures beside a chosen pocket

/// A line over any wash: paper-colored casing first.
void stroke_cased(QPainter& painter, const QPainterPath& path, const QColor& color, double width,
                  const theme::Theme& theme, const QList<qreal>& dashes = {}) {
    QColor casing = theme.paper;
    casing.setAlphaF(static_cast<float>(theme.casing));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(casing, theme.line(width) + 2.5, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawPath(path);
    QPen pen(color, theme.line(width), Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
    if (!dashes.isEmpty()) pen.setDashPattern(dashes);
    painter.setPen(pen);
    painter.drawPath(path);
}

QPainterPath outline_path(const layout::PlacedPocket& pocket, const ViewMap& view) {
    QPainterPath path;
    for (const auto& cut : pocket.cuts) {
        QPolygonF polygon;
        const double sagitta = std::max(0.05 / view.px_per_mm(), shape::chord_sagitta_mm);
        for (const auto& p : shape::traced(cut.outline.contour, sagitta)) polygon << view.to_px(p);
        QPainterPath one;
        one.addPolygon(polygon);
        one.closeSubpath();
        path = path.united(one);
    }
    return path;
}

void corner_marks(QPainter& painter, const QRectF& box, bool filled, const theme::Theme& theme) {
    const QRectF r = box.adjusted(-outside_px, -outside_px, outside_px, outside_px);
    QPainterPath path;
    for (const QPointF corner : {r.topLeft(), r.topRight(), r.bottomRight(), r.bottomLeft()}) {
        const double dx = corner.x() == r.left() ? corner_px : -corner_px;
        const double dy = corner.y() == r.top() ? corner_px : -corner_px;
        path.moveTo(corner + QPointF(dx, 0));
        path.lineTo(corner);
        path.lineTo(corner + QPointF(0, dy));
        if (filled) path.lineTo(corner + QPointF(dx, 0));
    }
    stroke_cased(painter, path, theme.blue, 1.8, theme);
    if (filled) painter.fillPath(path, theme.blue);
}

void ring(QPainter& painter, const QPointF& at, const QPointF& from, const theme::Theme& theme) {
    QPainterPath path;
    path.moveTo(from);
    path.lineTo(at + QPointF(0, 5));
    path.addEllipse(at, 5, 5);
    const QRectF sweep(at.x() - 14, at.y() - 6, 28, 28);
    path.arcMoveTo(sweep, 50);
    path.arcTo(sweep, 50, 80);
    for (const double side : {-1.0, 1.0}) { // arrow heads at both ends of the arc
        const QPointF tip = at + QPointF(side * 9, -2.7);
        path.moveTo(tip + QPointF(-side * 5, -1));
        path.lineTo(tip);
        path.lineTo(tip + QPointF(side * 0.5, -5));
    }
    stroke_cased(painter, path, theme.blue, 1.6, theme);
}

void words(QPainter& painter, const QString& text, QPointF center, const theme::Theme& theme) {
    const QFontMetricsF metrics(painter.font());
    QRectF plate = metrics.boundingRect(text).adjusted(-4, -2, 4, 2);
    plate.moveCenter(center);
    painter.fillRect(plate, theme.paper);
    painter.setPen(theme.blue);
    painter.drawText(plate, Qt::AlignCenter, text);
}

void dimension(QPainter& painter, const LiveDimension& dimension, const LiveScene& scene) {
    const QPointF a = scene.view.to_px(dimension.from);
    const QPointF b = scene.view.to_px(dimension.to);
    const double length = std::hypot(b.x() - a.x(), b.y() - a.y());
    QPainterPath path;
    path.moveTo(a);
    path.lineTo(b);
    if (length > 1) {
        const QPointF along = (b - a) / length;
        const QPointF across(-along.y(), along.x());
        for (const auto& [tip, way] : {std::pair(a, along), std::pair(b, -along)}) {
            path.moveTo(tip + way * 7 + across * 2.5);
            path.lineTo(tip);
            path.lineTo(tip + way * 7 - across * 2.5);
        }
    }
    stroke_cased(painter, path, scene.theme.blue, 1.0, scene.theme);
    const double mm = shape::length(dimension.to - dimension.from);
    const QPointF aside = length < 44 ? QPointF(0, -14) : QPointF();
    words(painter, QString::fromStdString(plan::say_length_bare(mm, scene.job.display_units)),
          (a + b) / 2 + aside, scene.theme);
}

void guide(QPainter& painter, const layout::SnapAxis& axis, const LiveScene& scene) {
    QPainterPath path;
    const QPointF a = scene.view.to_px(axis.guide_from);
    const QPointF b = scene.view.to_px(axis.guide_to);
    path.moveTo(a);
    path.lineTo(b);
    stroke_cased(painter, path, scene.theme.blue, 1.25, scene.theme, {14, 3, 2, 3, 2, 3});
    if (axis.reason == layout::SnapReason::grid) return; // the grid itself shows it
    const auto text = layout::text_of(axis.reason);
    words(painter, QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())), (a + b) / 2,
          scene.theme);
}

} // namespace

std::vector<LiveDimension> live_dimensions(const plan::DrawerPlan& plan,
                                           const std::vector<std::string>& chosen) {
    const shape::Box box = box_of(plan, chosen);
    if (box.empty()) return {};
    std::vector<LiveDimension> out;
    const shape::Vec c = box.center();
    if (plan.insert) {
        const shape::Box& insert = plan.insert->box;
        const bool left = box.min.x - insert.min.x < insert.max.x - box.max.x;
        const bool front = box.min.y - insert.min.y < insert.max.y - box.max.y;
        out.push_back(left ? LiveDimension{{insert.min.x, c.y}, {box.min.x, c.y}}
                           : LiveDimension{{box.max.x, c.y}, {insert.max.x, c.y}});
        out.push_back(front ? LiveDimension{{c.x, insert.min.y}, {c.x, box.min.y}}
                            : LiveDimension{{c.x, box.max.y}, {c.x, insert.max.y}});
    }
    shape::Gap nearest;
    for (const auto& subject : chosen) {
        const auto* self = find_pocket(plan, subject);
        if (self == nullptr) continue;
        for (const auto& other : plan.pockets) {
            if (std::find(chosen.begin(), chosen.end(), other->subject) != chosen.end()) continue;
            if (!shape::near(self->box, other->box, nearest.mm)) continue;
            for (std::size_t i = 0; i < self->cuts.size(); ++i)
                for (std::size_t k = 0; k < other->cuts.size(); ++k) {
                    const auto gap =
                        shape::gap_between(self->cuts[i].outline.contour, self->boxes[i],
                                           other->cuts[k].outline.contour, other->boxes[k], nearest.mm);
                    if (gap.mm < nearest.mm) nearest = gap;
                }
        }
    }
    if (std::isfinite(nearest.mm) && nearest.mm > 0) out.push_back({nearest.a, nearest.b});
    return out;
}

void paint_live_marks(QPainter& painter, const LiveScene& scene) {
    const auto& theme = scene.theme;
    if (!scene.hovered.empty() &&
        std::find(scene.chosen.begin(), scene.chosen.end(), scene.hovered) == scene.chosen.end())
        if (const auto* pocket = find_pocket(scene.plan, scene.hovered))
            stroke_cased(painter, outline_path(*pocket, scene.view), theme.blue, 1.0, theme);
    for (const auto& subject : scene.chosen) {
        const auto* pocket = find_pocket(scene.plan, subject);
        if (pocket == nullptr) continue;
        stroke_cased(painter, outline_path(*pocket, scene.view), theme.blue, 2.2, theme);
        corner_marks(painter, scene.view.to_px(pocket->box),
                     scene.chosen.size() > 1 && subject == scene.chosen.back(), theme);
    }
    const auto box = box_of(scene.plan, scene.chosen);
    if (scene.turn_ring && !scene.moving && !box.empty())
        ring(painter, *scene.turn_ring, scene.view.to_px(shape::Vec{box.center().x, box.max.y}), theme);
    if (scene.moving) {
        for (const auto& axis : {scene.guides.x, scene.guides.y})
            if (axis) guide(painter, *axis, scene);
        for (const auto& one : live_dimensions(scene.plan, scene.chosen)) dimension(painter, one, scene);
    }
    if (scene.band) {
        QPainterPath path;
        path.addRect(scene.view.to_px(*scene.band));
        stroke_cased(painter, path, theme.blue, 1.0, theme, {6, 3});
    }
}

QRectF live_reach(const LiveScene& scene) {
    QRectF reach;
    const auto take = [&](const QRectF& rect) { reach = reach.isNull() ? rect : reach.united(rect); };
    for (const auto& subject : scene.chosen)
        if (const auto* pocket = find_pocket(scene.plan, subject)) take(scene.view.to_px(pocket->box));
    const auto line = [&](shape::Vec a, shape::Vec b) {
        take(QRectF(scene.view.to_px(a), scene.view.to_px(b)).normalized().adjusted(0, 0, 1, 1));
    };
    if (scene.moving) {
        for (const auto& axis : {scene.guides.x, scene.guides.y})
            if (axis) line(axis->guide_from, axis->guide_to);
        for (const auto& one : live_dimensions(scene.plan, scene.chosen)) line(one.from, one.to);
    }
    return reach.adjusted(-live_margin_px, -live_margin_px, live_margin_px, live_margin_px);
}

void paint_grid_lines(QPainter& painter, const shape::Box& insert, double step_mm, const ViewMap& view,
                      const theme::Theme& theme) {
    constexpr double least_px = 5;
    constexpr int strong_every = 5;
    if (!(step_mm * view.px_per_mm() >= least_px)) return;
    const auto lines = [&](double from, double to, bool upright) {
        for (auto i = static_cast<long>(std::ceil(from / step_mm)); static_cast<double>(i) * step_mm <= to;
             ++i) {
            const double at = static_cast<double>(i) * step_mm;
            painter.setPen(QPen(i % strong_every == 0 ? theme.grid_wide : theme.grid, 1));
            QPointF a =
                upright ? view.to_px(shape::Vec{at, insert.min.y}) : view.to_px(shape::Vec{insert.min.x, at});
            QPointF b =
                upright ? view.to_px(shape::Vec{at, insert.max.y}) : view.to_px(shape::Vec{insert.max.x, at});
            if (upright)
                a.setX(std::floor(a.x()) + 0.5), b.setX(a.x());
            else
                a.setY(std::floor(a.y()) + 0.5), b.setY(a.y());
            painter.drawLine(a, b);
        }
    };
    lines(insert.min.x, insert.max.x, true);
    lines(insert.min.y, insert.max.y, false);
}

void paint_focus_frame(QPainter& painter, const QRect& rect, const theme::Theme& theme) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.blue, 2));
    painter.drawRect(QRectF(rect).adjusted(1, 1, -1, -1));
}

} // namespace drawercast::app
