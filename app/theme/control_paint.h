// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QPainter;
class QStyleOption;
class QStyleOptionButton;
class QStyleOptionFrame;
class QStyleOptionViewItem;

namespace drawercast::theme {

struct Theme;

// Single-part controls. Each paints the whole of option.rect by option.state.

/// Ground and border of a field: base, edge; blue under the pointer, a 2 px blue frame with the focus.
void paint_field(QPainter& painter, const QStyleOption& option, const Theme& theme);

/// Border of a view or panel, its ground left alone.
void paint_view_frame(QPainter& painter, const QStyleOption& option, const Theme& theme);

/// A push button's ground and border; the default one has a 2 px ink frame.
void paint_button(QPainter& painter, const QStyleOptionButton& option, const Theme& theme);

/// A tool button: flat until pointed at, blue soft with a blue border while on or pressed.
void paint_tool_button(QPainter& painter, const QStyleOption& option, const Theme& theme);

void paint_check_box(QPainter& painter, const QStyleOption& option, const Theme& theme);
void paint_radio_button(QPainter& painter, const QStyleOption& option, const Theme& theme);

/// The 2 px blue frame of what has the focus.
void paint_focus(QPainter& painter, const QStyleOption& option, const Theme& theme);

/// The ground of a chosen row or one under the pointer. A chosen row is blue soft with a blue bar where its
/// list has the focus (`in_focus`), and only an ink bar elsewhere, so that the eye finds the one list the
/// keys go to. The bar stands at the start of the row (`starts_row`), not in every cell.
void paint_row(QPainter& painter, const QStyleOptionViewItem& option, bool in_focus, bool starts_row,
               const Theme& theme);

/// Ground and ink border of the box with a hint.
void paint_hint(QPainter& painter, const QStyleOption& option, const Theme& theme);

} // namespace drawercast::theme
