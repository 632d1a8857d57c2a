// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/paper.h"

#include <QPolygonF>

#include <string>

namespace drawercast::test {

/// A PNG file's bytes: the printed measuring sheet's PDF as dots, with a flat dark thing on it (mm, y down
/// from the sheet's corner), seen a little aslant on a gray table.
std::string sheet_picture(print::Paper paper, const QPolygonF& thing_mm);

/// The same thing on a white scan of that many dots per inch, the size of A4.
std::string scan_picture(double dots_per_inch, const QPolygonF& thing_mm);

} // namespace drawercast::test
