// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/theme_of.h"

#include "theme/style.h"

#include <QStyle>
#include <QWidget>

namespace drawercast::app {

const theme::Theme& theme_of(const QWidget* widget) {
    static const theme::Theme light = theme::light_theme();
    if (widget == nullptr) return light;
    const auto* style = dynamic_cast<const theme::Style*>(widget->style()); // no Q_OBJECT in it to cast by
    return style != nullptr ? style->theme() : light;
}

} // namespace drawercast::app
