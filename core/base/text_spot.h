// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/phrase.h"

#include <cstddef>
#include <string_view>

namespace drawercast {

/// "line 41, column 16" of a byte of a text: both from 1, columns in bytes; the text's end for one past it.
Phrase line_and_column(std::string_view text, std::size_t at);

} // namespace drawercast
