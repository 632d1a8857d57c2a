// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/answers.h"

#include "sheets/marks.h"

#include <QString>

/// What holds a block from below, on drawings and in tables.
namespace drawercast::sheets {

Sign sign_of(casting::Holder by);

/// "screw 4 mm"
QString words_of(casting::Holder by);

/// What stands beside its mark: of the usual screw nothing.
QString remark_of(casting::Holder by);

} // namespace drawercast::sheets
