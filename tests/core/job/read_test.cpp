// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/json_tree.h"
#include "job/read.h"
#include "job/write.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

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
        {"no version", R"({"format": "drawercast-job"})", "version", "line 1, column 1"},
        {"version by halves", R"({"format": "drawercast-job", "version": 1.5})", "version", "/version"},
        {"version in quotes", R"({"format": "drawercast-job", "version": "1"})", "version", "/version"},
        {"newer", "{\"format\": \"drawercast-job\",\n \"version\": 2, \"objects\": 7}", "version-newer",
         "/version (line 2, column 13)"},
        {"trailing", job_text("") + " x", "json", "line 1, column"},
        {"newer, and told nothing else",
         R"({"version": 1e3, "format": "drawercast-job", "title": 1, "title": 2})", "version-newer",
         "/version"},
        {"duplicate", job_text(R"("title": "a", "title": "b")"), "key-twice", "/title (line 1, column 58)"},
        {"duplicate, deep and unknown", job_text(R"("later": [{"a": 1, "a": 1}])"), "key-twice",
         "/later/0/a"},
        {"not a number", job_text(R"("shop": {"people": "two"})"), "number", "/shop/people"},
        {"NaN", job_text(R"("shop": {"altitude_m": NaN})"), "json", "line 1"},
        {"too large", job_text(R"("shop": {"altitude_m": 1e999})"), "number", "/shop/altitude_m"},
        {"out of range", job_text(R"("foam": {"expansion": 0.5})"), "number-range", "/foam/expansion"},
        {"whole", job_text(R"("shop": {"people": 1.5})"), "number-whole", "/shop/people"},
        {"word", job_text(R"("display_units": "furlong")"), "value", "/display_units"},
        {"list", job_text(R"("objects": {})"), "value", "/objects"},
        {"a supply twice", job_text(R"("shop": {"supplies": [{"supply": "clay"}, {"supply": "clay"}]})"),
         "supply-twice", "/shop/supplies/1"},
        {"an empty package", job_text(R"("shop": {"supplies": [{"supply": "clay", "amount": 0}]})"),
         "number-range", "/shop/supplies/0/amount"},
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
        {"tiny number", job_text(R"("shop": {"altitude_m": 1e-999})"), "number", "/shop/altitude_m"},
        {"huge whole", job_text(R"("revision": 12345678901234567890123)"), "number-range", "/revision"},
        {"negative zero is no less than zero", job_text(R"("foam": {"pot_life_s": -0})"), "number-range",
         "/foam/pot_life_s"},
        {"a drill of no size", job_text(R"("shop": {"drills_mm": [3, 0]})"), "number-range",
         "/shop/drills_mm/1"},
        {"three sides of a sheet", job_text(R"("shop": {"boards": [{"name": "b", "sheet_mm": [9, 9, 9]}]})"),
         "number-range", "/shop/boards/0/sheet_mm/0"},
        {"a point of three",
         job_text(
             R"("drawers": [{"id": "d1", "outline": {"rect": [9, 9]}, "pours": [{"at": [1, 2, 3], "ml": 5}]}])"),
         "point", "/drawers/0/pours/0/at"},
        {"a vent without a place",
         job_text(R"("drawers": [{"id": "d1", "outline": {"rect": [9, 9]}, "vents": {"keep": [{}]}}])"),
         "missing", "/drawers/0/vents/keep/0"},
        {"five levels", job_text(R"("objects": [{"id": "i1", "levels": [1, 2, 3, 4, 5]}])"), "value",
         "/objects/0/levels"},
        {"a depth of its own though through",
         job_text(
             R"("objects": [{"id": "i1", "levels": [{"outline": {"circle": [9]}, "through": true, "depth_mm": 3}]}])"),
         "value", "/objects/0/levels/0/depth_mm"},
        {"lying and outlined",
         job_text(
             R"("objects": [{"id": "i1", "levels": [{"lying": [[50, 14]], "axis_mm": 5, "outline": {"circle": [9]}}]}])"),
         "value", "/objects/0/levels/0/outline"},
        {"lying above the face",
         job_text(R"("objects": [{"id": "i1", "levels": [{"lying": [[50, 14]], "axis_mm": -7}]}])"), "lying",
         "/objects/0/levels/0"},
        {"two outlines in one",
         job_text(
             R"("objects": [{"id": "i1", "levels": [{"outline": {"circle": [9], "rect": [9, 9]}, "depth_mm": 3}]}])"),
         "outline", "/objects/0/levels/0/outline"},
        {"a mark in an id",
         job_text(R"("objects": [{"id": "i#1", "levels": [{"outline": {"circle": [9]}, "depth_mm": 3}]}])"),
         "id", "/objects/0"},
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
        EXPECT_NE(english(problem.where).find(row.where), std::string::npos)
            << row.name << ": " << english(problem.where);
        EXPECT_FALSE(problem.what.empty()) << row.name;
        EXPECT_FALSE(problem.fix.empty()) << row.name;
    }
}

