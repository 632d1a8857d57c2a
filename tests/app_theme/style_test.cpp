// SPDX-License-Identifier: GPL-3.0-or-later
#include "application.h"
#include "theme/contrast.h"
#include "theme/style.h"
#include "theme/widget_palette.h"

#include <QCheckBox>
#include <QComboBox>
#include <QImage>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollBar>
#include <QSlider>
#include <QSpinBox>
#include <QStyleOption>
#include <QTabBar>
#include <QTableWidget>
#include <QToolButton>
#include <gtest/gtest.h>

#include <functional>
#include <memory>
#include <string>

namespace drawercast::theme {
namespace {

/// A strip of the theme's pane with one thing painted over all of it.
QImage painted(const Theme& theme, QSize size, const std::function<void(QPainter&)>& paint) {
    QImage image(size, QImage::Format_RGB32);
    image.fill(theme.pane);
    QPainter painter(&image);
    paint(painter);
    return image;
}

QImage painted(const Style& style, QStyle::PrimitiveElement element, QStyleOption& option) {
    option.rect = QRect(0, 0, 80, 26);
    return painted(style.theme(), option.rect.size(),
                   [&](QPainter& painter) { style.drawPrimitive(element, &option, &painter, nullptr); });
}

class StyleIn : public testing::TestWithParam<const char*> {
  protected:
    void SetUp() override {
        test::application();
        style = std::make_unique<Style>(theme());
    }

    Theme theme() const { return GetParam() == std::string("dark") ? dark_theme() : light_theme(); }

    /// A widget in this style and palette, laid out and painted without a window.
    QImage shot(QWidget& widget) {
        widget.setStyle(style.get());
        widget.setPalette(widget_palette(theme()));
        widget.resize(widget.sizeHint().expandedTo(QSize(120, 26)));
        QImage image(widget.size(), QImage::Format_RGB32);
        image.fill(theme().pane);
        QPainter painter(&image);
        widget.render(&painter, {}, {}, QWidget::DrawChildren);
        return image;
    }

