// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/blue_pencil.h"

#include <iterator>

namespace drawercast::app {

namespace {

constexpr double casing_px = 2.5;
constexpr double beside_px = 4; ///< paper left and right of words
constexpr double above_px = 2.5;

theme::Lettering lettering() { return theme::lettering_of(theme::TextRole::figure, theme::Medium::screen); }

} // namespace

void BluePencil::line(const sheets::Path& path, double width, std::vector<double> dashes) {
    const double wide = theme_.line(width);
    QColor casing = theme_.paper;
    casing.setAlphaF(static_cast<float>(theme_.casing));
    casings_.push_back(sheets::Stroke{path, {casing, wide + casing_px, {}}});
    lines_.push_back(sheets::Stroke{path, {theme_.blue, wide, std::move(dashes)}});
}

void BluePencil::fill(const sheets::Path& path) { lines_.push_back(sheets::Fill{path, theme_.blue}); }

shape::Vec BluePencil::plate_size(const QString& text) const {
    const auto face = lettering();
    return {sheets::written_width(text, face) + 2 * beside_px,
            face.px * (theme::capital_share + theme::descent_share) + 2 * above_px};
}

void BluePencil::words(const QString& text, const shape::Box& plate) {
    const auto face = lettering();
    words_.push_back(sheets::Fill{sheets::path_of(plate), theme_.paper});
    const shape::Vec base{plate.center().x, plate.center().y + face.px * theme::capital_share / 2};
    sheets::write(words_, text, base, face, theme_.blue, sheets::Align::center);
}

sheets::Inks BluePencil::take() {
    sheets::Inks all = std::move(casings_);
    for (auto* more : {&lines_, &words_})
        all.insert(all.end(), std::make_move_iterator(more->begin()), std::make_move_iterator(more->end()));
    return all;
}

} // namespace drawercast::app
