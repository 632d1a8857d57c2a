// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/feel.h"

#include "base/demand.h"
#include "base/units.h"
#include "layout/boundary.h"
#include "layout/walls.h"

#include <algorithm>

namespace drawercast::layout {

namespace {

using shape::Vec;

constexpr double strain25 = 0.25;
constexpr double strain40 = 0.40;

/// Which way the ends of a level face in its own plane; zero for a circle.
Vec long_axis_of(const job::Level& level) {
    const auto* sunk = std::get_if<job::Sunk>(&level.form);
    const auto* through = std::get_if<job::Through>(&level.form);
    if (!sunk && !through) return {1, 0}; // cylinders lie along x
    const shape::Given& given = sunk ? sunk->outline : through->outline;
    if (std::holds_alternative<shape::Circle>(given)) return {};
    const auto contour = shape::contour_of(given);
    if (!contour) return {};
    const shape::Box box = shape::bounds(*contour);
    return box.width() >= box.height() ? Vec{1, 0} : Vec{0, 1};
}

std::vector<Squeeze> squeezes_of(const PlacedPocket& pocket, const job::Object* object,
                                 job::Firmness firmness) {
    std::vector<Squeeze> squeezes;
    for (const auto& cut : pocket.cuts) {
        Squeeze squeeze;
        if (object && cut.kind == Cut<shape::InDrawer>::Kind::level) {
            const shape::Fit fit = fit_of(*object, firmness);
            const job::Level& level = object->levels.at(static_cast<std::size_t>(cut.index));
            const shape::Turn turn = shape::Turn::of_degrees(level.pose.turn_deg + pocket.pose.turn_deg);
            squeeze = {-fit.side_mm, -fit.end_mm, turn(long_axis_of(level))};
        }
        squeezes.push_back(squeeze);
    }
    return squeezes;
}

/// Friction along the boundary of one hollow.
class Pull {
  public:
    Pull(const Walls& walls, const job::Foam& foam, double step_mm)
        : walls_(walls), foam_(foam), step_mm_(step_mm) {}

    void add(const Cut<shape::InDrawer>& cut, const Squeeze& squeeze) {
        for (const BoundaryPiece& piece : boundary_of(cut.outline.contour, step_mm_)) {
            const Beside beside = walls_.beside(piece.middle, piece.outward, cut.depth_mm);
            if (beside.height_mm == 0) continue;
            const double strain =
                (squeeze.toward(piece.outward) + beside.far_squeeze_mm) / beside.thickness_mm;
            kpa_mm2_ += beside.height_mm * stress_kpa(strain, foam_) * piece.mm;
            if (strain > strain40) beyond_curve_ = true;
        }
    }
    double newtons() const { return friction * kpa_mm2_ / 1000; }
    bool beyond_curve() const { return beyond_curve_; }

  private:
    const Walls& walls_;
    const job::Foam& foam_;
    double step_mm_;
    double kpa_mm2_ = 0;
    bool beyond_curve_ = false;
};

} // namespace

Phrase words_of(Grip grip) {
    switch (grip) {
    case Grip::falls_out:
        return phrase("falls out");
    case Grip::easy:
        return phrase("easy");
    case Grip::firm:
        return phrase("firm");
    case Grip::two_hands:
        return phrase("two hands");
    }
    demand_failed("every grip has a name", __FILE__, __LINE__);
}

double stress_kpa(double strain, const job::Foam& foam) {
    if (strain <= strain25) return foam.stress25_kpa * std::max(0.0, strain) / strain25;
    const double part = std::min(1.0, (strain - strain25) / (strain40 - strain25));
    return foam.stress25_kpa + (foam.stress40_kpa - foam.stress25_kpa) * part;
}

Grip grip_of(double lift_out_n, double weight_n) {
    if (lift_out_n < weight_n) return Grip::falls_out;
    const double together = lift_out_n + weight_n;
    if (together <= easy_up_to_n) return Grip::easy;
    return together <= one_hand_up_to_n ? Grip::firm : Grip::two_hands;
}

std::vector<Feel> feel_of(const std::vector<std::shared_ptr<const PlacedPocket>>& pockets,
                          const job::Job& job, const Insert* insert, double step_mm) {
    std::vector<std::vector<Squeeze>> squeezes;
    for (const auto& pocket : pockets)
        squeezes.push_back(squeezes_of(*pocket, job::find_object(job, pocket->object), job.foam->firmness));
    const Walls walls(pockets, squeezes, insert);
    std::vector<Feel> feels;
    for (std::size_t i = 0; i < pockets.size(); ++i) {
        const job::Object* object = job::find_object(job, pockets[i]->object);
        if (!object) continue;
        Pull pull(walls, *job.foam, step_mm);
        for (std::size_t j = 0; j < pockets[i]->cuts.size(); ++j)
            if (pockets[i]->cuts[j].kind == Cut<shape::InDrawer>::Kind::level)
                pull.add(pockets[i]->cuts[j], squeezes[i][j]);
        const double weight_n = units::standard_gravity * object->mass_g / 1000;
        feels.push_back({pockets[i]->subject, pull.newtons(), weight_n, pull.beyond_curve(),
                         grip_of(pull.newtons(), weight_n)});
    }
    return feels;
}

} // namespace drawercast::layout
