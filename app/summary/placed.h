// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/inking.h"
#include "sheets/sheet.h"
#include "summary/page_frame.h"

#include <algorithm>

namespace drawercast::summary {

/// What a sheet takes with its room for words, 1/96 in, where a millimeter of it takes `per_mm` of them.
template <class Frame>
Vec whole_px(const sheets::Sheet<Frame>& sheet, double per_mm) {
    return Vec{sheet.area.width() * per_mm, sheet.area.height() * per_mm} + sheet.lower_room_px +
           sheet.upper_room_px;
}

/// The scale, as above, at which a sheet just fits.
template <class Frame>
double per_mm_for(const sheets::Sheet<Frame>& sheet, Vec room_px) {
    const Vec drawn = room_px - sheet.lower_room_px - sheet.upper_room_px;
    return std::min(drawn.x / sheet.area.width(), drawn.y / sheet.area.height());
}

/// Draws a sheet so that it and its room for words begin at `upper_left`.
template <class Frame>
void put_sheet(sheets::Inks& inks, const sheets::Sheet<Frame>& sheet, double per_mm, Vec upper_left,
               const theme::Theme& theme) {
    const Vec corner = sheet.area.min * per_mm;
    const Vec lower_left =
        upper_left + Vec{sheet.lower_room_px.x, sheet.upper_room_px.y + sheet.area.height() * per_mm};
    const auto view = sheets::View::on_page(per_mm, {lower_left.x - corner.x, lower_left.y + corner.y});
    for (auto& ink : sheets::ink_of(sheet.marks, view, theme)) inks.push_back(std::move(ink));
}

} // namespace drawercast::summary
