// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of a known outline through the real binary, as a script would call it.
#include "capture/measure.h"
#include "job/store.h"

#include "app/pdf_reader.h"
#include "app/sheet_picture.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace drawercast {
namespace {

const std::string program = DRAWERCAST_PROGRAM;
const QPolygonF ell({{60, 90}, {130, 90}, {130, 120}, {95, 120}, {95, 170}, {60, 170}});

int exit_of(const std::string& arguments, std::string* said = nullptr) {
    int exit = -1;
    const auto text = test::output_of("'" + program + "' " + arguments + " 2>&1", &exit);
    if (said != nullptr) *said = text;
    return exit;
}

std::string kept(const std::string& bytes, const std::string& name) {
    return test::file_of(QByteArray::fromStdString(bytes), name);
}

bool one_line_of(const std::string& said) {
    return std::count(said.begin(), said.end(), '\n') == 1 && said.rfind("drawercast: ", 0) == 0;
}

/// The only object of the job in `path` is the L, about its own center and in the pose it had.
void expect_ell(const std::string& path, double height_mm) {
    const auto job = job::load_job(path);
    ASSERT_TRUE(job) << one_line(job.error().front());
    ASSERT_EQ(job->objects.size(), 1U);
    const job::Object& object = *job->objects[0];
    EXPECT_EQ(object.name, "Shape 1");
    EXPECT_NE(object.note.find("within ±"), std::string::npos) << object.note;
    EXPECT_EQ(object.height_mm, height_mm);
    ASSERT_EQ(object.levels.size(), 1U);
    const auto& sunk = std::get<job::Sunk>(object.levels[0].form);
    EXPECT_EQ(sunk.depth_mm, height_mm);
    const auto contour = shape::contour_of(std::get<shape::Polygon>(sunk.outline));
    ASSERT_TRUE(contour);
    const shape::Box box = shape::bounds(*contour);
    EXPECT_NEAR(box.width(), 70, 0.3);
    EXPECT_NEAR(box.height(), 80, 0.3);
    EXPECT_NEAR(box.center().x, 0, 0.01);
    EXPECT_NEAR(box.center().y, 0, 0.01);
    EXPECT_TRUE(shape::contains(*contour, {30, 35})); // its short arm points right, away from the reader
    EXPECT_FALSE(shape::contains(*contour, {30, -35}));
}

class CaptureCommand : public ::testing::Test {
  protected:
    void SetUp() override {
        if (!capture::available()) GTEST_SKIP() << "built without the measuring of pictures";
    }
};

TEST_F(CaptureCommand, a_picture_of_the_sheet_becomes_a_job) {
    const auto picture = kept(test::sheet_picture(print::Paper::a4, ell), "ell.png");
    const auto job = picture + ".json";
    std::string said;
    ASSERT_EQ(exit_of("capture '" + picture + "' --out '" + job + "'", &said), 0) << said;
    EXPECT_EQ(said.rfind("Shape 1: ", 0), 0U) << said;
    expect_ell(job, 20);
    EXPECT_NE(job::load_job(job)->objects[0]->note.find("were not measured"), std::string::npos);
    ASSERT_EQ(exit_of("check '" + job + "'", &said), 0) << said; // the next step takes it
}

TEST_F(CaptureCommand, another_paper_is_told_apart) {
    const auto picture = kept(test::sheet_picture(print::Paper::letter, ell), "ell.png");
    const auto job = picture + ".json";
    std::string said;
    EXPECT_EQ(exit_of("capture '" + picture + "' --out '" + job + "'", &said), 1);
    EXPECT_TRUE(one_line_of(said)) << said;
    EXPECT_FALSE(job::load_job(job));
    EXPECT_EQ(exit_of("capture '" + picture + "' --on measuring-letter --out '" + job + "'", &said), 0)
        << said;
    expect_ell(job, 20);
}

TEST_F(CaptureCommand, marks_of_the_measuring_sheet_are_no_objects_on_a_blank_one) {
    const auto picture = kept(test::sheet_picture(print::Paper::a4, ell), "ell.png");
    std::string said;
    EXPECT_EQ(exit_of("capture '" + picture + "' --on a4 --out '" + picture + ".json'", &said), 1);
    EXPECT_TRUE(one_line_of(said)) << said;
    EXPECT_NE(said.find("not of white paper"), std::string::npos) << said;
    EXPECT_NE(said.find("--on measuring-a4"), std::string::npos) << said;
}

TEST_F(CaptureCommand, a_scan_has_its_resolution_and_no_parallax) {
    const auto scan = kept(test::scan_picture(200, ell), "scan.png");
    const auto job = scan + ".json";
    std::string said;
    ASSERT_EQ(exit_of("capture '" + scan + "' --scan 200 --height 12 --out '" + job + "'", &said), 0) << said;
    expect_ell(job, 12);
    ASSERT_EQ(exit_of("capture '" + scan + "' --scan=400 --out '" + job + "'", &said), 0) << said;
    EXPECT_NE(said.find("35.0 x 40.0 mm"), std::string::npos) << said; // half the size, as was said
    EXPECT_TRUE(job::load_job(job + ".before"));                       // the one before is kept
}

TEST_F(CaptureCommand, what_gives_no_outline_is_one_line) {
    const auto bare = kept(test::scan_picture(100, {}), "bare.png");
    const auto job = bare + ".json";
    std::string said;
    EXPECT_EQ(exit_of("capture '" + bare + "' --out '" + job + "'", &said), 1); // no marks
    EXPECT_TRUE(one_line_of(said)) << said;
    EXPECT_EQ(exit_of("capture '" + bare + "' --scan 100 --out '" + job + "'", &said), 1); // nothing on it
    EXPECT_TRUE(one_line_of(said)) << said;
    const auto text = kept("no picture", "text.png");
    EXPECT_EQ(exit_of("capture '" + text + "' --out '" + job + "'", &said), 2);
    EXPECT_TRUE(one_line_of(said)) << said;
    EXPECT_EQ(exit_of("capture /nowhere/picture.jpg --out '" + job + "'", &said), 2);
    EXPECT_TRUE(one_line_of(said)) << said;
    EXPECT_FALSE(job::load_job(job));
    const auto scan = kept(test::scan_picture(100, ell), "scan.png");
    EXPECT_EQ(exit_of("capture '" + scan + "' --scan 100 --out /nowhere/job.json", &said), 3);
    EXPECT_TRUE(one_line_of(said)) << said;
}

TEST(CaptureUsage, what_is_not_understood_is_64) {
    EXPECT_EQ(exit_of("capture"), 64);
    EXPECT_EQ(exit_of("capture x.png"), 64);
    EXPECT_EQ(exit_of("capture x.png y.png --out j.json"), 64);
    EXPECT_EQ(exit_of("capture x.png --out j.json --scan 300 --on a4"), 64);
    EXPECT_EQ(exit_of("capture x.png --out j.json --scan 3"), 64);
    EXPECT_EQ(exit_of("capture x.png --out j.json --on scan --scan 300"), 64);
    EXPECT_NE(exit_of("capture x.png --out j.json --on scan"), 64);
    EXPECT_EQ(exit_of("capture x.png --out j.json --on a3"), 64);
    EXPECT_EQ(exit_of("capture x.png --out j.json --height -2"), 64);
    EXPECT_EQ(exit_of("capture x.png --out j.json --lens nan"), 64);
    EXPECT_EQ(exit_of("check x.json --lens 400"), 64);
}

TEST(CaptureUsage, a_build_without_it_says_so) {
    if (capture::available()) GTEST_SKIP() << "built with the measuring of pictures";
    std::string said;
    EXPECT_EQ(exit_of("capture x.png --out j.json", &said), 1);
    EXPECT_NE(said.find("built without"), std::string::npos) << said;
}

TEST(MeasuringSheetCommand, it_needs_no_job_and_knows_two_papers) {
    const auto pdf = kept("", "sheet.pdf");
    EXPECT_EQ(exit_of("measuring-sheet --out '" + pdf + "' --paper letter"), 0);
    EXPECT_EQ(test::output_of("head -c 5 '" + pdf + "'"), "%PDF-");
    EXPECT_EQ(exit_of("measuring-sheet"), 64);
    EXPECT_EQ(exit_of("measuring-sheet --out x.pdf --paper a3"), 64);
    EXPECT_EQ(exit_of("measuring-sheet job.json --out x.pdf"), 64);
    EXPECT_EQ(exit_of("measuring-sheet --out /nowhere/sheet.pdf"), 3);
}

} // namespace
} // namespace drawercast