    std::unique_ptr<Style> style;
};

INSTANTIATE_TEST_SUITE_P(Themes, StyleIn, testing::Values("light", "dark"),
                         [](const auto& theme) { return std::string(theme.param); });

TEST_P(StyleIn, borders_of_fields_and_buttons_can_be_seen) {
    QLineEdit line;
    QComboBox combo;
    QSpinBox spin;
    QPushButton button("Place");
    for (QWidget* widget : {static_cast<QWidget*>(&line), static_cast<QWidget*>(&combo),
                            static_cast<QWidget*>(&spin), static_cast<QWidget*>(&button)}) {
        const QImage image = shot(*widget);
        const QRgb border = theme().edge.rgb();
        const std::string name = widget->metaObject()->className();
        for (const QPoint corner : {QPoint(0, 0), QPoint(image.width() - 1, 0), QPoint(0, image.height() - 1),
                                    QPoint(image.width() - 1, image.height() - 1)})
            EXPECT_EQ(image.pixel(corner), border) << name << ": square corners";
        EXPECT_EQ(image.pixel(0, image.height() / 2), border) << name;
        EXPECT_EQ(image.pixelColor(2, 3), theme().base) << name;
    }
}

TEST_P(StyleIn, focus_is_a_blue_frame_of_two_pixels_inside_the_control) {
    QStyleOptionFrame field;
    field.lineWidth = 1;
    field.state = QStyle::State_Enabled | QStyle::State_HasFocus;
    QStyleOptionButton button;
    button.state = QStyle::State_Enabled | QStyle::State_HasFocus;
    for (const QImage& image : {painted(*style, QStyle::PE_PanelLineEdit, field),
                                painted(*style, QStyle::PE_PanelButtonCommand, button)}) {
        EXPECT_EQ(image.pixelColor(0, 13), theme().blue);
        EXPECT_EQ(image.pixelColor(1, 13), theme().blue);
        EXPECT_EQ(image.pixelColor(2, 13), theme().base);
        EXPECT_EQ(image.pixelColor(79, 25), theme().blue);
    }
}

TEST_P(StyleIn, default_button_has_an_ink_frame_and_a_disabled_one_a_pale_one) {
    QStyleOptionButton button;
    button.state = QStyle::State_Enabled;
    button.features = QStyleOptionButton::DefaultButton;
    EXPECT_EQ(painted(*style, QStyle::PE_PanelButtonCommand, button).pixelColor(1, 13), theme().ink);
    button.state = QStyle::State_None;
    EXPECT_EQ(painted(*style, QStyle::PE_PanelButtonCommand, button).pixelColor(0, 13), theme().rule);
    EXPECT_EQ(painted(*style, QStyle::PE_PanelButtonCommand, button).pixelColor(4, 13), theme().pane);
}

TEST_P(StyleIn, tool_buttons_are_flat_until_on) {
    QStyleOption option;
    option.state = QStyle::State_Enabled | QStyle::State_AutoRaise;
    EXPECT_EQ(painted(*style, QStyle::PE_PanelButtonTool, option).pixelColor(0, 0), theme().pane);
    option.state |= QStyle::State_On;
    EXPECT_EQ(painted(*style, QStyle::PE_PanelButtonTool, option).pixelColor(0, 0), theme().blue);
    EXPECT_EQ(painted(*style, QStyle::PE_PanelButtonTool, option).pixelColor(5, 5), theme().blue_soft);
}

TEST_P(StyleIn, chosen_and_not_chosen_boxes_differ_by_more_than_color) {
    for (const auto element : {QStyle::PE_IndicatorCheckBox, QStyle::PE_IndicatorRadioButton}) {
        QStyleOptionButton option;
        option.state = QStyle::State_Enabled | QStyle::State_Off;
        const QImage off = painted(*style, element, option);
        option.state = QStyle::State_Enabled | QStyle::State_On;
        const QImage on = painted(*style, element, option);
        int ink = 0;
        for (int y = 0; y < on.height(); ++y)
            for (int x = 0; x < on.width(); ++x) {
                ink += on.pixelColor(x, y) == theme().ink;
                EXPECT_NE(off.pixelColor(x, y), theme().ink);
            }
        EXPECT_GT(ink, 20);
    }
}

TEST_P(StyleIn, scroll_bar_is_ten_wide_without_arrows_and_its_handle_can_be_seen) {
    QScrollBar bar(Qt::Vertical);
    bar.setRange(0, 100);
    bar.setPageStep(50);
    bar.setStyle(style.get());
    EXPECT_EQ(bar.sizeHint().width(), 10);
    bar.resize(10, 300);
    QStyleOptionSlider option;
    option.initFrom(&bar);
    option.orientation = Qt::Vertical;
    option.minimum = 0;
    option.maximum = 100;
    option.pageStep = 50;
    option.sliderPosition = 100;
    EXPECT_EQ(style->subControlRect(QStyle::CC_ScrollBar, &option, QStyle::SC_ScrollBarSlider, &bar),
              QRect(0, 200, 10, 100));
    EXPECT_EQ(style->subControlRect(QStyle::CC_ScrollBar, &option, QStyle::SC_ScrollBarSubPage, &bar),
              QRect(0, 0, 10, 200));
    EXPECT_TRUE(
        style->subControlRect(QStyle::CC_ScrollBar, &option, QStyle::SC_ScrollBarAddLine, &bar).isEmpty());
    EXPECT_GE(contrast(theme().edge, theme().pane), least_line_contrast);
    option.maximum = 1'000'000;
    EXPECT_EQ(style->subControlRect(QStyle::CC_ScrollBar, &option, QStyle::SC_ScrollBarSlider, &bar).height(),
              24);
}

TEST_P(StyleIn, only_the_list_with_the_focus_has_a_wash) {
    QTableWidget table(1, 2);
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    QStyleOptionViewItem item;
    item.state = QStyle::State_Enabled | QStyle::State_Selected;
    item.rect = QRect(0, 0, 80, 26);
    const auto row = [&](int column) {
        item.index = table.model()->index(0, column);
        return painted(theme(), {80, 26}, [&](QPainter& painter) {
            style->drawPrimitive(QStyle::PE_PanelItemViewItem, &item, &painter, &table);
        });
    };
    EXPECT_EQ(row(0).pixelColor(1, 13), theme().ink) << "the list without the focus keeps its bar";
    EXPECT_EQ(row(0).pixelColor(40, 13), theme().pane);
    EXPECT_EQ(row(1).pixelColor(1, 13), theme().pane) << "one bar to a row";
    table.show();
    QApplication::setActiveWindow(&table);
    table.setFocus();
    ASSERT_TRUE(table.hasFocus());
    EXPECT_EQ(row(0).pixelColor(1, 13), theme().blue);
    EXPECT_EQ(row(0).pixelColor(40, 13), theme().blue_soft);
    EXPECT_EQ(row(1).pixelColor(1, 13), theme().blue_soft);
}

TEST_P(StyleIn, shown_tab_has_the_papers_color_and_an_ink_lid) {
    QTabBar bar;
    bar.addTab("Drawer plan");
    bar.addTab("Pattern board");
    bar.setExpanding(false);
    const QImage image = shot(bar);
    bar.resize(bar.sizeHint());
    const QPoint lid = bar.tabRect(0).topLeft() + QPoint(20, 1);
    EXPECT_EQ(image.pixelColor(lid), theme().ink);
    EXPECT_EQ(image.pixelColor(lid + QPoint(-15, 8)), theme().paper);
    EXPECT_EQ(image.pixelColor(bar.tabRect(1).topLeft() + QPoint(4, 12)), theme().pane);
}

TEST_P(StyleIn, showing_a_tab_moves_none) {
    QTabBar bar;
    bar.setStyle(style.get());
    bar.setExpanding(false);
    for (const char* name : {"Drawer plan", "Pattern board", "Box and cuts"}) bar.addTab(name);
    const QRect before = bar.tabRect(2);
    bar.setCurrentIndex(1);
    EXPECT_EQ(bar.tabRect(2), before);
    const int plain = bar.tabRect(0).width();
    bar.setProperty("numbered", true);
    bar.setTabText(0, "Drawer plan");
    bar.setIconSize(bar.iconSize() + QSize(1, 1)); // lays the tabs out again
    EXPECT_GT(bar.tabRect(0).width(), plain) << "room for the number";
}

TEST_P(StyleIn, every_control_is_painted_in_every_state) {
    QCheckBox check("Snap");
    QRadioButton radio("inch");
    QSlider slider(Qt::Horizontal);
    QToolButton tool;
    tool.setText("Notch");
    QDoubleSpinBox spin;
    QComboBox combo;
    combo.addItem("particleboard");
    for (QWidget* widget :
         {static_cast<QWidget*>(&check), static_cast<QWidget*>(&radio), static_cast<QWidget*>(&slider),
          static_cast<QWidget*>(&tool), static_cast<QWidget*>(&spin), static_cast<QWidget*>(&combo)}) {
        widget->setEnabled(true);
        const QImage on = shot(*widget);
        widget->setEnabled(false);
        const QImage off = shot(*widget);
        QImage blank(on.size(), QImage::Format_RGB32);
        blank.fill(theme().pane);
        EXPECT_NE(on, blank) << widget->metaObject()->className();
        EXPECT_NE(off, blank) << widget->metaObject()->className();
        EXPECT_NE(on, off) << widget->metaObject()->className() << ": disabled must look it";
    }
}

TEST_P(StyleIn, grows_with_the_text_but_keeps_its_lines) {
    const Style large(theme(), 2.0);
    EXPECT_EQ(large.pixelMetric(QStyle::PM_ToolBarIconSize, nullptr, nullptr), 40);
    EXPECT_EQ(large.pixelMetric(QStyle::PM_IndicatorWidth, nullptr, nullptr), 28);
    EXPECT_EQ(large.pixelMetric(QStyle::PM_SplitterWidth, nullptr, nullptr), 1);
    QPushButton button("Place");
    button.setStyle(style.get());
    EXPECT_GE(button.sizeHint().height(), 26);
    EXPECT_LE(style->sizeFromContents(QStyle::CT_LineEdit, nullptr, QSize(80, 10), nullptr).height(), 26);
    EXPECT_GE(large.sizeFromContents(QStyle::CT_LineEdit, nullptr, QSize(80, 10), nullptr).height(), 52);
}

TEST_P(StyleIn, nothing_moves_by_itself_and_a_wheel_changes_no_choice) {
    EXPECT_EQ(style->styleHint(QStyle::SH_Widget_Animation_Duration, nullptr, nullptr, nullptr), 0);
    EXPECT_EQ(style->styleHint(QStyle::SH_ComboBox_AllowWheelScrolling, nullptr, nullptr, nullptr), 0);
}

TEST(Style, a_shown_window_follows_a_change_of_theme_and_text_size) {
    QApplication& application = test::application();
    const auto wear = [&](const Theme& theme, double text_scale) {
        application.setStyle(new Style(theme, text_scale));
        application.setPalette(widget_palette(theme));
        QApplication::processEvents(); // the change reaches widgets by events
    };
    wear(light_theme(), 1.0);
    QPushButton button("Place");
    button.setFocusPolicy(Qt::NoFocus); // its border is looked at: neither focus nor pointer may be on it
    button.move(300, 300);
    button.show();
    EXPECT_EQ(button.palette().color(QPalette::Window), light_theme().pane);
    EXPECT_EQ(button.grab().toImage().pixelColor(0, 0), light_theme().edge);
    const int height = button.sizeHint().height();
    wear(dark_theme(), 1.5);
    EXPECT_EQ(button.palette().color(QPalette::Window), dark_theme().pane);
    EXPECT_EQ(button.grab().toImage().pixelColor(0, 0), dark_theme().edge);
    EXPECT_GT(button.sizeHint().height(), height);
    EXPECT_TRUE(application.styleSheet().isEmpty());
}

} // namespace
} // namespace drawercast::theme
