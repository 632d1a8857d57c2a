// SPDX-License-Identifier: GPL-3.0-or-later
// The door of the measuring part: the only name it exports.
#include "capture/vision/answers.h"
#include "capture/vision_part.h"

#include <opencv2/core.hpp>

extern "C" __attribute__((visibility("default"))) const drawercast::capture::VisionPart*
drawercast_vision_part();

namespace drawercast::capture {

namespace {

/// What the library throws at a picture stops here and is said: no picture, however odd, ends the program.
template <class Work>
auto guarded(Work work) -> decltype(work()) {
    try {
        return work();
    } catch (const cv::Exception&) {
        return Problem("capture-failed", {}, phrase("the picture can't be measured"),
                       phrase("Take another one"));
    }
}

Expected<FlatPicture> flattened_guarded(std::string_view file, const Shot& shot) {
    return guarded([&] { return vision::flattened(file, shot); });
}

Expected<Traced> traced_guarded(const FlatPicture& flat, const Tracing& tracing, const Brush& brush) {
    return guarded([&] { return vision::traced_objects(flat, tracing, brush); });
}

} // namespace

} // namespace drawercast::capture

const drawercast::capture::VisionPart* drawercast_vision_part() {
    using namespace drawercast::capture;
    static const VisionPart part{DRAWERCAST_VERSION, flattened_guarded, traced_guarded};
    return &part;
}
