// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/exif.h"
#include "capture/picture_header.h"

#include <gtest/gtest.h>

#include <string>

namespace drawercast::capture {
namespace {

std::string bytes(std::initializer_list<int> values) {
    std::string out;
    for (const int value : values) out += static_cast<char>(value);
    return out;
}

std::string big(unsigned value, int size) {
    std::string out;
    for (int i = size - 1; i >= 0; --i) out += static_cast<char>(value >> (8 * i));
    return out;
}

std::string segment(int marker, const std::string& part) {
    return bytes({0xFF, marker}) + big(static_cast<unsigned>(part.size() + 2), 2) + part;
}

/// Exif 2.3: orientation in the first list, the focal length in the second; big-endian.
std::string exif_block(unsigned orientation, unsigned focal) {
    const auto entry = [](unsigned tag, unsigned type, const std::string& value) {
        return big(tag, 2) + big(type, 2) + big(1, 4) + value;
    };
    return "MM" + big(42, 2) + big(8, 4) + big(2, 2) + entry(0x0112, 3, big(orientation, 2) + big(0, 2)) +
           entry(0x8769, 4, big(38, 4)) + big(0, 4) + big(1, 2) +
           entry(0xA405, 3, big(focal, 2) + big(0, 2)) + big(0, 4);
}

std::string jpeg(unsigned width, unsigned height, const std::string& before = {}) {
    return bytes({0xFF, 0xD8}) + before +
           segment(0xC0, bytes({8}) + big(height, 2) + big(width, 2) +
                             bytes({3, 1, 0x11, 0, 2, 0x11, 1, 3, 0x11, 1}));
}

std::string png(unsigned width, unsigned height, const std::string& more = {}) {
    return std::string("\x89PNG\r\n\x1A\n", 8) + big(13, 4) + "IHDR" + big(width, 4) + big(height, 4) +
           bytes({8, 2, 0, 0, 0}) + big(0, 4) + more;
}

TEST(PictureHeader, sizes_are_read_before_anything_is_decoded) {
    const auto photo = picture_header(jpeg(4000, 3000));
    ASSERT_TRUE(photo);
    EXPECT_EQ(photo->width_px, 4000);
    EXPECT_EQ(photo->height_px, 3000);
    const auto scan = picture_header(png(2480, 3508));
    ASSERT_TRUE(scan);
    EXPECT_EQ(scan->kind, PictureKind::png);
    EXPECT_EQ(scan->height_px, 3508);
}

TEST(PictureHeader, orientation_focal_length_and_resolution_are_read) {
    const std::string notes = segment(0xE0, std::string("JFIF\0", 5) + bytes({1, 2, 1}) + big(300, 2) +
                                                big(300, 2) + bytes({0, 0})) +
                              segment(0xE1, std::string("Exif\0\0", 6) + exif_block(6, 27));
    const auto photo = picture_header(jpeg(40, 30, notes));
    ASSERT_TRUE(photo);
    EXPECT_EQ(photo->orientation, 6);
    EXPECT_EQ(photo->focal_as_35mm, 27);
    EXPECT_EQ(photo->dots_per_inch, 300);
    const auto scan = picture_header(
        png(40, 30, big(9, 4) + "pHYs" + big(11811, 4) + big(11811, 4) + bytes({1}) + big(0, 4)));
    ASSERT_TRUE(scan);
    EXPECT_EQ(scan->dots_per_inch, 300);
}

TEST(PictureHeader, a_small_file_cannot_ask_for_all_the_memory) {
    for (const std::string& file :
         {png(60000, 60000), png(0x7FFFFFFF, 0x7FFFFFFF), jpeg(65535, 65535), png(20000, 20000)}) {
        const auto header = picture_header(file);
        ASSERT_FALSE(header);
        EXPECT_EQ(header.error().code, "picture-size");
    }
    EXPECT_EQ(picture_header(jpeg(0, 10)).error().code, "picture-size");
    EXPECT_EQ(picture_header(png(0xFFFFFFFF, 1)).error().code, "picture-torn");
}

TEST(PictureHeader, other_kinds_and_torn_files_are_refused) {
    EXPECT_EQ(picture_header("GIF89a").error().code, "picture-kind");
    EXPECT_EQ(picture_header("").error().code, "picture-kind");
    const std::string notes = segment(0xE1, std::string("Exif\0\0", 6) + exif_block(3, 50));
    const std::string whole = jpeg(40, 30, notes);
    for (std::size_t cut = 2; cut < whole.size(); ++cut)
        EXPECT_EQ(picture_header(std::string_view(whole).substr(0, cut)).error().code, "picture-torn") << cut;
}

TEST(PictureHeader, torn_notes_of_the_camera_say_nothing) {
    const std::string block = exif_block(6, 27);
    EXPECT_EQ(exif(block).orientation, 6);
    for (std::size_t cut = 0; cut < block.size(); ++cut) {
        const int orientation = exif(std::string_view(block).substr(0, cut)).orientation;
        EXPECT_TRUE(orientation == 1 || orientation == 6);
    }
    EXPECT_EQ(exif(exif_block(9, 27)).orientation, 1);
    EXPECT_FALSE(exif(exif_block(1, 0)).focal_as_35mm);
}

} // namespace
} // namespace drawercast::capture
