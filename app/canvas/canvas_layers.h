// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/still_picture.h"
#include "sheets/inking.h"

#include <QPainter>
#include <QRegion>

#include <optional>
#include <string>
#include <vector>

namespace drawercast::app {

/// A canvas's three layers of inks: what stands still is kept as a picture, over it what moves and the
/// checks, between them the blue pencil. Each setter returns where the canvas must be painted again: only
/// where the inks became others.
class CanvasLayers {
  public:
    QRegion set_still(const StillPicture::Frame& frame, sheets::Inks inks, sheets::Taken taken);

    struct Over {
        sheets::Inks washes; ///< of what moves
        sheets::Inks inks;
        sheets::Taken taken; ///< by this layer and the still one
        std::vector<sheets::SetPlate> plates;
    };
    QRegion set_over(Over over);
    QRegion set_live(sheets::Inks inks);

    const sheets::Taken& taken_still() const { return taken_still_; }
    const sheets::Taken& taken() const { return over_.taken; }
    const std::vector<sheets::SetPlate>& plates() const { return over_.plates; }
    void forget_plates() { over_.plates.clear(); }                    ///< they may find better places
    std::optional<shape::Box> plate_of(const std::string& key) const; ///< px

    void paint(QPainter& painter, const QRegion& region) const;

  private:
    StillPicture picture_;
    sheets::Taken taken_still_;
    Over over_;
    sheets::Inks live_;
};

} // namespace drawercast::app
