// SPDX-License-Identifier: GPL-3.0-or-later
// Words on one line: at their place, or where there is room for them.
#include "shape/boxes.h"

#include "language/spoken.h"
#include "sheets/inking.h"
#include "sheets/plate_place.h"

#include <algorithm>
#include <utility>

namespace drawercast::sheets {

namespace {

constexpr double margin_px = 1.5; ///< of the plate under the words
constexpr int leader_steps = 9;   ///< longer leaders are harder to follow than a number to the list

} // namespace

struct Inking::Written {
    QString text;
    theme::Lettering face;
    double width = 0;
    double rise = 0;
    Vec along; ///< the way the words run
    Vec up;

    Vec base(Vec place, Side anchor) const {
        const double share = anchor == Side::left ? 0 : anchor == Side::center ? 0.5 : 1;
        return place - along * (width * share) - up * (rise / 2);
    }
    Box box(Vec base) const {
        Box box;
        for (const Vec corner : {base - up * (0.2 * rise), base + along * width, base + up * rise,
                                 base + along * width + up * rise})
            box.add(corner);
        return box;
    }
};

Inking::Written Inking::line_of(const TextMark& mark) const {
    const shape::Turn turn = shape::Turn::of_degrees(mark.turn_deg);
    const bool reckoned = mark.role == theme::TextRole::figure || mark.role == theme::TextRole::caption ||
                          mark.role == theme::TextRole::depth;
    Written words{reckoned ? language::figures(mark.text) : QString::fromStdString(mark.text),
                  lettering(mark.role),
                  0,
                  0,
                  {turn.cosine, -turn.sine},
                  {-turn.sine, -turn.cosine}};
    words.width = written_width(words.text, words.face);
    words.rise = words.face.px * theme::capital_share;
    return words;
}

Box Inking::taken_by(const Written& words, const Spot& spot) const {
    return words.box(words.base(view_.at(spot.at.mm, spot.at.px), spot.anchor)).grown(px(margin_px));
}

bool Inking::is_clear(const Box& box, const Elsewhere& elsewhere) const {
    const auto meets = [&](const Box& other) { return shape::near(other, box); };
    if (!elsewhere.within.empty() && !shape::holds(bounds(view_(path_of(elsewhere.within))), box))
        return false;
    return std::none_of(taken_.words.begin(), taken_.words.end(), meets) &&
           std::none_of(taken_.kept.begin(), taken_.kept.end(), meets);
}

/// Its own place where that is clear, else the first other one that is.
std::optional<Spot> Inking::spot_for(const TextMark& mark, const Written& words) const {
    const auto clear = [&](const Spot& spot) { return is_clear(taken_by(words, spot), mark.elsewhere); };
    const Spot own{mark.at, mark.anchor};
    const auto& spots = mark.elsewhere.spots;
    if (spots.empty() || clear(own)) return own;
    const auto other = std::find_if(spots.begin(), spots.end(), clear);
    if (other == spots.end()) return std::nullopt;
    return *other;
}

void Inking::write_line(const TextMark& mark, const Written& words, Vec base) {
    const Box box = words.box(base);
    if (mark.plate) plate(box.grown(px(margin_px)), theme_.paper);
    taken_.words.push_back(box);
    const bool quiet = mark.role == theme::TextRole::zone || mark.role == theme::TextRole::caption;
    write_turned(inks_, words.text, {base, Align::left, mark.turn_deg}, words.face,
                 quiet ? theme_.ink2 : theme_.ink);
}

/// Away from its place, a thin line leading there; false where even that has no room.
bool Inking::on_leader(const TextMark& mark, const Written& words) {
    const Vec from = view_.at(mark.at.mm, {});
    const Vec margin{px(margin_px), px(margin_px)};
    const Box flat = words.box({});
    const Vec size = Vec{flat.width(), flat.height()} + margin * 2;
    Taken around = taken_;
    if (!mark.elsewhere.within.empty()) around.ground = bounds(view_(path_of(mark.elsewhere.within)));
    PlateReach reach; // what has shorter words needs no long leader
    if (!mark.elsewhere.shorter.empty()) reach.steps = leader_steps;
    const auto place = plate_place(from, size, around, view_.per_px, reach);
    if (!place) return false;
    const Vec to = leader_end(from, *place);
    stroke(line(from, to), theme::LineRole::thin);
    taken_.leaders.emplace_back(from, to);
    write_line(mark, words, place->min + margin - flat.min);
    return true;
}

void Inking::add(const TextMark& mark) {
    const Written words = line_of(mark);
    if (const auto spot = spot_for(mark, words))
        return write_line(mark, words, words.base(view_.at(spot->at.mm, spot->at.px), spot->anchor));
    if (!mark.elsewhere.or_none && on_leader(mark, words)) return;
    if (!mark.elsewhere.shorter.empty()) {
        TextMark shorter = mark;
        shorter.text = std::exchange(shorter.elsewhere.shorter, {});
        return add(shorter);
    }
    // Left out: two words in one place are neither. Nearer, or on a larger sheet, there is room.
}

void Inking::add(const KeepFreeMark& mark) {
    taken_.kept.push_back(bounds(view_(path_of(mark.mm))).grown(px(mark.grown_px)));
}

} // namespace drawercast::sheets
