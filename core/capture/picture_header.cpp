// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/picture_header.h"

#include "capture/exif.h"

#include <cmath>
#include <cstdint>
#include <string>

namespace drawercast::capture {

namespace {

using std::string_view_literals::operator""sv;

Problem refused(const char* code, Phrase what, Phrase fix) {
    return {code, {}, std::move(what), std::move(fix)};
}

Problem torn() {
    return refused("picture-torn", phrase("the picture ends before its size is said"),
                   phrase("Copy the file again"));
}

std::uint32_t big(std::string_view bytes, std::size_t at, std::size_t size) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < size; ++i) value = (value << 8) | static_cast<unsigned char>(bytes[at + i]);
    return value;
}

std::optional<double> resolution(double across, double down) {
    if (across != down || across < 10 || across > 10000) return std::nullopt;
    return across;
}

Expected<PictureHeader> checked(PictureHeader header) {
    if (header.width_px < 1 || header.height_px < 1)
        return refused("picture-size", phrase("the picture has no size"), phrase("Copy the file again"));
    const double pixels = static_cast<double>(header.width_px) * header.height_px;
    if (header.width_px > picture_side_most || header.height_px > picture_side_most ||
        pixels > picture_pixels_most)
        return refused("picture-size",
                       phrase("the picture has %1 × %2 pixels; 120 million can be measured",
                              figure(std::to_string(header.width_px)),
                              figure(std::to_string(header.height_px))),
                       phrase("Save it smaller"));
    return header;
}

/// T.81, B.1.1.4: a frame header's marker; C4, C8 and CC are tables.
bool frame_marker(unsigned marker) {
    return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
}

void take_density(std::string_view part, PictureHeader& header) {
    if (part.size() < 12 || part.substr(0, 5) != "JFIF\0"sv) return;
    const double per = part[7] == 1 ? 1 : part[7] == 2 ? 2.54 : 0; // dots per inch or per cm
    header.dots_per_inch = resolution(big(part, 8, 2) * per, big(part, 10, 2) * per);
}

Expected<PictureHeader> jpeg_header(std::string_view bytes) {
    PictureHeader header;
    std::size_t at = 2;
    while (at + 4 <= bytes.size()) {
        if (static_cast<unsigned char>(bytes[at]) != 0xFF) break;
        const unsigned marker = static_cast<unsigned char>(bytes[at + 1]);
        if (marker == 0xFF) { // a fill byte
            ++at;
            continue;
        }
        const std::size_t length = big(bytes, at + 2, 2);
        if (length < 2 || bytes.size() - at - 2 < length || marker == 0xD9 || marker == 0xDA) break;
        const std::string_view part = bytes.substr(at + 4, length - 2);
        if (marker == 0xE0) take_density(part, header);
        if (marker == 0xE1 && part.substr(0, 6) == "Exif\0\0"sv) {
            const Exif said = exif(part.substr(6));
            header.orientation = said.orientation;
            header.focal_as_35mm = said.focal_as_35mm;
        }
        if (frame_marker(marker)) {
            if (part.size() < 6) return torn();
            header.height_px = static_cast<int>(big(part, 1, 2));
            header.width_px = static_cast<int>(big(part, 3, 2));
            return checked(header);
        }
        at += 2 + length;
    }
    return torn();
}

Expected<PictureHeader> png_header(std::string_view bytes) {
    if (bytes.size() < 33 || bytes.substr(12, 4) != "IHDR") return torn();
    const std::uint32_t width = big(bytes, 16, 4), height = big(bytes, 20, 4);
    constexpr std::uint32_t most = 0x7FFFFFFF; // ISO/IEC 15948, 7.1
    if (width > most || height > most) return torn();
    PictureHeader header;
    header.kind = PictureKind::png;
    header.width_px = static_cast<int>(width);
    header.height_px = static_cast<int>(height);
    for (std::size_t at = 33; bytes.size() - at >= 12;) {
        const std::size_t length = big(bytes, at, 4);
        const std::string_view name = bytes.substr(at + 4, 4);
        if (name == "IDAT" || bytes.size() - at - 12 < length) break;
        if (name == "pHYs" && length == 9 && bytes[at + 16] == 1) {
            // Whole dots per meter: 300 dpi is written 11811, which is 299.9994.
            const auto inch = [&](std::size_t from) { return std::round(big(bytes, from, 4) * 0.254) / 10; };
            header.dots_per_inch = resolution(inch(at + 8), inch(at + 12));
        }
        if (name == "eXIf") header.orientation = exif(bytes.substr(at + 8, length)).orientation;
        at += 12 + length;
    }
    return checked(header);
}

} // namespace

Expected<PictureHeader> picture_header(std::string_view bytes) {
    if (bytes.size() > picture_bytes_most)
        return refused("picture-size", phrase("the picture's file is longer than 64 MB"),
                       phrase("Save it smaller"));
    if (bytes.substr(0, 2) == "\xFF\xD8"sv) return jpeg_header(bytes);
    if (bytes.substr(0, 8) == "\x89PNG\r\n\x1A\n"sv) return png_header(bytes);
    return refused("picture-kind", phrase("this is neither a JPEG nor a PNG picture"),
                   phrase("Save it as one of these"));
}

} // namespace drawercast::capture
