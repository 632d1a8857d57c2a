// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/picture_header.h"

#include "base/demand.h"

#include "fuzz/targets.h"

namespace drawercast::fuzz {

void picture_header(std::string_view bytes) {
    const auto header = capture::picture_header(bytes);
    if (!header) {
        DRAWERCAST_DEMAND(!header.error().what.empty(), "a refusal says why");
        return;
    }
    DRAWERCAST_DEMAND(header->width_px > 0 && header->width_px <= capture::picture_side_most &&
                          header->height_px > 0 && header->height_px <= capture::picture_side_most &&
                          static_cast<double>(header->width_px) * header->height_px <=
                              capture::picture_pixels_most,
                      "a picture that is decoded is within the limits");
    DRAWERCAST_DEMAND(header->orientation >= 1 && header->orientation <= 8, "an orientation is one of eight");
}

} // namespace drawercast::fuzz
