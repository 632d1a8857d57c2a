// SPDX-License-Identifier: GPL-3.0-or-later
// Stands in for core/capture/vision where that was not built.
#include "capture/measure.h"

namespace drawercast::capture {

namespace {

Problem not_built() {
    return {"capture-not-built",
            {},
            "this program was built without the measuring of pictures",
            "Build it with libopencv-core-dev, libopencv-imgproc-dev, libopencv-imgcodecs-dev and "
            "libopencv-calib3d-dev installed"};
}

} // namespace

bool available() { return false; }
Expected<FlatPicture> flattened(std::string_view, const Shot&) { return not_built(); }
Expected<Traced> traced_objects(const FlatPicture&, const Tracing&, const Brush&) { return not_built(); }

} // namespace drawercast::capture
