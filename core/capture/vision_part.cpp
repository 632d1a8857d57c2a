// SPDX-License-Identifier: GPL-3.0-or-later
#include "capture/vision_part.h"

#include <dlfcn.h>
#include <filesystem>
#include <string>
#include <system_error>

namespace drawercast::capture {

namespace {

/// Beside the program as it is installed (bin, lib/drawercast) and as it is built; nowhere else is looked, so
/// that no file from a working folder or the environment gets in.
std::filesystem::path part_file() {
    std::error_code none;
    const auto program = std::filesystem::read_symlink("/proc/self/exe", none);
    return none ? std::filesystem::path() : program.parent_path().parent_path() / "lib/drawercast/vision.so";
}

Problem not_built() {
    return {"capture-not-built",
            {},
            phrase("this program was built without the measuring of pictures"),
            phrase("Build it with libopencv-core-dev, libopencv-imgproc-dev, libopencv-imgcodecs-dev and "
                   "libopencv-calib3d-dev installed")};
}

Problem not_loaded(Phrase why) {
    return {"capture-not-loaded",
            {},
            phrase("the measuring of pictures can't be loaded (%1)", why),
            phrase("Install Drawercast again with all the packages it asks for")};
}

Phrase last_loading_error() {
    const char* said = ::dlerror();
    return said ? verbatim(said) : phrase("no reason given");
}

Expected<const VisionPart*> loaded() {
    if (!available()) return not_built();
    void* const library = ::dlopen(part_file().c_str(), RTLD_NOW | RTLD_LOCAL);
    if (!library) return not_loaded(last_loading_error());
    const auto entry = reinterpret_cast<VisionEntry>(::dlsym(library, vision_entry));
    if (!entry) return not_loaded(last_loading_error());
    const VisionPart* const part = entry();
    if (part->version != DRAWERCAST_VERSION)
        return not_loaded(phrase("it belongs to Drawercast %1", verbatim(std::string(part->version))));
    return part;
}

} // namespace

Expected<const VisionPart*> vision_part() {
    static const Expected<const VisionPart*> part = loaded();
    return part;
}

bool available() {
    std::error_code none;
    return std::filesystem::is_regular_file(part_file(), none);
}

Expected<FlatPicture> flattened(std::string_view file, const Shot& shot) {
    const auto part = vision_part();
    if (!part) return part.error();
    return (*part)->flattened(file, shot);
}

Expected<Traced> traced_objects(const FlatPicture& flat, const Tracing& tracing, const Brush& brush) {
    const auto part = vision_part();
    if (!part) return part.error();
    return (*part)->traced_objects(flat, tracing, brush);
}

} // namespace drawercast::capture
