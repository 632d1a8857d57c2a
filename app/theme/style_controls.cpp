// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/bar_paint.h"
#include "theme/complex_paint.h"
#include "theme/control_paint.h"
#include "theme/frame_paint.h"
#include "theme/menu_paint.h"
#include "theme/style.h"

#include <QPainter>
#include <QStyleOption>
#include <QTabBar>

namespace drawercast::theme {

namespace {

bool is_numbered(const QWidget* widget) { return widget && widget->property("numbered").toBool(); }

/// Tabs along the top are ours; along the other sides they are as Fusion draws them.
bool is_at_top(const QStyleOptionTab& tab) {
    return tab.shape == QTabBar::RoundedNorth || tab.shape == QTabBar::TriangularNorth;
}

/// A tool button that does nothing but open its menu.
bool opens_at_once(const QStyleOptionToolButton& button) {
    return button.features.testFlag(QStyleOptionToolButton::HasMenu) &&
           !button.features.testFlag(QStyleOptionToolButton::MenuButtonPopup);
}

} // namespace

void Style::draw_menu_button(const QStyleOptionToolButton& button, QPainter& painter,
                             const QWidget* widget) const {
    const bool reversed = button.direction == Qt::RightToLeft;
    const int room = scaled(menu_arrow_room);
    paint_tool_button(painter, button, theme_);
    QStyleOptionToolButton label(button);
    label.rect = visualRect(button.direction, button.rect, button.rect.adjusted(0, 0, -room, 0));
    QProxyStyle::drawControl(CE_ToolButtonLabel, &label, &painter, widget);
    QRect end = button.rect;
    end.setWidth(room);
    if (!reversed) end.moveRight(button.rect.right() - 2);
    draw_arrow(painter, end, Pointing::down, scaled(7),
               button.state.testFlag(State_Enabled) ? theme_.ink2 : theme_.disabled);
}

bool Style::paint_control(ControlElement element, const QStyleOption& option, QPainter& painter,
                          const QWidget* widget) const {
    switch (element) {
    case CE_TabBarTabShape:
        if (const auto* tab = qstyleoption_cast<const QStyleOptionTab*>(&option); tab && is_at_top(*tab)) {
            paint_tab(painter, *tab, theme_, is_numbered(widget));
            return true;
        }
        return false;
    case CE_TabBarTabLabel:
        if (const auto* tab = qstyleoption_cast<const QStyleOptionTab*>(&option); tab && is_at_top(*tab)) {
            paint_tab_label(painter, *tab, theme_, is_numbered(widget));
            return true;
        }
        return false;
    case CE_HeaderSection:
        if (const auto* head = qstyleoption_cast<const QStyleOptionHeader*>(&option))
            paint_head_section(painter, *head, theme_);
        return true;
    case CE_HeaderEmptyArea: {
        QStyleOptionHeader head;
        head.rect = option.rect;
        head.orientation = option.state.testFlag(State_Horizontal) ? Qt::Horizontal : Qt::Vertical;
        paint_head_section(painter, head, theme_);
        return true;
    }
    case CE_MenuItem:
        if (const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(&option))
            paint_menu_item(painter, *item, pixelMetric(PM_SmallIconSize, &option, widget), theme_);
        return true;
    case CE_MenuBarItem:
        if (const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(&option))
            paint_menu_title(painter, *item, theme_);
        return true;
    case CE_MenuEmptyArea:
        painter.fillRect(option.rect, theme_.pane);
        return true;
    case CE_MenuBarEmptyArea:
        paint_bench(painter, option.rect, theme_);
        return true;
    case CE_ToolBar:
        if (const auto* bar = qstyleoption_cast<const QStyleOptionToolBar*>(&option))
            paint_tool_row(painter, *bar, theme_);
        return true;
    case CE_Splitter:
        paint_splitter(painter, option, theme_);
        return true;
    case CE_SizeGrip:
        paint_size_grip(painter, option, theme_);
        return true;
    case CE_RubberBand:
        draw_frame(painter, option.rect, theme_.line(1), theme_.blue);
        return true;
    case CE_ProgressBarGroove:
        painter.fillRect(option.rect, theme_.base);
        draw_frame(painter, option.rect, theme_.line(1), theme_.edge);
        return true;
    case CE_ProgressBarContents:
        if (const auto* bar = qstyleoption_cast<const QStyleOptionProgressBar*>(&option))
            paint_progress(painter, *bar, theme_);
        return true;
    default:
        return false;
    }
}

void Style::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                        const QWidget* widget) const {
    if (paint_control(element, *option, *painter, widget)) return;
    if (element == CE_HeaderLabel) { // a caption: the figures below it are what counts
        if (const auto* head = qstyleoption_cast<const QStyleOptionHeader*>(option)) {
            QStyleOptionHeader caption(*head);
            caption.state.setFlag(State_On, false); // not bold over each chosen cell
            caption.text = caption.fontMetrics.elidedText(caption.text, Qt::ElideRight, caption.rect.width());
            caption.palette.setColor(QPalette::ButtonText, theme_.ink3);
            QProxyStyle::drawControl(element, &caption, painter, widget);
            return;
        }
    }
    QProxyStyle::drawControl(element, option, painter, widget);
}

void Style::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                               const QWidget* widget) const {
    const auto part = [&](SubControl which) { return subControlRect(control, option, which, widget); };
    switch (control) {
    case CC_ComboBox:
        if (const auto* box = qstyleoption_cast<const QStyleOptionComboBox*>(option)) {
            paint_combo_box(*painter, *box, part(SC_ComboBoxArrow), theme_);
            return;
        }
        break;
    case CC_SpinBox:
        if (const auto* box = qstyleoption_cast<const QStyleOptionSpinBox*>(option)) {
            paint_spin_box(*painter, *box, part(SC_SpinBoxUp), part(SC_SpinBoxDown), theme_);
            return;
        }
        break;
    case CC_Slider:
        if (const auto* slider = qstyleoption_cast<const QStyleOptionSlider*>(option)) {
            paint_slider(*painter, *slider, part(SC_SliderGroove), part(SC_SliderHandle), theme_);
            return;
        }
        break;
    case CC_ScrollBar:
        if (const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option)) {
            paint_scroll_bar(*painter, *bar, part(SC_ScrollBarSlider), theme_);
            return;
        }
        break;
    case CC_ToolButton:
        if (const auto* button = qstyleoption_cast<const QStyleOptionToolButton*>(option);
            button && opens_at_once(*button)) {
            draw_menu_button(*button, *painter, widget);
            return;
        }
        break;
    case CC_GroupBox: {
        painter->save();
        QFont bold = painter->font();
        bold.setBold(true);
        painter->setFont(bold);
        QProxyStyle::drawComplexControl(control, option, painter, widget);
        painter->restore();
        return;
    }
    default:
        break;
    }
    QProxyStyle::drawComplexControl(control, option, painter, widget);
}

} // namespace drawercast::theme
