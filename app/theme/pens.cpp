// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/pens.h"

namespace drawercast::theme {

namespace {

using Ink = QColor Theme::*;

struct LineKind {
    Ink ink;
    double screen_px;
    double paper_mm;
    std::vector<double> dashes_px; // at 1× on screen; the same lengths at 96 dpi on paper
};

LineKind kind_of(LineRole role) {
    const std::vector<double> dashed{6, 3}, center{12, 3, 2, 3}, neighbor{12, 3, 2, 3, 2, 3},
        guide{14, 3, 2, 3, 2, 3};
    switch (role) {
    case LineRole::cavity_edge:
        return {&Theme::ink, 2.0, 0.50, {}};
    case LineRole::pocket_edge:
        return {&Theme::ink, 1.6, 0.35, {}};
    case LineRole::trace:
        return {&Theme::ink, 1.0, 0.25, {}};
    case LineRole::thin:
        return {&Theme::ink, 1.0, 0.25, {}};
    case LineRole::soft:
        return {&Theme::ink3, 1.0, 0.18, {}};
    case LineRole::under:
        return {&Theme::ink, 1.0, 0.25, dashed};
    case LineRole::clay:
        return {&Theme::wood_line, 1.25, 0.25, dashed};
    case LineRole::center:
        return {&Theme::ink2, 1.0, 0.18, center};
    case LineRole::neighbor:
        return {&Theme::ink2, 1.0, 0.25, neighbor};
    case LineRole::guide:
        return {&Theme::blue, 1.25, 0.25, guide};
    case LineRole::mend_end:
        return {&Theme::red, 2.0, 0.50, {}};
    case LineRole::mend_line:
        return {&Theme::red, 1.3, 0.25, {}};
    case LineRole::look_end:
        return {&Theme::ochre, 2.0, 0.50, {}};
    case LineRole::look_line:
        return {&Theme::ochre, 1.3, 0.25, {}};
    case LineRole::border:
        return {&Theme::ink, 2.0, 0.70, {}};
    case LineRole::title_line:
        return {&Theme::ink, 2.0, 0.50, {}};
    case LineRole::wall_hatch:
        return {&Theme::ink3, 1.0, 0.13, {}};
    case LineRole::wood_hatch:
        return {&Theme::wood_line, 1.0, 0.13, {}};
    case LineRole::contour:
        return {&Theme::wood_line, 1.1, 0.18, {}};
    case LineRole::mend_hatch:
        return {&Theme::red, 1.0, 0.18, {}};
    case LineRole::rule:
        return {&Theme::rule, 1.0, 0.18, {}};
    }
    return {&Theme::ink, 1.0, 0.25, {}};
}

} // namespace

Pen pen_of(LineRole role, const Theme& theme, Medium medium, double px) {
    const LineKind kind = kind_of(role);
    const double width_px = medium == Medium::screen ? kind.screen_px : kind.paper_mm * px_per_mm;
    Pen pen{theme.*kind.ink, theme.line(width_px) * px, kind.dashes_px};
    for (double& length : pen.dashes) length *= px;
    return pen;
}

bool is_cased(LineRole role) {
    switch (role) {
    case LineRole::guide:
    case LineRole::mend_end:
    case LineRole::mend_line:
    case LineRole::look_end:
    case LineRole::look_line:
        return true;
    default:
        return false;
    }
}

QColor color_of(const Wash& wash, const Theme& theme) {
    switch (wash.role) {
    case WashRole::paper:
        return theme.paper;
    case WashRole::face:
        return theme.face;
    case WashRole::depth:
        return theme.depth_wash(wash.share);
    case WashRole::magnitude:
        return theme.magnitude_wash(wash.share);
    case WashRole::wall:
        return theme.wall;
    case WashRole::wood:
        return theme.wood;
    case WashRole::red_soft:
        return theme.red_soft;
    case WashRole::ochre_soft:
        return theme.ochre_soft;
    case WashRole::ink:
        return theme.ink;
    }
    return theme.paper;
}

} // namespace drawercast::theme
