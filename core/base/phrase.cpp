// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/phrase.h"

namespace drawercast {

std::string filled(const std::string& pattern, const std::vector<std::string>& values) {
    std::string out;
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        const bool place =
            pattern[i] == '%' && i + 1 < pattern.size() && pattern[i + 1] >= '1' && pattern[i + 1] <= '9';
        const auto which = place ? static_cast<std::size_t>(pattern[i + 1] - '1') : values.size();
        if (which < values.size()) {
            out += values[which];
            ++i;
        } else {
            out += pattern[i];
        }
    }
    return out;
}

std::string english(const Phrase& phrase) {
    if (phrase.kind != Phrase::Kind::sentence) return phrase.text;
    std::vector<std::string> values;
    values.reserve(phrase.values.size());
    for (const auto& value : phrase.values) values.push_back(english(value));
    return filled(phrase.text, values);
}

} // namespace drawercast
