// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "capture/measuring_sheet.h"
#include "shape/contour.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace drawercast::capture {

/// Whether pictures can be measured: the measuring part lies beside the program. Quick, loads nothing.
/// Otherwise flattened() and traced_objects() answer with a Problem of code "capture-not-built"; a part whose
/// libraries are missing is noticed at the first picture ("capture-not-loaded").
bool available();

enum class Ground { measuring_sheet, plain_sheet, scan };

/// What the maker says of a picture.
struct Shot {
    Ground ground = Ground::measuring_sheet;
    SheetSize sheet = sheet_a4;
    std::optional<double> dots_per_inch; ///< of a scan; else as its file says
    std::optional<double> camera_mm;     ///< lens to sheet; else by the sheet's perspective or the file
};

enum class CameraBy { nothing, typed, perspective, file };

/// Where the camera stood over the sheet.
struct Camera {
    CameraBy by = CameraBy::nothing;
    double distance_mm = 0; ///< above the sheet's plane
    double within_mm = 0;   ///< one standard deviation of it
    shape::Vec foot{};      ///< below it, mm in the flat picture's frame
};

/// The picture as if seen square from far above, at one scale.
struct FlatPicture {
    int width_px = 0;
    int height_px = 0;
    double px_per_mm = 0;
    std::vector<std::uint8_t> bgr; ///< row by row from the top, three bytes each
    double misfit_mm = 0;          ///< root mean square of the targets left over; 0 where none are left over
    bool scanned = false;          ///< seen from everywhere alike: no parallax
    Camera camera;
};

/// Finds the sheet and lays it flat. Refused in words: what picture_header() refuses, no or not enough
/// targets, a sheet that isn't flat (misfit over 0.35 mm), a picture coarser than 3 px to the mm.
Expected<FlatPicture> flattened(std::string_view file, const Shot& shot);

/// The maker's brush, as large as the flat picture: 0 as found, 1 belongs to an object, 2 does not.
using Brush = std::vector<std::uint8_t>;

/// What of an object's sides is seen: upright ones from top to base, or the widest edge alone (round things,
/// things that taper downward).
enum class Walls { upright, edge_only };

struct Tracing {
    double height_mm = 0;       ///< of the objects' widest edge above the sheet
    double smoothing_mm = 0.15; ///< corners and edges are moved by no more than this
    Walls walls = Walls::upright;
};

/// One object as found: mm, x right and y up, about the middle of its box.
struct FoundOutline {
    shape::Polygon polygon;
    shape::Vec at{};    ///< that middle in the flat picture, mm from its lower left corner
    double band_mm = 0; ///< the outline lies within ± this (two standard deviations and the smoothing);
                        ///< sharp corners are rounded by up to 0.2 mm more
    bool maybe_shadow =
        false;               ///< a gray part with a sharp edge counts as object: look whether it is a shadow
    bool maybe_part = false; ///< so near to another that both may be one thing, cut by a blank streak
};

struct Traced {
    std::vector<FoundOutline> outlines; ///< by area, largest first
    double enlarged_by = 1;             ///< d/(d − z), taken out again
};

/// The outlines of what lies on the sheet. Parallax: an edge at height z seen from d above looks larger by
/// d/(d − z) about the camera's foot (intercept theorem), which is taken out. Refused in words: nothing
/// found, an object over the field's edge, too little bare paper, a blurred picture, a height without a
/// camera distance.
Expected<Traced> traced_objects(const FlatPicture& flat, const Tracing& tracing, const Brush& brush = {});

} // namespace drawercast::capture
