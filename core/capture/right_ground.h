// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "capture/measure.h"

namespace drawercast::capture {

/// flattened(), and a picture that is said to be of a blank sheet but shows the measuring one is refused as
/// "capture-other-sheet": its printed marks would pass for objects.
Expected<FlatPicture> flattened_as_said(std::string_view file, const Shot& shot);

} // namespace drawercast::capture
