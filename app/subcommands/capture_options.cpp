// SPDX-License-Identifier: GPL-3.0-or-later
#include "subcommands/capture_options.h"

#include "base/number.h"

#include "subcommands/usage.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace drawercast::subcommands {

namespace {

struct GroundName {
    std::string_view name;
    capture::Ground ground;
    capture::SheetSize size;
};
constexpr std::array grounds{
    GroundName{"measuring-a4", capture::Ground::measuring_sheet, capture::sheet_a4},
    GroundName{"measuring-letter", capture::Ground::measuring_sheet, capture::sheet_letter},
    GroundName{"a4", capture::Ground::plain_sheet, capture::sheet_a4},
    GroundName{"letter", capture::Ground::plain_sheet, capture::sheet_letter},
    GroundName{"scan", capture::Ground::scan, {}}};

std::optional<double> within(const std::string& text, double least, double most) {
    const auto value = parse_number(text);
    return value && *value >= least && *value <= most ? value : std::nullopt;
}

} // namespace

bool is_capture_option(const std::string& name) {
    return name == "--scan" || name == "--on" || name == "--height" || name == "--lens";
}

std::optional<Problem> take_capture(const std::string& name, const std::string& value, CaptureIn& in) {
    if (name == "--scan" || name == "--on") {
        if (in.ground_said)
            return usage("a picture is of one sheet or of one scan", "Give --on or --scan, and once");
        in.ground_said = true;
    }
    if (name == "--scan") {
        in.shot.ground = capture::Ground::scan;
        in.shot.dots_per_inch = within(value, 50, 4800);
        if (in.shot.dots_per_inch) return std::nullopt;
        return usage("\"" + value + "\" is no resolution of a scan", "Say dots per inch from 50 to 4800");
    }
    if (name == "--on") {
        const auto ground = std::find_if(grounds.begin(), grounds.end(),
                                         [&](const GroundName& one) { return one.name == value; });
        if (ground == grounds.end())
            return usage("objects can't lie on \"" + value + "\"",
                         "Choose measuring-a4, measuring-letter, a4, letter or scan");
        in.shot.ground = ground->ground;
        in.shot.sheet = ground->size;
        return std::nullopt;
    }
    if (name == "--height") {
        in.height_mm = within(value, 0.1, 500);
        if (in.height_mm) return std::nullopt;
        return usage("\"" + value + "\" is no height of objects", "Say mm from 0.1 to 500");
    }
    in.shot.camera_mm = within(value, 50, 10000);
    if (in.shot.camera_mm) return std::nullopt;
    return usage("\"" + value + "\" is no distance from lens to sheet", "Say mm from 50 to 10000");
}

} // namespace drawercast::subcommands
