// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "theme/palette.h"

#include <QImage>
#include <QString>
#include <QStringList>

#include <optional>

namespace drawercast::app::guide {

class Demo;

/// How a picture is to look.
struct PictureLook {
    int width_px = 640;
    double ratio = 1; ///< device pixels to a logical one
    theme::Theme theme;
};

/// Those there are: "plan", "thin-wall", "board", "plate", …
QStringList picture_names();

/// Drawn now, by the program's own sheets, from the demo job. A picture that waits for what takes seconds has
/// its size and says so in words; nothing where there is none of that name.
std::optional<QImage> picture(const QString& name, const Demo& demo, const PictureLook& look);

} // namespace drawercast::app::guide
