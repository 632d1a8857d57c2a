// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/page.h"

#include <QString>
#include <QTransform>

#include <map>

namespace drawercast::print {

/// What the 100 mm scales of pages measure that a printer printed uncorrected, mm: those along the paper's
/// short side and those along its long one. A printer feeds paper one way only, so a page turned is off as
/// its paper is.
struct Correction {
    double short_mm = 100;
    double long_mm = 100;
    bool operator==(const Correction&) const = default;
};

/// By what pages go to: a printer's name, "PDF" for files.
using Corrections = std::map<QString, Correction>;

/// Nothing that moves paper is off by more: then some window fitted the page, which no factor puts right.
/// What is printed keeps off the paper's unprintable edge up to this.
inline constexpr double correctable_mm = 1.5;

bool is_none(const Correction& correction); ///< 100 and 100
bool is_sound(const Correction& correction);

/// By how much such a page is drawn longer, for its scales to come out right.
Vec stretch_of(const Correction& correction, Vec page_mm);

/// What a cover says of it: "Corrected for “Shop”: its 100 mm scales measured …".
QString sentence_of(const Correction& correction, const QString& printer);

/// The page's stretch about its middle, in its own units.
QTransform stretched(const Page& page);

} // namespace drawercast::print
