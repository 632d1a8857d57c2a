// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "application.h"
#include "theme/lettering.h"
#include "theme/palette.h"
#include "theme/style.h"
#include "theme/widget_palette.h"

#include <QApplication>
#include <QString>
#include <QWidget>

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

} // namespace drawercast::test
