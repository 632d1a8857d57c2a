// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/ink.h"

#include <QByteArray>
#include <QString>

namespace drawercast::sheets {

/// An SVG 1.1 drawing `size_mm` large whose user unit is one millimeter, numbers with six decimals: what is
/// 100 mm in the inks is 100 mm in the file. Marks of one subject are one group, with its id as a title.
QByteArray svg_of(const Inks& inks_mm, Vec size_mm, const QString& title);

} // namespace drawercast::sheets
