// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>
#include <vector>

class QMenu;
class QMenuBar;
class QToolBar;
class QWidget;

namespace drawercast::app {

class Actions;

struct Menus {
    QMenu* recent = nullptr; ///< filled by the window
    QMenu* pocket = nullptr; ///< of the canvas
    QMenu* vent = nullptr;   ///< likewise, on sheets of the mold
    QMenu* object = nullptr; ///< of the objects list
    QMenu* sheet = nullptr;  ///< of the canvas beside pockets
    QMenu* check = nullptr;  ///< of a check, on the sheet and in its list
    QMenu* drawer = nullptr; ///< of the drawers list
};

/// The menu bar; everything in it is an action of the table.
Menus fill_menu_bar(QMenuBar& bar, const Actions& actions);

/// The tool row: what is used while laying out, papers at its right end.
void fill_tool_row(QToolBar& row, const Actions& actions);

/// A menu of some actions; an empty id is a separator.
QMenu* menu_of(QWidget& parent, const Actions& actions, const std::vector<std::string_view>& ids);

} // namespace drawercast::app
