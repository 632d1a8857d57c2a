// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/text_spot.h"

#include <algorithm>
#include <string>

namespace drawercast {

Phrase line_and_column(std::string_view text, std::size_t at) {
    const auto before = text.substr(0, std::min(at, text.size()));
    const auto line = std::count(before.begin(), before.end(), '\n') + 1;
    const auto start = before.rfind('\n');
    const auto column = before.size() - (start == std::string_view::npos ? 0 : start + 1) + 1;
    return phrase("line %1, column %2", verbatim(std::to_string(line)), verbatim(std::to_string(column)));
}

} // namespace drawercast
