// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <QByteArray>
#include <QString>

#include <vector>

namespace drawercast::summary {

/// A list for a spreadsheet: RFC 4180, comma and decimal point, UTF-8, first row the heads. Lengths in mm or,
/// where the job is shown in inches, in decimal inches; masses in g or lb.
struct CsvList {
    QString name; ///< of the file, without its ending: "objects"
    QByteArray bytes;
};

/// Objects (which can be pasted back as a list), pockets, checks, and, once it is worked out, what to cut and
/// what to buy.
std::vector<CsvList> csv_lists(const job::Job& job, const plan::Plan& plan);

} // namespace drawercast::summary
