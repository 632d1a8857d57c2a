// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/number.h"
#include "job/catalog.h"
#include "job/job.h"

#include <array>
#include <random>

namespace drawercast::job::testing {

/// Seeded jobs that the reader must take: every kind of outline and level, unknown keys, odd numbers, empty
/// lists.
class RandomJob {
  public:
    explicit RandomJob(unsigned seed) : random_(seed) {}

    Job make() {
        Job job;
        job.title = text();
        job.revision = pick(0, 1000);
        job.display_units = static_cast<DisplayUnits>(pick(0, 2));
        job.currency = pick(0, 1) ? "EUR" : "";
        job.shop = shop();
        job.foam = foam();
        job.mold = mold();
        if (pick(0, 1)) job.minimums.wall_mm = length(0, 30);
        if (pick(0, 1)) job.minimums.wall_ratio = real(1, 8);
        for (int i = 1, n = pick(0, 6); i <= n; ++i)
            job.objects.emplace_back(object("i" + std::to_string(i)));
        for (int i = 1, n = pick(0, 3); i <= n; ++i) job.drawers.emplace_back(drawer(job, i));
        if (!job.drawers.empty() && pick(0, 1))
            job.left_as_is.push_back({"d1", "wall-thin", {"i1#1", "i2#1"}, real(1, 10), unknowns()});
        if (pick(0, 1)) job.log = {{"d1", text(), real(0, 2e9), pick(0, 1) == 1, unknowns()}, {}};
        if (pick(0, 1)) job.casts.push_back(cast());
        job.unknown = unknowns();
        return job;
    }

