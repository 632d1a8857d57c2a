// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/check.h"

#include "sheets/path.h"
#include "theme/roles.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

/// The marks a sheet is made of: places in millimeters of the sheet's frame (y up), and for the rest what
/// they are (roles), never colors, weights or sizes. Texts are UTF-8.
namespace drawercast::sheets {

/// Some logical pixels away from a point, y up.
struct Place {
    Vec mm;
    Vec px{};
};

/// An outline or line.
struct PathMark {
    Path path;
    std::optional<theme::LineRole> line;
    std::optional<theme::Wash> wash;
};

enum class Hatch { wall, obstruction, block, block_other, notch, filler, shared };
/// Parallel lines over an area, anchored to the sheet.
struct HatchMark {
    Path area;
    Hatch hatch = Hatch::wall;
};

struct TextLine {
    std::string text;
    theme::TextRole role = theme::TextRole::name;
    bool depth_sign = false; ///< the sign of a hole's depth before the words
    bool beside = false;     ///< on the line of the words before, not below them
};
/// Words inside an outline, wherever they fit: the first of `tries` that does, level or upright. Where none
/// does it is left out, or stands outside on a leader.
struct LabelMark {
    std::vector<std::vector<TextLine>> tries;
    Path within;
    std::vector<Path> avoid;     ///< deeper hollows in it, with labels of their own
    std::vector<Path> uncovered; ///< better left free, if there is room: center, screws
    bool outside = false;        ///< must be seen: on a leader where it has no room
};

enum class Side { left, center, right };
/// A place for words on one line, and which end of them stands there.
struct Spot {
    Place at;
    Side anchor = Side::center;
};
/// Where words look for room when their own place is taken.
struct Elsewhere {
    std::vector<Spot> spots; ///< the first one that is clear
    Box within{};            ///< mm; empty: anywhere
    bool or_none = false;    ///< no leader where nothing is clear
    std::string shorter{};   ///< tried next where the words have no room; empty: they are left out
};
/// Words at a place, on one line.
struct TextMark {
    Place at;
    std::string text;
    theme::TextRole role = theme::TextRole::caption;
    Side anchor = Side::center;
    double turn_deg = 0;
    bool plate = false; ///< knocks out what lies under it
    Elsewhere elsewhere{};
};
/// Draws nothing: words that look for room keep off it.
struct KeepFreeMark {
    Box mm;
    double grown_px = 0;
};

/// A dimension (ISO 129): line moved by `out` away from the two points, filled arrows, figure in the line.
struct DimensionMark {
    Vec from;
    Vec to;
    Place out;
    std::string text;
    double figure_at = 0.5; ///< share of the line at which the figure stands
};

/// What stands on a check's badge and plate.
struct CheckTag {
    int number = 0; ///< as in the list
    layout::Severity severity = layout::Severity::note;
    bool left_as_is = false;
    std::string text; ///< "wall 6.2, needs 8"; empty: badge only
    std::string key;  ///< the same for the same check, whatever its number and figures
};
/// Something too thin between two points: wide ends, arrows from outside, leader to a plate on free face.
struct GapMark {
    Vec from;
    Vec to;
    CheckTag tag;
};
/// A check at a point.
struct FlagMark {
    Vec at;
    CheckTag tag;
};

/// Two center lines reaching a little past the edges.
struct CenterMark {
    Vec center;
    Vec half_mm; ///< half extents along the turned axes
    double turn_deg = 0;
};

enum class Sign {
    screw,   ///< ring with a cross
    pin,     ///< small ring
    datum,   ///< quartered disc
    f_front, ///< arrow to the drawer's front with an upright F
    f_front_mirrored,
};
struct SignMark {
    Sign sign = Sign::datum;
    Place at;
};

enum class Ladder { depth, magnitude };
/// The steps of a ladder and their figures, from `at` to the right: one more figure than steps.
struct LegendMark {
    Place at;
    Ladder ladder = Ladder::depth;
    std::string caption; ///< "depth"
    std::vector<std::string> figures;
};

using MarkKind = std::variant<PathMark, HatchMark, LabelMark, TextMark, DimensionMark, GapMark, FlagMark,
                              CenterMark, SignMark, LegendMark, KeepFreeMark>;

/// ground: the drawer or box itself. still: what stands in it. live: what changes while the pointer moves.
enum class Layer { ground, still, live };

struct Mark {
    Layer layer = Layer::ground;
    std::string subject; ///< "i1#1"; empty: none
    MarkKind kind;
};

} // namespace drawercast::sheets
