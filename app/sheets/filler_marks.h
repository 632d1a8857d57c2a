// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/fillers.h"
#include "job/job.h"

#include "sheets/marks.h"

#include <QString>

namespace drawercast::sheets {

QString filler_name(const casting::Filler& filler); ///< "F1"

/// Its name, with its height where `with_height_mm` says one, clear of its screws; on a leader where the
/// filler is too small for words; one that is only glued has no name then.
LabelMark filler_label(const casting::Filler& filler, const job::Job& job, theme::TextRole role,
                       std::optional<double> with_height_mm);

} // namespace drawercast::sheets
