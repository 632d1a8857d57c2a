// SPDX-License-Identifier: GPL-3.0-or-later
// The door of the measuring part: the only name it exports.
#include "capture/vision/answers.h"
#include "capture/vision_part.h"

extern "C" __attribute__((visibility("default"))) const drawercast::capture::VisionPart*
drawercast_vision_part();

const drawercast::capture::VisionPart* drawercast_vision_part() {
    using namespace drawercast::capture;
    static const VisionPart part{DRAWERCAST_VERSION, vision::flattened, vision::traced_objects};
    return &part;
}
