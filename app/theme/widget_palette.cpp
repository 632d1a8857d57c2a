// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/widget_palette.h"

#include "theme/contrast.h"

#include <QList>

namespace drawercast::theme {

namespace {

/// The first of `wished` that can be read on `ground`, else `last`.
QColor readable(const QList<QColor>& wished, const QColor& ground, const QColor& last) {
    for (const QColor& color : wished)
        if (contrast(color, ground) >= least_text_contrast) return color;
    return last;
}

/// A desktop of one ground and one ink; `pale` is for what can't be used now.
QPalette two_colors(const QColor& ground, const QColor& ink, const QColor& live, const QColor& pale) {
    QPalette palette;
    for (const auto role : {QPalette::Window, QPalette::Base, QPalette::Button})
        palette.setColor(role, ground);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(role, ink);
    palette.setColor(QPalette::Highlight, live);
    palette.setColor(QPalette::Disabled, QPalette::Text, pale);
    return palette;
}

} // namespace

bool is_high_contrast(const QPalette& desktop) {
    const QColor ground = desktop.color(QPalette::Window);
    const QColor field = desktop.color(QPalette::Base);
    constexpr double extreme = 18.5; // black or white to within a shade; Qt's own gray and black has 18.3
    return contrast(desktop.color(QPalette::WindowText), ground) >= extreme &&
           contrast(desktop.color(QPalette::Text), field) >= extreme && contrast(ground, field) < 1.1;
}

Theme high_contrast_theme(const QPalette& desktop) {
    const QColor ground = desktop.color(QPalette::Base);
    const QColor ink = desktop.color(QPalette::Text);
    Theme theme = luminance(ground) < luminance(ink) ? dark_theme() : light_theme();
    theme.high_contrast = true;
    theme.paper = theme.pane = theme.bench = theme.base = theme.alt = theme.hover = ground;
    theme.blue_soft = theme.red_soft = theme.ochre_soft = ground; // what is chosen shows by bars and frames
    theme.wall = theme.wood = theme.face = ground;
    theme.depth.assign(theme.depth.size(), ground); // depths are told by their figures
    theme.magnitude.assign(theme.magnitude.size(), ground);
    theme.ink = theme.ink2 = theme.ink3 = theme.edge = theme.rule = theme.wood_line = ink;
    const auto between = [&](double share) { // decor: seen, but never read as a line of the drawing
        const auto mixed = [&](double from, double to) { return float(from + share * (to - from)); };
        return QColor::fromRgbF(mixed(ground.redF(), ink.redF()), mixed(ground.greenF(), ink.greenF()),
                                mixed(ground.blueF(), ink.blueF()));
    };
    theme.grid = between(0.15);
    theme.grid_wide = between(0.3);
    theme.blue = readable({desktop.color(QPalette::Highlight), desktop.color(QPalette::Link), theme.blue},
                          ground, ink);
    theme.red = readable({theme.red}, ground, ink);
    theme.ochre = readable({theme.ochre}, ground, ink);
    theme.casing = 1;
    const QColor pale = desktop.color(QPalette::Disabled, QPalette::Text);
    if (pale != ink && contrast(pale, ground) >= least_line_contrast) theme.disabled = pale;
    return theme;
}

Theme theme_for(ThemeChoice choice, const QPalette& desktop) {
    switch (choice) {
    case ThemeChoice::light:
        return light_theme();
    case ThemeChoice::dark:
        return dark_theme();
    case ThemeChoice::contrast_light:
        return high_contrast_theme(
            two_colors(Qt::white, Qt::black, light_theme().blue, QColor::fromRgb(0x595959)));
    case ThemeChoice::contrast_dark:
        return high_contrast_theme(
            two_colors(Qt::black, Qt::white, dark_theme().blue, QColor::fromRgb(0xA6A6A6)));
    case ThemeChoice::system:
        break;
    }
    if (is_high_contrast(desktop)) return high_contrast_theme(desktop);
    const bool dark =
        luminance(desktop.color(QPalette::Window)) < luminance(desktop.color(QPalette::WindowText));
    return dark ? dark_theme() : light_theme();
}

QPalette widget_palette(const Theme& theme) {
    QPalette palette;
    const auto set = [&](QPalette::ColorRole role, const QColor& color) { palette.setColor(role, color); };
    set(QPalette::Window, theme.pane);
    set(QPalette::Button, theme.pane);
    set(QPalette::Base, theme.base);
    set(QPalette::AlternateBase, theme.alt);
    set(QPalette::ToolTipBase, theme.base);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::BrightText,
                            QPalette::ToolTipText, QPalette::HighlightedText})
        set(role, theme.ink);
    set(QPalette::PlaceholderText, theme.ink3);
    set(QPalette::Highlight, theme.blue_soft);
    set(QPalette::Link, theme.blue);
    set(QPalette::LinkVisited, theme.blue);
    set(QPalette::Light, theme.base);
    set(QPalette::Midlight, theme.alt);
    set(QPalette::Mid, theme.rule);
    set(QPalette::Dark, theme.edge);
    set(QPalette::Shadow, theme.ink);
    for (const auto role :
         {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::HighlightedText})
        palette.setColor(QPalette::Disabled, role, theme.disabled);
    return palette;
}

} // namespace drawercast::theme
