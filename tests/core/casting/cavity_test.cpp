// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/cavity.h"
#include "casting/sections.h"
#include "shape/dilate.h"
#include "shape/region.h"

#include "core/casting/random_mold.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numbers>

namespace drawercast::casting {
namespace {

using built::cut;
using built::form;
using built::pocket;
using built::RandomMold;
using shape::Rectangle;

void expect_near(const Cavity& a, const Cavity& b, double share, const std::string& what) {
    EXPECT_NEAR(a.blocks_mm3, b.blocks_mm3, share * b.blocks_mm3 + 1e-9) << what;
    EXPECT_NEAR(a.fillet_mm3, b.fillet_mm3, share * b.fillet_mm3 + 1e-9) << what;
    EXPECT_NEAR(a.open_area_mm2, b.open_area_mm2, share * b.open_area_mm2) << what;
    EXPECT_NEAR(a.net_mm3, b.net_mm3, share * b.net_mm3) << what;
}

/// The same mold as one union after another over all of it, by the set operations.
class WholeUnion {
  public:
    explicit WholeUnion(const CavityIn& in)
        : in_(in), radius_(in.fillet_mm / in.enlargement), opening_(in.insert->area.region) {}

    double clay_area(double height) {
        return area([&](const layout::Cut<shape::InDrawer>& cut) {
            return clay_reach(std::min(radius_, cut.depth_mm), height);
        });
    }

    double fillet() {
        double sum = 0;
        const double foot = clay_area(radius_);
        for (const ClayNode& node : clay_nodes(radius_, 40))
            sum += node.weight_mm * (clay_area(node.height_mm) - foot);
        return sum * std::pow(in_.enlargement, 3);
    }

    double open_area() { return (shape::area(opening_) - clay_area(radius_)) * std::pow(in_.enlargement, 2); }

