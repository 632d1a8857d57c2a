// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "job/json_tree.h"
#include "job/ranges.h"
#include "job/store.h"

#include <gtest/gtest.h>

#include <cmath>
#include <optional>
#include <string>
#include <vector>

namespace drawercast::job {
namespace {

using Found = std::optional<JsonValue>;

Found number_schema(const JsonValue& schema, std::string_view path);

Found number_schema(const Found& schema, std::string_view path) {
    return schema ? number_schema(*schema, path) : std::nullopt;
}

/// The schema of the number at a path like "/shop/boards/*/thickness_mm": through properties and list items,
/// and into the one alternative that fits where there are several.
Found number_schema(const JsonValue& schema, std::string_view path) {
    if (const auto alternatives = schema.find("anyOf"); alternatives && !schema.find("properties")) {
        Found found;
        alternatives->each_item([&](JsonValue one) {
            if (!found) found = number_schema(one, path);
        });
        return found;
    }
    if (path.empty()) { // a list of numbers: the range is that of its items
        if (schema.find("items")) return number_schema(schema.find("items"), path);
        return schema.find("maximum") ? Found(schema) : std::nullopt;
    }
    const auto end = path.find('/', 1);
    const auto word = path.substr(1, end == std::string_view::npos ? end : end - 1);
    const auto rest = end == std::string_view::npos ? std::string_view() : path.substr(end);
    if (word == "*") return number_schema(schema.find("items"), rest);
    if (const auto pair = schema.find("prefixItems")) {
        std::vector<JsonValue> both;
        pair->each_item([&](JsonValue item) { both.push_back(item); });
        return number_schema(both.at(word == "length_mm" ? 0 : 1), rest);
    }
    const auto properties = schema.find("properties");
    return properties ? number_schema(properties->find(word), rest) : std::nullopt;
}

double number_at(const JsonValue& schema, const char* key) {
    const auto value = schema.find(key);
    return value ? parse_number(value->raw()).value() : NAN;
}

TEST(Schema, states_the_ranges_that_the_reader_keeps) {
    const auto text = read_file(DRAWERCAST_SOURCE_DIR "/resources/schema/job.schema.json", most_json_bytes);
    ASSERT_TRUE(text);
    const auto schema = parse_json(*text);
    ASSERT_TRUE(schema);
    for (const auto& range : ranges()) {
        const auto found = number_schema(schema->root(), range.path);
        ASSERT_TRUE(found) << range.path;
        EXPECT_EQ(number_at(*found, "maximum"), range.most) << range.path;
        EXPECT_EQ(number_at(*found, range.open_least ? "exclusiveMinimum" : "minimum"), range.least)
            << range.path;
        EXPECT_EQ(found->find("type")->text(), range.whole ? "integer" : "number") << range.path;
    }
}

} // namespace
} // namespace drawercast::job
