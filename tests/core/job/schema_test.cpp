// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "job/json_tree.h"
#include "job/ranges.h"
#include "job/store.h"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

namespace drawercast::job {
namespace {

/// The schema of the number at a path like "/shop/boards/*/thickness_mm": through properties and list items,
/// and into the one alternative that fits where there are several.
const JsonNode* number_schema(const JsonNode* schema, std::string_view path) {
    if (schema == nullptr) return nullptr;
    if (const auto* alternatives = schema->find("anyOf"); alternatives && !schema->find("properties")) {
        for (const auto& one : alternatives->items)
            if (const auto* found = number_schema(&one, path)) return found;
        return nullptr;
    }
    if (path.empty()) { // a list of numbers: the range is that of its items
        if (const auto* items = schema->find("items")) return number_schema(items, path);
        return schema->find("maximum") ? schema : nullptr;
    }
    const auto end = path.find('/', 1);
    const auto word = path.substr(1, end == std::string_view::npos ? end : end - 1);
    const auto rest = end == std::string_view::npos ? std::string_view() : path.substr(end);
    if (word == "*") return number_schema(schema->find("items"), rest);
    if (const auto* pair = schema->find("prefixItems"))
        return number_schema(&pair->items.at(word == "length_mm" ? 0 : 1), rest);
    const auto* properties = schema->find("properties");
    return properties ? number_schema(properties->find(word), rest) : nullptr;
}

double number_at(const JsonNode& schema, const char* key) {
    const auto* node = schema.find(key);
    return node ? parse_number(node->text).value() : NAN;
}

TEST(Schema, states_the_ranges_that_the_reader_keeps) {
    const auto text = read_file(DRAWERCAST_SOURCE_DIR "/resources/schema/job.schema.json", most_json_bytes);
    ASSERT_TRUE(text);
    const auto schema = parse_json(*text);
    ASSERT_TRUE(schema);
    for (const auto& range : ranges()) {
        const auto* found = number_schema(&*schema, range.path);
        ASSERT_NE(found, nullptr) << range.path;
        EXPECT_EQ(number_at(*found, "maximum"), range.most) << range.path;
        EXPECT_EQ(number_at(*found, range.open_least ? "exclusiveMinimum" : "minimum"), range.least)
            << range.path;
        EXPECT_EQ(found->find("type")->text, range.whole ? "integer" : "number") << range.path;
    }
}

} // namespace
} // namespace drawercast::job
