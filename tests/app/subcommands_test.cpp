// SPDX-License-Identifier: GPL-3.0-or-later
// The real binary, as a script would call it.
#include "job/catalog.h"

#include "app/pdf_reader.h"
#include "source_dir.h"
#include "subcommands/worked_out.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <regex>
#include <sstream>
#include <string>

namespace drawercast {
namespace {

const std::string program = DRAWERCAST_PROGRAM;
const std::string demo = DRAWERCAST_SOURCE_DIR "/resources/demo/field-service.drawercast.json";

int exit_of(const std::string& arguments, std::string* said = nullptr) {
    int exit = -1;
    const auto text = test::output_of("'" + program + "' " + arguments + " 2>&1", &exit);
    if (said != nullptr) *said = text;
    return exit;
}

/// One small pocket, or two of them in one place: answered in a moment, where a demo job takes seconds.
std::string small_job(const std::string& more_pockets, const std::string& name) {
    return test::file_of(QByteArray::fromStdString(R"({"format": "drawercast-job", "version": 1,
        "objects": [{"id": "i1", "count": 2, "levels": [{"outline": {"rect": [60, 40]}, "depth_mm": 20}]}],
        "drawers": [{"id": "d1", "outline": {"rect": [200, 160]},
            "pockets": [{"object": "i1", "n": 1, "at": [100, 80]})" +
                                                   more_pockets + "]}]}"),
                         name);
}

TEST(Subcommands, check_says_whether_something_must_be_mended) {
    EXPECT_EQ(exit_of("check '" + small_job("", "small.json") + "'"), 0);
    const auto path = small_job(R"(, {"object": "i1", "n": 2, "at": [110, 80]})", "overlapping.json");
    std::string said;
    EXPECT_EQ(exit_of("check '" + path + "'", &said), 1);
    EXPECT_NE(said.find("overlap"), std::string::npos);
}

/// Written all the same: a maker may want to see on paper what is wrong.
TEST(Subcommands, what_is_cut_by_says_that_something_must_be_mended) {
    const auto fine = small_job("", "small.json");
    const auto mend = small_job(R"(, {"object": "i1", "n": 2, "at": [110, 80]})", "overlapping.json");
    std::string said;
    for (const std::string more : {"", "--sheet pattern-board"}) {
        EXPECT_EQ(exit_of("templates '" + fine + "' " + more + " --out '" + fine + ".pdf'", &said), 0);
        EXPECT_EQ(said, "");
        EXPECT_EQ(exit_of("templates '" + mend + "' " + more + " --out '" + mend + ".pdf'", &said), 1);
        EXPECT_NE(said.find(" to mend before it is cut: see drawercast check " + mend + "\n"),
                  std::string::npos)
            << said;
    }
    EXPECT_EQ(exit_of("drawings '" + mend + "' --out '" + mend + ".d'", &said), 1);
    EXPECT_NE(said.find(" to mend before it is cut"), std::string::npos) << said;
    EXPECT_NE(test::output_of("ls '" + mend + ".d'").find("d1-pattern-board.svg"), std::string::npos);
    const auto words = [](const std::string& job) {
        return test::output_of("pdftotext -layout '" + job + ".pdf' -");
    };
    EXPECT_NE(words(mend).find(" to mend in the checks: mend before you cut"), std::string::npos);
    EXPECT_EQ(words(fine).find("to mend"), std::string::npos);
}

TEST(Subcommands, a_job_that_takes_too_long_is_answered_as_far_as_it_goes) {
    const job::Job job = job::new_job({});
    const auto worked = subcommands::worked_out(job, std::chrono::seconds(0));
    EXPECT_FALSE(worked.whole);
    EXPECT_TRUE(plan::same(worked.plan, plan::compute(job)));
}

TEST(Subcommands, check_names_keys_that_are_not_known) {
    const auto path = test::file_of(R"({"format": "drawercast-job", "version": 1, "titel": "typed in haste",
        "drawers": [{"id": "d1", "outline": {"rect": [200, 160]}, "thickness_mm": 30}]})",
                                    "misspelled.json");
    std::string said;
    EXPECT_EQ(exit_of("check '" + path + "'", &said), 0);
    EXPECT_NE(said.find("job file: 2 notes\n"), std::string::npos) << said;
    EXPECT_NE(said.find("key not known here: titel, kept but not used\n"), std::string::npos) << said;
    EXPECT_NE(said.find("key not known here: drawers[0].thickness_mm, kept but not used\n"),
              std::string::npos)
        << said;
    EXPECT_EQ(exit_of("check '" + small_job("", "small.json") + "'", &said), 0);
    EXPECT_EQ(said.find("key not known"), std::string::npos) << said;
}

TEST(Subcommands, a_name_stays_within_its_line) {
    const auto path = test::file_of(R"({"format": "drawercast-job", "version": 1,
        "drawers": [{"id": "d1", "name": "A\nd9 forged: 0 to mend\u001b[2J\u0085\u2028z",
                     "outline": {"rect": [200, 160]}, "slip\nd8 forged": 1}]})",
                                    "forged.json");
    std::string said;
    EXPECT_EQ(exit_of("check '" + path + "'", &said), 0);
    EXPECT_EQ(said.rfind("d1 A d9 forged: 0 to mend [2J  z: ", 0), 0U) << said;
    EXPECT_EQ(said.find("\nd9"), std::string::npos) << said;
    EXPECT_EQ(said.find("\nd8"), std::string::npos) << said;
    EXPECT_EQ(said.find('\x1b'), std::string::npos);
}

