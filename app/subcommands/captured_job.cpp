// SPDX-License-Identifier: GPL-3.0-or-later
#include "subcommands/captured_job.h"

#include "capture/right_ground.h"
#include "job/catalog.h"
#include "job/edit.h"
#include "plan/say.h"

#include <array>
#include <string_view>

namespace drawercast::subcommands {

namespace {

constexpr double depth_unsaid_mm = 20; // a picture shows no depth; the note says so

std::string note_of(const capture::FoundOutline& found, const CaptureIn& in) {
    std::string note =
        "Measured from a picture: the outline lies within ± " + plan::fixed(found.band_mm, 2) + " mm.";
    if (!in.height_mm)
        note += " Its height and depth were not measured: " + plan::fixed(depth_unsaid_mm, 0) +
                " mm stands for both.";
    if (found.maybe_shadow) note += " Part of it may be a shadow: hold it against the object.";
    if (found.maybe_part) note += " It and its neighbor may be one thing, cut by a blank streak.";
    return note;
}

job::Object object_of(const capture::FoundOutline& found, const CaptureIn& in) {
    job::Object object;
    shape::Polygon outline = found.polygon;
    for (shape::Corner& corner : outline.corners) corner.at = grained_at(corner.at);
    object.height_mm = in.height_mm.value_or(depth_unsaid_mm);
    object.note = note_of(found, in);
    object.levels = {{job::Sunk{std::move(outline), object.height_mm}, {}, {}}};
    return object;
}

std::string line_of(const std::string& name, const capture::FoundOutline& found) {
    shape::Box box;
    for (const shape::Corner& corner : found.polygon.corners) box.add(corner.at);
    return name + ": " + plan::fixed(box.width(), 1) + " x " + plan::fixed(box.height(), 1) +
           " mm, within ± " + plan::fixed(found.band_mm, 2) + " mm" +
           (found.maybe_shadow ? ", part of it may be a shadow" : "") +
           (found.maybe_part ? ", it and its neighbor may be one shiny thing" : "") + "\n";
}

/// What to do about it by the options of this command: there is no field to type into here, and no brush.
Problem in_options(Problem problem, const CaptureIn& in) {
    struct Fix {
        std::string_view code;
        const char* words;
    };
    static constexpr std::array fixes{
        Fix{"capture-no-distance", "Give --lens MM"},
        Fix{"capture-no-resolution", "Give --scan DPI"},
        Fix{"capture-other-sheet", "Give --on measuring-a4 or --on measuring-letter"},
        Fix{"capture-crossing", "Take a sharper photo"},
        Fix{"capture-over-edge", "Lay the objects inside the field"},
        Fix{"capture-nothing", "Take more light"}};
    for (const Fix& fix : fixes)
        if (problem.code == fix.code) problem.fix = verbatim(fix.words);
    if (problem.code == "capture-small" && in.shot.ground == capture::Ground::scan)
        problem.fix = verbatim("Give --scan with the dots per inch it was scanned with");
    return problem;
}

std::string camera_line(const capture::FlatPicture& flat, const capture::Traced& traced) {
    if (flat.camera.by == capture::CameraBy::nothing) return {};
    std::string line = "camera: " + plan::fixed(flat.camera.distance_mm, 0) + " mm above the sheet";
    if (flat.camera.by == capture::CameraBy::perspective) line += ", by its perspective";
    if (flat.camera.by == capture::CameraBy::file) line += ", by the picture's file";
    if (flat.camera.within_mm > 0) line += ", ± " + plan::fixed(2 * flat.camera.within_mm, 0) + " mm";
    if (traced.enlarged_by > 1)
        line += "; edges looked " + plan::fixed(traced.enlarged_by, 4) + " times as large";
    return line + "\n";
}

} // namespace

Expected<Captured> captured_job(std::string_view picture, const CaptureIn& in, const std::string& title) {
    const auto flat = capture::flattened_as_said(picture, in.shot);
    if (!flat) return in_options(flat.error(), in);
    capture::Tracing tracing;
    tracing.height_mm = in.height_mm.value_or(0);
    const auto traced = capture::traced_objects(*flat, tracing);
    if (!traced) return in_options(traced.error(), in);
    Captured out{job::new_job({}), {}};
    out.job.title = title;
    std::vector<job::Object> objects;
    for (const capture::FoundOutline& found : traced->outlines) {
        objects.push_back(object_of(found, in));
        objects.back().name = "Shape " + std::to_string(objects.size());
        out.report += line_of(objects.back().name, found);
    }
    out.job = job::with_objects(std::move(out.job), std::move(objects));
    out.report += camera_line(*flat, *traced);
    if (!in.height_mm && !flat->scanned)
        out.report += "no --height: taken as flat; the edges of high objects look larger than they are\n";
    return out;
}

} // namespace drawercast::subcommands
