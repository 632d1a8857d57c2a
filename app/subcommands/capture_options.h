// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "capture/measure.h"

#include <optional>
#include <string>

namespace drawercast::subcommands {

/// What `capture` was told about the picture.
struct CaptureIn {
    capture::Shot shot;
    std::optional<double> height_mm; ///< of all objects, from the sheet to their widest edge
    bool ground_said = false;        ///< --on or --scan was given
};

/// Whether `name` is an option of capture's own.
bool is_capture_option(const std::string& name);

/// Puts one of them into `in`, or says why not.
std::optional<Problem> take_capture(const std::string& name, const std::string& value, CaptureIn& in);

} // namespace drawercast::subcommands