TEST(Subcommands, an_unreadable_job_is_one_line) {
    std::string said;
    EXPECT_EQ(exit_of("check /nowhere/job.json", &said), 2);
    EXPECT_EQ(std::count(said.begin(), said.end(), '\n'), 1) << said;
    const auto path = test::file_of("{\"format\": \"drawercast-job\", \"version\": 9}", "newer.json");
    EXPECT_EQ(exit_of("figures '" + path + "'", &said), 2);
    EXPECT_NE(said.find("newer Drawercast"), std::string::npos) << said;
}

TEST(Subcommands, an_unwritable_output_is_told_apart) {
    const auto job = small_job("", "small.json");
    EXPECT_EQ(exit_of("summary '" + job + "' --out /nowhere/summary.pdf"), 3);
    EXPECT_EQ(exit_of("templates '" + job + "' --out /nowhere/templates.pdf"), 3);
}

/// By any spelling of its name, and through a link.
TEST(Subcommands, what_is_read_is_never_written_over) {
    const std::string job = small_job("", "small.json");
    const auto slash = job.rfind('/');
    const std::string folder = job.substr(0, slash), name = job.substr(slash), link = job + ".link";
    const std::string before = test::output_of("cat '" + job + "'");
    test::output_of("ln -s '" + job + "' '" + link + "' && mkdir '" + job + ".d'");
    for (const std::string& out : {job, folder + "/." + name, job + ".d/.." + name, link}) {
        for (const std::string verb : {"summary", "templates", "drawings", "arrange", "capture"}) {
            std::string said;
            EXPECT_EQ(exit_of(verb + " '" + job + "' --out '" + out + "'", &said), 3) << verb << " " << out;
            EXPECT_NE(said.find("would be lost"), std::string::npos) << said;
            EXPECT_EQ(std::count(said.begin(), said.end(), '\n'), 1) << said;
        }
        EXPECT_EQ(exit_of("measuring-sheet --out '" + out + "'"), 3) << out;
        EXPECT_EQ(exit_of("summary '" + demo + "' --out '" + out + "'"), 3) << "another job is work too";
    }
    EXPECT_EQ(test::output_of("cat '" + job + "'"), before);
}

TEST(Subcommands, no_drawing_takes_the_place_of_its_job) {
    const std::string small = small_job("", "small.json"), folder = small + ".d";
    const std::string job = folder + "/d1-drawer-plan.svg", before = test::output_of("cat '" + small + "'");
    test::output_of("mkdir '" + folder + "' && cp '" + small + "' '" + job + "'");
    std::string said;
    EXPECT_EQ(exit_of("drawings '" + job + "' --out '" + folder + "'", &said), 3);
    EXPECT_NE(said.find("would be lost"), std::string::npos) << said;
    EXPECT_EQ(test::output_of("cat '" + job + "'"), before);
}

TEST(Subcommands, arrange_keeps_the_job_that_was_there) {
    const std::string job = small_job("", "small.json"), there = small_job("", "there.json");
    const std::string before = test::output_of("cat '" + there + "'");
    EXPECT_EQ(exit_of("arrange '" + job + "' --seconds 1 --out '" + there + "'"), 0);
    EXPECT_EQ(test::output_of("cat '" + there + ".before'"), before);
    EXPECT_NE(test::output_of("cat '" + there + "'"), before);
    EXPECT_EQ(exit_of("arrange '" + job + "' --seconds 1 --out /dev/null"), 0) << "for the report alone";
}

