// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/bar_paint.h"
#include "theme/complex_paint.h"
#include "theme/style.h"

#include <QStyleOption>

#include <cmath>

namespace drawercast::theme {

namespace {

/// Measures that only depend on the text size, at scale 1 (unit 4; pane margin 12, icon to words 8).
int plain_metric(QStyle::PixelMetric metric) {
    switch (metric) {
    case QStyle::PM_IndicatorWidth:
    case QStyle::PM_IndicatorHeight:
    case QStyle::PM_ExclusiveIndicatorWidth:
    case QStyle::PM_ExclusiveIndicatorHeight:
        return 14;
    case QStyle::PM_CheckBoxLabelSpacing:
    case QStyle::PM_RadioButtonLabelSpacing:
        return 8;
    case QStyle::PM_ToolBarIconSize:
    case QStyle::PM_SmallIconSize:
    case QStyle::PM_ButtonIconSize:
    case QStyle::PM_ListViewIconSize:
    case QStyle::PM_TabBarIconSize:
        return 20;
    case QStyle::PM_MessageBoxIconSize:
        return 40;
    case QStyle::PM_LayoutLeftMargin:
    case QStyle::PM_LayoutRightMargin:
    case QStyle::PM_LayoutTopMargin:
    case QStyle::PM_LayoutBottomMargin:
        return 12;
    case QStyle::PM_LayoutHorizontalSpacing:
    case QStyle::PM_LayoutVerticalSpacing:
        return 8;
    case QStyle::PM_TabBarTabHSpace:
        return 20;
    case QStyle::PM_TabBarTabVSpace:
        return 12;
    case QStyle::PM_HeaderMargin:
        return 4;
    case QStyle::PM_FocusFrameHMargin:
        return 5; // clear of the bar of a chosen row
    case QStyle::PM_SliderThickness:
    case QStyle::PM_SliderControlThickness:
        return 20;
    case QStyle::PM_SliderLength:
        return 10;
    case QStyle::PM_ScrollBarSliderMin:
        return 24;
    case QStyle::PM_ToolBarSeparatorExtent:
        return 12;
    case QStyle::PM_ToolBarItemMargin:
        return 5;
    default:
        return -1;
    }
}

/// Line widths and the like, the same at any text size.
int fixed_metric(QStyle::PixelMetric metric) {
    switch (metric) {
    case QStyle::PM_ScrollBarExtent:
        return 10;
    case QStyle::PM_SplitterWidth:
        return 1;
    case QStyle::PM_ToolBarItemSpacing:
        return 2;
    case QStyle::PM_DefaultFrameWidth:
        return 2; // room for the focus frame
    case QStyle::PM_ToolBarFrameWidth:
    case QStyle::PM_MenuBarPanelWidth:
    case QStyle::PM_MenuBarVMargin:
    case QStyle::PM_ButtonDefaultIndicator:
    case QStyle::PM_ButtonShiftHorizontal:
    case QStyle::PM_ButtonShiftVertical:
    case QStyle::PM_TabBarTabShiftVertical:
    case QStyle::PM_TabBarTabShiftHorizontal:
    case QStyle::PM_ScrollView_ScrollBarOverlap:
    case QStyle::PM_ScrollView_ScrollBarSpacing:
        return 0;
    case QStyle::PM_TabBarBaseOverlap:
    case QStyle::PM_TabBarTabOverlap:
    case QStyle::PM_MenuPanelWidth:
        return 1;
    default:
        return -1;
    }
}

/// Least height of a control that holds a line of words; 0: as Fusion has it.
int least_height(QStyle::ContentsType type) {
    switch (type) {
    case QStyle::CT_PushButton:
    case QStyle::CT_LineEdit:
    case QStyle::CT_ComboBox:
    case QStyle::CT_SpinBox:
        return 26;
    case QStyle::CT_CheckBox:
    case QStyle::CT_RadioButton:
    case QStyle::CT_ItemViewItem:
    case QStyle::CT_MenuItem:
        return 24; // the least a pointer should have to hit
    case QStyle::CT_HeaderSection:
    case QStyle::CT_MenuBarItem:
        return 22;
    case QStyle::CT_ToolButton:
        return 32;
    case QStyle::CT_TabBarTab:
        return 34;
    default:
        return 0;
    }
}

/// How much wider `words` are in bold.
int bold_extra(const QString& words, QFont font) {
    const auto width = [&] { return QFontMetrics(font).size(Qt::TextShowMnemonic, words).width(); };
    const int plain = width();
    font.setBold(true);
    return qMax(0, width() - plain);
}

} // namespace

int Style::scaled(int pixels) const { return int(std::lround(pixels * text_scale_)); }

int Style::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
    if (const int fixed = fixed_metric(metric); fixed >= 0) return fixed;
    if (const int plain = plain_metric(metric); plain >= 0) return scaled(plain);
    return QProxyStyle::pixelMetric(metric, option, widget);
}

