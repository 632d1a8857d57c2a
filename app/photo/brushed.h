// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "photo/brush.h"
#include "photo/photo_outline.h"

namespace drawercast::app::photo {

/// The outlines once a stroke went over those that the hand had put right: it changes them where it was
/// drawn and leaves their other points. Adding joins what it bridges, under the larger one's name; taking
/// away leaves the largest part its name, further parts have none, and what is wiped out whole is gone.
/// Outlines no hand has changed are left to another look at the photo, unless they are joined.
std::vector<Outline> brushed(std::vector<Outline> outlines, const Stroke& stroke);

} // namespace drawercast::app::photo
