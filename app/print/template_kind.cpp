// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/template_kind.h"

namespace drawercast::print {

bool shows_cuts(TemplateKind kind) {
    return kind != TemplateKind::pattern_board && kind != TemplateKind::drawer_check;
}

std::optional<TemplateKind> template_named(std::string_view name) {
    if (name == "pattern-board") return TemplateKind::pattern_board;
    if (name == "drawer-check") return TemplateKind::drawer_check;
    if (name == "wall-strips") return TemplateKind::wall_strips;
    if (name == "labels") return TemplateKind::labels;
    if (name == "pressure-plate") return TemplateKind::pressure_plate;
    if (name == "base-drilling") return TemplateKind::base_drilling;
    return std::nullopt;
}

} // namespace drawercast::print