QSize Style::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                              const QWidget* widget) const {
    QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
    const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
    if (type == CT_MenuItem && item && item->menuItemType == QStyleOptionMenuItem::Separator)
        return {size.width(), 9};
    if (type == CT_MenuItem) size.rwidth() += scaled(8); // our icon column is wider than Fusion's
    if (type == CT_TabBarTab && option) {
        const auto* tab = qstyleoption_cast<const QStyleOptionTab*>(option);
        if (tab && widget) { // room for the shown tab's bold words, so that showing one moves none
            size.rwidth() += bold_extra(tab->text, widget->font());
            if (!tab->icon.isNull()) size.rwidth() += scaled(8); // between words and icon
            if (widget->property("numbered").toBool())
                size.rwidth() += tab_number_width(tab->fontMetrics.height());
        }
    }
    const int least = scaled(least_height(type));
    if (type == CT_ToolButton) {
        const auto* button = qstyleoption_cast<const QStyleOptionToolButton*>(option);
        const bool menu = button && button->features.testFlag(QStyleOptionToolButton::HasMenu) &&
                          !button->features.testFlag(QStyleOptionToolButton::MenuButtonPopup);
        size.setWidth(qMax(size.width(), least) + (menu ? scaled(menu_arrow_room) : 0));
    }
    if (type == CT_MenuBarItem) size.rwidth() += scaled(4);
    size.setHeight(qMax(size.height(), least));
    return size;
}

QRect Style::subElementRect(SubElement element, const QStyleOption* option, const QWidget* widget) const {
    switch (element) {
    case SE_PushButtonFocusRect:
    case SE_CheckBoxFocusRect:
    case SE_RadioButtonFocusRect:
    case SE_ComboBoxFocusRect:
    case SE_SliderFocusRect:
        return option->rect;
    default:
        return QProxyStyle::subElementRect(element, option, widget);
    }
}

QRect Style::subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                            const QWidget* widget) const {
    if (control == CC_ScrollBar) {
        if (const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option))
            return scroll_bar_part(*bar, part, pixelMetric(PM_ScrollBarSliderMin, option, widget));
    }
    const QRect rect = QProxyStyle::subControlRect(control, option, part, widget);
    if (control == CC_Slider && part == SC_SliderHandle)
        return rect & option->rect;                           // Fusion's stands out by a pixel
    if (control == CC_GroupBox && part == SC_GroupBoxLabel) { // our titles are bold
        const auto* box = qstyleoption_cast<const QStyleOptionGroupBox*>(option);
        if (box && widget) return rect.adjusted(0, 0, bold_extra(box->text, widget->font()), 0);
    }
    return rect;
}

int Style::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                     QStyleHintReturn* result) const {
    switch (hint) {
    case SH_EtchDisabledText:
    case SH_DitherDisabledText:
    case SH_Widget_Animation_Duration: // nothing moves by itself
    case SH_DialogButtonBox_ButtonsHaveIcons:
    case SH_ComboBox_Popup:
    case SH_ComboBox_AllowWheelScrolling:
        return 0; // a wheel meant for the pane must not change a value
    case SH_ItemView_ShowDecorationSelected:
        return 1;
    case SH_Table_GridLineColor:
        return int(theme_.rule.rgb());
    default:
        return QProxyStyle::styleHint(hint, option, widget, result);
    }
}

} // namespace drawercast::theme
