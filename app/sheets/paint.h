// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/ink.h"

#include <functional>

class QPainter;
class QPainterPath;

namespace drawercast::sheets {

/// Draws with a painter whose units are the inks' device units: logical pixels on screen, 1/96 in on paper.
void paint(const Inks& inks, QPainter& painter);
/// Likewise those alone that are wanted.
void paint_some(const Inks& inks, QPainter& painter, const std::function<bool(const Ink&)>& wanted);

/// Arcs become cubic curves, off by at most 0.03 % of their radius.
QPainterPath painter_path(const Path& path);

} // namespace drawercast::sheets
