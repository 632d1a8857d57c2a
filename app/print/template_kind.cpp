// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/template_kind.h"

namespace drawercast::print {

std::optional<TemplateKind> template_named(std::string_view name) {
    if (name == "pattern-board") return TemplateKind::pattern_board;
    if (name == "drawer-check") return TemplateKind::drawer_check;
    return std::nullopt;
}

} // namespace drawercast::print
