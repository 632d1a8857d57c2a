// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRect>

class QPainter;
class QStyleOption;
class QStyleOptionHeader;
class QStyleOptionTab;
class QStyleOptionToolBar;

namespace drawercast::theme {

struct Theme;

// The parts a window is divided by. All flat: a ground and at most one line.

/// Ground of the menu bar, tool row and status line.
void paint_bench(QPainter& painter, const QRect& rect, const Theme& theme);

/// The tool row: bench, and a rule towards the sheet.
void paint_tool_row(QPainter& painter, const QStyleOptionToolBar& option, const Theme& theme);

/// The status line: bench, and a rule above.
void paint_status_line(QPainter& painter, const QRect& rect, const Theme& theme);

/// An upright line between tools, or a level one in an upright tool row.
void paint_tool_separator(QPainter& painter, const QStyleOption& option, const Theme& theme);

/// The 1 px line in the middle of a splitter's handle.
void paint_splitter(QPainter& painter, const QStyleOption& option, const Theme& theme);

/// Three oblique strokes where a window can be pulled larger.
void paint_size_grip(QPainter& painter, const QStyleOption& option, const Theme& theme);

/// A section of a table head: pane, a line below.
void paint_head_section(QPainter& painter, const QStyleOptionHeader& option, const Theme& theme);

/// A sheet tab: the shown one has the paper's color and an ink lid, the others lie a step lower. `numbered`
/// draws the tab's number, counted from 1, in a box of its own.
void paint_tab(QPainter& painter, const QStyleOptionTab& option, const Theme& theme, bool numbered);

/// Words of a tab (bold where shown), its number and, behind the words, its icon.
void paint_tab_label(QPainter& painter, const QStyleOptionTab& option, const Theme& theme, bool numbered);

/// Width of the number's box.
int tab_number_width(int font_height);

/// The line the tabs stand on.
void paint_tab_base(QPainter& painter, const QRect& rect, const Theme& theme);

} // namespace drawercast::theme
