// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/style.h"

#include "theme/bar_paint.h"
#include "theme/control_paint.h"
#include "theme/frame_paint.h"
#include "theme/menu_paint.h"
#include "theme/widget_palette.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QHeaderView>
#include <QPainter>
#include <QStyleFactory>
#include <QStyleOption>
#include <QTabBar>
#include <QTableView>

namespace drawercast::theme {

namespace {

/// Whether the keys go to the list `widget` belongs to (an editor opened in it counts).
bool list_in_focus(const QWidget* widget) {
    const auto* view = qobject_cast<const QAbstractItemView*>(widget);
    const QWidget* focus = QApplication::focusWidget();
    return view && focus && (focus == view || view->isAncestorOf(focus));
}

/// Whether the cell of `item` is the first of its row as it is shown; each cell is, where cells are chosen
/// singly.
bool starts_row(const QStyleOptionViewItem& item, const QWidget* widget) {
    const auto* view = qobject_cast<const QAbstractItemView*>(widget);
    if (!view || view->selectionBehavior() != QAbstractItemView::SelectRows) return true;
    if (const auto* table = qobject_cast<const QTableView*>(view))
        return table->horizontalHeader()->visualIndex(item.index.column()) == 0;
    return item.viewItemPosition == QStyleOptionViewItem::Beginning ||
           item.viewItemPosition == QStyleOptionViewItem::OnlyOne ||
           item.viewItemPosition == QStyleOptionViewItem::Invalid;
}

} // namespace

Style::Style(const Theme& theme, double text_scale)
    : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))), theme_(theme), text_scale_(text_scale) {}

void Style::polish(QWidget* widget) {
    QProxyStyle::polish(widget);
    // Fusion asks for hover events only where it draws them itself.
    if (qobject_cast<QTabBar*>(widget)) widget->setAttribute(Qt::WA_Hover);
}

void Style::polish(QPalette& palette) { palette = widget_palette(theme_); }

QPalette Style::standardPalette() const { return widget_palette(theme_); }

bool Style::paint_panel(PrimitiveElement element, const QStyleOption& option, QPainter& painter,
                        const QWidget* widget) const {
    switch (element) {
    case PE_PanelLineEdit: {
        const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(&option);
        if (frame && frame->lineWidth > 0)
            paint_field(painter, option, theme_);
        else // inside a combo or spin box, which has drawn the field
            painter.fillRect(option.rect, option.state.testFlag(State_Enabled) ? theme_.base : theme_.pane);
        return true;
    }
    case PE_PanelButtonCommand:
        if (const auto* button = qstyleoption_cast<const QStyleOptionButton*>(&option))
            paint_button(painter, *button, theme_);
        return true;
    case PE_PanelButtonTool:
        paint_tool_button(painter, option, theme_);
        return true;
    case PE_PanelItemViewItem:
        if (const auto* item = qstyleoption_cast<const QStyleOptionViewItem*>(&option))
            paint_row(painter, *item, list_in_focus(widget), starts_row(*item, widget), theme_);
        return true;
    case PE_PanelItemViewRow: {
        const auto* item = qstyleoption_cast<const QStyleOptionViewItem*>(&option);
        if (item && item->features.testFlag(QStyleOptionViewItem::Alternate))
            painter.fillRect(option.rect, option.palette.alternateBase());
        return true;
    }
    case PE_PanelMenu:
    case PE_FrameMenu:
        paint_menu(painter, option, theme_);
        return true;
    case PE_PanelTipLabel:
        paint_hint(painter, option, theme_);
        return true;
    case PE_PanelStatusBar:
        paint_status_line(painter, option.rect, theme_);
        return true;
    case PE_PanelMenuBar:
    case PE_PanelToolBar:
        paint_bench(painter, option.rect, theme_);
        return true;
    case PE_PanelScrollAreaCorner:
        painter.fillRect(option.rect, theme_.pane);
        return true;
    default:
        return false;
    }
}

bool Style::paint_primitive(PrimitiveElement element, const QStyleOption& option, QPainter& painter,
                            const QWidget* widget) const {
    const QColor sign = option.state.testFlag(State_Enabled) ? theme_.ink2 : theme_.disabled;
    switch (element) {
    case PE_FrameLineEdit:
    case PE_Frame:
        paint_view_frame(painter, option, theme_);
        return true;
    case PE_FrameFocusRect: {
        // A chosen row shows by its bar that it is the one.
        const auto* item = qobject_cast<const QAbstractItemView*>(widget);
        if (!item || !option.state.testFlag(State_Selected)) paint_focus(painter, option, theme_);
        return true;
    }
    case PE_FrameTabWidget:
        draw_frame(painter, option.rect, theme_.line(1), theme_.rule);
        return true;
    case PE_FrameGroupBox: // its bold title and the indent of what it holds say enough
    case PE_FrameStatusBarItem:
        return true;
    case PE_FrameTabBarBase:
        paint_tab_base(painter, option.rect, theme_);
        return true;
    case PE_IndicatorCheckBox:
    case PE_IndicatorItemViewItemCheck:
        paint_check_box(painter, option, theme_);
        return true;
    case PE_IndicatorRadioButton:
        paint_radio_button(painter, option, theme_);
        return true;
    case PE_IndicatorToolBarSeparator:
        paint_tool_separator(painter, option, theme_);
        return true;
    case PE_IndicatorArrowUp:
        draw_arrow(painter, option.rect, Pointing::up, scaled(7), sign);
        return true;
    case PE_IndicatorArrowDown:
        draw_arrow(painter, option.rect, Pointing::down, scaled(7), sign);
        return true;
    case PE_IndicatorArrowLeft:
        draw_arrow(painter, option.rect, Pointing::left, scaled(7), sign);
        return true;
    case PE_IndicatorArrowRight:
        draw_arrow(painter, option.rect, Pointing::right, scaled(7), sign);
        return true;
    case PE_IndicatorBranch:
        if (option.state.testFlag(State_Children))
            draw_arrow(painter, option.rect,
                       option.state.testFlag(State_Open) ? Pointing::down : Pointing::right, scaled(8), sign);
        return true;
    case PE_IndicatorHeaderArrow:
        if (const auto* head = qstyleoption_cast<const QStyleOptionHeader*>(&option))
            draw_arrow(painter, option.rect,
                       head->sortIndicator == QStyleOptionHeader::SortUp ? Pointing::up : Pointing::down,
                       scaled(7), sign);
        return true;
    default:
        return false;
    }
}

void Style::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                          const QWidget* widget) const {
    if (paint_panel(element, *option, *painter, widget)) return;
    if (paint_primitive(element, *option, *painter, widget)) return;
    QProxyStyle::drawPrimitive(element, option, painter, widget);
}

} // namespace drawercast::theme
