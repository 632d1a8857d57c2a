// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/page.h"

#include <vector>

class QPrinter;

namespace drawercast::app {

/// Prints the pages at true size: the whole sheet is the canvas, nothing is fitted to it. The printer's own
/// settings (copies, tray) are left as they are. False where it could not begin or a page failed.
bool print_pages(const std::vector<print::Page>& pages, QPrinter& printer);

} // namespace drawercast::app
