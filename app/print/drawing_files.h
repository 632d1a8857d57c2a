// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include "sheets/ink.h"

#include <QByteArray>

#include <string>
#include <vector>

namespace drawercast::print {

/// A sheet at true size with a line below that says what it is, y down from its upper left corner.
struct Drawing {
    std::string file; ///< "d1-pattern-board.svg"
    QString title;
    shape::Vec size_mm;
    sheets::Inks inks_mm;
};

/// Every sheet of every drawer. Needs an application object.
std::vector<Drawing> drawings(const job::Job& job, const plan::Plan& plan);

struct DrawingFile {
    std::string name; ///< "d1-pattern-board.svg"
    QByteArray bytes;
};

/// The same as SVG, a unit to the millimeter.
std::vector<DrawingFile> drawing_files(const job::Job& job, const plan::Plan& plan);

} // namespace drawercast::print
