// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app_forms/words_fit.h"
#include "application.h"
#include "theme/lettering.h"
#include "theme/palette.h"
#include "theme/style.h"
#include "theme/widget_palette.h"

#include <QApplication>
#include <QImage>
#include <QString>
#include <QWidget>
#include <gtest/gtest.h>

namespace drawercast::test {

/// The application in the program's letters and style.
inline QApplication& dressed_application(const theme::Theme& theme = theme::light_theme()) {
    auto& app = application();
    theme::load_fonts();
    app.setFont(theme::font_of(theme::Face::regular, 13));
    app.setStyle(new theme::Style(theme));
    app.setPalette(theme::widget_palette(theme));
    return app;
}

/// Writes a picture of a widget where DRAWERCAST_PICTURES names a folder, to be looked at; else does nothing.
inline void picture(QWidget& widget, const QString& name) {
    const QString folder = qEnvironmentVariable("DRAWERCAST_PICTURES");
    if (folder.isEmpty()) return;
    QApplication::processEvents();
    widget.grab().save(folder + QLatin1Char('/') + name + QStringLiteral(".png"));
}

/// Dots of a picture that have this very color.
inline int dots_of(const QImage& image, const QColor& color) {
    int dots = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) dots += image.pixel(x, y) == color.rgb();
    return dots;
}

/// Holds a form to what a maker must see of it: all its words have room, and it is drawn in the theme's ink
/// on the theme's ground. Its picture is written as above.
inline void expect_seen(QWidget& form, const theme::Theme& theme, const QString& name) {
    for (int round = 0; round < 3; ++round)
        QApplication::processEvents(); // layouts in layouts settle in turn
    EXPECT_EQ(clipped_words(form).join(" | ").toStdString(), "") << name.toStdString();
    const QImage seen = form.grab().toImage().convertToFormat(QImage::Format_RGB32);
    EXPECT_GT(dots_of(seen, theme.pane), seen.width() * seen.height() / 10) << name.toStdString();
    EXPECT_GT(dots_of(seen, theme.ink), 200) << name.toStdString(); // a few words' middles of strokes
    picture(form, name);
}

} // namespace drawercast::test
