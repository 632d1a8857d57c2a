// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/template_sheet.h"

namespace drawercast::print {

/// The whole drawing small in the box, with its tiles' names over it, empty ones hatched and said so, and
/// the arrow to the drawer's front. Returns the height used.
double write_tile_map(sheets::Inks& inks, const Box& box, const Template& drawing, const LaidOut& laid,
                      const theme::Theme& theme);

} // namespace drawercast::print
