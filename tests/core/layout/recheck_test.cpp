// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/recheck.h"

#include "core/layout/random_layout.h"

#include <gtest/gtest.h>

namespace drawercast::layout {
namespace {

using namespace testing;

/// A random layout under random edits, and the same kept by hand for checking from scratch.
class EditedLayout {
  public:
    EditedLayout(std::uint64_t seed, int pockets)
        : dice_(seed * 7919 + 1), scene_(any_scene(seed, pockets)), recheck_(scene_.limits()),
          standing_(scene_.standing()), next_number_(pockets) {
        recheck_.set_all(standing_);
    }

    void edit() {
        const int kind = standing_.empty() ? 9 : dice_.below(10);
        const std::size_t index = standing_.empty() ? 0 : static_cast<std::size_t>(dice_.below(count()));
        if (kind < 7) {
            standing_[index] = anywhere(scene_.object(standing_[index].pocket->object));
            recheck_.move(index, standing_[index]);
        } else if (kind == 7) {
            standing_.erase(standing_.begin() + static_cast<std::ptrdiff_t>(index));
            recheck_.remove(index);
        } else {
            scene_.objects.push_back(any_object(dice_, next_number_++));
            const auto at = static_cast<std::size_t>(dice_.below(count() + 1));
            const Standing fresh = anywhere(scene_.objects.back());
            standing_.insert(standing_.begin() + static_cast<std::ptrdiff_t>(at), fresh);
            recheck_.insert(at, fresh);
        }
    }
    bool asks() { return dice_.toss(0.4); }
    Recheck& recheck() { return recheck_; }
    std::vector<Check> scratch() const { return layout_checks(standing_, recheck_.limits()); }

  private:
    int count() const { return static_cast<int>(standing_.size()); }
    Standing anywhere(const job::Object& object) {
        const job::Pocket pocket = any_pocket(dice_, object, 1, 600, 400);
        return {stand(object, pocket, scene_.drawer.insert_mm),
                std::make_shared<const ObjectFacts>(facts_of(object))};
    }

    Dice dice_;
    Scene scene_;
    Recheck recheck_;
    std::vector<Standing> standing_;
    int next_number_;
};

TEST(Recheck, EqualsScratchBitForBitAfterAnyEdits) {
    int edits = 0;
    std::size_t checks_seen = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        EditedLayout layout(seed, static_cast<int>(seed % 13) * 2);
        EXPECT_EQ(layout.recheck().checks(), layout.scratch()) << "seed " << seed << ", before any edit";
        for (int step = 0; step < 100; ++step, ++edits) {
            layout.edit();
            if (!layout.asks()) continue; // several edits between two questions, too
            const auto expected = layout.scratch();
            ASSERT_EQ(layout.recheck().checks(), expected) << "seed " << seed << ", step " << step;
            checks_seen += expected.size();
        }
    }
    EXPECT_GE(edits, 2000);
    EXPECT_GT(checks_seen, 10000U) << "a property of layouts that have something wrong with them";
}

TEST(Recheck, AsksNothingTwice) {
    EditedLayout layout(3, 20);
    const auto* first = &layout.recheck().checks();
    const auto copy = *first;
    EXPECT_EQ(&layout.recheck().checks(), first);
    EXPECT_EQ(layout.recheck().checks(), copy);
}

TEST(Recheck, WithoutAnInsertSaysNothingOfEdges) {
    Scene scene = any_scene(5, 12);
    DrawerLimits limits = scene.limits();
    limits.insert = nullptr;
    Recheck recheck(limits);
    recheck.set_all(scene.standing());
    for (const Check& check : recheck.checks()) {
        EXPECT_NE(check.code, Code::edge_thin);
        EXPECT_NE(check.code, Code::outside);
        EXPECT_NE(check.code, Code::obstructed);
    }
    EXPECT_FALSE(only(recheck.checks(), Code::wall_thin).empty());
}

TEST(Recheck, AnEmptyDrawerHasNothingWrong) {
    Recheck recheck(Scene{}.limits());
    recheck.set_all({});
    EXPECT_TRUE(recheck.checks().empty());
    EXPECT_ANY_THROW(recheck.remove(0));
}

} // namespace
} // namespace drawercast::layout
