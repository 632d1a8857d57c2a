// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/guarded.h"

#include "core/shape/random_shapes.h"

#include <gtest/gtest.h>

namespace drawercast::shape {
namespace {

using namespace testing;
using kernel::Operation;

const Region a = region_of(*contour_of(Rectangle{100, 80, 0}));
const Region b = region_of(placed(*contour_of(Rectangle{40, 30, 0}), {{45, 0}, 15}));

/// Set operations known to go wrong: wrong on the first `lies` calls, each answer spoiled by `spoil`.
class Liar {
  public:
    Liar(int lies, std::function<Region(Region)> spoil) : lies_(lies), spoil_(std::move(spoil)) {}
    std::optional<Region> operator()(Operation operation, const Region& left, const Region& right) {
        auto truth = kernel::apply(operation, left, right);
        if (lies_ <= 0) return truth;
        --lies_;
        return spoil_(*truth);
    }

  private:
    int lies_;
    std::function<Region(Region)> spoil_;
};

struct Lie {
    const char* name;
    std::function<Region(Region)> spoil;
};
const Lie lies[] = {
    {"nothing", [](Region) { return Region{}; }},
    {"the first operand", [](Region) { return a; }},
    {"an ear lost",
     [](Region r) {
         if (!r.empty()) r.patches[0].outer.pop_back();
         return r;
     }},
    {"inside out",
     [](Region r) {
         for (Patch& p : r.patches) std::swap(p.outer[0], p.outer[2]);
         return r;
     }},
    {"doubled",
     [](Region r) {
         const Region twice = r;
         r.patches.insert(r.patches.end(), twice.patches.begin(), twice.patches.end());
         return r;
     }},
};

TEST(Guarded, NeverAnswersWithAWrongArea) {
    for (const Operation operation : {Operation::unite, Operation::share, Operation::subtract})
        for (const Lie& lie : lies) {
            SCOPED_TRACE(lie.name);
            const auto refused = guarded(operation, a, b, Liar(1000, lie.spoil));
            ASSERT_FALSE(refused);
            EXPECT_EQ(refused.error().code, "geometry");
            EXPECT_FALSE(refused.error().fix.empty());
        }
}

TEST(Guarded, TriesAgainWithEitherOperandShrunk) {
    for (const Operation operation : {Operation::unite, Operation::share, Operation::subtract}) {
        const double right = area(*guarded(operation, a, b));
        for (const Lie& lie : lies)
            for (const int wrong : {1, 2, 3, 4}) {
                SCOPED_TRACE(lie.name);
                const auto mended = guarded(operation, a, b, Liar(wrong, lie.spoil));
                ASSERT_TRUE(mended) << wrong;
                EXPECT_NEAR(area(*mended), right, 0.3) << "a millionth smaller, and on the grid";
            }
    }
}

TEST(Guarded, AGivenUpOperationIsRefused) {
    const auto gives_up = [](Operation, const Region&, const Region&) { return std::optional<Region>(); };
    ASSERT_FALSE(guarded(Operation::unite, a, b, gives_up));
}

TEST(Guarded, OutlinesThatCrossThemselvesAreRefused) {
    const Region bow{{Patch{{{0, 0}, {40, 40}, {40, 0}, {0, 50}}, {}}}};
    const auto refused = united(bow, a);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, "geometry");
}

TEST(Guarded, ClockwiseRingsAreTurnedRound) {
    Region clockwise = b;
    std::reverse(clockwise.patches[0].outer.begin(), clockwise.patches[0].outer.end());
    EXPECT_NEAR(area(*shared(a, clockwise)), area(*shared(a, b)), 1e-9);
}

TEST(Guarded, SliversOfTheGridAreLeftOut) {
    Region region = a;
    region.patches.push_back({{{200, 0}, {260, 0}, {260, 0.0015}, {200, 0.0015}}, {}});
    region.patches[0].holes.push_back({{0, 0}, {0, 0.0015}, {30, 0.0015}, {30, 0}});
    EXPECT_EQ(settled(region).patches.size(), 1u);
    EXPECT_EQ(settled(region).patches[0].holes.size(), 0u);
    region.patches.push_back({{{200, 0}, {260, 0}, {260, 0.1}, {200, 0.1}}, {}});
    EXPECT_EQ(settled(region).patches.size(), 2u) << "a tenth of a millimeter is no sliver";
}

} // namespace
} // namespace drawercast::shape
