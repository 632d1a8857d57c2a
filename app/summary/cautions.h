// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <vector>

namespace drawercast::summary {

/// What everybody who casts must know; stands in every summary. The program gives no exposure advice of its
/// own: it points to the safety sheet and to local rules.
std::vector<QString> cautions();

} // namespace drawercast::summary
