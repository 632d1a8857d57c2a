// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/fields.h"

#include "base/contains.h"
#include "base/number.h"
#include "job/ranges.h"

#include <algorithm>
#include <cmath>

namespace drawercast::job {

namespace {

Phrase in_words(const Range& range) {
    const Phrase least = figure(number_text(range.least)), most = figure(number_text(range.most));
    if (range.whole) return phrase("Use a whole number from %1 to %2", least, most);
    return range.open_least ? phrase("Use a number over %1 to %2", least, most)
                            : phrase("Use a number from %1 to %2", least, most);
}

bool in_range(double value, const Range& range) {
    return (range.open_least ? value > range.least : value >= range.least) && value <= range.most;
}

void report_out_of_range(Reading& reading, const JsonValue& at, double value, const Range& range) {
    reading.report("number-range", at, phrase("%1 is out of range", figure(rounded_text(value, 9))),
                   in_words(range));
}

/// Characters of valid UTF-8: bytes that do not continue one.
std::size_t characters(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

} // namespace

void Reading::report(std::string code, const JsonValue& at, Phrase what, Phrase fix) {
    if (!full()) problems_.emplace_back(std::move(code), at.where(), std::move(what), std::move(fix));
}

void Reading::pass_over(const JsonValue& at) {
    if (unknown_.size() < most_unknown)
        unknown_.push_back(at);
    else
        ++more_unknown_;
}

std::optional<double> read_number(Reading& reading, const JsonValue& at, std::string_view path) {
    const auto value = at.kind() == JsonKind::number ? parse_number(at.raw()) : std::nullopt;
    if (!value) {
        reading.report("number", at, phrase("is not a number"), phrase("Write a plain number there"));
        return std::nullopt;
    }
    const Range& range = range_of(path);
    if (!in_range(*value, range)) {
        report_out_of_range(reading, at, *value, range);
        return std::nullopt;
    }
    if (range.whole && *value != std::floor(*value)) {
        reading.report("number-whole", at,
                       phrase("%1 is not a whole number", figure(rounded_text(*value, 9))), in_words(range));
        return std::nullopt;
    }
    return value;
}

std::optional<double> read_length(Reading& reading, const JsonValue& at, std::string_view path) {
    const auto value = read_number(reading, at, path);
    if (!value) return std::nullopt;
    const double kept = grained(*value);
    if (in_range(kept, range_of(path))) return kept;
    report_out_of_range(reading, at, *value, range_of(path));
    return std::nullopt;
}

Fields::Fields(Reading& reading, JsonValue object, std::string_view scope)
    : reading_(reading), object_(object), scope_(scope) {
    if (object_.kind() != JsonKind::object)
        reading_.report("object", object_, phrase("is not an object"), phrase("Write { … } there"));
}

std::optional<JsonValue> Fields::take(std::string_view key) {
    asked_.push_back(key);
    return object_.find(key);
}

std::optional<JsonValue> Fields::take_list(std::string_view key, std::size_t most) {
    const auto at = take(key);
    if (!at) return std::nullopt;
    if (at->kind() != JsonKind::array) {
        reading_.report("value", *at, phrase("is not a list"), phrase("Write [ … ] there"));
        return std::nullopt;
    }
    if (at->size() > most) {
        reading_.report("value", *at, phrase("holds %1 items", figure(std::to_string(at->size()))),
                        phrase("At most %1 can be worked with", figure(std::to_string(most))));
        return std::nullopt;
    }
    return at;
}

std::optional<double> Fields::number_at(const JsonValue& at, std::string_view key) {
    return read_number(reading_, at, scope_ + "/" + std::string(key));
}

std::optional<double> Fields::length_at(const JsonValue& at, std::string_view key) {
    return read_length(reading_, at, scope_ + "/" + std::string(key));
}

bool Fields::stands_for_nothing(const JsonValue& at, std::string_view word) {
    return at.kind() == JsonKind::null || (!word.empty() && at.text() == word);
}

void Fields::require(std::string_view key) {
    if (object_.kind() == JsonKind::object && !has(key))
        reading_.report("missing", object_, phrase("has no \"%1\"", verbatim(std::string(key))),
                        phrase("Add it there"));
}

void Fields::refuse(std::string_view key, const Phrase& why) {
    if (const auto at = object_.find(key))
        reading_.report("value", *at, why, phrase("Leave one of the two out"));
}

void Fields::number(std::string_view key, double& value) {
    if (const auto at = take(key)) value = number_at(*at, key).value_or(value);
}

void Fields::length(std::string_view key, double& value) {
    if (const auto at = take(key)) value = length_at(*at, key).value_or(value);
}

void Fields::whole(std::string_view key, int& value) {
    double number_value = value;
    number(key, number_value);
    value = static_cast<int>(number_value);
}

void Fields::text(std::string_view key, std::string& value) {
    const auto at = take(key);
    if (!at) return;
    if (at->kind() != JsonKind::string)
        return reading_.report("value", *at, phrase("is not a text"), phrase("Write it in quotes"));
    if (characters(at->text()) > most_text_characters)
        return reading_.report("value", *at, phrase("is longer than any note"), phrase("Shorten it"));
    value = at->text();
}

void Fields::flag(std::string_view key, bool& value) {
    const auto at = take(key);
    if (!at) return;
    if (at->kind() != JsonKind::boolean)
        return reading_.report("value", *at, phrase("is neither true nor false"),
                               phrase("Write true or false"));
    value = at->raw() == "true";
}

void Fields::lengths(std::string_view key, std::vector<double>& values) {
    const auto at = take_list(key, 1000);
    if (!at) return;
    values.clear();
    at->each_item([&](JsonValue item) {
        if (const auto value = length_at(item, key)) values.push_back(*value);
    });
}

void Fields::pair(std::string_view key, double& first, double& second) {
    const auto at = object_.find(key);
    std::vector<double> values;
    lengths(key, values);
    if (!at || at->kind() != JsonKind::array) return;
    if (at->size() != 2)
        return reading_.report("value", *at, phrase("needs two lengths"), phrase("Write [a, b] in mm"));
    if (values.size() == 2) first = values[0], second = values[1];
}

void Fields::point(std::string_view key, shape::Vec& value) {
    const auto at = take(key);
    if (!at) return;
    if (at->kind() != JsonKind::array || at->size() != 2)
        return reading_.report("point", *at, phrase("is not a point"), phrase("Write [x, y] in mm"));
    std::vector<double> xy;
    at->each_item([&](JsonValue item) {
        if (const auto number = read_length(reading_, item, "/point/coordinate_mm")) xy.push_back(*number);
    });
    if (xy.size() == 2) value = {xy[0], xy[1]};
}

void Fields::texts(std::string_view key, std::vector<std::string>& values) {
    const auto at = take_list(key, 1000);
    if (!at) return;
    values.clear();
    at->each_item([&](JsonValue item) {
        if (item.kind() == JsonKind::string)
            values.emplace_back(item.text());
        else
            reading_.report("value", item, phrase("is not a text"), phrase("Write it in quotes"));
    });
}

void Fields::maybe_number(std::string_view key, std::optional<double>& value, std::string_view word) {
    const auto at = take(key);
    if (!at) return;
    value = stands_for_nothing(*at, word) ? std::nullopt : number_at(*at, key);
}

void Fields::maybe_length(std::string_view key, std::optional<double>& value, std::string_view word) {
    const auto at = take(key);
    if (!at) return;
    value = stands_for_nothing(*at, word) ? std::nullopt : length_at(*at, key);
}

void Fields::maybe_whole(std::string_view key, std::optional<int>& value) {
    if (!has(key)) return;
    std::optional<double> number_value;
    maybe_number(key, number_value);
    value = number_value ? std::optional(static_cast<int>(*number_value)) : std::nullopt;
}

void Fields::maybe_text(std::string_view key, std::optional<std::string>& value, std::string_view word) {
    const auto at = take(key);
    if (!at) return;
    value.reset();
    if (stands_for_nothing(*at, word)) return;
    std::string read;
    text(key, read);
    value = std::move(read);
}

Unknowns Fields::rest() const {
    Unknowns rest;
    object_.each_member([&](std::string_view key, JsonValue value) {
        if (contains(asked_, key)) return;
        rest.push_back({std::string(key), std::string(value.raw())});
        reading_.pass_over(value);
    });
    return rest;
}

} // namespace drawercast::job
