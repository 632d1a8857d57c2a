// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <string>

/// What a part of the mold is called on sheets and paper, by its label ("d1 wall front", "d1 7a.2").
namespace drawercast::sheets {

QString part_words(const std::string& label); ///< with its drawer
QString part_name(const std::string& label);  ///< without it

} // namespace drawercast::sheets
