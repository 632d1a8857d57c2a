// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include <QByteArray>

#include <string>
#include <vector>

namespace drawercast::subcommands {

struct DrawingFile {
    std::string name; ///< "d1-pattern-board.svg"
    QByteArray bytes;
};

/// Every sheet of every drawer as an SVG at true size. Needs an application object.
std::vector<DrawingFile> drawing_files(const job::Job& job, const plan::Plan& plan);

} // namespace drawercast::subcommands
