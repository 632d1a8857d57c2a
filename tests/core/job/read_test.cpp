// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/json_tree.h"
#include "job/ranges.h"
#include "job/read.h"
#include "job/write.h"

#include <gtest/gtest.h>

#include <string>

namespace drawercast::job {
namespace {

std::string job_text(const std::string& members) {
    return R"({"format": "drawercast-job", "version": 1)" + (members.empty() ? "" : ", " + members) + "}";
}

TEST(ReadJob, an_empty_job_is_all_defaults) {
    const auto job = read_job(job_text(""));
    ASSERT_TRUE(job);
    EXPECT_EQ(*job, Job{});
}

struct Refused {
    const char* name;
    std::string text;
    const char* code;
    const char* where; ///< part of it
};

TEST(ReadJob, refuses_and_says_where) {
    const Refused rows[] = {
        {"empty", "", "json", "line 1, column 1"},
        {"other format", R"({"format": "x"})", "format", "/format (line 1, column 12)"},
        {"no object", "[]", "format", "line 1"},
        {"no version", R"({"format": "drawercast-job"})", "version", "/version"},
        {"newer", "{\"format\": \"drawercast-job\",\n \"version\": 2, \"objects\": 7}", "version-newer",
         "/version (line 2, column 13)"},
        {"trailing", job_text("") + " x", "json", "line 1, column"},
        {"duplicate", job_text(R"("title": "a", "title": "b")"), "json", "line 1, column"},
        {"not a number", job_text(R"("shop": {"people": "two"})"), "number", "/shop/people"},
        {"NaN", job_text(R"("shop": {"altitude_m": NaN})"), "json", "line 1"},
        {"too large", job_text(R"("shop": {"altitude_m": 1e999})"), "number", "/shop/altitude_m"},
        {"out of range", job_text(R"("foam": {"expansion": 0.5})"), "number-range", "/foam/expansion"},
        {"whole", job_text(R"("shop": {"people": 1.5})"), "number-whole", "/shop/people"},
        {"word", job_text(R"("display_units": "furlong")"), "value", "/display_units"},
        {"list", job_text(R"("objects": {})"), "value", "/objects"},
        {"no id", job_text(R"("objects": [{"levels": [{"outline": {"circle": [9]}, "depth_mm": 3}]}])"),
         "missing", "/objects/0"},
        {"no levels", job_text(R"("objects": [{"id": "i1", "levels": []}])"), "missing", "/objects/0"},
        {"bad outline",
         job_text(R"("objects": [{"id": "i1", "levels": [{"outline": {"star": [1]}, "depth_mm": 3}]}])"),
         "outline", "/objects/0/levels/0/outline"},
        {"bow tie",
         job_text(
             R"("objects": [{"id": "i1", "levels": [{"outline": {"polygon": [[0,0],[9,9],[9,0],[0,9]]}, "depth_mm": 3}]}])"),
         nullptr, "/objects/0/levels/0/outline/polygon"},
        {"cup times", job_text(R"("foam": {"cup": {"start_s": 90, "half_s": 50}})"), "cup-times",
         "/foam/cup"},
        {"rise before pot life", job_text(R"("foam": {"rise_s": 10})"), "foam-times", "/foam"},
        {"clamp without capacity", job_text(R"("shop": {"closures": [{"name": "c", "kind": "clamp"}]})"),
         "missing", "/shop/closures/0"},
        {"unknown object",
         job_text(R"("drawers": [{"id": "d1", "outline": {"rect": [9,9]}, "pockets": [{"object": "i9"}]}])"),
         "object-unknown", "/drawers/0/pockets/0"},
    };
    for (const auto& row : rows) {
        const auto job = read_job(row.text);
        ASSERT_FALSE(job) << row.name;
        const Problem problem = job.error().front(); // error() answers by value
        if (row.code != nullptr) {
            EXPECT_EQ(problem.code, row.code) << row.name;
        }
        EXPECT_NE(problem.where.find(row.where), std::string::npos) << row.name << ": " << problem.where;
        EXPECT_FALSE(problem.what.empty()) << row.name;
        EXPECT_FALSE(problem.fix.empty()) << row.name;
    }
}

TEST(ReadJob, reports_all_problems_at_once) {
    const auto job =
        read_job(job_text(R"("shop": {"people": 0, "drivers": -1, "altitude_m": true}, "currency": 4)"));
    ASSERT_FALSE(job);
    EXPECT_EQ(job.error().size(), 4u);
}

TEST(ReadJob, the_same_pocket_or_id_twice_is_refused) {
    const std::string object = R"({"id": "i1", "levels": [{"outline": {"circle": [9]}, "depth_mm": 3}]})";
    const std::string drawer =
        R"({"id": "d1", "outline": {"rect": [99,99]}, "pockets": [{"object": "i1", "n": 2}, {"object": "i1", "n": 2}]})";
    EXPECT_EQ(
        read_job(job_text(R"("objects": [)" + object + "], \"drawers\": [" + drawer + "]")).error()[0].code,
        "pocket-twice");
    EXPECT_EQ(read_job(job_text(R"("objects": [)" + object + ", " + object + "]")).error()[0].code,
              "id-twice");
}

TEST(ReadJob, hostile_bytes_end_in_words) {
    const std::string hostile[] = {
        std::string(200000, '['),
        std::string(200000, '{'),
        job_text("\"title\": " + std::string(100000, '[')),
        std::string(1000, '\0'),
        "\"\xff\xfe\"",
        job_text("\"title\": \"\xc3\x28\""),
        job_text(R"("title": "\ud800")"),
        std::string(most_json_bytes + 1, ' '),
    };
    for (const auto& text : hostile) {
        const auto job = read_job(text);
        ASSERT_FALSE(job);
        EXPECT_FALSE(job.error().front().what.empty());
    }
}

TEST(ReadJob, twenty_megabytes_are_read_or_refused_in_words) {
    std::string list = "\"later\": [";
    while (list.size() < 20'000'000) list += "123.25,";
    const auto kept = read_job(job_text(list + "1]")); // unknown to this version: carried along
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->unknown.size(), 1u);
    std::string objects = "\"objects\": [";
    while (objects.size() < 20'000'000) objects += "{},";
    EXPECT_FALSE(read_job(job_text(objects + "{}]")));
}

TEST(ReadJob, a_byte_order_mark_is_passed_over) { EXPECT_TRUE(read_job("\xEF\xBB\xBF" + job_text(""))); }

TEST(ReadJob, lengths_enter_in_millionths) {
    const auto job = read_job(job_text(R"("mold": {"fillet_mm": 5.00000004})"));
    ASSERT_TRUE(job);
    EXPECT_EQ(job->mold.fillet_mm, 5);
}

TEST(Ranges, each_is_a_range) {
    for (const auto& range : ranges()) EXPECT_LT(range.least, range.most) << range.path;
}

TEST(JsonTree, values_know_their_place) {
    const std::string text = "{\"a\": -1.50e3 ,\n \"b\": [1, {\"c\": \"x\\\"]\"}]}";
    const auto tree = parse_json(text);
    ASSERT_TRUE(tree);
    const auto raw = [&](const JsonNode& node) { return text.substr(node.begin, node.end - node.begin); };
    EXPECT_EQ(raw(*tree), text);
    EXPECT_EQ(raw(*tree->find("a")), "-1.50e3");
    EXPECT_EQ(tree->find("a")->text, "-1.50e3");
    EXPECT_EQ(raw(*tree->find("b")), "[1, {\"c\": \"x\\\"]\"}]");
    EXPECT_EQ(raw(tree->find("b")->items[1]), "{\"c\": \"x\\\"]\"}");
    EXPECT_EQ(tree->find("b")->items[1].find("c")->text, "x\"]");
    EXPECT_EQ(place_text(text, text.find('b')), "line 2, column 3");
}

} // namespace
} // namespace drawercast::job
