// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/ink.h"
#include "sheets/marks.h"
#include "theme/palette.h"

namespace drawercast::sheets {

/// A check's number in its shape, 16 px wide: mend a filled square, look a filled triangle, note an open
/// circle; left as is the open shape with a check mark at its corner. `px`: a logical pixel in device units;
/// `face`: of the number, in device units.
void write_badge(Inks& inks, Vec center, double px, const CheckTag& tag, theme::Lettering face,
                 const theme::Theme& theme);

} // namespace drawercast::sheets
