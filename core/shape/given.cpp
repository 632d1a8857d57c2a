// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "shape/contour.h"
#include "shape/simple.h"
#include "shape/trace.h"

#include <algorithm>
#include <string>

namespace drawercast::shape {
namespace {

constexpr double largest_mm = 100'000;      // far beyond any drawer, far within what a double resolves
constexpr std::size_t most_corners = 5'000; // as given
constexpr std::size_t most_chords = 20'000; // with the arcs as chords

Problem size_problem(Phrase what, Phrase fix) {
    return {"outline-size", "", std::move(what), std::move(fix)};
}

std::string place(Vec at) {
    std::string text("(");
    text += rounded_text(grained(at.x), 6) + ", " + rounded_text(grained(at.y), 6) + ")";
    return text;
}

bool size(double mm) { return mm > 0 && mm <= largest_mm; } // false for NaN

Problem bad_size(Phrase which) {
    return size_problem(phrase("%1 must be over 0 and at most 100000 mm", std::move(which)),
                        phrase("Give the measured size in mm"));
}

/// A rectangle grown by its round radius; sides that the radius takes whole leave a segment or a point.
Contour around(double width, double height, double round) {
    const double x = std::max(0.0, width / 2 - round);
    const double y = std::max(0.0, height / 2 - round);
    if (round == 0 || (x > 0 && y > 0)) return {{{-x, -y}, {x, -y}, {x, y}, {-x, y}}, round};
    if (x > 0) return {{{-x, 0}, {x, 0}}, round};
    if (y > 0) return {{{0, -y}, {0, y}}, round};
    return {{{0, 0}}, round};
}

Expected<Contour> contour_from(const Rectangle& r) {
    if (!size(r.width_mm) || !size(r.height_mm)) return bad_size(phrase("width and height of a rectangle"));
    if (!(r.corner_mm >= 0 && r.corner_mm <= std::min(r.width_mm, r.height_mm) / 2))
        return size_problem(
            phrase("the corner radius %1 mm is not from 0 to half the lesser side",
                   figure(rounded_text(r.corner_mm, 6))),
            phrase("Give at most %1 mm", figure(rounded_text(std::min(r.width_mm, r.height_mm) / 2, 6))));
    return around(r.width_mm, r.height_mm, r.corner_mm);
}

Expected<Contour> contour_from(const Circle& c) {
    if (!size(c.diameter_mm)) return bad_size(phrase("the diameter of a circle"));
    return Contour{{{0, 0}}, c.diameter_mm / 2};
}

Expected<Contour> contour_from(const Capsule& c) {
    if (!size(c.length_mm) || !size(c.width_mm)) return bad_size(phrase("length and width of an obround"));
    if (c.width_mm > c.length_mm)
        return size_problem(phrase("an obround is at least as long as wide"),
                            phrase("Swap length and width and turn it by 90 degrees"));
    return around(c.length_mm, c.width_mm, c.width_mm / 2);
}

// ---- free outlines ----

Ring corners_only(const std::vector<Corner>& corners) {
    Ring ring;
    for (const Corner& c : corners) ring.push_back(c.at);
    return ring;
}

/// Without corners that repeat the one before: the arc between two such has no size.
std::vector<Corner> distinct(const std::vector<Corner>& corners) {
    const auto repeats = [](Vec a, Vec b) { return length(a - b) <= apart_mm; };
    std::vector<Corner> kept;
    for (const Corner& c : corners) {
        if (!kept.empty() && repeats(kept.back().at, c.at)) kept.pop_back();
        kept.push_back(c);
    }
    while (kept.size() > 1 && repeats(kept.front().at, kept.back().at)) kept.pop_back();
    return kept;
}

/// The other way round: an arc belongs to the corner it starts from, which is now the other end.
std::vector<Corner> reversed(const std::vector<Corner>& corners) {
    std::vector<Corner> out;
    const std::size_t n = corners.size();
    for (std::size_t i = n; i-- > 0;) out.push_back({corners[i].at, corners[(i + n - 1) % n].sagitta_mm});
    return out;
}

struct Arc { ///< from a corner of a counter-clockwise ring to the next
    Vec center;
    double radius = 0;
    double angle = 0; ///< > 0 counter-clockwise: bulging outward
    std::size_t chords = 1;
};
Arc arc_of(Vec from, Vec to, double sagitta) {
    const Vec chord = to - from;
    const double c = length(chord);
    if (std::abs(sagitta) <= chord_sagitta_mm) return {}; // straight as far as anyone can tell
    const Vec out = Vec{chord.y, -chord.x} * (1 / c);
    Arc arc;
    arc.radius = (c * c / 4 + sagitta * sagitta) / (2 * std::abs(sagitta));
    arc.center = (from + to) * 0.5 + out * (sagitta - std::copysign(arc.radius, sagitta));
    arc.angle = 4 * std::atan(2 * sagitta / c);
    arc.chords = chords_for(std::abs(arc.angle), arc.radius, chord_sagitta_mm);
    return arc;
}

Problem too_many(Phrase what) {
    return {"outline-many-corners", "", phrase("the outline has more than %1", what),
            phrase("Leave out corners and arcs that nobody could measure")};
}

Expected<Ring> with_arcs(const std::vector<Corner>& corners) {
    Ring ring;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Vec from = corners[i].at;
        const Arc arc = arc_of(from, corners[(i + 1) % corners.size()].at, corners[i].sagitta_mm);
        if (ring.size() + arc.chords > most_chords) return too_many(phrase("20000 chords for its arcs"));
        ring.push_back(from);
        for (std::size_t k = 1; k < arc.chords; ++k) {
            const double phi = arc.angle * static_cast<double>(k) / static_cast<double>(arc.chords);
            ring.push_back(arc.center + Turn{std::cos(phi), std::sin(phi)}(from - arc.center));
        }
    }
    return ring;
}

Problem few_corners() {
    return {"outline-few-corners", "", phrase("the outline encloses no area"),
            phrase("Give at least three corners that are not on one line, or two with an arc between them")};
}

Expected<Contour> simple_or_why(const Ring& raw) {
    Ring ring = tidied(raw);
    if (ring.size() < 3) return few_corners();
    if (const auto meeting = first_meeting(ring))
        return Problem{"outline-crosses", "",
                       meeting->crosses
                           ? phrase("the outline crosses itself at %1", figure(place(meeting->at)))
                           : phrase("the outline touches itself at %1", figure(place(meeting->at))),
                       phrase("Put the corners in the order in which one walks around the object")};
    if (area(ring) <= 0)
        return Problem{"outline-crosses", "",
                       phrase("the arcs bulge so far that inside and outside change places"),
                       phrase("Check the sign and the size of the arc heights")};
    return Contour{std::move(ring), 0};
}

Expected<Contour> contour_from(const Polygon& p) {
    if (p.corners.size() > most_corners) return too_many(phrase("5000 corners"));
    for (const Corner& c : p.corners)
        for (const double v : {c.at.x, c.at.y, c.sagitta_mm})
            if (!(std::abs(v) <= largest_mm))
                return size_problem(phrase("a corner of the outline is not a number within 100000 mm"),
                                    phrase("Give the corners in mm"));
    std::vector<Corner> corners = distinct(p.corners);
    if (corners.size() < 2) return few_corners();
    if (area(corners_only(corners)) < 0) corners = reversed(corners);
    const Expected<Ring> ring = with_arcs(corners);
    if (!ring) return ring.error();
    return simple_or_why(*ring);
}

} // namespace

Expected<Contour> contour_of(const Given& given) {
    return std::visit([](const auto& g) { return contour_from(g); }, given);
}

} // namespace drawercast::shape
