// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/icons.h"

#include "base/demand.h"

#include "theme/contrast.h"
#include "theme/icon_engine.h"

#include <QDir>
#include <QImage>
#include <QPainter>
#include <QPalette>
#include <QPixmap>
#include <QSvgRenderer>

namespace drawercast::theme {

namespace {

QRectF middle_square(const QRectF& where) {
    const qreal side = qMin(where.width(), where.height());
    return {where.center().x() - side / 2, where.center().y() - side / 2, side, side};
}

} // namespace

IconInks icon_inks(const QPalette& palette, QIcon::Mode mode) {
    const auto group = QPalette::Active;
    switch (mode) {
    case QIcon::Disabled: {
        const QColor pale = palette.color(group, QPalette::PlaceholderText);
        return {pale, pale};
    }
    case QIcon::Selected: {
        const QColor ground = palette.color(group, QPalette::Highlight);
        const QColor thing = palette.color(group, QPalette::HighlightedText);
        const QColor note = palette.color(group, QPalette::Link);
        return {thing, contrast(note, ground) >= least_line_contrast ? note : thing};
    }
    case QIcon::Normal:
    case QIcon::Active:
        break;
    }
    return {palette.color(group, QPalette::WindowText), palette.color(group, QPalette::Link)};
}

QStringList icon_names() {
    QStringList names;
    for (const QString& file :
         QDir(QStringLiteral(":/icons")).entryList({QStringLiteral("*.svg")}, QDir::Files))
        names.append(file.chopped(4));
    names.sort();
    return names;
}

QIcon icon(const QString& name) { return QIcon(new IconEngine(name, std::nullopt)); }

QIcon icon(const QString& name, const IconInks& inks) { return QIcon(new IconEngine(name, inks)); }

void paint_icon(QPainter& painter, const QRectF& where, const QString& name, const IconInks& inks) {
    QSvgRenderer renderer(icon_svg(name, inks));
    DRAWERCAST_DEMAND(renderer.isValid(), "an icon's drawing can't be read");
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    renderer.render(&painter, middle_square(where));
    painter.restore();
}

QImage program_icon_image(int pixels) {
    QSvgRenderer renderer(pixels < 32 ? QStringLiteral(":/icons/program/drawercast-small.svg")
                                      : QStringLiteral(":/icons/program/drawercast.svg"));
    DRAWERCAST_DEMAND(renderer.isValid(), "the program's icon can't be read");
    QImage image(pixels, pixels, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    renderer.render(&painter, QRectF(0, 0, pixels, pixels));
    return image;
}

QIcon program_icon() {
    QIcon icon;
    for (const int pixels : {16, 24, 32, 48, 64, 128, 256})
        icon.addPixmap(QPixmap::fromImage(program_icon_image(pixels)));
    return icon;
}

} // namespace drawercast::theme
