// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/icon_engine.h"

#include "base/demand.h"

#include <QFile>
#include <QGuiApplication>
#include <QPainter>
#include <QPalette>
#include <QPixmapCache>
#include <QSvgRenderer>

#include <utility>

namespace drawercast::theme {

namespace {

// What stands in the files for the two pencils: they are readable in any viewer as they are.
constexpr QByteArrayView placeholder_thing = "#16212b";
constexpr QByteArrayView placeholder_note = "#1d4fb8";

QString path_of(const QString& name) { return QStringLiteral(":/icons/%1.svg").arg(name); }

QPixmap rendered(const QString& name, const QSize& pixels, const IconInks& inks) {
    const QString key = QStringLiteral("icon/%1/%2x%3/%4/%5")
                            .arg(name)
                            .arg(pixels.width())
                            .arg(pixels.height())
                            .arg(inks.thing.rgba(), 8, 16)
                            .arg(inks.note.rgba(), 8, 16);
    QPixmap pixmap;
    if (QPixmapCache::find(key, &pixmap)) return pixmap;
    pixmap = QPixmap(pixels);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    paint_icon(painter, QRectF(QPointF(0, 0), QSizeF(pixels)), name, inks);
    painter.end();
    QPixmapCache::insert(key, pixmap);
    return pixmap;
}

} // namespace

QByteArray icon_svg(const QString& name, const IconInks& inks) {
    QFile file(path_of(name));
    const bool readable = file.open(QIODevice::ReadOnly);
    DRAWERCAST_DEMAND(readable, "no icon of this name in resources/icons");
    // Both colors are put in through marks no color can be, or an ink equal to a placeholder would be
    // replaced twice.
    QByteArray svg = file.readAll();
    svg.replace(placeholder_thing, "#thing!").replace(placeholder_note, "#note!");
    svg.replace("#thing!", inks.thing.name(QColor::HexRgb).toLatin1());
    svg.replace("#note!", inks.note.name(QColor::HexRgb).toLatin1());
    return svg;
}

IconEngine::IconEngine(QString name, std::optional<IconInks> inks)
    : name_(std::move(name)), inks_(std::move(inks)) {
    DRAWERCAST_DEMAND(QFile::exists(path_of(name_)), "no icon of this name in resources/icons");
}

IconInks IconEngine::inks_for(QIcon::Mode mode) const {
    if (inks_) return *inks_;
    return icon_inks(QGuiApplication::palette(), mode);
}

void IconEngine::paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State state) {
    const qreal ratio = painter->device() ? painter->device()->devicePixelRatio() : 1.0;
    QPixmap drawing = pixmap((QSizeF(rect.size()) * ratio).toSize(), mode, state);
    drawing.setDevicePixelRatio(ratio);
    painter->drawPixmap(rect.topLeft(), drawing);
}

QPixmap IconEngine::pixmap(const QSize& size, QIcon::Mode mode, QIcon::State) {
    if (size.isEmpty()) return {};
    return rendered(name_, size, inks_for(mode));
}

QSize IconEngine::actualSize(const QSize& size, QIcon::Mode, QIcon::State) {
    const int side = qMin(size.width(), size.height());
    return {side, side};
}

QIconEngine* IconEngine::clone() const { return new IconEngine(*this); }

QString IconEngine::key() const { return QStringLiteral("drawercast"); }

bool IconEngine::isNull() { return false; }

} // namespace drawercast::theme
