// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/contrast.h"

#include <algorithm>
#include <cmath>

namespace drawercast::theme {

namespace {

double linear(double channel) {
    return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

} // namespace

double luminance(const QColor& color) {
    const QColor rgb = color.toRgb();
    const auto part = [](int level) { return linear(level / 255.0); };
    return 0.2126 * part(rgb.red()) + 0.7152 * part(rgb.green()) + 0.0722 * part(rgb.blue());
}

double contrast(const QColor& one, const QColor& other) {
    const auto [dark, light] = std::minmax({luminance(one), luminance(other)});
    return (light + 0.05) / (dark + 0.05);
}

} // namespace drawercast::theme
