// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/json_tree.h"

#include "base/text_spot.h"

#include <algorithm>

namespace drawercast::job {

namespace {

/// A key inside a JSON pointer (RFC 6901).
std::string escaped(std::string_view key) {
    std::string out;
    for (const char c : key) {
        if (c == '~')
            out += "~0";
        else if (c == '/')
            out += "~1";
        else
            out += c;
    }
    return out;
}

} // namespace

JsonKind JsonValue::kind() const { return tree_->nodes_[index_].kind; }
std::size_t JsonValue::begin() const { return tree_->nodes_[index_].begin; }

std::string_view JsonValue::raw() const {
    const auto& node = tree_->nodes_[index_];
    return tree_->source_.substr(node.begin, node.end - node.begin);
}

std::string_view JsonValue::text() const {
    const auto& node = tree_->nodes_[index_];
    if (node.kind != JsonKind::string) return {};
    if (node.extra != 0) return tree_->unescaped_[node.extra - 1];
    return tree_->source_.substr(node.begin + 1, node.end - node.begin - 2); // without its quotes
}

std::size_t JsonValue::size() const {
    const bool container = kind() == JsonKind::array || kind() == JsonKind::object;
    return container ? tree_->nodes_[index_].extra : 0;
}

std::optional<JsonValue> JsonValue::find(std::string_view key) const {
    std::optional<JsonValue> found;
    each_member([&](std::string_view name, JsonValue value) {
        if (!found && name == key) found = value;
    });
    return found;
}

template <class Step>
void JsonValue::each_step(Step step) const {
    const auto& nodes = tree_->nodes_;
    const auto holds = [&](std::uint32_t node) { return node <= index_ && index_ < nodes[node].next; };
    for (std::uint32_t at = 0; at != index_;) {
        const bool object = nodes[at].kind == JsonKind::object;
        std::uint32_t child = at + 1;
        for (std::size_t count = 0;; ++count) {
            const std::uint32_t value = object ? child + 1 : child;
            if (holds(value) || child == index_) { // a key is told by its own name
                step(object, JsonValue(*tree_, child), count);
                at = child == index_ ? index_ : value;
                break;
            }
            child = nodes[value].next;
        }
    }
}

std::string JsonValue::pointer() const {
    std::string pointer;
    each_step([&](bool member, JsonValue key, std::size_t index) {
        pointer += "/" + (member ? escaped(key.text()) : std::to_string(index));
    });
    return pointer;
}

std::string JsonValue::path() const {
    std::string path;
    each_step([&](bool member, JsonValue key, std::size_t index) {
        if (!member)
            path += "[" + std::to_string(index) + "]";
        else
            path += (path.empty() ? "" : ".") + std::string(key.text());
    });
    return path;
}

Where JsonValue::where() const { return {pointer(), line_and_column(tree_->source_, begin())}; }

std::vector<JsonValue> JsonTree::repeated_keys() const {
    std::vector<JsonValue> keys;
    auto order = repeated_; // found where their objects end, inner ones first
    std::sort(order.begin(), order.end());
    for (const std::uint32_t index : order) keys.emplace_back(*this, index);
    return keys;
}

} // namespace drawercast::job
