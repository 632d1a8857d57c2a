// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRect>
#include <QStyle>

class QPainter;
class QStyleOptionComboBox;
class QStyleOptionProgressBar;
class QStyleOptionSlider;
class QStyleOptionSpinBox;

namespace drawercast::theme {

struct Theme;

// Controls of several parts. `part` gives the rectangle of a part, as the style has it.

/// A field with an arrow at its end; the words are painted by the style's label.
void paint_combo_box(QPainter& painter, const QStyleOptionComboBox& option, const QRect& arrow,
                     const Theme& theme);

/// A field with two arrows at its end, each pale where its way is closed.
void paint_spin_box(QPainter& painter, const QStyleOptionSpinBox& option, const QRect& up, const QRect& down,
                    const Theme& theme);

/// A dimension line with an upright handle: ink up to the handle, edge beyond.
void paint_slider(QPainter& painter, const QStyleOptionSlider& option, const QRect& groove,
                  const QRect& handle, const Theme& theme);

/// A plain bar on the ground of its list, without arrows.
void paint_scroll_bar(QPainter& painter, const QStyleOptionSlider& option, const QRect& handle,
                      const Theme& theme);

/// Rectangle of a part of a scroll bar that has no arrows: handle at least `least` px long.
QRect scroll_bar_part(const QStyleOptionSlider& option, QStyle::SubControl part, int least);

/// The filled share of a progress bar: blue soft with a blue end, so that the words stay ink on both.
void paint_progress(QPainter& painter, const QStyleOptionProgressBar& option, const Theme& theme);

} // namespace drawercast::theme
