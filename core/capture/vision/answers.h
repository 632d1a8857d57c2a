// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "capture/measure.h"

namespace drawercast::capture::vision {

/// The two questions of measure.h, answered.
Expected<FlatPicture> flattened(std::string_view file, const Shot& shot);
Expected<Traced> traced_objects(const FlatPicture& flat, const Tracing& tracing, const Brush& brush);

} // namespace drawercast::capture::vision
