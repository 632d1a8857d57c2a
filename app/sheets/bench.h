// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/sheet.h"

#include <QtGlobal>

#include <string_view>

namespace drawercast::sheets {

/// The frame of boards and bars on the bench: nothing there is mirrored, and nothing there is a place in a
/// drawer.
struct OnBench;

inline std::string_view frame_words(const Sheet<OnBench>&) {
    return QT_TRANSLATE_NOOP("Sheets", "Boards, as sawn");
}
inline bool is_mirrored(const Sheet<OnBench>&) { return false; }

} // namespace drawercast::sheets
