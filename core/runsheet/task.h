// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/phrase.h"

#include <string>
#include <vector>

namespace drawercast::runsheet {

/// One thing to do: somebody is at it for a while, then it may have to be left alone.
struct Task {
    std::string id;                 ///< "d1/seal-2", unique
    Phrase what;                    ///< "Second coat of sealer"
    std::string drawer;             ///< whose; empty: of the whole job
    double hands_min = 0;           ///< with hands on, within shop hours
    double wait_min = 0;            ///< then left alone, nights too
    std::vector<std::string> after; ///< ids of what must be ready before
    bool in_one_go = false;         ///< not broken off when the shop closes
    bool each_cast = false;         ///< done again for each further cast; the others make the mold
    std::vector<Phrase> gates;      ///< to be ticked before it is begun
    std::vector<Phrase> materials;  ///< what is needed at hand, with quantities
    bool operator==(const Task&) const = default;
};

} // namespace drawercast::runsheet
