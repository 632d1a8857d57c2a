// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/appearance.h"

#include "theme/lettering.h"
#include "theme/style.h"
#include "theme/widget_palette.h"

#include <QApplication>
#include <QToolTip>

namespace drawercast::app {

namespace {

constexpr double body_px = 13;

theme::ThemeChoice choice_of(Preferences::Appearance appearance) {
    switch (appearance) {
    case Preferences::Appearance::light:
        return theme::ThemeChoice::light;
    case Preferences::Appearance::dark:
        return theme::ThemeChoice::dark;
    case Preferences::Appearance::contrast_light:
        return theme::ThemeChoice::contrast_light;
    case Preferences::Appearance::contrast_dark:
        return theme::ThemeChoice::contrast_dark;
    case Preferences::Appearance::system:
        break;
    }
    return theme::ThemeChoice::system;
}

} // namespace

theme::Theme chosen_theme(const Preferences& preferences, const QPalette& desktop) {
    return theme::theme_for(choice_of(preferences.appearance()), desktop);
}

void wear(const theme::Theme& theme, double text_scale) {
    theme::load_fonts();
    QFont body = theme::font_of(theme::Face::regular, qRound(body_px * text_scale));
    body.setHintingPreference(QFont::PreferVerticalHinting); // crisp on screen, widths as printed
    QApplication::setFont(body);
    QApplication::setStyle(new theme::Style(theme, text_scale)); // the application owns it
    const QPalette palette = theme::widget_palette(theme);
    QApplication::setPalette(palette);
    QToolTip::setPalette(palette); // Qt keeps one of its own for them
    QToolTip::setFont(body);
}

} // namespace drawercast::app
