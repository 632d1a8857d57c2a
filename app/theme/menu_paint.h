// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QPainter;
class QRect;
class QStyleOption;
class QStyleOptionMenuItem;

namespace drawercast::theme {

struct Theme;

/// Ground and border of an open menu.
void paint_menu(QPainter& painter, const QStyleOption& option, const Theme& theme);

/// One entry: check mark or icon (`icon_px` wide), words, shortcut, arrow of a submenu; or the line of a
/// separator.
void paint_menu_item(QPainter& painter, const QStyleOptionMenuItem& option, int icon_px, const Theme& theme);

/// A title in the menu bar.
void paint_menu_title(QPainter& painter, const QStyleOptionMenuItem& option, const Theme& theme);

} // namespace drawercast::theme
