// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace drawercast::app {

/// An object is dragged from the list onto a drawer under this type; the data is its id.
inline constexpr const char* dragged_object = "application/x-drawercast-object";

} // namespace drawercast::app
