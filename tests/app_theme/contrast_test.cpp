// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/contrast.h"
#include "theme/widget_palette.h"

#include <gtest/gtest.h>

#include <string>
#include <tuple>
#include <vector>

namespace drawercast::theme {
namespace {

QPalette desktop_of(const QColor& ground, const QColor& ink, const QColor& highlight) {
    QPalette palette;
    for (const auto role : {QPalette::Window, QPalette::Base, QPalette::Button})
        palette.setColor(role, ground);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(role, ink);
    palette.setColor(QPalette::Highlight, highlight);
    return palette;
}

struct NamedTheme {
    std::string name;
    Theme theme;
};

std::vector<NamedTheme> all_themes() {
    return {
        {"light", light_theme()},
        {"dark", dark_theme()},
        {"high contrast, dark", high_contrast_theme(desktop_of(Qt::black, Qt::white, QColor("#1aebff")))},
        {"high contrast, light", high_contrast_theme(desktop_of(Qt::white, Qt::black, QColor("#1aebff")))}};
}

struct NamedColor {
    const char* name;
    QColor Theme::*color;
};

// WCAG 2.1 defines both ends; 4.48 for #777777 on white is the value the WebAIM contrast checker states.
TEST(Contrast, has_the_published_values) {
    EXPECT_DOUBLE_EQ(contrast(Qt::black, Qt::white), 21.0);
    EXPECT_DOUBLE_EQ(contrast(Qt::white, Qt::black), 21.0);
    EXPECT_DOUBLE_EQ(contrast(Qt::red, Qt::red), 1.0);
    EXPECT_NEAR(contrast(QColor("#777777"), Qt::white), 4.48, 0.005);
    EXPECT_NEAR(luminance(QColor("#ff0000")), 0.2126, 1e-12);
}

TEST(Contrast, words_can_be_read_on_every_ground_they_stand_on) {
    const NamedColor inks[] = {{"ink", &Theme::ink},   {"ink2", &Theme::ink2}, {"ink3", &Theme::ink3},
                               {"blue", &Theme::blue}, {"red", &Theme::red},   {"ochre", &Theme::ochre}};
    const NamedColor grounds[] = {
        {"paper", &Theme::paper},        {"pane", &Theme::pane}, {"bench", &Theme::bench},
        {"base", &Theme::base},          {"alt", &Theme::alt},   {"hover", &Theme::hover},
        {"blue soft", &Theme::blue_soft}};
    for (const auto& [theme_name, theme] : all_themes())
        for (const auto& ink : inks)
            for (const auto& ground : grounds)
                EXPECT_GE(contrast(theme.*ink.color, theme.*ground.color), least_text_contrast)
                    << theme_name << ": " << ink.name << " on " << ground.name;
}

TEST(Contrast, checks_words_can_be_read_on_their_plates_and_badges) {
    for (const auto& [name, theme] : all_themes()) {
        EXPECT_GE(contrast(theme.red, theme.red_soft), least_text_contrast) << name;
        EXPECT_GE(contrast(theme.ochre, theme.ochre_soft), least_text_contrast) << name;
        EXPECT_GE(contrast(theme.mend_figure, theme.mend_fill), least_text_contrast) << name;
    }
}

TEST(Contrast, borders_can_be_seen_on_every_ground_they_bound) {
    const NamedColor lines[] = {{"edge", &Theme::edge}, {"blue", &Theme::blue}, {"ink", &Theme::ink}};
    const NamedColor grounds[] = {{"paper", &Theme::paper}, {"pane", &Theme::pane},
                                  {"bench", &Theme::bench}, {"base", &Theme::base},
                                  {"alt", &Theme::alt},     {"blue soft", &Theme::blue_soft}};
    for (const auto& [theme_name, theme] : all_themes())
        for (const auto& line : lines)
            for (const auto& ground : grounds)
                EXPECT_GE(contrast(theme.*line.color, theme.*ground.color), least_line_contrast)
                    << theme_name << ": " << line.name << " on " << ground.name;
}

TEST(Contrast, sheets_are_read_on_their_washes) {
    auto themes = all_themes();
    themes.push_back({"printed", printed_theme()});
    const NamedColor grounds[] = {
        {"paper", &Theme::paper}, {"face", &Theme::face}, {"wall", &Theme::wall}, {"wood", &Theme::wood}};
    for (const auto& [name, theme] : themes) {
        for (const auto& ground : grounds)
            EXPECT_GE(contrast(theme.ink, theme.*ground.color), least_text_contrast)
                << name << ": " << ground.name;
        for (const QColor& step : theme.depth)
            EXPECT_GE(contrast(theme.ink, step), least_text_contrast) << name;
        for (const QColor& step : theme.magnitude)
            EXPECT_GE(contrast(theme.ink, step), least_text_contrast) << name;
        for (const auto ink : {&Theme::ink2, &Theme::ink3, &Theme::red, &Theme::ochre})
            EXPECT_GE(contrast(theme.*ink, theme.paper), least_text_contrast) << name;
        EXPECT_GE(contrast(theme.look_figure, theme.look_fill), least_text_contrast) << name;
        EXPECT_GE(contrast(theme.wood_line, theme.wood), least_line_contrast) << name;
        EXPECT_GE(contrast(theme.wood_line, theme.paper), least_line_contrast) << name << ": clay line";
        EXPECT_GE(contrast(theme.edge, theme.paper), least_line_contrast) << name << ": gauge";
    }
}

TEST(Contrast, disabled_words_are_of_another_ink_than_the_rest) {
    for (const auto& [name, theme] : all_themes()) {
        EXPECT_NE(theme.disabled, theme.ink) << name;
        EXPECT_LT(contrast(theme.disabled, theme.pane), contrast(theme.ink3, theme.pane)) << name;
    }
}

TEST(ThemeChoice, follows_the_desktop_by_its_lightness) {
    const QPalette light = desktop_of(QColor("#efefef"), Qt::black, Qt::blue);
    const QPalette dark = desktop_of(QColor("#303030"), QColor("#eeeeee"), Qt::blue);
    EXPECT_EQ(theme_for(ThemeChoice::system, light).paper, light_theme().paper);
    EXPECT_EQ(theme_for(ThemeChoice::system, dark).paper, dark_theme().paper);
    EXPECT_EQ(theme_for(ThemeChoice::light, dark).paper, light_theme().paper);
    EXPECT_EQ(theme_for(ThemeChoice::dark, light).paper, dark_theme().paper);
}

TEST(ThemeChoice, takes_over_a_high_contrast_desktop) {
    const QColor bright("#1aebff");
    const QPalette desktop = desktop_of(Qt::black, Qt::white, bright);
    ASSERT_TRUE(is_high_contrast(desktop));
    const Theme theme = theme_for(ThemeChoice::system, desktop);
    EXPECT_TRUE(theme.high_contrast);
    EXPECT_LT(contrast(theme.grid, theme.face), contrast(theme.grid_wide, theme.face)) << "of its own ground";
    EXPECT_LT(contrast(theme.grid_wide, theme.face), least_line_contrast) << "decor only";
    EXPECT_EQ(theme.paper, QColor(Qt::black));
    EXPECT_EQ(theme.ink, QColor(Qt::white));
    EXPECT_EQ(theme.blue, bright);
    EXPECT_EQ(theme.blue_soft, theme.base) << "no washes";
    EXPECT_DOUBLE_EQ(theme.line(2), 3.0);
    EXPECT_FALSE(theme_for(ThemeChoice::dark, desktop).high_contrast) << "a choice is a choice";
}

TEST(ThemeChoice, high_contrast_can_be_chosen_on_any_desktop) {
    const QPalette plain = desktop_of(QColor("#efefef"), Qt::black, Qt::blue);
    for (const auto& [choice, ground, ink] : {std::tuple(ThemeChoice::contrast_light, Qt::white, Qt::black),
                                              std::tuple(ThemeChoice::contrast_dark, Qt::black, Qt::white)}) {
        const Theme theme = theme_for(choice, plain);
        EXPECT_TRUE(theme.high_contrast);
        EXPECT_EQ(theme.paper, QColor(ground));
        EXPECT_EQ(theme.ink, QColor(ink));
        for (const QColor& live : {theme.blue, theme.red, theme.ochre, theme.disabled})
            EXPECT_GE(contrast(live, theme.paper), least_text_contrast);
        EXPECT_NE(theme.disabled, theme.ink) << "what can't be used now looks so";
    }
}

TEST(ThemeChoice, plain_desktops_are_not_taken_for_high_contrast) {
    EXPECT_FALSE(is_high_contrast(widget_palette(light_theme())));
    EXPECT_FALSE(is_high_contrast(widget_palette(dark_theme())));
    QPalette plain =
        desktop_of(QColor("#efefef"), Qt::black, Qt::blue); // Qt's own: gray window, white fields
    plain.setColor(QPalette::Base, Qt::white);
    EXPECT_FALSE(is_high_contrast(plain));
}

TEST(WidgetPalette, is_the_themes_in_all_groups) {
    for (const auto& [name, theme] : all_themes()) {
        const QPalette palette = widget_palette(theme);
        for (const auto group : {QPalette::Active, QPalette::Inactive, QPalette::Disabled}) {
            EXPECT_EQ(palette.color(group, QPalette::Window), theme.pane) << name;
            EXPECT_EQ(palette.color(group, QPalette::Base), theme.base) << name;
            EXPECT_EQ(palette.color(group, QPalette::AlternateBase), theme.alt) << name;
            EXPECT_EQ(palette.color(group, QPalette::Highlight), theme.blue_soft) << name;
        }
        EXPECT_EQ(palette.color(QPalette::Active, QPalette::HighlightedText), theme.ink) << name;
        EXPECT_EQ(palette.color(QPalette::Inactive, QPalette::WindowText), theme.ink) << name;
        EXPECT_EQ(palette.color(QPalette::Disabled, QPalette::WindowText), theme.disabled) << name;
        EXPECT_EQ(palette.color(QPalette::Active, QPalette::Link), theme.blue) << name;
    }
}

} // namespace
} // namespace drawercast::theme
