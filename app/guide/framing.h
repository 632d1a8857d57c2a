// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "guide/pictures.h"
#include "print/page.h"
#include "sheets/chart.h"
#include "sheets/sheet.h"

#include <functional>

class QWidget;

/// Sheets, plots, pages and form pictures, each made a picture in a frame of one pixel.
namespace drawercast::app::guide {

/// What all sheets have in common, whatever their frame.
struct AnySheet {
    const std::vector<sheets::Mark>& marks;
    shape::Box area;
    shape::Vec lower_px, upper_px;

    template <class Frame>
    // NOLINTNEXTLINE(google-explicit-constructor): any sheet is one
    AnySheet(const sheets::Sheet<Frame>& sheet)
        : marks(sheet.marks), area(sheet.area), lower_px(sheet.lower_room_px), upper_px(sheet.upper_room_px) {
    }
};

/// Pixels to a millimeter of the sheet, so that it and its words fit.
double scale_of(const AnySheet& sheet, const PictureLook& look);
std::optional<QImage> framed(const AnySheet& sheet, const PictureLook& look);

using MakeChart = std::function<sheets::Sheet<sheets::OnChart>(shape::Vec size_mm)>;
std::optional<QImage> charted(const MakeChart& make, const PictureLook& look);

/// On white paper whatever the theme, as it is printed.
QImage paged(const print::Page& page, const PictureLook& look);
QImage grabbed(QWidget& widget, QSize size, const PictureLook& look);
QImage waiting(const QString& words, const PictureLook& look);

} // namespace drawercast::app::guide
