// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace drawercast::job {

class JsonTree;

enum class JsonKind : std::uint8_t { null, boolean, number, string, array, object };

/// One value of a tree. As cheap to copy as a pointer; holds as long as its tree stays where it is.
class JsonValue {
  public:
    JsonValue(const JsonTree& tree, std::uint32_t index) : tree_(&tree), index_(index) {}

    JsonKind kind() const;
    std::size_t begin() const;    ///< byte offset of its first character
    std::string_view raw() const; ///< its text, verbatim: a number is read from this, never by another double
    std::string_view text() const; ///< a string's characters, unescaped; empty for other kinds
    std::size_t size() const;      ///< items of an array, members of an object, 0 for other kinds

    /// The member of that key; the first, should there be several.
    std::optional<JsonValue> find(std::string_view key) const;
    /// do_with(JsonValue item), in order.
    template <class Do>
    void each_item(Do do_with) const;
    /// do_with(std::string_view key, JsonValue value), in order.
    template <class Do>
    void each_member(Do do_with) const;

    std::string pointer() const; ///< JSON pointer (RFC 6901), "" for the whole text
    std::string path() const;    ///< the same as a maker would write it, "drawers[0].name"
    Where where() const;         ///< the same with line and column, for a problem

  private:
    friend class JsonTree;
    /// step(bool member, JsonValue key, std::size_t index), from the root to this one.
    template <class Step>
    void each_step(Step step) const;

    const JsonTree* tree_;
    std::uint32_t index_;
};

/// A JSON text taken apart: its values in the order in which they begin, with their places. Small (20 bytes
/// a value) and flat, so that neither size nor nesting of hostile bytes costs more than the bytes themselves.
class JsonTree {
  public:
    JsonValue root() const { return {*this, 0}; }
    /// Keys that stand a second time in their object, in order, at most a hundred.
    std::vector<JsonValue> repeated_keys() const;

  private:
    friend class JsonValue;
    friend class JsonTreeBuilder;

    /// A member's key is a node of its own, right before its value.
    struct Node {
        std::uint32_t begin = 0;
        std::uint32_t end = 0;
        std::uint32_t next = 0;  ///< index of the first node that is not inside this one
        std::uint32_t extra = 0; ///< containers: how many children; strings: 1 + index in unescaped_, or 0
        JsonKind kind = JsonKind::null;
    };
    std::string_view source_;
    std::vector<Node> nodes_;
    std::vector<std::string> unescaped_; ///< of those strings whose characters are not their text
    std::vector<std::uint32_t> repeated_;
};

/// Limits that keep hostile bytes from taking the machine: text size, nesting, number of values and keys.
inline constexpr std::size_t most_json_bytes = std::size_t{32} * 1024 * 1024;
inline constexpr std::size_t most_json_depth = 64;
inline constexpr std::size_t most_json_values = 4'000'000;

/// Takes `text` apart (RFC 8259: UTF-8, one value, nothing after it); the tree refers to `text`, which must
/// outlive it. Keys that stand twice are told by the tree. Problems "json-size", "json-values", "json-deep"
/// and "json" name the line and the column, both from 1, columns in bytes.
Expected<JsonTree> parse_json(std::string_view text);

// ---- templates ----

template <class Do>
void JsonValue::each_item(Do do_with) const {
    if (kind() != JsonKind::array) return;
    const auto& nodes = tree_->nodes_;
    for (std::uint32_t i = index_ + 1; i < nodes[index_].next; i = nodes[i].next)
        do_with(JsonValue(*tree_, i));
}

template <class Do>
void JsonValue::each_member(Do do_with) const {
    if (kind() != JsonKind::object) return;
    const auto& nodes = tree_->nodes_;
    for (std::uint32_t key = index_ + 1; key < nodes[index_].next; key = nodes[key + 1].next)
        do_with(JsonValue(*tree_, key).text(), JsonValue(*tree_, key + 1));
}

} // namespace drawercast::job