  private:
    int pick(int lo, int hi) { return std::uniform_int_distribution<int>(lo, hi)(random_); }
    double real(double lo, double hi) { return std::uniform_real_distribution<double>(lo, hi)(random_); }
    double length(double lo, double hi) { return grained(real(lo, hi)); }
    std::string text() {
        static const char* const texts[] = {"", "Anemometer", "Tab\tand\n\"quotes\" \\ back", "Größe ⌀ 12",
                                            "\x01"};
        return texts[pick(0, 4)];
    }
    Unknowns unknowns() {
        if (pick(0, 3)) return {};
        return {{"later", R"({"a": [1, 2.0, 3e2], "b": null})"}, {"x-note", "\"kept  as it is\""}};
    }
    Cast cast() {
        Cast cast;
        cast.drawer = "d1", cast.foam = text(), cast.note = text();
        if (pick(0, 1)) cast.mixed_g = real(0, 1000), cast.bar_mm = length(100, 400);
        cast.new_holes = pick(0, 1) == 1;
        cast.fits = {{"i1#1", length(-1, 1), unknowns()}};
        cast.unknown = unknowns();
        return cast;
    }
    shape::Given outline(double most) {
        switch (pick(0, 3)) {
        case 0: {
            const double w = length(10, most);
            const double h = length(10, most);
            return shape::Rectangle{w, h, pick(0, 1) ? grained(std::min(w, h) / 4) : 0};
        }
        case 1:
            return shape::Circle{length(5, most)};
        case 2: {
            const double width = length(5, most / 2);
            return shape::Capsule{grained(width + real(1, most / 2)), width};
        }
        default:
            return shape::Polygon{{{{0, 0}, 0},
                                   {{length(20, most), 0}, pick(0, 1) ? 2.5 : 0},
                                   {{length(5, 20), length(20, most)}, 0}}};
        }
    }
    shape::Pose pose() {
        return {{length(-300, 600), length(-300, 600)}, pick(0, 1) ? 15.0 * pick(0, 23) : real(0, 360)};
    }
    Level level() {
        Level level;
        switch (pick(0, 2)) {
        case 0:
            level.form = Sunk{outline(120), length(1, 60)};
            break;
        case 1:
            level.form = Through{outline(120)};
            break;
        default:
            level.form =
                Lying{{{length(10, 90), length(10, 40)}, {length(10, 90), length(10, 40)}}, length(0, 20)};
        }
        if (pick(0, 1)) level.pose = pose();
        level.unknown = unknowns();
        return level;
    }
    Object object(std::string id) {
        Object object;
        object.id = std::move(id);
        object.name = text();
        object.count = pick(0, 5);
        object.mass_g = real(0, 3000);
        object.height_mm = length(0, 200);
        if (pick(0, 1)) object.fit_mm = length(-3, 3);
        if (pick(0, 1)) object.fit_end_mm = length(-3, 3);
        object.turns =
            std::array{Turns::quarter, Turns::free, Turns::none, Turns::half}[std::size_t(pick(0, 3))];
        if (pick(0, 3) == 0) object.volume_ml = real(1, 500);
        object.note = text();
        for (int i = 0, n = pick(1, 4); i < n; ++i) object.levels.push_back(level());
        object.unknown = unknowns();
        return object;
    }
    Drawer drawer(const Job& job, int number) {
        Drawer drawer;
        drawer.id = "d" + std::to_string(number);
        drawer.name = text();
        drawer.outline = outline(600);
        drawer.insert_mm = length(20, 120);
        if (pick(0, 1)) drawer.gap_mm = length(-3, 5);
        if (pick(0, 1)) drawer.obstructions.push_back({outline(40), pose(), unknowns()});
        for (const auto& object : job.objects) {
            if (pick(0, 1)) continue;
            Pocket pocket{object->id, number, pose(), pick(0, 1) == 1, {}, unknowns()};
            if (pick(0, 1)) pocket.notches.push_back({outline(50), pose(), length(1, 40), unknowns()});
            drawer.pockets.push_back(pocket);
        }
        if (pick(0, 1))
            drawer.vents = Vents{{{{length(0, 300), length(0, 300)}, 3}}, pick(0, 1) == 1, unknowns()};
        if (pick(0, 1)) drawer.pours = {{{length(0, 300), length(0, 300)}, real(1, 900)}};
        drawer.unknown = unknowns();
        return drawer;
    }
    Shop shop() {
        Shop shop;
        shop.temperature_c = real(5, 35);
        shop.altitude_m = real(0, 3000);
        shop.people = pick(1, 4);
        if (pick(0, 1)) shop.pour_s = real(1, 30);
        if (pick(0, 1)) shop.mixer_ml = real(1000, 9000);
        if (pick(0, 1)) shop.start = "2031-03-04T08:00";
        if (pick(0, 1)) shop.boards = builtin_boards();
        if (pick(0, 1)) shop.stiffeners = builtin_stiffeners();
        if (pick(0, 1)) shop.closures = builtin_closures();
        if (pick(0, 1)) shop.tubes = {Tube{"a tube", length(20, 120), 1.8, 2000, 3, pick(0, 4), unknowns()}};
        if (pick(0, 1))
            shop.supplies = {SupplyPack{static_cast<Supply>(pick(0, 8)), real(0.1, 20), real(0, 50),
                                        real(0, 3), unknowns()}};
        shop.unknown = unknowns();
        return shop;
    }
    Foam foam() {
        Foam foam = builtin_foams()[static_cast<std::size_t>(pick(0, 2))];
        if (pick(0, 1)) foam.overpack = real(0.1, 0.4);
        if (pick(0, 1)) foam.activation_kj_mol = real(20, 60);
        if (pick(0, 1)) foam.cup = Cup{true, 80, 100, length(80, 200), 40, 90, 170, 22, 21, unknowns()};
        foam.unknown = unknowns();
        return foam;
    }
    Mold mold() {
        Mold mold;
        mold.fillet_mm = length(0, 8);
        mold.corner = static_cast<BoxCorner>(pick(0, 1));
        if (pick(0, 1)) mold.spacing_mm = length(50, 120);
        if (pick(0, 1)) mold.board = "Particleboard 16";
        if (pick(0, 1))
            mold.stiffeners =
                StiffenerChoice{pick(0, 3), "45 × 45", static_cast<Along>(pick(0, 1)), true, {}};
        mold.unknown = unknowns();
        return mold;
    }

    std::mt19937 random_;
};

} // namespace drawercast::job::testing
