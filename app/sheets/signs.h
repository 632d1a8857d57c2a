// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/path.h"

/// Small drawn signs, in device units with y down, used on drawings and pages alike.
namespace drawercast::sheets {

/// The frame's sign: an F as it would look painted on the drawer's bottom. Upright in the drawer frame,
/// reversed in the mold frame. Filled; `height` tall, its box's middle at `center`.
Path frame_sign(Vec center, double height, bool mirrored);

/// An arrow pointing down the page, to the drawer's front: its outline, `height` tall, middle at `center`.
Path front_arrow(Vec center, double height);

/// The quartered disc of a datum: the two filled quarters, and the ring around them.
Path datum_quarters(Vec center, double radius);

} // namespace drawercast::sheets
