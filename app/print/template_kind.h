// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace drawercast::print {

enum class TemplateKind { pattern_board, drawer_check, wall_strips, labels, pressure_plate, base_drilling };

/// Whether it shows what takes seconds to work out (plan::whole); the others are drawn from plan::compute.
bool shows_cuts(TemplateKind kind);

std::optional<TemplateKind> template_named(std::string_view name); ///< "pattern-board" …
std::string template_names();                                      ///< all of them, "…, … or …"

} // namespace drawercast::print
