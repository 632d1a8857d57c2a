// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>
#include <vector>

namespace drawercast {

/// A sentence that can be told in more than one language: the core writes it in English, with a place for
/// each value, and knows no other language; who shows it looks the English up and puts the values in.
struct Phrase {
    enum class Kind {
        sentence, ///< English, to be translated; %1 … %9 stand where the values go
        figure,   ///< a number as written in English, with its unit where it has one: "6.2 mm"
        verbatim, ///< told as it is in every language: what the maker called it, a path
    };

    Kind kind = Kind::sentence;
    std::string text;
    std::vector<Phrase> values; ///< of a sentence alone

    bool empty() const { return text.empty(); }
    bool operator==(const Phrase&) const = default;
};

/// `text` is one string literal, so that a translator's tools find it.
template <class... Values>
Phrase phrase(const char* text, Values&&... values) {
    static_assert(sizeof...(Values) <= 9);
    return {Phrase::Kind::sentence, text, {std::forward<Values>(values)...}};
}

inline Phrase figure(std::string text) { return {Phrase::Kind::figure, std::move(text), {}}; }
inline Phrase verbatim(std::string text) { return {Phrase::Kind::verbatim, std::move(text), {}}; }

/// `pattern` with its %1 … %9 replaced by `values`, in one pass: a value that holds a percent sign is not
/// read again. A place without a value stays as it is.
std::string filled(const std::string& pattern, const std::vector<std::string>& values);

/// The phrase as the core wrote it.
std::string english(const Phrase& phrase);

} // namespace drawercast
