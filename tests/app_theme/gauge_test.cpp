// SPDX-License-Identifier: GPL-3.0-or-later
#include "application.h"
#include "theme/gauge_paint.h"
#include "theme/palette.h"

#include <QFontMetrics>
#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

namespace drawercast::theme {
namespace {

constexpr int width = 208; // 4 px for half a tick at either end, so 200 px from 0 to the limit

QFont font() {
    QFont font;
    font.setPixelSize(13);
    return font;
}

QImage painted(const Gauge& gauge) {
    test::application();
    QImage image(width, 40, QImage::Format_RGB32);
    image.fill(light_theme().pane);
    QPainter painter(&image);
    painter.setFont(font());
    paint_gauge(painter, QRectF(0, 0, width, 40), gauge, light_theme());
    return image;
}

/// Px of `color` in the bar's longest row, and rows the bar is thick.
struct Bar {
    int length = 0;
    int thick = 0;
};

Bar bar_of(const QImage& image, const QColor& color) {
    Bar bar;
    for (int y = QFontMetrics(font()).height() + 1; y < image.height(); ++y) {
        int run = 0;
        for (int x = 0; x < image.width(); ++x) run += image.pixelColor(x, y) == color;
        if (run > 20) ++bar.thick;
        bar.length = qMax(bar.length, run);
    }
    return bar;
}

TEST(Gauge, bar_is_as_long_as_the_share) {
    for (const double share : {0.25, 0.5, 0.75, 1.0}) {
        const Bar bar = bar_of(painted({"bow", "1", "of 2", "", share, false}), light_theme().ink);
        EXPECT_NEAR(bar.length, 200 * share, 12) << share; // the ticks cross it
    }
}

TEST(Gauge, one_that_decides_is_thicker) {
    const Gauge plain{"bow", "1", "of 2", "", 0.5, false};
    Gauge decides = plain;
    decides.decides = "decides";
    EXPECT_EQ(bar_of(painted(plain), light_theme().ink).thick, 3);
    EXPECT_EQ(bar_of(painted(decides), light_theme().ink).thick, 4);
}

TEST(Gauge, breach_is_red_and_has_its_square) {
    const QImage image = painted({"screw", "418 N", "of 380 N", "", 1.1, true});
    EXPECT_GT(bar_of(image, light_theme().red).length, 180);
    int square = 0;
    for (int y = 0; y < 20; ++y)
        for (int x = 0; x < width; ++x) square += image.pixelColor(x, y) == light_theme().mend_fill;
    EXPECT_GT(square, 60);
}

TEST(Gauge, values_far_over_the_limit_stay_in_the_line) {
    for (const double share : {1.5, 3.0, 1e9}) {
        const QImage image = painted({"x", "9", "of 2", "", share, true});
        for (int y = 0; y < image.height(); ++y)
            EXPECT_NE(image.pixelColor(width - 1, y), light_theme().red) << share;
        EXPECT_GT(bar_of(image, light_theme().red).length, 180) << share;
    }
}

TEST(Gauge, hatching_of_neighbors_joins) {
    test::application();
    QImage whole(90, 30, QImage::Format_RGB32);
    whole.fill(light_theme().pane);
    QImage halves = whole;
    {
        QPainter one(&whole);
        paint_old_answer(one, QRectF(0, 0, 90, 30), light_theme());
        QPainter two(&halves);
        paint_old_answer(two, QRectF(0, 0, 45, 30), light_theme());
        paint_old_answer(two, QRectF(45, 0, 45, 30), light_theme());
    }
    EXPECT_EQ(whole, halves);
}

} // namespace
} // namespace drawercast::theme
