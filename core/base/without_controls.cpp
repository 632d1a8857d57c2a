// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/without_controls.h"

#include <cstddef>

namespace drawercast {

namespace {

/// How many bytes the control character takes that `text` begins with; 0: it begins with none.
std::size_t control_at(std::string_view text) {
    const auto byte = [&](std::size_t i) {
        return i < text.size() ? static_cast<unsigned char>(text[i]) : static_cast<unsigned char>(0);
    };
    if (byte(0) < 0x20 || byte(0) == 0x7F) return 1;
    if (byte(0) == 0xC2 && byte(1) >= 0x80 && byte(1) <= 0x9F) return 2; // C1
    if (byte(0) == 0xE2 && byte(1) == 0x80 && (byte(2) == 0xA8 || byte(2) == 0xA9))
        return 3; // U+2028, U+2029
    return 0;
}

} // namespace

std::string without_controls(std::string_view text) {
    std::string out;
    out.reserve(text.size());
    while (!text.empty()) {
        const std::size_t control = control_at(text);
        out += control > 0 ? ' ' : text.front();
        text.remove_prefix(control > 0 ? control : 1);
    }
    return out;
}

} // namespace drawercast
