// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>

namespace drawercast::job {

/// The numbers a job may hold. The JSON Schema states the same ones; a test holds them against each other.
struct Range {
    /// JSON pointer with * for list items: "/shop/boards/*/thickness_mm". A list of numbers has the range of
    /// each; those of any outline are under /outline, of any [x, y] under /point.
    std::string_view path;
    double least = 0;
    double most = 0;
    bool open_least = false; ///< `least` itself is refused
    bool whole = false;      ///< integers only
};

std::span<const Range> ranges();

/// The range of a path, which must have one.
const Range& range_of(std::string_view path);

} // namespace drawercast::job
