// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace drawercast::job {

/// Members of the file that this version does not know, kept as their own text so that nothing is lost on
/// saving.
struct Unknown {
    std::string key;
    std::string raw; ///< the value's JSON text, verbatim
    bool operator==(const Unknown&) const = default;
};
using Unknowns = std::vector<Unknown>;

} // namespace drawercast::job
