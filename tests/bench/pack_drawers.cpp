// SPDX-License-Identifier: GPL-3.0-or-later
// How often a drawer that is about full is arranged whole: pack_drawers SECONDS DRAWERS prints a row for 12,
// 40 and 120 objects at 60, 70 and 80 % fill. Fill counts each pocket with half its wall all round, against
// the insert less what its edge asks beyond half a wall: walls are kept, and 100 % would be no gap anywhere.
// Objects are invented at random: rectangles, rounds, capsules and ells, in quarter turns. Seconds of the
// processor.
#include "arrange/drawer.h"
#include "arrange/random.h"
#include "arrange/standing.h"
#include "job/edit.h"
#include "layout/checks.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>

namespace {

using namespace drawercast;

constexpr double depth_mm = 30;
constexpr double evaluations_a_second = 1.5e6;

double processor_seconds() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

job::Object object_of(arrange::Random& random, int number) {
    job::Object object;
    object.id = "i" + std::to_string(number);
    const double size = random.between(25, 90);
    const double other = random.between(20, 70);
    const shape::Given outline = std::array<shape::Given, 4>{
        shape::Rectangle{size, other, 3}, shape::Circle{size}, shape::Capsule{size + 30, other / 2},
        shape::Polygon{
            {{{0, 0}}, {{size, 0}}, {{size, 20}}, {{20, 20}}, {{20, size}}, {{0, size}}}}}[random.below(4)];
    object.levels.push_back({job::Sunk{outline, depth_mm}, {}, {}});
    return object;
}

/// A drawer, four by three, that so many objects fill that far.
job::Job job_of(std::uint64_t seed, int count, double fill) {
    arrange::Random random(seed);
    job::Job job;
    const auto minimums = layout::minimums_of(job.minimums, job.foam->firmness);
    const double half = minimums.wall(depth_mm) / 2;
    double area = 0;
    for (int k = 1; k <= count; ++k) {
        const job::Object object = object_of(random, k);
        job = job::with_object(job, object);
        const auto form = layout::pocket_form(object, {}, layout::fit_of(object, job.foam->firmness), 60);
        shape::Contour pocket = form->cuts.front().outline.contour;
        pocket.round_mm += half;
        area += shape::area(pocket);
    }
    const double around = 2 * (minimums.edge(depth_mm) - half);
    const double depth = std::sqrt(area / fill * 3 / 4);
    job::Drawer drawer;
    drawer.id = "d1";
    drawer.outline = shape::Rectangle{depth * 4 / 3 + around, depth + around, 0};
    drawer.gap_mm = 0;
    return job::with_drawer(job, drawer);
}

bool in_order(const job::Job& job) {
    const job::Drawer& drawer = *job::find_drawer(job, "d1");
    const auto insert = std::make_shared<const layout::Insert>(
        *layout::insert_of(drawer, layout::gap_of(drawer, job.foam->firmness)));
    for (const auto& check :
         layout::layout_checks(arrange::standing_in(job, drawer), layout::limits_of(job, drawer, insert)))
        if (arrange::about_place(check)) return false;
    return true;
}

} // namespace

int main(int count, char** arguments) {
    if (count != 3) {
        std::fputs("pack_drawers SECONDS DRAWERS\n", stderr);
        return 64;
    }
    const double seconds = std::atof(arguments[1]);
    const int drawers = std::atoi(arguments[2]);
    std::printf("%8s %6s %8s %8s %10s\n", "objects", "fill", "solved", "placed", "s (mean)");
    for (const int objects : {12, 40, 120})
        for (const double fill : {0.6, 0.7, 0.8}) {
            int solved = 0;
            int placed = 0;
            double took = 0;
            for (int k = 1; k <= drawers; ++k) {
                const job::Job job = job_of(static_cast<std::uint64_t>(k), objects, fill);
                const double began = processor_seconds();
                const auto done =
                    arrange::arranged(job, "d1", arrange::Moving::none,
                                      {static_cast<std::uint64_t>(seconds * evaluations_a_second), 1},
                                      [&](double) { return processor_seconds() - began >= seconds; });
                took += processor_seconds() - began;
                if (!in_order(done.job)) {
                    std::fputs("a layout was returned that has something to mend\n", stderr);
                    return 1;
                }
                solved += done.left == 0 ? 1 : 0;
                placed += done.placed;
            }
            std::printf("%8d %5.0f%% %5d/%-2d %7.1f%% %10.2f\n", objects, fill * 100, solved, drawers,
                        100.0 * placed / (objects * drawers), took / drawers);
            std::fflush(stdout);
        }
    return 0;
}