  private:
    template <class Reach>
    double area(Reach reach) {
        std::vector<shape::Region> all;
        for (const CavityPocket& one : in_.pockets)
            for (const auto& cut : one.pocket->cuts)
                all.push_back(*shape::dilated(cut.outline.contour, reach(cut)));
        return shape::area(*shape::shared(*shape::united(all), opening_));
    }
    const CavityIn& in_;
    double radius_;
    shape::Region opening_;
};

TEST(Cavity, agrees_with_one_union_over_the_whole_drawer) {
    for (unsigned seed = 0; seed < 10; ++seed) {
        const CavityIn in = RandomMold(seed).next(4 + 2 * static_cast<int>(seed % 5));
        const Cavity cavity = cavity_of(in);
        WholeUnion whole(in);
        EXPECT_NEAR(cavity.fillet_mm3, whole.fillet(), 2e-3 * cavity.fillet_mm3) << "seed " << seed;
        EXPECT_NEAR(cavity.open_area_mm2, whole.open_area(), 1) << "seed " << seed;
    }
}

TEST(Cavity, empty_mold) {
    CavityIn in;
    in.insert = built::insert(200, 100, 50);
    in.enlargement = 1.25;
    CavityMemory memory;
    const Cavity cavity = memory.update(in);
    EXPECT_DOUBLE_EQ(cavity.insert_area_mm2, 20000 * 1.25 * 1.25);
    EXPECT_DOUBLE_EQ(cavity.height_mm, 62.5);
    EXPECT_DOUBLE_EQ(cavity.net_mm3, 1e6 * 1.25 * 1.25 * 1.25);
    EXPECT_DOUBLE_EQ(cavity.open_area_mm2, cavity.insert_area_mm2);
    EXPECT_NEAR(memory.liquid_level_mm(cavity.net_mm3 / 4000), 62.5 / 4, 1e-9);
}

TEST(Cavity, enlarges_blocks_but_not_clay) {
    CavityIn in;
    in.insert = built::insert(200, 100, 50);
    in.enlargement = 1.25;
    in.pockets = {{pocket("a#1", form({cut(Rectangle{60, 40, 0}, 20)}), {{80, 50}, 25}), {}}};
    const Cavity cavity = cavity_of(in);
    EXPECT_NEAR(cavity.blocks_mm3, 75 * 50 * 25, 1e-6);
    EXPECT_NEAR(cavity.fillet_mm3, fillet_alone(built::contour(Rectangle{75, 50, 0}), 5), 1e-6);
}

TEST(Cavity, clips_what_sticks_out) {
    CavityIn in;
    in.insert = built::insert(200, 100, 50);
    in.fillet_mm = 0;
    in.pockets = {{pocket("a#1", form({cut(Rectangle{60, 40, 0}, 80)}), {{0, 0}, 0}), {}}};
    EXPECT_NEAR(cavity_of(in).blocks_mm3, 30 * 20 * 50, 1e-6);
    EXPECT_NEAR(cavity_of(in).open_area_mm2, 20000 - 600, 1e-6);
}

TEST(Cavity, no_clay_at_walls) {
    CavityIn in;
    in.insert = built::insert(200, 100, 50);
    in.pockets = {{pocket("a#1", form({cut(Rectangle{60, 40, 0}, 30)}), {{30, 50}, 0}), {}}};
    // three sides and two corners: the fourth side stands at the wall
    const double per_mm = 25 * (1 - std::numbers::pi / 4);
    const double corners = fillet_alone(built::contour(Rectangle{60, 40, 0}), 5) - per_mm * 200;
    EXPECT_NEAR(cavity_of(in).fillet_mm3, per_mm * 160 + corners / 2, 1e-4);
}

shape::Contour mirrored(shape::Contour contour, double about_x) {
    for (auto& p : contour.core) p.x = 2 * about_x - p.x;
    if (contour.core.size() > 2) std::reverse(contour.core.begin() + 1, contour.core.end());
    return contour;
}

/// Each pocket about its own mirrored form: drawn anew, not moved.
CavityIn mirrored(const CavityIn& in) {
    CavityIn out = in;
    for (CavityPocket& one : out.pockets) {
        std::vector<FormCut> cuts = one.pocket->form->cuts;
        for (FormCut& c : cuts) {
            c.outline.contour = mirrored(c.outline.contour, 0);
            if (c.round)
                std::rotate(c.outline.contour.core.begin(), c.outline.contour.core.begin() + 1,
                            c.outline.contour.core.end());
        }
        const shape::Pose pose{{150 - one.pocket->pose.at.x, one.pocket->pose.at.y},
                               -one.pocket->pose.turn_deg};
        one.pocket = pocket(one.pocket->subject, form(cuts), pose);
    }
    return out;
}

TEST(Cavity, of_a_mirrored_drawer_is_the_same) {
    for (unsigned seed = 20; seed < 32; ++seed) {
        const CavityIn in = RandomMold(seed).next(9);
        expect_near(cavity_of(mirrored(in)), cavity_of(in), 2e-5, "seed " + std::to_string(seed));
    }
}

TEST(Cavity, order_of_pockets_changes_nothing) {
    for (unsigned seed = 40; seed < 52; ++seed) {
        CavityIn in = RandomMold(seed).next(10);
        const Cavity before = cavity_of(in);
        std::mt19937 random(seed);
        std::shuffle(in.pockets.begin(), in.pockets.end(), random);
        expect_near(cavity_of(in), before, 1e-13, "seed " + std::to_string(seed));
    }
}

TEST(Cavity, one_pocket_more_never_makes_more_room) {
    for (unsigned seed = 60; seed < 66; ++seed) {
        RandomMold random(seed);
        CavityIn in = random.next(0);
        CavityMemory memory;
        double room = memory.update(in).net_mm3;
        for (int i = 0; i < 12; ++i) {
            in.pockets.push_back(random.next_pocket());
            const double less = memory.update(in).net_mm3;
            EXPECT_LE(less, room + 0.05) << "seed " << seed; // a pocket wholly within others adds nothing
            room = less;
        }
    }
}

TEST(Cavity, liquid_level_is_where_the_room_below_holds_the_liquid) {
    for (unsigned seed = 70; seed < 76; ++seed) {
        CavityIn in = RandomMold(seed).next(8);
        in.fillet_mm = 0;
        CavityMemory memory;
        const Cavity full = memory.update(in);
        double last = 0;
        for (int part = 1; part <= 16; ++part) {
            const double level = memory.liquid_level_mm(full.net_mm3 * part / 16000);
            EXPECT_GT(level, last);
            last = level;
        }
        EXPECT_NEAR(last, full.height_mm, 1e-6) << "seed " << seed;
        // a mold only as high as the level holds just that much
        const double half = memory.liquid_level_mm(full.net_mm3 / 2000);
        CavityIn lower = in;
        auto insert = *in.insert;
        insert.thickness_mm = half / in.enlargement;
        lower.insert = std::make_shared<const layout::Insert>(insert);
        EXPECT_NEAR(cavity_of(lower).net_mm3, full.net_mm3 / 2, 2e-4 * full.net_mm3) << "seed " << seed;
    }
}

TEST(CavityMemory, equals_scratch_bit_for_bit_whatever_is_edited) {
    for (unsigned seed = 80; seed < 86; ++seed) {
        RandomMold random(seed);
        CavityIn in = random.next(12);
        CavityMemory memory;
        memory.update(in);
        for (int step = 0; step < 60; ++step) {
            const auto any = [&] {
                return static_cast<std::size_t>(random.whole(0, static_cast<int>(in.pockets.size()) - 1));
            };
            const auto place = [&](std::size_t i) {
                return in.pockets.begin() + static_cast<std::ptrdiff_t>(i);
            };
            switch (in.pockets.size() < 4 ? 0 : random.whole(0, 8)) {
            case 0:
                in.pockets.insert(place(any()), random.next_pocket());
                break;
            case 1:
                in.pockets.erase(place(any()));
                break;
            case 2:
                std::swap(in.pockets[any()], in.pockets[any()]);
                break;
            case 3:
                in.pockets[any()].volume_ml = random.real(1, 5);
                break;
            case 4:
                in.fillet_mm = random.whole(0, 6);
                break;
            case 5: // one out, one in
                in.pockets.erase(place(any()));
                in.pockets.insert(place(any()), random.next_pocket());
                break;
            default: {
                auto& one = in.pockets[any()].pocket;
                one = pocket(
                    one->subject, one->form,
                    {one->pose.at + shape::Vec{random.real(-9, 9), random.real(-9, 9)}, one->pose.turn_deg});
            }
            }
            ASSERT_EQ(memory.update(in), cavity_of(in)) << "seed " << seed << " step " << step;
            CavityMemory scratch;
            const double half = scratch.update(in).net_mm3 / 2000;
            ASSERT_EQ(memory.liquid_level_mm(half), scratch.liquid_level_mm(half));
        }
    }
}

} // namespace
} // namespace drawercast::casting
