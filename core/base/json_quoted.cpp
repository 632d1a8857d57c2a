// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/json_quoted.h"

namespace drawercast {

std::string json_quoted(std::string_view text) {
    constexpr char hex[] = "0123456789abcdef";
    std::string quoted = "\"";
    for (const char c : text) {
        const auto code = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\') {
            quoted += '\\';
            quoted += c;
        } else if (c == '\n') {
            quoted += "\\n";
        } else if (c == '\t') {
            quoted += "\\t";
        } else if (code < 0x20) {
            quoted += "\\u00";
            quoted += hex[code >> 4];
            quoted += hex[code & 15];
        } else {
            quoted += c;
        }
    }
    return quoted + '"';
}

} // namespace drawercast
