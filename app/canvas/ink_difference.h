// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/ink.h"

#include <QRegion>

namespace drawercast::app {

/// Where two drawings in the same view differ, view pixels: the reach of every ink that only one of them has.
/// Compared subject by subject in their order, so that one pocket moved leaves the others out of it.
QRegion changed_region(const sheets::Inks& before, const sheets::Inks& after);

/// Where an ink shows, in whole pixels; empty for what leaves no trace.
QRect pixels_of(const sheets::Ink& ink);

} // namespace drawercast::app
