// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/path.h"

#include <optional>
#include <utility>
#include <vector>

namespace drawercast::sheets {

/// What words and plates must not cover, device units.
struct Taken {
    std::vector<Box> words;
    std::vector<Box> kept;                    ///< likewise, with nothing written there
    std::vector<Box> pockets;                 ///< washed areas with a subject: better left free
    std::vector<std::pair<Vec, Vec>> leaders; ///< lines that others must not cross
    std::optional<Box> ground;                ///< of the face: where plates like to be
};

} // namespace drawercast::sheets
