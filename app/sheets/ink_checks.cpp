// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/badge.h"
#include "sheets/inking.h"
#include "sheets/room.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace drawercast::sheets {

using layout::Severity;
using theme::LineRole;

namespace {

bool meet(const Box& a, const Box& b) { return shape::near(a, b); }

LineRole end_role(Severity severity) {
    return severity == Severity::mend ? LineRole::mend_end : LineRole::look_end;
}
LineRole line_role(Severity severity) {
    return severity == Severity::mend ? LineRole::mend_line : LineRole::look_line;
}

} // namespace

std::optional<Box> Inking::free_place(Vec at, Vec size) const {
    const auto clear_of = [](const std::vector<Box>& boxes, const Box& place) {
        return std::none_of(boxes.begin(), boxes.end(), [&](const Box& box) { return meet(box, place); });
    };
    const auto on_ground = [&](const Box& place) {
        return !ground_ || (place.min.x >= ground_->min.x && place.max.x <= ground_->max.x &&
                            place.min.y >= ground_->min.y && place.max.y <= ground_->max.y);
    };
    for (const bool clear_of_pockets : {true, false})
        for (int ring = 1; ring <= 24; ++ring) {
            constexpr int directions = 16;
            for (int k = 0; k < directions; ++k) {
                const double angle = 2 * std::numbers::pi * k / directions;
                const Vec reach{std::cos(angle), std::sin(angle)};
                const Vec center =
                    at + reach * px(8.0 * ring) + Vec{reach.x * size.x / 2, reach.y * size.y / 2};
                const Box place{center - size * 0.5, center + size * 0.5};
                if (!on_ground(place) || !clear_of(words_, place.grown(px(2)))) continue;
                if (clear_of_pockets && !clear_of(pockets_, place.grown(px(2)))) continue;
                return place;
            }
        }
    return std::nullopt;
}

Vec Inking::badge_size() const { return Vec{px(16), px(16)}; }

void Inking::badge(Vec center, const CheckTag& tag) {
    theme::Lettering face = lettering(theme::TextRole::badge);
    write_badge(inks_, center, view_.per_px, tag, face, theme_);
    const double r = px(8);
    words_.push_back(Box{center - Vec{r, r}, center + Vec{r, r}});
}

void Inking::check_plate(Vec from, const CheckTag& tag) {
    const theme::Lettering face = lettering(theme::TextRole::plate);
    const QString text = tag.left_as_is ? QString() : QString::fromStdString(tag.text);
    const double width = text.isEmpty() ? 0 : written_width(text, face) + px(6);
    const Vec size{badge_size().x + px(6) + width, px(22)};
    const auto place = free_place(from, size);
    if (!place) return badge(from, tag);
    const QColor line = tag.severity == Severity::mend   ? theme_.red
                        : tag.severity == Severity::look ? theme_.ochre
                                                         : theme_.ink;
    const Vec to{std::clamp(from.x, place->min.x, place->max.x),
                 std::clamp(from.y, place->min.y, place->max.y)};
    const Path leader = sheets::line(from, to);
    QColor casing = theme_.paper;
    casing.setAlphaF(static_cast<float>(theme_.casing));
    inks_.push_back(Stroke{leader, {casing, px(3.8), {}}});
    inks_.push_back(Stroke{leader, {line, px(1.3), {}}});
    if (!text.isEmpty()) {
        const bool mend = tag.severity == Severity::mend, look = tag.severity == Severity::look;
        plate(*place, mend ? theme_.red_soft : look ? theme_.ochre_soft : theme_.paper);
        inks_.push_back(Stroke{path_of(*place), {line, px(1.3), {}}});
        const Vec base{place->min.x + badge_size().x + px(8),
                       place->center().y + face.px * theme::capital_share / 2};
        write(inks_, text, base, face, line);
    }
    badge({place->min.x + px(3) + badge_size().x / 2, place->center().y}, tag);
    words_.push_back(*place);
}

void Inking::add(const FlagMark& mark) { check_plate(view_(mark.at), mark.tag); }

void Inking::add(const GapMark& mark) {
    const Vec a = view_(mark.from), b = view_(mark.to);
    const double span = length(b - a);
    if (mark.tag.left_as_is || mark.tag.severity == Severity::note || span < 1e-9)
        return check_plate((a + b) * 0.5, mark.tag);
    const Vec along = (b - a) * (1 / span), side{-along.y, along.x};
    const double half = px(9), tail = px(12);
    const Path ends = joined(line(a - side * half, a + side * half), line(b - side * half, b + side * half));
    const Path tails = joined(line(a - along * tail, a), line(b + along * tail, b));
    const QColor ink = mark.tag.severity == Severity::mend ? theme_.red : theme_.ochre;
    QColor casing = theme_.paper;
    casing.setAlphaF(static_cast<float>(theme_.casing));
    inks_.push_back(Stroke{joined(ends, tails), {casing, px(4), {}}});
    stroke(tails, line_role(mark.tag.severity));
    stroke(ends, end_role(mark.tag.severity));
    arrow_head(a, along, ink, 6);
    arrow_head(b, along * -1, ink, 6);
    words_.push_back(bounds(joined(ends, tails)));
    check_plate((a + b) * 0.5, mark.tag);
}

} // namespace drawercast::sheets