TEST(Subcommands, arrange_writes_no_job_that_it_could_not_read) {
    const auto job = test::file_of(R"({"format": "drawercast-job", "version": 1,
        "objects": [{"id": "i1", "levels": [{"outline": {"rect": [60, 40]}, "depth_mm": 1e-9}]}],
        "drawers": [{"id": "d1", "outline": {"rect": [200, 160]}}]})",
                                   "rounded-away.json");
    std::string said;
    EXPECT_EQ(exit_of("arrange '" + job + "' --seconds 1 --out '" + job + ".out'", &said), 2);
    EXPECT_NE(said.find("0.000000001 is out of range"), std::string::npos) << said;
}

TEST(Subcommands, what_is_not_understood_is_64) {
    EXPECT_EQ(exit_of("chekc '" + demo + "' x y"), 64);
    EXPECT_EQ(exit_of("templates '" + demo + "'"), 64);
    EXPECT_EQ(exit_of("templates '" + demo + "' --out x.pdf --paper a9"), 64);
    EXPECT_EQ(exit_of("check"), 64);
    std::string said;
    for (const std::string rest : {"", " --out x.pdf"})
        for (const std::string verb :
             {"check", "figures", "templates", "summary", "drawings", "arrange", "capture"})
            EXPECT_EQ(exit_of(verb + " ''" + rest), 64) << verb << rest;
    EXPECT_EQ(exit_of("quote '' --drawer 480x360x60", &said), 64);
    EXPECT_NE(said.find("the job's name is empty"), std::string::npos) << said;
    EXPECT_EQ(exit_of("templates '" + demo + "' --out x.pdf --sheet floor", &said), 64);
    EXPECT_NE(said.find("pressure-plate"), std::string::npos) << said;
}

/// Whoever gets a PDF can search it and copy from it, and needs none of our fonts.
TEST(Subcommands, words_of_a_pdf_are_text_in_fonts_of_its_own) {
    const auto job = small_job("", "small.json");
    for (const std::string which : {"summary", "templates"}) {
        const std::string pdf = test::file_of({}, which) + ".pdf";
        EXPECT_EQ(exit_of(which + " '" + job + "' --language de --out '" + pdf + "'"), 0);
        std::istringstream fonts(test::output_of("pdffonts '" + pdf + "' | tail -n +3"));
        int count = 0;
        for (std::string font; std::getline(fonts, font); ++count)
            EXPECT_TRUE(std::regex_search(font, std::regex(" yes +(yes|no) +yes +\\d+ +\\d+$")))
                << "embedded, and known which letters its shapes are: " << font;
        EXPECT_GT(count, 2);
        const auto words = test::output_of("pdftotext -layout '" + pdf + "' -");
        EXPECT_NE(words.find("Druckplatte"), std::string::npos) << which;
        EXPECT_NE(words.find("für"), std::string::npos) << which;
    }
}

/// Of a drawing: its words stand in the SVG as they are.
TEST(Subcommands, paper_speaks_german_where_asked) {
    const auto job = small_job("", "small.json");
    const auto drawn = [&](const std::string& language) {
        const std::string folder = test::file_of({}, "in-" + language) + ".d";
        EXPECT_EQ(exit_of("drawings '" + job + "' --language " + language + " --out '" + folder + "'"), 0);
        return test::output_of("cat '" + folder + "'/*.svg");
    };
    const std::string german = drawn("de"), english = drawn("en");
    EXPECT_NE(german.find(">HINTEN<"), std::string::npos);
    EXPECT_EQ(german.find(">BACK<"), std::string::npos);
    EXPECT_NE(english.find(">BACK<"), std::string::npos);
    EXPECT_EQ(english.find(">HINTEN<"), std::string::npos);
    const std::string caption = "Schublade, von oben  ·  Schubladenplan  ·  ";
    EXPECT_NE(german.find(caption), std::string::npos);
    EXPECT_EQ(german.find("Drawer, from above"), std::string::npos);
    EXPECT_NE(english.find("Drawer, from above  ·  Drawer plan  ·  "), std::string::npos);
    EXPECT_EQ(exit_of("drawings '" + job + "' --language xx --out /nowhere"), 64);
    EXPECT_EQ(exit_of("check '" + job + "' --language de"), 64); // the terminal's words stay English
}

