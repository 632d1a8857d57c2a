// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/template_kind.h"

#include <array>
#include <cstddef>
#include <utility>

namespace drawercast::print {

bool shows_cuts(TemplateKind kind) {
    return kind != TemplateKind::pattern_board && kind != TemplateKind::drawer_check;
}

namespace {

constexpr std::array names{
    std::pair{std::string_view("pattern-board"), TemplateKind::pattern_board},
    std::pair{std::string_view("drawer-check"), TemplateKind::drawer_check},
    std::pair{std::string_view("wall-strips"), TemplateKind::wall_strips},
    std::pair{std::string_view("labels"), TemplateKind::labels},
    std::pair{std::string_view("pressure-plate"), TemplateKind::pressure_plate},
    std::pair{std::string_view("base-drilling"), TemplateKind::base_drilling},
};

} // namespace

std::optional<TemplateKind> template_named(std::string_view name) {
    for (const auto& [own, kind] : names)
        if (own == name) return kind;
    return std::nullopt;
}

std::string template_names() {
    std::string out;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i > 0) out += i + 1 == names.size() ? " or " : ", ";
        out += names[i].first;
    }
    return out;
}

} // namespace drawercast::print
