// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace drawercast::job {

/// One JSON value with its place in the text. Numbers keep their own text: they are read with
/// std::from_chars, never by way of another double.
struct JsonNode {
    enum class Kind { null, boolean, number, string, array, object };
    struct Member;

    Kind kind = Kind::null;
    std::size_t begin = 0; ///< byte offsets of the value's text
    std::size_t end = 0;
    bool truth = false;
    std::string text;            ///< a string's characters, or a number as written
    std::vector<JsonNode> items; ///< of an array
    std::vector<Member> members; ///< of an object, in order, keys unique
    const JsonNode* find(std::string_view key) const;
};
struct JsonNode::Member {
    std::string key;
    JsonNode value;
};

/// Limits that keep hostile bytes from taking the machine: text size, nesting, number of values.
inline constexpr std::size_t most_json_bytes = 32u * 1024 * 1024;
inline constexpr std::size_t most_json_depth = 64;
inline constexpr std::size_t most_json_values = 4'000'000;

/// The value of a whole JSON text (RFC 8259: UTF-8, one value, nothing after it; duplicate keys are refused).
/// The problem's `where` names line and column, both from 1, columns in bytes.
Expected<JsonNode> parse_json(std::string_view text);

/// "line 41, column 16" of a byte offset.
std::string place_text(std::string_view text, std::size_t offset);

} // namespace drawercast::job