TEST(ReadJob, reports_all_problems_at_once) {
    const auto job = read_job(job_text(
        R"("shop": {"people": 0, "drivers": -1, "altitude_m": true}, "currency": 4, "title": "", "title": "",
           "objects": [{"id": "i1", "levels": [{"outline": {"circle": [0]}, "depth_mm": 3}]}],
           "drawers": [{"id": "d1", "outline": {"rect": [9, 9]}, "pockets": [{"object": "i2"}]}])"));
    ASSERT_FALSE(job);
    std::vector<std::string> codes;
    for (const Problem& problem : job.error()) codes.push_back(problem.code);
    EXPECT_THAT(codes, ::testing::UnorderedElementsAre("key-twice", "number", "number-range", "number-range",
                                                       "number-range", "value", "object-unknown"));
}

TEST(ReadJob, stops_after_a_hundred) {
    std::string drills = "0";
    for (int i = 0; i < 500; ++i) drills += ", 0";
    const auto job = read_job(job_text("\"shop\": {\"drills_mm\": [" + drills + "]}"));
    ASSERT_FALSE(job);
    EXPECT_EQ(job.error().size(), 100u);
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

TEST(ReadJob, every_place_that_may_grow_keeps_what_it_does_not_know) {
    const std::string job_json = job_text(R"(
        "later": {"a": [1.50]}, "shop": {"later": 1.0, "boards": [{"name": "b", "later": 2}],
        "stiffeners": [{"name": "s", "later": 3}], "closures": [{"name": "c", "later": 4}]},
        "foam": {"later": 5, "kits": [{"name": "k", "later": 6}], "cup": {"later": 7}},
        "mold": {"later": 8, "stiffeners": {"count": 2, "name": "s", "later": 9}}, "minimums": {"later": 10},
        "objects": [{"id": "i1", "later": 11, "levels": [{"outline": {"circle": [9]}, "depth_mm": 3, "later": 12}]}],
        "drawers": [{"id": "d1", "outline": {"rect": [99, 99]}, "later": 13,
          "obstructions": [{"outline": {"circle": [9]}, "later": 14}],
          "pockets": [{"object": "i1", "later": 15, "notches": [{"outline": {"circle": [9]}, "depth_mm": 2, "later": 16}]}],
          "vents": {"keep": [{"at": [1, 2], "later": 17}], "later": 18}, "pours": [{"at": [1, 2], "ml": 5, "later": 19}]}],
        "left_as_is": [{"code": "wall-thin", "later": 20}])");
    const auto job = read_job(job_json);
    ASSERT_TRUE(job) << one_line(job.error().front());
    const std::string text = write_job(*job);
    EXPECT_NE(text.find("\"later\": {\"a\": [1.50]}"), std::string::npos);
    EXPECT_NE(text.find("\"later\": 1.0"), std::string::npos);
    for (int i = 2; i <= 20; ++i)
        EXPECT_NE(text.find("\"later\": " + std::to_string(i)), std::string::npos) << i;
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
    const auto filled = [](const std::string& head, const std::string& item, const std::string& tail) {
        std::string text = head;
        while (text.size() < 20'000'000) text += item;
        return job_text(text + tail);
    };
    const auto kept = read_job(filled("\"later\": [", "123.25,", "1]")); // unknown here: carried along
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->unknown.size(), 1u);
    EXPECT_TRUE(read_job(filled("\"later\": [", "\"a\\nb\",", "1]")));
    for (const char* item : {"1,", "{},", "[],"}) {
        const auto many = read_job(filled("\"objects\": [", item, "0]"));
        ASSERT_FALSE(many) << item;
        EXPECT_THAT(many.error().front().code, ::testing::AnyOf("json-values", "value")) << item;
    }
}

TEST(ReadJob, a_few_bytes_cannot_ask_for_endless_arcs) {
    std::string objects;
    for (int i = 0; i < 5000; ++i) {
        objects += (i == 0 ? "" : ",") + (R"({"id": "i)" + std::to_string(i) + R"(", "levels": [)");
        for (int level = 0; level < 4; ++level)
            objects += std::string(level == 0 ? "" : ",") +
                       R"({"outline": {"polygon": [[0, 0, 4999], [9999, 0, 4999]]}, "depth_mm": 9})";
        objects += "]}";
    }
    const auto job = read_job(job_text("\"objects\": [" + objects + "]"));
    ASSERT_FALSE(job);
    ASSERT_EQ(job.error().size(), 1u); // told once
    EXPECT_EQ(job.error().front().code, "outline-many-corners");
}

TEST(ReadJob, a_byte_order_mark_is_passed_over) { EXPECT_TRUE(read_job("\xEF\xBB\xBF" + job_text(""))); }

TEST(ReadJob, lengths_enter_in_millionths) {
    const auto job = read_job(job_text(R"("mold": {"fillet_mm": 5.00000004})"));
    ASSERT_TRUE(job);
    EXPECT_EQ(job->mold.fillet_mm, 5);
}

/// What is kept of a length is what must be in its range: else a job that was read would not be read again.
TEST(ReadJob, a_length_that_is_rounded_away_is_refused) {
    const auto level = [](const char* members) {
        return job_text(std::string(R"("objects": [{"id": "i1", "levels": [{)") + members + "}]}]");
    };
    const std::pair<std::string, const char*> rows[] = {
        {level(R"("outline": {"circle": [9]}, "depth_mm": 1e-9)"), "/objects/0/levels/0/depth_mm"},
        {level(R"("outline": {"circle": [1e-9]}, "depth_mm": 9)"), "/objects/0/levels/0/outline/circle/0"},
        {level(R"("lying": [[1e-9, 5]], "axis_mm": 3)"), "/objects/0/levels/0/lying/0/0"}};
    for (const auto& [text, where] : rows) {
        const auto job = read_job(text);
        ASSERT_FALSE(job) << where;
        EXPECT_EQ(job.error().front().code, "number-range");
        EXPECT_EQ(job.error().front().where.name, where);
    }
    EXPECT_TRUE(read_job(level(R"("outline": {"circle": [9]}, "depth_mm": 1e-6)")));
}

TEST(ReadJob, tells_keys_it_does_not_know_by_where_they_stand) {
    const std::string many = [] {
        std::string members;
        for (int i = 0; i < 120; ++i) members += ", \"k" + std::to_string(i) + "\": 0";
        return members;
    }();
    const auto keys = unknown_keys(
        job_text(R"("titel": "x", "drawers": [{"id": "d1", "outline": {"rect": [9, 9]}, "thickness_mm": 3}],
                    "shop": {"boards": [{"name": "a"}, {"name": "b", "thick": {"mm": 9}}]})"));
    EXPECT_THAT(keys.paths,
                ::testing::ElementsAre("titel", "drawers[0].thickness_mm", "shop.boards[1].thick"));
    EXPECT_EQ(keys.more, 0U);
    EXPECT_TRUE(unknown_keys(job_text(R"("title": "x")")).paths.empty());
    EXPECT_TRUE(unknown_keys("no job").paths.empty());
    const auto crowd = unknown_keys(job_text(R"("shop": {"people": 2)" + many + "}"));
    EXPECT_EQ(crowd.paths.size(), 100U);
    EXPECT_EQ(crowd.more, 20U);
}

} // namespace
} // namespace drawercast::job
