// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/paste.h"
#include "job/write.h"

#include <gtest/gtest.h>

#include <chrono>
#include <random>
#include <string>
#include <vector>

namespace drawercast::job {
namespace {

std::vector<PastedRow> read(std::string_view text, DisplayUnits units = DisplayUnits::mm) {
    const auto rows = read_pasted(text, paste_units(units));
    EXPECT_TRUE(rows.has_value());
    return rows ? *rows : std::vector<PastedRow>{};
}

struct Expectation {
    std::string name;
    double length_mm, width_mm, height_mm, mass_g;
    int count;
};

void expect_object(const PastedRow& row, const Expectation& e) {
    ASSERT_TRUE(row.read.has_value()) << one_line(row.read.error());
    const Object& object = *row.read;
    EXPECT_EQ(object.name, e.name);
    EXPECT_DOUBLE_EQ(object.height_mm, e.height_mm);
    EXPECT_NEAR(object.mass_g, e.mass_g, 1e-9);
    EXPECT_EQ(object.count, e.count);
    ASSERT_EQ(object.levels.size(), 1U);
    const auto& sunk = std::get<Sunk>(object.levels[0].form);
    const auto& outline = std::get<shape::Rectangle>(sunk.outline);
    EXPECT_DOUBLE_EQ(outline.width_mm, e.length_mm);
    EXPECT_DOUBLE_EQ(outline.height_mm, e.width_mm);
    EXPECT_NEAR(sunk.depth_mm, paste_depth_share * e.height_mm, 1e-6);
}

struct Read {
    std::string what;
    std::string text;
    DisplayUnits units;
    Expectation first;
};

TEST(Paste, pockets_are_as_deep_as_the_list_says) {
    const std::vector<std::pair<std::string, std::string>> cases{
        {"all three sizes and a depth", "name\tlength\twidth\theight\tdepth\nLogger\t140\t90\t60\t45\n"},
        {"a pocket's own word", "name\tlength\tdepth\theight\tpocket (cm)\nLogger\t140\t90\t60\t4.5\n"},
        {"depth of the pocket", "name\tlength\twidth\tdepth of pocket\theight\nLogger\t140\t90\t45\t60\n"},
        {"German", "Name;Länge;Breite;Höhe;Taschentiefe\nLogger;140;90;60;45\n"},
    };
    for (const auto& [what, text] : cases) {
        const auto rows = read_pasted(text, {});
        ASSERT_TRUE(rows.has_value() && rows->size() == 1 && rows->front().read) << what;
        const Object& object = *rows->front().read;
        const auto& sunk = std::get<Sunk>(object.levels[0].form);
        EXPECT_DOUBLE_EQ(sunk.depth_mm, 45) << what;
        EXPECT_EQ(std::get<shape::Rectangle>(sunk.outline), (shape::Rectangle{140, 90, 0})) << what;
        EXPECT_DOUBLE_EQ(object.height_mm, 60) << what;
        EXPECT_TRUE(object.note.empty()) << what;
    }
    const auto unsaid = read_pasted("name\tlength\twidth\theight\tdepth\nLogger\t140\t90\t60\t\n", {});
    ASSERT_TRUE(unsaid.has_value() && unsaid->front().read);
    EXPECT_DOUBLE_EQ(std::get<Sunk>(unsaid->front().read->levels[0].form).depth_mm, 36);
}

TEST(Paste, reads) {
    const auto mm = DisplayUnits::mm;
    const auto inch = DisplayUnits::inch_32;
    const std::vector<Read> cases{
        {"tabs, no header, default order",
         "Data logger\t140\t90\t45\t640\t2\n",
         mm,
         {"Data logger", 140, 90, 45, 640, 2}},
        {"no mass, no count", "Data logger\t140\t90\t45", mm, {"Data logger", 140, 90, 45, 0, 1}},
        {"semicolons and decimal commas",
         "Wind vane;82,5;30,25;20;0,12 kg;1\n",
         mm,
         {"Wind vane", 82.5, 30.25, 20, 120, 1}},
        {"commas", "Rain gauge,200,180,150,900,1\n", mm, {"Rain gauge", 200, 180, 150, 900, 1}},
        {"commas with quoted decimal commas",
         "Rain gauge,\"200,5\",\"180,5\",150,900,1\n",
         mm,
         {"Rain gauge", 200.5, 180.5, 150, 900, 1}},
        {"header in another order",
         "Qty\tHeight\tName\tWidth\tLength\tWeight\n3\t45\tData logger\t90\t140\t640\n",
         mm,
         {"Data logger", 140, 90, 45, 640, 3}},
        {"a German header and decimal commas",
         "Bezeichnung;Länge (mm);BREITE;Höhe;Gewicht;Stück\nWindfahne;82,5;30,25;20;120;2\n",
         mm,
         {"Windfahne", 82.5, 30.25, 20, 120, 2}},
        {"units in the header",
         "Name,Length (cm),Width [in],Height mm,Mass (kg),Count\nLogger,14,2,45,0.64,1\n",
         mm,
         {"Logger", 140, 50.8, 45, 640, 1}},
        {"inch sign in the header",
         "name\tL (\")\tW (\")\tH (\")\nLogger\t5 1/2\t3\t1-3/4\n",
         mm,
         {"Logger", 139.7, 76.2, 44.45, 0, 1}},
        {"units in the cells",
         "Logger\t14 cm\t3 1/2\"\t45 mm\t1.5 lb\t1\n",
         mm,
         {"Logger", 140, 88.9, 45, 680.388555, 1}},
        {"a cell's unit goes before the header's",
         "name\tlength cm\twidth\theight\nLogger\t140 mm\t90\t45\n",
         mm,
         {"Logger", 140, 90, 45, 0, 1}},
        {"ounces, capitals",
         "Logger\t140 MM\t9 CM\t45\t8 OZ\t1\n",
         mm,
         {"Logger", 140, 90, 45, 226.796185, 1}},
        {"bare numbers in the job's units",
         "Logger\t5 1/2\t3.5\t1 3/4\t2\t1\n",
         inch,
         {"Logger", 139.7, 88.9, 44.45, 907.18474, 1}},
        {"vulgar fractions", "Logger\t5½\t3½ in\t1¾”\n", inch, {"Logger", 139.7, 88.9, 44.45, 0, 1}},
        {"width, depth, height",
         "Item;Width;Depth;Height\nLogger;140;90;45\n",
         mm,
         {"Logger", 140, 90, 45, 0, 1}},
        {"length, width, depth",
         "Item;Length;Width;Depth\nLogger;140;90;45\n",
         mm,
         {"Logger", 140, 90, 45, 0, 1}},
        {"sizes in one cell",
         "Object;Size;Weight\nLogger;140 x 90 x 45 mm;640 g\n",
         mm,
         {"Logger", 140, 90, 45, 640, 1}},
        {"sizes in one cell, in",
         "Object;Dimensions (in);Qty\nLogger;5 1/2 × 3 1/2 × 1 3/4;2\n",
         mm,
         {"Logger", 139.7, 88.9, 44.45, 0, 2}},
        {"decimal commas seen elsewhere make 1,500 plain",
         "A;1,500 m;90;45\nB;82,5;90;45\n",
         mm,
         {"A", 1500, 90, 45, 0, 1}},
        {"quotes, separators and line ends in them",
         "\"Logger, \"\"old\"\"\nspare\"\t140\t90\t45\r\n",
         mm,
         {"Logger, \"old\" spare", 140, 90, 45, 0, 1}},
        {"an inch sign is no quote", "Logger\t5\"\t3\"\t2\"\n", mm, {"Logger", 127, 76.2, 50.8, 0, 1}},
        {"blank lines and a byte order mark",
         "\xEF\xBB\xBF\n\t\t\t\nLogger\t140\t90\t45\n",
         mm,
         {"Logger", 140, 90, 45, 0, 1}},
        {"no names", "140\t90\t45\t640\n", mm, {"", 140, 90, 45, 640, 1}},
        {"numbered rows", "1\tLogger\t140\t90\t45\n2\tVane\t80\t30\t20\n", mm, {"Logger", 140, 90, 45, 0, 1}},
        {"header of unknown words",
         "Ding\tLang\tBreit\tHoch\nLogger\t140\t90\t45\n",
         mm,
         {"Logger", 140, 90, 45, 0, 1}},
        {"old line ends", "Logger\t140\t90\t45\rVane\t80\t30\t20", mm, {"Logger", 140, 90, 45, 0, 1}},
    };
    for (const Read& c : cases) {
        SCOPED_TRACE(c.what);
        const auto rows = read(c.text, c.units);
        ASSERT_FALSE(rows.empty());
        expect_object(rows.front(), c.first);
    }
}

struct Refused {
    std::string what;
    std::string row;
    std::string code;
    std::string where;
};

TEST(Paste, keeps_what_it_cannot_read) {
    const std::vector<Refused> cases{
        {"words for a size", "Logger\tabout 14\t90\t45", "length", "length"},
        {"two readings", "Logger\t1,500\t90\t45", "length-ambiguous", "length"},
        {"no height", "Logger\t140\t90", "paste-missing", "height"},
        {"nothing but a name", "Spares", "paste-missing", "length"},
        {"size of nothing", "Logger\t140\t0\t45", "paste-size", "width"},
        {"negative", "Logger\t140\t90\t-45", "paste-size", "height"},
        {"no mass", "Logger\t140\t90\t45\theavy", "number", "mass"},
        {"mass below nothing", "Logger\t140\t90\t45\t-3", "number-range", "mass"},
        {"half an object", "Logger\t140\t90\t45\t640\t1.5", "paste-count", "count"},
        {"far too many", "Logger\t140\t90\t45\t640\t1000000", "paste-count", "count"},
        {"deeper than any insert", "Mast\t140\t90\t1500", "number-range", "height"},
        {"longer than any drawer", "Mast\t14000\t90\t45", "number-range", "length"},
    };
    for (const Refused& c : cases) {
        SCOPED_TRACE(c.what);
        const std::string good = "Vane\t80\t30\t20\t100\t1";
        const auto rows = read(good + "\n" + c.row + "\n" + good + "\n");
        ASSERT_EQ(rows.size(), 3U);
        EXPECT_TRUE(rows[0].read.has_value());
        EXPECT_TRUE(rows[2].read.has_value());
        ASSERT_FALSE(rows[1].read.has_value());
        EXPECT_EQ(rows[1].text, c.row);
        EXPECT_EQ(rows[1].line, 2);
        EXPECT_EQ(rows[1].read.error().code, c.code);
        EXPECT_EQ(english(rows[1].read.error().where), c.where);
    }
}

TEST(Paste, unknown_columns_go_to_the_note) {
    const auto rows = read("Name;Shelf;Length;Width;Height;Remark\nLogger;B4;140;90;45;handle with care\n");
    ASSERT_EQ(rows.size(), 1U);
    ASSERT_TRUE(rows[0].read.has_value());
    EXPECT_EQ(rows[0].read->note, "Shelf: B4; Remark: handle with care");
}

TEST(Paste, columns_can_be_put_right) {
    const auto table = paste_table("45\t140\t90\tLogger\n");
    ASSERT_TRUE(table.has_value());
    PasteMeaning meaning;
    meaning.fields = {{PasteColumn::height, "mm"},
                      {PasteColumn::length, ""},
                      {PasteColumn::width, ""},
                      {PasteColumn::name, ""}};
    const auto rows = read_pasted(*table, meaning, paste_units(DisplayUnits::inch));
    ASSERT_EQ(rows.size(), 1U);
    expect_object(rows[0], {"Logger", 140 * 25.4, 90 * 25.4, 45, 0, 1});
}

TEST(Paste, the_header_can_be_taken_as_a_row) {
    const auto table = paste_table("Name\tLength\tWidth\tHeight\nLogger\t140\t90\t45\n");
    ASSERT_TRUE(table.has_value());
    EXPECT_TRUE(guess_meaning(*table).header);
    const auto rows = read_pasted(*table, guess_meaning(*table, false), {});
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_FALSE(rows[0].read.has_value());
    EXPECT_TRUE(rows[1].read.has_value());
}

TEST(Paste, separator_can_be_said) {
    const std::string text = "Logger, old;140;90;45\nVane, new;80;30;20\n";
    EXPECT_EQ(paste_table(text)->separator, Separator::semicolon);
    EXPECT_EQ(paste_table(text, Separator::comma)->rows[0].cells.size(), 2U);
    EXPECT_EQ(paste_table("")->rows.size(), 0U);
    EXPECT_TRUE(read("").empty());
    EXPECT_TRUE(read(" \n\t\n").empty());
}

TEST(Paste, a_long_list_is_read_as_far_as_it_goes_and_the_rest_kept) {
    std::string text;
    for (std::size_t i = 0; i < most_paste_rows + 3; ++i) text += "Vane\t80\t30\t20\n";
    const auto rows = read(text);
    ASSERT_EQ(rows.size(), most_paste_rows + 1);
    EXPECT_TRUE(rows[most_paste_rows - 1].read.has_value());
    ASSERT_FALSE(rows.back().read.has_value());
    EXPECT_EQ(rows.back().read.error().code, "paste-many");
    EXPECT_EQ(rows.back().text, "Vane\t80\t30\t20\nVane\t80\t30\t20\nVane\t80\t30\t20\n");
}

TEST(Paste, refuses_more_text_than_any_list) {
    const auto rows = read_pasted(std::string(most_paste_bytes + 1, 'a'), PasteUnits{});
    ASSERT_FALSE(rows.has_value());
    EXPECT_EQ(rows.error().code, "paste-large");
}

/// Rows and what they were refused for, whatever is pasted: no byte of the text is in neither.
TEST(Paste, hostile_text_ends_soon_and_nothing_is_lost) {
    std::mt19937 random(4711);
    const std::string_view alphabet = "\"\"\"\t\t;;,,\n\n\r0123456789.-/ xXabmin\xC2\xBD\xFF"
                                      "\0";
    const auto start = std::chrono::steady_clock::now();
    for (int round = 0; round < 300; ++round) {
        std::string text;
        const std::size_t size = random() % 400;
        for (std::size_t i = 0; i < size; ++i) text += alphabet[random() % alphabet.size()];
        const auto table = paste_table(text);
        ASSERT_TRUE(table.has_value());
        std::string kept;
        for (const auto& row : table->rows) kept += row.text;
        const auto significant = [&](std::string t) {
            std::erase_if(t, [&](char c) {
                return c == '\n' || c == '\r' || c == ' ' || c == '\t' ||
                       c == character_of(table->separator) || c == '"';
            });
            return t;
        };
        EXPECT_EQ(significant(kept), significant(text)) << "round " << round;
        for (const auto& row : read_pasted(*table, guess_meaning(*table), {})) {
            if (!row.read) continue;
            Job job;
            Object object = *row.read;
            object.id = "i1";
            job.objects.emplace_back(object);
            EXPECT_TRUE(checked_text(job).has_value());
        }
    }
    for (const std::string& unit :
         {std::string("\""), std::string("\"a\t"), std::string("\"\"\"a\t\"\"a\t"), std::string("\"\"\t"),
          std::string("1,1;"), std::string("\n"), std::string("x")}) {
        std::string text;
        while (text.size() + unit.size() <= most_paste_bytes) text += unit;
        EXPECT_TRUE(read_pasted(text, PasteUnits{}).has_value());
    }
    EXPECT_LT(std::chrono::steady_clock::now() - start, std::chrono::seconds(20));
}

} // namespace
} // namespace drawercast::job
