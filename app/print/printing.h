// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateTime>
#include <QString>

namespace drawercast::print {

/// What the job file does not say but a print does. The caller knows the clock, nobody below does.
struct Printing {
    QString program;      ///< "Drawercast 0.1.0"
    QString at;           ///< "2031-03-04 14:32"
    QString corrected{};  ///< for which printer; empty: for none
    QString correction{}; ///< what it is corrected for, a sentence
};

/// By this program, for no printer.
Printing printing_at(const QDateTime& now);

} // namespace drawercast::print
