// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/actions.h"
#include "window/desk.h"

namespace drawercast::app {

class ChecksModel;
class SheetCanvas;

/// What there is to act on now.
Situation situation_of(const Desk& desk, const SheetCanvas& canvas, const ChecksModel& checks);

/// Checks the actions that stand for what is so: the sheet shown, units, looks, language, grid and snapping.
void show_checked(Actions& actions, const Desk& desk, const SheetCanvas& canvas);

} // namespace drawercast::app