/// Three of 60 × 40: one drawer holds two of them, the other all.
TEST(Subcommands, arrange_splits_and_tells_which_drawer_would_do) {
    const auto job = test::file_of(QByteArray(R"({"format": "drawercast-job", "version": 1,
        "objects": [{"id": "i1", "count": 3, "levels": [{"outline": {"rect": [60, 40]}, "depth_mm": 20}]}],
        "drawers": [{"id": "d1", "outline": {"rect": [100, 150]}}, {"id": "d2", "outline": {"rect": [260, 160]}}]})"),
                                   "two-drawers.json");
    const auto out = test::file_of(QByteArray(), "two-drawers-out.json");
    const auto arranged = [&](const std::string& more, std::string* said) {
        return exit_of("arrange '" + job + "' --out '" + out + "' --seconds 1 " + more, said);
    };
    std::string said;
    EXPECT_EQ(arranged("", &said), 0);
    EXPECT_EQ(said, "placed: 3\nfound no room: 0\n") << "split over both";
    EXPECT_EQ(arranged("--one-drawer", &said), 0);
    EXPECT_EQ(said, "d2 takes 3 of 3\nd1 takes 2 of 3\nplaced: 3\nfound no room: 0\n");
    EXPECT_EQ(arranged("--into d1", &said), 1);
    EXPECT_EQ(said.find("placed: 2\nfound no room: 1\nof the room within the edges: objects need 6"), 0U)
        << said;
    EXPECT_EQ(arranged("--into d7", &said), 64);
    EXPECT_EQ(arranged("--into d1 --one-drawer", &said), 64);
    EXPECT_EQ(arranged("--one-drawer=d1", &said), 64);
}

/// Two of 80 × 80 that only a thin wall lets into the drawer.
TEST(Subcommands, arrange_says_where_foam_will_not_flow_between_blocks) {
    const auto job = test::file_of(QByteArray(R"({"format": "drawercast-job", "version": 1,
        "minimums": {"wall_mm": 2, "wall_ratio": 100, "edge_mm": 12},
        "objects": [{"id": "i1", "count": 2, "fit_mm": 0,
                     "levels": [{"outline": {"rect": [80, 80]}, "depth_mm": 20}]}],
        "drawers": [{"id": "d1", "gap_mm": 0, "outline": {"rect": [188, 104.1]}}]})"),
                                   "thin-wall.json");
    const auto out = test::file_of(QByteArray(), "thin-wall-out.json");
    std::string said;
    EXPECT_EQ(exit_of("arrange '" + job + "' --seconds 1 --out '" + out + "'", &said), 0);
    EXPECT_EQ(said,
              "placed: 2\nfound no room: 0\n"
              "slots too narrow for foam to flow through by itself, by the walls this job asks for: 1\n");
}

TEST(Subcommands, a_quote_before_anything_is_measured) {
    std::string said;
    EXPECT_EQ(exit_of("quote --drawer 480x360x60 --objects 20 --area 55", &said), 0);
    EXPECT_NE(said.find("price: about "), std::string::npos) << said;
    EXPECT_NE(said.find("work is not in it"), std::string::npos) << said; // a new job has no price of an hour
    EXPECT_EQ(exit_of("quote '" + demo + "' --drawer 480x360x60 --drawer=400x250x45", &said), 0);
    EXPECT_NE(said.find(" EUR"), std::string::npos) << said;
    EXPECT_EQ(exit_of("quote"), 64);
    EXPECT_EQ(exit_of("quote --drawer 480x360"), 64);
    EXPECT_EQ(exit_of("quote --drawer 480x360x60x2"), 64);
    EXPECT_EQ(exit_of("quote --drawer 480x360x60 --objects 2.5"), 64);
    EXPECT_EQ(exit_of("quote --drawer 480x360x60 --area 95"), 64);
    EXPECT_EQ(exit_of("quote --drawer 480x360x600", &said), 1); // no such insert
    EXPECT_EQ(std::count(said.begin(), said.end(), '\n'), 1) << said;
}

TEST(Subcommands, help_and_version) {
    std::string said;
    EXPECT_EQ(exit_of("--help", &said), 0);
    for (const char* word : {"check", "figures", "templates", "summary", "drawings", "quote"})
        EXPECT_NE(said.find(word), std::string::npos);
    EXPECT_EQ(exit_of("--version", &said), 0);
    EXPECT_EQ(said.rfind("Drawercast ", 0), 0u);
}

} // namespace
} // namespace drawercast
