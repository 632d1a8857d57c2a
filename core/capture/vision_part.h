// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "capture/measure.h"

#include <string_view>

namespace drawercast::capture {

/// What the measuring part answers: the two questions of measure.h. The part is a file of its own, loaded
/// when the first picture is read, since its libraries take longer to load than the whole window to open.
struct VisionPart {
    std::string_view version; ///< of the program it was built with; another's is refused
    Expected<FlatPicture> (*flattened)(std::string_view file, const Shot& shot);
    Expected<Traced> (*traced_objects)(const FlatPicture& flat, const Tracing& tracing, const Brush& brush);
};

/// The one symbol the part exports.
inline constexpr const char* vision_entry = "drawercast_vision_part";
using VisionEntry = const VisionPart* (*)();

/// The part, loaded at the first call and kept. Refused in words: it is not there ("capture-not-built"), or
/// it or one of its libraries can't be loaded ("capture-not-loaded").
Expected<const VisionPart*> vision_part();

} // namespace drawercast::capture
