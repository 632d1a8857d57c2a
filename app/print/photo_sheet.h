// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "capture/measuring_sheet.h"

#include "print/page.h"
#include "print/paper.h"

namespace drawercast::print {

/// The paper that core/capture measures on, printed upright; A4 for what is not Letter.
capture::SheetSize photo_sheet_size(Paper paper);

/// Printed at true size and photographed with objects on it: ten marks at capture::target_places, a frame
/// around the bare field whose sides are scales of 100 mm and 4 in, and words between the marks. All ink lies
/// in the border, since whatever is printed inside the field would be measured as an object.
Page photo_sheet(Paper paper, const Printing& printing);

} // namespace drawercast::print
