// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/right_ground.h"

namespace drawercast::capture {

Expected<FlatPicture> flattened_as_said(std::string_view file, const Shot& shot) {
    auto flat = flattened(file, shot);
    if (!flat || shot.ground != Ground::plain_sheet) return flat;
    Shot marked = shot;
    marked.ground = Ground::measuring_sheet;
    if (!flattened(file, marked)) return flat;
    return Problem("capture-other-sheet", {},
                   phrase("the picture is of the measuring sheet, not of white paper"),
                   phrase("Say that it is the measuring sheet"));
}

} // namespace drawercast::capture
