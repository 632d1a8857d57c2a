// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/theme_of.h"

#include "theme/style.h"

#include <QWidget>

namespace drawercast::theme {

const Theme& theme_of(const QWidget* widget) {
    static const Theme light = light_theme();
    const auto* style =
        widget ? dynamic_cast<const Style*>(widget->style()) : nullptr; // no Q_OBJECT to cast by
    return style ? style->theme() : light;
}

} // namespace drawercast::theme
