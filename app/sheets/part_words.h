// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <QString>

#include <string>

/// What a part of the mold is called on sheets and paper, by its label ("d1 wall front", "d1 7a.2").
namespace drawercast::sheets {

QString part_words(const std::string& label); ///< with its drawer
QString part_name(const std::string& label);  ///< without it

/// Where the fence stands for a strip so wide, `said` as the job says it: a narrow one comes off the free
/// side.
QString fence_words(double fence_mm, const QString& said);

/// Of a screw or pin, as the names of the shop's screws have it: "4 × 40"; where the job has inches with the
/// unit it is not in.
QString screw_size(const job::Job& job, double diameter_mm, double length_mm);

/// "2 pcs 4 × 40", "1 pc Batten 45 × 45": how many of a thing whose name is or ends in a size.
QString pieces_of(int count, const QString& thing);

} // namespace drawercast::sheets
