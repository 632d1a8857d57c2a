// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/tidy.h"

#include "arrange/standing.h"
#include "job/edit.h"
#include "layout/minimums.h"
#include "shape/gap.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace drawercast::arrange {

namespace {

using layout::PlacedPocket;
using shape::Vec;

constexpr int passes = 40;          ///< walls even out by halves; more were never needed (our guess)
constexpr double settled_mm = 0.01; ///< a move that nobody sees

/// The pockets of one drawer, of which one after another is tried elsewhere.
class Floor {
  public:
    Floor(const job::Job& job, const job::Drawer& drawer, layout::Insert insert)
        : insert_(std::move(insert)), minimums_(layout::minimums_of(job.minimums, job.foam->firmness)) {
        for (const auto& standing : standing_in(job, drawer)) {
            pockets_.push_back(*standing.pocket);
            first_.push_back(standing.pocket->pose);
            masses_.push_back(standing.object->mass_g);
            const auto found = job::find_pocket(job, standing.pocket->subject);
            const job::Object* object = job::find_object(job, standing.pocket->object);
            locked_.push_back(found.pocket->locked);
            turns_.push_back(found.pocket->locked ? job::Turns::none : object->turns);
        }
    }

    std::size_t size() const { return pockets_.size(); }
    const PlacedPocket& operator[](std::size_t i) const { return pockets_[i]; }
    bool loose(std::size_t i) const { return !locked_[i]; }
    bool may_turn(std::size_t i, double turn_deg) const {
        if (turns_[i] != job::Turns::half) return turns_[i] != job::Turns::none;
        return std::fmod(std::abs(turn_deg - pockets_[i].pose.turn_deg), 180) == 0;
    }
    double mass_g(std::size_t i) const { return masses_[i]; }
    const shape::Box& box() const { return insert_.box; }

    PlacedPocket at(std::size_t i, const shape::Pose& pose) const {
        job::Pocket pocket;
        pocket.object = pockets_[i].object;
        pocket.pose = pose;
        PlacedPocket placed = layout::place(pocket, pockets_[i].form);
        placed.subject = pockets_[i].subject;
        return placed;
    }
    /// Turned about the middle of its box.
    PlacedPocket turned(std::size_t i, double turn_deg) const {
        PlacedPocket one = at(i, {pockets_[i].pose.at, turn_deg});
        return moved(i, one, pockets_[i].box.center() - one.box.center());
    }
    PlacedPocket moved(std::size_t i, const PlacedPocket& one, Vec by) const {
        return at(i, {one.pose.at + by, one.pose.turn_deg});
    }
    void put(std::size_t i, PlacedPocket one) { pockets_[i] = std::move(one); }

    /// Whether nothing is wrong with it there, `beside` looked past.
    bool clear(std::size_t i, const PlacedPocket& one, std::size_t beside) const {
        std::vector<layout::Check> checks;
        layout::add_edge_checks(one, insert_, minimums_, checks);
        if (std::any_of(checks.begin(), checks.end(), about_place)) return false;
        for (std::size_t j = 0; j < size(); ++j)
            if (j != i && j != beside && layout::pair_check(one, pockets_[j], minimums_)) return false;
        return true;
    }
    bool clear(std::size_t i, const PlacedPocket& one) const { return clear(i, one, i); }

    double narrowest_mm() const {
        double least = std::numeric_limits<double>::infinity();
        for (std::size_t i = 0; i < size(); ++i)
            for (const auto& cut : pockets_[i].cuts) {
                const auto& edges = insert_.edges;
                for (std::size_t e = 0; e < edges.size(); ++e)
                    least =
                        std::min(least, (e == 0 ? shape::gap_inside(cut.outline.contour, edges[e].contour)
                                                : shape::gap_between(cut.outline.contour, edges[e].contour))
                                            .mm);
                for (std::size_t j = 0; j < i; ++j)
                    for (const auto& other : pockets_[j].cuts)
                        least = std::min(least,
                                         shape::gap_between(cut.outline.contour, other.outline.contour).mm);
            }
        return std::isfinite(least) ? least : 0;
    }
    double heavy_mm() const {
        double sum = 0;
        double moment = 0;
        for (std::size_t i = 0; i < size(); ++i) {
            sum += masses_[i];
            moment += masses_[i] * (pockets_[i].box.center().y - insert_.box.min.y);
        }
        return sum > 0 ? moment / sum : 0;
    }
    std::vector<job::Placement> moves() const {
        std::vector<job::Placement> moves;
        for (std::size_t i = 0; i < size(); ++i)
            if (!(pockets_[i].pose == first_[i])) moves.push_back({pockets_[i].subject, pockets_[i].pose});
        return moves;
    }

