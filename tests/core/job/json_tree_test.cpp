// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/json_tree.h"

#include <gtest/gtest.h>

#include <random>
#include <string>
#include <vector>

namespace drawercast::job {
namespace {

std::vector<JsonValue> items_of(const JsonValue& list) {
    std::vector<JsonValue> items;
    list.each_item([&](JsonValue item) { items.push_back(item); });
    return items;
}

TEST(JsonTree, values_know_their_text_and_their_place) {
    const std::string text = "{\"a\": -1.50e3 ,\n \"b\": [1, {\"c\": \"x\\\"]\"}], \"d/~\": [ ] }  ";
    const auto tree = parse_json(text);
    ASSERT_TRUE(tree);
    const JsonValue root = tree->root();
    EXPECT_EQ(root.raw(), text.substr(0, text.size() - 2));
    EXPECT_EQ(root.size(), 3u);
    EXPECT_EQ(english(root.where()), "line 1, column 1");
    EXPECT_EQ(root.find("a")->raw(), "-1.50e3");
    EXPECT_EQ(root.find("b")->raw(), "[1, {\"c\": \"x\\\"]\"}]");
    const auto items = items_of(*root.find("b"));
    ASSERT_EQ(items.size(), 2u);
    EXPECT_EQ(items[1].raw(), "{\"c\": \"x\\\"]\"}");
    EXPECT_EQ(english(items[1].where()), "/b/1 (line 2, column 11)");
    EXPECT_EQ(items[1].find("c")->text(), "x\"]");
    EXPECT_EQ(items[1].find("c")->pointer(), "/b/1/c");
    EXPECT_EQ(root.find("d/~")->pointer(), "/d~1~0");
    EXPECT_EQ(root.find("d/~")->raw(), "[ ]");
    EXPECT_FALSE(root.find("e"));
    EXPECT_FALSE(items[0].find("e"));
}

TEST(JsonTree, strings_are_unescaped) {
    const auto tree = parse_json(R"(["plain", "", "\u00e9\ud83d\ude00", "a\\\"\/\b\f\n\r\t", "é"])");
    ASSERT_TRUE(tree);
    const auto items = items_of(tree->root());
    EXPECT_EQ(items[0].text(), "plain");
    EXPECT_EQ(items[1].text(), "");
    EXPECT_EQ(items[2].text(), "é😀");
    EXPECT_EQ(items[3].text(), "a\\\"/\b\f\n\r\t");
    EXPECT_EQ(items[4].text(), "é");
}

TEST(JsonTree, keys_that_stand_twice_are_told_in_order) {
    const auto tree = parse_json(R"({"a": {"x": 1, "y": 2, "x": 3}, "b": 0, "a": 1, "\u0061": 2})");
    ASSERT_TRUE(tree);
    const auto keys = tree->repeated_keys();
    ASSERT_EQ(keys.size(), 3u);
    EXPECT_EQ(english(keys[0].where()), "/a/x (line 1, column 24)");
    EXPECT_EQ(english(keys[1].where()), "/a (line 1, column 41)");
    EXPECT_EQ(keys[2].text(), "a");
    EXPECT_EQ(tree->root().find("a")->kind(), JsonKind::object); // the first one
}

struct Refused {
    const char* name;
    std::string text;
    const char* code;
    const char* where;
};

TEST(JsonTree, refuses_and_says_where) {
    const Refused rows[] = {
        {"empty", "", "json", "line 1, column 1"},
        {"blank", " \n ", "json", "line 2, column 2"},
        {"torn off", "{\"a\": [1, 2", "json", "line 1, column 12"},
        {"trailing", "[1]\n x", "json", "line 2, column 2"},
        {"NaN", "{\"a\": NaN}", "json", "line 1, column 7"},
        {"infinity", "[1, -Infinity]", "json", "line 1, column 6"},
        {"plus", "[+1]", "json", "line 1, column 2"},
        {"leading zero", "[01]", "json", "line 1, column 3"},
        {"no digit after the point", "[1.]", "json", "line 1, column 4"},
        {"comma at the end", "[1,]", "json", "line 1, column 4"},
        {"comment", "[1 /* one */]", "json", "line 1, column 4"},
        {"single quotes", "['a']", "json", "line 1, column 2"},
        {"control character", "[\"a\nb\"]", "json", "line 1, column 4"},
        {"lone surrogate", R"(["\ud800"])", "json", "line 1, column 9"},
        {"invalid UTF-8", "[\"a\xff\"]", "json", "line 1, column 4"},
        {"overlong UTF-8", "[\"\xc0\xaf\"]", "json", "line 1, column 3"},
        {"NUL", std::string("[1,\0]", 5), "json", "line 1, column 4"},
        {"byte order mark within", "[1,\xEF\xBB\xBF]", "json", "line 1, column 4"},
        {"deep lists", std::string(200'000, '['), "json-deep", "line 1, column 65"},
        {"deep objects",
         [] {
             std::string text;
             for (int i = 0; i < 200'000; ++i) text += "{\"a\":";
             return text;
         }(),
         "json-deep", "line 1, column 321"},
        {"large", std::string(most_json_bytes + 1, ' '), "json-size", ""},
    };
    for (const auto& row : rows) {
        const auto tree = parse_json(row.text);
        ASSERT_FALSE(tree) << row.name;
        const Problem problem = tree.error();
        EXPECT_EQ(problem.code, row.code) << row.name;
        EXPECT_EQ(english(problem.where), row.where) << row.name;
        EXPECT_FALSE(problem.what.empty()) << row.name;
        EXPECT_FALSE(problem.fix.empty()) << row.name;
    }
}

TEST(JsonTree, holds_as_many_values_as_it_says_and_no_more) {
    const auto list_of = [](std::size_t count) {
        std::string text = "[0";
        for (std::size_t i = 1; i < count; ++i) text += ",0";
        return text + "]";
    };
    EXPECT_TRUE(parse_json(list_of(most_json_values - 1)));
    const auto over = parse_json(list_of(most_json_values));
    ASSERT_FALSE(over);
    EXPECT_EQ(over.error().code, "json-values");
}

/// A random JSON text, and the paths at which its scalars stand in it.
class RandomText {
  public:
    explicit RandomText(unsigned seed) : random_(seed) { value("", 0); }
    std::string text;
    std::vector<std::pair<std::string, std::string>> scalars; ///< pointer, raw text

  private:
    int pick(int most) { return std::uniform_int_distribution<int>(0, most)(random_); }
    void blank() {
        static const char* const blanks[] = {"", " ", "\n", "\t\r\n  ", ""};
        text += blanks[pick(4)];
    }
    void value(const std::string& pointer, int depth) {
        static const char* const plain[] = {"null",    "true",          "false",        "0",
                                            "-1.5e-7", "1e999",         "12",           "\"a,b\"",
                                            "\"\"",    "\"[\\\"\\\\\"", "\"é:\\u00e9\""};
        const int kind = depth > 5 ? 0 : pick(3);
        if (kind < 2) {
            const std::string raw = plain[pick(10)];
            scalars.emplace_back(pointer, raw);
            text += raw;
            return;
        }
        const bool object = kind == 2;
        text += object ? '{' : '[';
        for (int i = 0, count = pick(4); i < count; ++i) {
            if (i > 0) text += ',';
            blank();
            const std::string key = object ? "k" + std::to_string(i) : std::to_string(i);
            if (object) text += "\"" + key + "\"", blank(), text += ':', blank();
            value(pointer + "/" + key, depth + 1);
            blank();
        }
        text += object ? '}' : ']';
    }
    std::mt19937 random_;
};

void gather(const JsonValue& at, std::vector<std::pair<std::string, std::string>>& scalars) {
    if (at.kind() == JsonKind::array)
        at.each_item([&](JsonValue item) { gather(item, scalars); });
    else if (at.kind() == JsonKind::object)
        at.each_member([&](std::string_view, JsonValue value) { gather(value, scalars); });
    else
        scalars.emplace_back(at.pointer(), at.raw());
}

TEST(JsonTree, every_scalar_is_found_at_its_pointer_whatever_the_spacing) {
    for (unsigned seed = 0; seed < 2000; ++seed) {
        const RandomText random(seed);
        const auto tree = parse_json(random.text);
        ASSERT_TRUE(tree) << random.text;
        std::vector<std::pair<std::string, std::string>> found;
        gather(tree->root(), found);
        ASSERT_EQ(found, random.scalars) << "seed " << seed << "\n" << random.text;
    }
}

} // namespace
} // namespace drawercast::job
