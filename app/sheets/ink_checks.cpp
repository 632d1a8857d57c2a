// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/badge.h"
#include "sheets/inking.h"
#include "sheets/plate_place.h"

#include <utility>

namespace drawercast::sheets {

using layout::Severity;
using theme::LineRole;

namespace {

LineRole end_role(Severity severity) {
    return severity == Severity::mend ? LineRole::mend_end : LineRole::look_end;
}
LineRole line_role(Severity severity) {
    return severity == Severity::mend ? LineRole::mend_line : LineRole::look_line;
}

QColor ink_of(Severity severity, const theme::Theme& theme) {
    return severity == Severity::mend ? theme.red : severity == Severity::look ? theme.ochre : theme.ink;
}

} // namespace

std::optional<Box> Inking::kept_place(Vec from, Vec size, const std::string& key) const {
    for (const SetPlate& plate : before_) {
        if (plate.key != key || key.empty()) continue;
        const Vec center = from + (plate.box.center() - plate.from);
        const Box place{center - size * 0.5, center + size * 0.5};
        if (may_stand(from, place, taken_, view_.per_px, false)) return place;
    }
    return std::nullopt;
}

Vec Inking::badge_size() const { return Vec{px(16), px(16)}; }

void Inking::badge(Vec center, const CheckTag& tag) {
    theme::Lettering face = lettering(theme::TextRole::badge);
    write_badge(inks_, center, view_.per_px, tag, face, theme_);
    const double r = px(8);
    taken_.words.push_back(Box{center - Vec{r, r}, center + Vec{r, r}});
}

void Inking::leader(Vec from, Vec to, const CheckTag& tag) {
    const Path path = sheets::line(from, to);
    QColor casing = theme_.paper;
    casing.setAlphaF(static_cast<float>(theme_.casing));
    inks_.push_back(Stroke{path, {casing, px(3.8), {}}});
    inks_.push_back(Stroke{path, {ink_of(tag.severity, theme_), px(1.3), {}}});
    taken_.leaders.emplace_back(from, to);
}

/// Words and number near by; else the number alone, as the list has the words; else whatever room there is.
void Inking::check_plate(Vec from, const CheckTag& tag) {
    const theme::Lettering face = lettering(theme::TextRole::plate);
    const QString text = tag.left_as_is ? QString() : QString::fromStdString(tag.text);
    const double width = text.isEmpty() ? 0 : written_width(text, face) + px(6);
    const Vec lone = badge_size() + Vec{px(6), px(6)}, whole{lone.x + width, px(22)};
    constexpr PlateReach near{9, false}, over{4, true};
    auto place = kept_place(from, whole, tag.key);
    if (!place) place = plate_place(from, whole, taken_, view_.per_px, near);
    if (!place) place = plate_place(from, whole, taken_, view_.per_px, over);
    const bool with_words = place && !text.isEmpty();
    if (!place) place = plate_place(from, lone, taken_, view_.per_px, {});
    if (!place) {
        plates_.push_back({tag.key, from, Box{from - lone * 0.5, from + lone * 0.5}});
        return badge(from, tag);
    }
    plates_.push_back({tag.key, from, *place});
    leader(from, leader_end(from, *place), tag);
    if (with_words) {
        const bool mend = tag.severity == Severity::mend, look = tag.severity == Severity::look;
        const QColor ink = ink_of(tag.severity, theme_);
        plate(*place, mend ? theme_.red_soft : look ? theme_.ochre_soft : theme_.paper);
        inks_.push_back(Stroke{path_of(*place), {ink, px(1.3), {}}});
        const Vec base{place->min.x + badge_size().x + px(8),
                       place->center().y + face.px * theme::capital_share / 2};
        write(inks_, text, base, face, ink);
    }
    badge({place->min.x + px(3) + badge_size().x / 2, place->center().y}, tag);
    taken_.words.push_back(*place);
}

Inks Inking::take() {
    if (!waiting_.empty() && !about_.empty()) inks_.push_back(About{});
    for (const auto& [from, tag] : std::exchange(waiting_, {})) check_plate(from, tag);
    return std::move(inks_);
}

void Inking::add(const FlagMark& mark) { waiting_.emplace_back(view_(mark.at), mark.tag); }

void Inking::add(const GapMark& mark) {
    const Vec a = view_(mark.from), b = view_(mark.to);
    const double span = length(b - a);
    waiting_.emplace_back((a + b) * 0.5, mark.tag);
    if (mark.tag.left_as_is || mark.tag.severity == Severity::note || span < 1e-9) return;
    const Vec along = (b - a) * (1 / span), side{-along.y, along.x};
    const double half = px(9), tail = px(12);
    const Path ends = joined(line(a - side * half, a + side * half), line(b - side * half, b + side * half));
    const Path tails = joined(line(a - along * tail, a), line(b + along * tail, b));
    const QColor ink = ink_of(mark.tag.severity, theme_);
    QColor casing = theme_.paper;
    casing.setAlphaF(static_cast<float>(theme_.casing));
    inks_.push_back(Stroke{joined(ends, tails), {casing, px(4), {}}});
    stroke(tails, line_role(mark.tag.severity));
    stroke(ends, end_role(mark.tag.severity));
    arrow_head(a, along, ink, 6);
    arrow_head(b, along * -1, ink, 6);
    taken_.words.push_back(bounds(joined(ends, tails)));
}

} // namespace drawercast::sheets
