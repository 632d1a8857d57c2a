// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/words_around.h"

#include <utility>

namespace drawercast::sheets {

namespace {

constexpr double beside_px = 4;
constexpr double above_px = 10;
constexpr double slant = 0.75; ///< of the radius: where a ring is left at an angle

} // namespace

TextMark words_around(Vec at, double radius_mm, std::string words, const Around& around) {
    const double r = radius_mm, s = radius_mm * slant;
    const Spot right{{at + Vec{r, 0}, {beside_px, 0}}, Side::left};
    const Spot left{{at - Vec{r, 0}, {-beside_px, 0}}, Side::right};
    const Spot above{{at + Vec{0, r}, {0, above_px}}, Side::center};
    const Spot below{{at - Vec{0, r}, {0, -above_px}}, Side::center};
    std::vector<Spot> spots{right, left, below, above};
    if (around.first == Way::below) spots = {below, above, right, left};
    for (const double up : {-1.0, 1.0})
        for (const double across : {1.0, -1.0})
            spots.push_back({{at + Vec{s * across, s * up}, Vec{beside_px * across, above_px * up}},
                             across > 0 ? Side::left : Side::right});
    const Spot own = spots.front();
    return {own.at,
            std::move(words),
            theme::TextRole::caption,
            own.anchor,
            0,
            true,
            {std::move(spots), around.within, false, around.shorter}};
}

} // namespace drawercast::sheets