  private:
    layout::Insert insert_;
    layout::Minimums minimums_;
    std::vector<PlacedPocket> pockets_;
    std::vector<shape::Pose> first_;
    std::vector<double> masses_;
    std::vector<bool> locked_;
    std::vector<job::Turns> turns_;
};

/// How far a pocket may slide up and down an axis before its box meets another or the insert's.
std::pair<double, double> room_along(const Floor& floor, std::size_t i, bool along_y) {
    const auto low = [&](const shape::Box& box) { return along_y ? box.min.y : box.min.x; };
    const auto high = [&](const shape::Box& box) { return along_y ? box.max.y : box.max.x; };
    const auto beside = [&](const shape::Box& a, const shape::Box& b) {
        return along_y ? a.min.x < b.max.x && b.min.x < a.max.x : a.min.y < b.max.y && b.min.y < a.max.y;
    };
    const shape::Box& box = floor[i].box;
    double down = low(box) - low(floor.box());
    double up = high(floor.box()) - high(box);
    for (std::size_t j = 0; j < floor.size(); ++j) {
        const shape::Box& other = floor[j].box;
        if (j == i || !beside(box, other)) continue;
        if (high(other) <= low(box)) down = std::min(down, low(box) - high(other));
        if (low(other) >= high(box)) up = std::min(up, low(other) - high(box));
    }
    return {down, up};
}

void even_walls(Floor& floor) {
    bool again = true;
    for (int pass = 0; pass < passes && again; ++pass) {
        again = false;
        for (std::size_t i = 0; i < floor.size(); ++i)
            for (const bool along_y : {false, true}) {
                if (!floor.loose(i)) continue;
                const auto [down, up] = room_along(floor, i, along_y);
                const double by = (up - down) / 2;
                if (std::abs(by) < settled_mm) continue;
                PlacedPocket one = floor.moved(i, floor[i], along_y ? Vec{0, by} : Vec{by, 0});
                if (!floor.clear(i, one)) continue;
                floor.put(i, std::move(one));
                again = true;
            }
    }
}

/// Read from the front, or at least not from the back. Returns how many stay as they are.
int turn_labels(Floor& floor) {
    int left = 0;
    for (std::size_t i = 0; i < floor.size(); ++i) {
        const double turn = floor[i].pose.turn_deg;
        if (turn == 0) continue;
        bool may = false;
        bool done = false;
        for (const double wanted : {0.0, 90.0}) {
            if (done || wanted == turn) break; // it reads from the side already
            if (!floor.may_turn(i, wanted)) continue;
            may = true;
            PlacedPocket one = floor.turned(i, wanted);
            if (!floor.clear(i, one)) continue;
            floor.put(i, std::move(one));
            done = true;
        }
        left += may && !done;
    }
    return left;
}

void heavy_to_front(Floor& floor) {
    bool again = true;
    for (int pass = 0; pass < passes && again; ++pass) {
        again = false;
        for (std::size_t i = 0; i < floor.size(); ++i)
            for (std::size_t j = 0; j < floor.size(); ++j) {
                const Vec apart = floor[j].box.center() - floor[i].box.center();
                if (!floor.loose(i) || !floor.loose(j) || floor.mass_g(i) <= floor.mass_g(j)) continue;
                if (apart.y >= -settled_mm) continue; // the heavier one is in front already
                PlacedPocket heavy = floor.moved(i, floor[i], apart);
                PlacedPocket light = floor.moved(j, floor[j], apart * -1.0);
                if (!floor.clear(i, heavy, j)) continue;
                const PlacedPocket before = floor[i];
                floor.put(i, std::move(heavy));
                if (floor.clear(j, light)) {
                    floor.put(j, std::move(light));
                    again = true;
                } else {
                    floor.put(i, before);
                }
            }
    }
}

} // namespace

Tidied tidied(const job::Job& job, const std::string& id, Wish wish) {
    Tidied out;
    out.wish = wish;
    out.job = job;
    const job::Drawer* drawer = job::find_drawer(job, id);
    if (drawer == nullptr) return out;
    auto insert = layout::insert_of(*drawer, layout::gap_of(*drawer, job.foam->firmness));
    if (!insert) return out;
    Floor floor(job, *drawer, std::move(*insert));
    out.narrowest_before_mm = floor.narrowest_mm();
    out.heavy_before_mm = floor.heavy_mm();
    if (wish == Wish::equal_walls) even_walls(floor);
    if (wish == Wish::labels_one_way) out.left = turn_labels(floor);
    if (wish == Wish::heavy_in_front) heavy_to_front(floor);
    const auto moves = floor.moves();
    out.moved = static_cast<int>(moves.size());
    if (!moves.empty()) out.job = job::posed(job, moves);
    out.narrowest_after_mm = floor.narrowest_mm();
    out.heavy_after_mm = floor.heavy_mm();
    return out;
}

bool gains(const Tidied& tidied) {
    constexpr double least_mm = 0.1;
    if (tidied.moved == 0) return false;
    switch (tidied.wish) {
    case Wish::equal_walls:
        return tidied.narrowest_after_mm - tidied.narrowest_before_mm >= least_mm;
    case Wish::labels_one_way:
        return true;
    case Wish::heavy_in_front:
        return tidied.heavy_before_mm - tidied.heavy_after_mm >= least_mm;
    }
    return false;
}

} // namespace drawercast::arrange
