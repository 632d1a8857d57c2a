// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace drawercast {

/// `text` (UTF-8) as a JSON string with its quotes: quotation marks, backslashes and control characters
/// escaped. Source: RFC 8259, section 7.
std::string json_quoted(std::string_view text);

} // namespace drawercast
