// SPDX-License-Identifier: GPL-3.0-or-later
#include "photo/photo_outline.h"

#include "base/demand.h"
#include "base/number.h"
#include "capture/parallax.h"
#include "layout/pocket.h"
#include "shape/easy.h"
#include "shape/region.h"
#include "shape/symmetric.h"

#include "language/say.h"
#include "language/spoken.h"

#include <algorithm>
#include <cmath>

namespace drawercast::app::photo {

namespace {

constexpr double highest_share = 0.8; // of the camera's distance, as in core/capture

Problem problem(const char* code, Phrase what, Phrase fix) {
    return {code, {}, std::move(what), std::move(fix)};
}

shape::Box box_of(const shape::Polygon& polygon) {
    shape::Box box;
    for (const shape::Corner& corner : polygon.corners) box.add(corner.at);
    return box;
}

std::optional<shape::EasyShape::Kind> easy_kind(Shape shape) {
    using Kind = shape::EasyShape::Kind;
    switch (shape) {
    case Shape::rectangle:
        return Kind::rectangle;
    case Shape::turned_rectangle:
        return Kind::turned_rectangle;
    case Shape::two_rectangles:
        return Kind::two_rectangles;
    case Shape::disc:
        return Kind::disc;
    case Shape::as_found:
    case Shape::symmetric:
        break;
    }
    return std::nullopt;
}

Shape shape_of(shape::EasyShape::Kind kind) {
    using Kind = shape::EasyShape::Kind;
    switch (kind) {
    case Kind::rectangle:
        return Shape::rectangle;
    case Kind::turned_rectangle:
        return Shape::turned_rectangle;
    case Kind::two_rectangles:
        return Shape::two_rectangles;
    case Kind::disc:
        break;
    }
    return Shape::disc;
}

std::optional<shape::Polygon> reshaped(const shape::Contour& contour, Shape wanted) {
    if (wanted == Shape::symmetric) {
        const auto symmetric = shape::symmetric_shape(contour);
        return symmetric ? std::optional(symmetric->polygon) : std::nullopt;
    }
    const auto kind = easy_kind(wanted);
    for (const auto& easy : shape::easy_shapes(contour))
        if (easy.kind == kind) return easy.polygon;
    return std::nullopt;
}

using language::tr;

std::string note_of(const Outline& outline, const Measured& measured) {
    QStringList note{
        (outline.band_in_fit
             ? tr("Measured from a photo: the outline lies within ± %1 mm, which its fit allows for.")
             : tr("Measured from a photo: the outline lies within ± %1 mm."))
            .arg(language::fixed(measured.band_mm, 2))};
    if (outline.brushed) note << tr("Part of it was brushed by hand.");
    if (outline.by_hand) note << tr("Points of it were put right by hand.");
    if (outline.maybe_shadow) note << tr("Part of it may be a shadow: hold it against the object.");
    if (outline.maybe_part) note << tr("It and its neighbor may be one thing, cut by a blank streak.");
    return note.join(QLatin1Char(' ')).toStdString();
}

/// The area both cover, where that is more than half of the lesser of them: then they are of the same thing.
double same_mm2(const shape::Polygon& a, const shape::Polygon& b) {
    constexpr double same = 0.5;
    if (!shape::near(box_of(a), box_of(b))) return 0;
    const auto one = shape::contour_of(a), other = shape::contour_of(b);
    if (!one || !other) return 0;
    const auto both = shape::shared(shape::region_of(*one), shape::region_of(*other));
    const double shared_mm2 = both ? shape::area(*both) : 0;
    return shared_mm2 > same * std::min(shape::area(*one), shape::area(*other)) ? shared_mm2 : 0;
}

Outline outline_of(const capture::FoundOutline& found) {
    Outline out;
    out.band_mm = found.band_mm;
    out.maybe_shadow = found.maybe_shadow;
    out.maybe_part = found.maybe_part;
    for (const shape::Corner& corner : found.polygon.corners)
        out.seen.corners.push_back({corner.at + found.at, corner.sagitta_mm});
    return out;
}

} // namespace

double edge_height(const Outline& outline) { return outline.edge_mm.value_or(outline.height_mm.value_or(0)); }

Expected<Measured> measured(const Outline& outline, const capture::FlatPicture& flat) {
    const auto seen = shape::contour_of(outline.seen);
    if (!seen) return seen.error();
    const double height = flat.scanned ? 0 : edge_height(outline);
    const bool camera = flat.camera.by != capture::CameraBy::nothing;
    if (height > 0 && !camera)
        return problem("capture-no-distance",
                       phrase("how far the camera was can't be told from this picture"),
                       phrase("Type the distance from lens to sheet"));
    if (camera && height >= highest_share * flat.camera.distance_mm)
        return problem("capture-too-high", phrase("the object is nearly as high as the camera was"),
                       phrase("Check height and distance"));
    const shape::Ring ring = shape::traced(*seen);
    const auto base = capture::without_parallax(ring, flat.camera, height, outline.walls);
    if (!base) return base.error();
    Measured out;
    if (height > 0) out.enlarged_by = flat.camera.distance_mm / (flat.camera.distance_mm - height);
    // Two standard deviations of the distance beside what the line itself is uncertain by.
    out.band_mm = std::hypot(outline.band_mm, 2 * capture::parallax_doubt(ring, flat.camera, height));
    for (const shape::Vec p : *base) out.polygon.corners.push_back({p, 0});
    if (outline.shape == Shape::as_found) return out;
    const auto contour = shape::contour_of(out.polygon);
    if (!contour) return contour.error();
    const auto other = reshaped(*contour, outline.shape);
    if (!other)
        return problem("photo-shape", phrase("this outline has no such shape any more"),
                       phrase("Choose its shape anew"));
    out.polygon = *other;
    return out;
}

std::vector<Offer> offers(const Outline& outline, const capture::FlatPicture& flat) {
    std::vector<Offer> out{{}};
    Outline plain = outline;
    plain.shape = Shape::as_found;
    const auto base = measured(plain, flat);
    if (!base) return out;
    const auto contour = shape::contour_of(base->polygon);
    if (!contour) return out;
    if (const auto symmetric = shape::symmetric_shape(*contour))
        out.push_back({Shape::symmetric, symmetric->more_mm2, symmetric->reach_mm});
    for (const auto& easy : shape::easy_shapes(*contour))
        out.push_back({shape_of(easy.kind), easy.more_mm2, easy.reach_mm});
    return out;
}

Expected<job::Object> object_of(const Outline& outline, const capture::FlatPicture& flat,
                                job::Firmness firmness) {
    DRAWERCAST_DEMAND(outline.height_mm.has_value(), "an object without a height is not taken");
    const auto found = measured(outline, flat);
    if (!found) return found.error();
    job::Object object;
    object.name = outline.name;
    object.height_mm = grained(*outline.height_mm);
    object.note = note_of(outline, *found);
    if (outline.band_in_fit) {
        const auto usual = layout::fit_of(object, firmness);
        object.fit_mm = grained(usual.side_mm + found->band_mm);
    }
    shape::Polygon polygon = found->polygon;
    const shape::Vec middle = box_of(polygon).center();
    for (shape::Corner& corner : polygon.corners) {
        const shape::Vec at = corner.at - middle;
        corner = {grained_at(at), grained(corner.sagitta_mm)};
    }
    object.levels = {{job::Sunk{polygon, grained(outline.depth_mm.value_or(*outline.height_mm))}, {}, {}}};
    return object;
}

std::vector<Outline> looked_again(const std::vector<Outline>& before, const capture::Traced& found) {
    std::vector<std::optional<Outline>> again(before.size());
    std::vector<Outline> fresh;
    for (const capture::FoundOutline& one : found.outlines) {
        Outline now = outline_of(one);
        std::size_t best = before.size();
        double most = 0;
        bool by_hand = false; // what it is part of has its outline by hand already
        for (std::size_t i = 0; i < before.size(); ++i) {
            const double mm2 = same_mm2(now.seen, before[i].seen);
            by_hand |= mm2 > 0 && before[i].by_hand && again[i];
            if (!again[i] && mm2 > most) most = mm2, best = i;
        }
        if (best == before.size()) {
            if (!by_hand) fresh.push_back(std::move(now));
            continue;
        }
        again[best] = before[best];
        if (again[best]->by_hand) continue;
        again[best]->seen = now.seen;
        again[best]->band_mm = now.band_mm;
        again[best]->maybe_shadow = now.maybe_shadow;
        again[best]->maybe_part = now.maybe_part;
    }
    std::vector<Outline> out;
    for (std::size_t i = 0; i < before.size(); ++i)
        if (again[i] || before[i].by_hand) out.push_back(again[i].value_or(before[i]));
    out.insert(out.end(), fresh.begin(), fresh.end());
    return out;
}

} // namespace drawercast::app::photo
