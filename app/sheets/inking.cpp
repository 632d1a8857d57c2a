// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/inking.h"

#include "sheets/room.h"

#include <cmath>

namespace drawercast::sheets {

using theme::LineRole;

void Inking::ink(const Mark& mark) {
    if (mark.subject != about_) {
        about_ = mark.subject;
        inks_.push_back(About{about_});
    }
    std::visit([this](const auto& kind) { add(kind); }, mark.kind);
}

theme::Lettering Inking::lettering(theme::TextRole role) const {
    theme::Lettering lettering = theme::lettering_of(role, view_.medium);
    lettering.px *= view_.per_px;
    return lettering;
}

void Inking::stroke(const Path& device, LineRole role) {
    inks_.push_back(Stroke{device, theme::pen_of(role, theme_, view_.medium, view_.per_px)});
}

void Inking::arrow_head(Vec tip, Vec direction, const QColor& color, double logical) {
    constexpr double half_opening = 11.0; // degrees
    const double half = px(logical) * std::tan(half_opening * 3.14159265358979 / 180);
    const Vec back = tip - direction * px(logical), side = Vec{-direction.y, direction.x} * half;
    inks_.push_back(Fill{polygon({tip, back + side, back - side}), color});
}

void Inking::add(const PathMark& mark) {
    const Path path = view_(mark.path);
    if (mark.wash) {
        inks_.push_back(Fill{path, theme::color_of(*mark.wash, theme_)});
        if (mark.wash->role == theme::WashRole::face) taken_.ground = bounds(path);
        if (!about_.empty()) taken_.pockets.push_back(bounds(path));
    }
    if (!mark.line) return;
    if (theme::is_cased(*mark.line)) {
        theme::Pen casing = theme::pen_of(*mark.line, theme_, view_.medium, view_.per_px);
        casing.color = theme_.paper;
        casing.color.setAlphaF(static_cast<float>(theme_.casing));
        casing.width += px(2.5);
        casing.dashes.clear();
        inks_.push_back(Stroke{path, casing});
    }
    stroke(path, *mark.line);
}

void Inking::plate(const Box& box, const QColor& color) { inks_.push_back(Fill{path_of(box), color}); }

namespace {

struct HatchKind {
    LineRole line;
    double turn_deg;
    double pitch_px;
};
HatchKind kind_of(Hatch hatch) {
    switch (hatch) {
    case Hatch::wall:
        return {LineRole::wall_hatch, 45, 6};
    case Hatch::obstruction:
        return {LineRole::wall_hatch, 135, 5};
    case Hatch::block:
        return {LineRole::wood_hatch, 45, 8};
    case Hatch::block_other:
        return {LineRole::wood_hatch, 135, 9};
    case Hatch::notch:
        return {LineRole::wood_hatch, 45, 4};
    case Hatch::filler:
        return {LineRole::wood_hatch, 135, 5};
    case Hatch::shared:
        return {LineRole::mend_hatch, 45, 4};
    }
    return {LineRole::wall_hatch, 45, 6};
}

} // namespace

void Inking::add(const HatchMark& mark) {
    const HatchKind kind = kind_of(mark.hatch);
    const Path lines =
        hatching(chords(view_(mark.area), px(0.1)), view_.origin, kind.turn_deg, px(kind.pitch_px));
    if (!lines.empty()) stroke(lines, kind.line);
}

Inks ink_of(const std::vector<Mark>& marks, const View& view, const theme::Theme& theme) {
    Inking inking(view, theme);
    for (const Mark& mark : marks) inking.ink(mark);
    return inking.take();
}

Inks ink_of(const std::vector<Mark>& marks, Layer layer, const View& view, const theme::Theme& theme) {
    Inking inking(view, theme);
    for (const Mark& mark : marks)
        if (mark.layer == layer) inking.ink(mark);
    return inking.take();
}

} // namespace drawercast::sheets
