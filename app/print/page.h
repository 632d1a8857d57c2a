// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/printing.h"
#include "sheets/ink.h"
#include "theme/pens.h"

#include <vector>

namespace drawercast::print {

using shape::Box;
using shape::Vec;

/// One printed page; its inks in 1/96 in from the paper's upper left corner, y down.
struct Page {
    Vec size_mm;
    sheets::Inks inks;
    QString name{};    ///< "Pattern board A1": which of them it is
    QString drawer{};  ///< whose, where it is one's
    Vec stretch{1, 1}; ///< about its middle, for a printer that is off (print/correction.h)
};

constexpr double px(double mm) { return mm * theme::px_per_mm; }
constexpr Vec px(Vec mm) { return {px(mm.x), px(mm.y)}; }
constexpr Box px(const Box& mm) { return {px(mm.min), px(mm.max)}; }

} // namespace drawercast::print
