// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/sheet_picture.h"

#include "app/pdf_reader.h"
#include "print/pdf.h"
#include "print/photo_sheet.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QTransform>
#include <gtest/gtest.h>

namespace drawercast::test {

namespace {

void draw(QImage& picture, double dots_per_inch, const QPolygonF& thing_mm) {
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(dots_per_inch / 25.4, dots_per_inch / 25.4);
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(50, 60, 55));
    painter.drawPolygon(thing_mm);
}

std::string png_of(const QImage& picture) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    EXPECT_TRUE(buffer.open(QIODevice::WriteOnly));
    EXPECT_TRUE(picture.save(&buffer, "PNG"));
    return bytes.toStdString();
}

} // namespace

std::string sheet_picture(print::Paper paper, const QPolygonF& thing_mm) {
    const print::Printing today{QStringLiteral("Drawercast"), QStringLiteral("today")};
    const auto file =
        file_of(print::pdf_of({print::photo_sheet(paper, today)}, QStringLiteral("test"), today.program),
                "sheet.pdf");
    const auto dots = file + ".dots";
    int exit = -1;
    output_of("pdftoppm -r 300 -png -singlefile '" + file + "' '" + dots + "'", &exit);
    EXPECT_EQ(exit, 0);
    QImage flat(QString::fromStdString(dots + ".png"));
    EXPECT_FALSE(flat.isNull());
    flat = flat.convertToFormat(QImage::Format_RGB32);
    draw(flat, 300, thing_mm);
    const double w = flat.width(), h = flat.height();
    QTransform view;
    const bool possible = QTransform::quadToQuad(
        QPolygonF({{0, 0}, {w, 0}, {w, h}, {0, h}}),
        QPolygonF({{160, 120}, {w + 150, 150}, {w + 110, h + 40}, {190, h + 60}}), view);
    EXPECT_TRUE(possible);
    QImage picture(static_cast<int>(w) + 300, static_cast<int>(h) + 220, QImage::Format_RGB32);
    picture.fill(QColor(120, 110, 100));
    QPainter painter(&picture);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    painter.setTransform(view);
    painter.drawImage(0, 0, flat);
    painter.end();
    return png_of(picture);
}

std::string scan_picture(double dots_per_inch, const QPolygonF& thing_mm) {
    const double dot = dots_per_inch / 25.4;
    QImage picture(static_cast<int>(210 * dot), static_cast<int>(297 * dot), QImage::Format_RGB32);
    picture.fill(QColor(245, 245, 243));
    draw(picture, dots_per_inch, thing_mm);
    return png_of(picture);
}

} // namespace drawercast::test
