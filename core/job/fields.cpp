// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/fields.h"

#include "base/number.h"
#include "job/ranges.h"

#include <cmath>

namespace drawercast::job {

namespace {

constexpr double most_coordinate_mm = 100000;
constexpr std::size_t most_text_bytes = 100000;

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

std::string range_text(const Range& range) {
    return std::string(range.open_least ? "over " : "from ") + number_text(range.least) + " to " +
           number_text(range.most);
}

bool in_range(double value, const Range& range) {
    return (range.open_least ? value > range.least : value >= range.least) && value <= range.most;
}

std::optional<double> plain_number(Reading& reading, const Spot& spot) {
    const auto value =
        spot.node->kind == JsonNode::Kind::number ? parse_number(spot.node->text) : std::nullopt;
    if (!value)
        reading.report("number", spot.pointer, spot.node->begin, "is not a number",
                       "Write a plain number there");
    return value;
}

bool is_null(const JsonNode& node, std::string_view word) {
    return node.kind == JsonNode::Kind::null ||
           (!word.empty() && node.kind == JsonNode::Kind::string && node.text == word);
}

} // namespace

void Reading::report(std::string code, const std::string& pointer, std::size_t offset, std::string what,
                     std::string fix) {
    if (problems_.size() >= most_problems) return;
    problems_.push_back({std::move(code),
                         (pointer.empty() ? "/" : pointer) + " (" + place_text(text_, offset) + ")",
                         std::move(what), std::move(fix)});
}

Spot Spot::at(std::string_view key, const JsonNode& child) const {
    return {&child, pointer + "/" + escaped(key), pattern + "/" + std::string(key)};
}

Spot Spot::item(std::size_t index, const JsonNode& child) const {
    return {&child, pointer + "/" + std::to_string(index), pattern + "/*"};
}

std::optional<double> read_number(Reading& reading, const Spot& spot) {
    const auto value = plain_number(reading, spot);
    if (!value) return std::nullopt;
    const Range& range = range_of(spot.pattern);
    if (!in_range(*value, range)) {
        reading.report("number-range", spot.pointer, spot.node->begin,
                       number_text(*value) + " is out of range", "Use a number " + range_text(range));
        return std::nullopt;
    }
    if (range.whole && *value != std::floor(*value)) {
        reading.report("number-whole", spot.pointer, spot.node->begin,
                       number_text(*value) + " is not a whole number",
                       "Use a whole number " + range_text(range));
        return std::nullopt;
    }
    return value;
}

std::optional<shape::Vec> read_point(Reading& reading, const Spot& spot) {
    if (spot.node->kind != JsonNode::Kind::array || spot.node->items.size() != 2) {
        reading.report("point", spot.pointer, spot.node->begin, "is not a point", "Write [x, y] in mm");
        return std::nullopt;
    }
    double xy[2] = {0, 0};
    for (std::size_t i = 0; i < 2; ++i) {
        const auto value = plain_number(reading, spot.item(i, spot.node->items[i]));
        if (!value) return std::nullopt;
        if (!(std::abs(*value) <= most_coordinate_mm)) {
            reading.report("number-range", spot.pointer, spot.node->begin,
                           "lies further away than any workshop is long",
                           "Use coordinates within " + number_text(most_coordinate_mm) + " mm");
            return std::nullopt;
        }
        xy[i] = grained(*value);
    }
    return shape::Vec{xy[0], xy[1]};
}

Fields::Fields(Reading& reading, Spot spot) : reading_(reading), spot_(std::move(spot)) {
    if (spot_.node->kind != JsonNode::Kind::object)
        reading_.report("object", spot_.pointer, spot_.node->begin, "is not an object", "Write { … } there");
}

const JsonNode* Fields::take(std::string_view key) {
    asked_.emplace(key);
    return spot_.node->find(key);
}

const JsonNode* Fields::take_list(std::string_view key, std::size_t most) {
    const JsonNode* node = take(key);
    if (node == nullptr) return nullptr;
    if (node->kind != JsonNode::Kind::array) {
        wrong(key, *node, "is not a list", "Write [ … ] there");
        return nullptr;
    }
    if (node->items.size() > most) {
        wrong(key, *node, "holds " + std::to_string(node->items.size()) + " items",
              "At most " + std::to_string(most) + " can be worked with");
        return nullptr;
    }
    return node;
}

bool Fields::has(std::string_view key) const { return spot_.node->find(key) != nullptr; }

void Fields::wrong(std::string_view key, const JsonNode& node, std::string what, std::string fix) {
    reading_.report("value", spot_.at(key, node).pointer, node.begin, std::move(what), std::move(fix));
}

void Fields::require(std::string_view key) {
    if (spot_.node->kind == JsonNode::Kind::object && !has(key))
        reading_.report("missing", spot_.pointer, spot_.node->begin, "has no \"" + std::string(key) + "\"",
                        "Add it there");
}

void Fields::number(std::string_view key, double& value) {
    if (const JsonNode* node = take(key)) value = read_number(reading_, spot_.at(key, *node)).value_or(value);
}

void Fields::length(std::string_view key, double& value) {
    number(key, value);
    value = grained(value);
}

void Fields::whole(std::string_view key, int& value) {
    double number_value = value;
    number(key, number_value);
    value = static_cast<int>(number_value);
}

void Fields::text(std::string_view key, std::string& value) {
    const JsonNode* node = take(key);
    if (node == nullptr) return;
    if (node->kind != JsonNode::Kind::string) return wrong(key, *node, "is not a text", "Write it in quotes");
    if (node->text.size() > most_text_bytes)
        return wrong(key, *node, "is longer than any note", "Shorten it");
    value = node->text;
}

void Fields::flag(std::string_view key, bool& value) {
    const JsonNode* node = take(key);
    if (node == nullptr) return;
    if (node->kind != JsonNode::Kind::boolean)
        return wrong(key, *node, "is neither true nor false", "Write true or false");
    value = node->truth;
}

void Fields::numbers(std::string_view key, std::vector<double>& values) {
    const JsonNode* node = take_list(key, 1000);
    if (node == nullptr) return;
    values.clear();
    const Spot list = spot_.at(key, *node);
    for (std::size_t i = 0; i < node->items.size(); ++i) {
        Spot item = list.item(i, node->items[i]);
        item.pattern = list.pattern; // the list's range is each item's
        if (const auto value = read_number(reading_, item)) values.push_back(grained(*value));
    }
}

void Fields::pair(std::string_view key, double& first, double& second) {
    std::vector<double> values{first, second};
    const JsonNode* node = spot_.node->find(key);
    numbers(key, values);
    if (node == nullptr || node->kind != JsonNode::Kind::array) return;
    if (node->items.size() != 2) return wrong(key, *node, "needs two lengths", "Write [a, b] in mm");
    if (values.size() == 2) first = values[0], second = values[1];
}

void Fields::point(std::string_view key, shape::Vec& value) {
    if (const JsonNode* node = take(key)) value = read_point(reading_, spot_.at(key, *node)).value_or(value);
}

void Fields::texts(std::string_view key, std::vector<std::string>& values) {
    const JsonNode* node = take_list(key, 1000);
    if (node == nullptr) return;
    values.clear();
    for (const auto& item : node->items) {
        if (item.kind != JsonNode::Kind::string)
            return wrong(key, item, "is not a text", "Write it in quotes");
        values.push_back(item.text);
    }
}

void Fields::kept(std::string_view key, std::string& raw_list) {
    const JsonNode* node = take_list(key, most_json_values);
    if (node != nullptr) raw_list = std::string(reading_.text().substr(node->begin, node->end - node->begin));
}

void Fields::maybe_number(std::string_view key, std::optional<double>& value, std::string_view word) {
    const JsonNode* node = take(key);
    if (node == nullptr) return;
    value = is_null(*node, word) ? std::nullopt : read_number(reading_, spot_.at(key, *node));
}

void Fields::maybe_length(std::string_view key, std::optional<double>& value, std::string_view word) {
    maybe_number(key, value, word);
    if (value) value = grained(*value);
}

void Fields::maybe_whole(std::string_view key, std::optional<int>& value) {
    std::optional<double> number_value;
    if (!has(key)) return;
    maybe_number(key, number_value);
    value = number_value ? std::optional(static_cast<int>(*number_value)) : std::nullopt;
}

void Fields::maybe_text(std::string_view key, std::optional<std::string>& value, std::string_view word) {
    const JsonNode* node = take(key);
    if (node == nullptr) return;
    value.reset();
    if (is_null(*node, word)) return;
    std::string read;
    text(key, read);
    value = std::move(read);
}

Unknowns Fields::rest() const {
    Unknowns rest;
    for (const auto& member : spot_.node->members)
        if (asked_.count(member.key) == 0)
            rest.push_back({member.key, std::string(reading_.text().substr(
                                            member.value.begin, member.value.end - member.value.begin))});
    return rest;
}

} // namespace drawercast::job
