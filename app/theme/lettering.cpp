// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/lettering.h"

#include <QFontDatabase>
#include <QFontMetricsF>

#include <map>
#include <tuple>
#include <utility>

static void make_fonts_known() { Q_INIT_RESOURCE(fonts); } // the macro may not stand in a namespace

namespace drawercast::theme {

namespace {

const char* family_of(Face face) {
    switch (face) {
    case Face::regular:
    case Face::bold:
        return "Go";
    case Face::medium:
        return "Go Medium"; // a family of its own to Qt
    case Face::drafting:
        return "Routed Gothic";
    }
    return "Go";
}

} // namespace

bool load_fonts() {
    static const bool loaded = [] {
        make_fonts_known();
        bool all = true;
        for (const char* name : {"Go-Regular", "Go-Medium", "Go-Bold", "Routed-Gothic"})
            all &= QFontDatabase::addApplicationFont(
                       QStringLiteral(":/fonts/%1.ttf").arg(QLatin1String(name))) >= 0;
        return all;
    }();
    return loaded;
}

QFont font_of(Face face, int px) {
    QFont font(QString::fromLatin1(family_of(face)));
    font.setPixelSize(px);
    font.setWeight(face == Face::bold ? QFont::Bold : face == Face::medium ? QFont::Medium : QFont::Normal);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setKerning(true);
    return font;
}

Lettering lettering_of(TextRole role, Medium medium) {
    const bool paper = medium == Medium::paper; // there 10 px are 1.9 mm capitals, 13 px 2.5 mm
    switch (role) {
    case TextRole::name:
        return {Face::regular, paper ? 11.5 : 12};
    case TextRole::name_small:
        return {Face::regular, paper ? 9.5 : 12};
    case TextRole::key:
        return {Face::bold, paper ? 11.5 : 12};
    case TextRole::key_small:
        return {Face::bold, paper ? 9.5 : 11};
    case TextRole::depth:
        return {Face::bold, paper ? 13.0 : 12};
    case TextRole::figure:
        return {Face::regular, paper ? 13.0 : 12};
    case TextRole::caption:
        return {Face::regular, paper ? 10.0 : 12};
    case TextRole::zone:
        return {Face::regular, paper ? 9.5 : 11};
    case TextRole::edge_word:
        return {Face::drafting, paper ? 13.0 : 13, 1.16};
    case TextRole::plate:
        return {Face::bold, paper ? 11.5 : 12};
    case TextRole::badge:
        return {Face::bold, paper ? 10.5 : 12};
    case TextRole::template_name:
        return {Face::regular, paper ? 18.4 : 13};
    case TextRole::template_small:
        return {Face::regular, paper ? 11.5 : 12};
    }
    return {};
}

/// Shaping letters takes most of the time of a drag's step, and the words are mostly those of the step
/// before.
double width_of(const QString& text, const Lettering& lettering) {
    using Key = std::tuple<Face, double, QString>;
    constexpr std::size_t most_kept = 4096;
    constexpr qsizetype longest_kept = 1024; // letters; what is longer comes once, and would fill the memory
    thread_local std::map<Key, double> kept; ///< of size 1
    Key key{lettering.face, lettering.spacing, text};
    if (const auto at = kept.find(key); at != kept.end()) return at->second * lettering.px;
    load_fonts();             // what is measured by another font would be kept
    constexpr int size = 256; // large, so that rounding inside the font engine does not matter
    QFont font = font_of(lettering.face, size);
    font.setLetterSpacing(QFont::PercentageSpacing, lettering.spacing * 100);
    const double width = QFontMetricsF(font).horizontalAdvance(text) / size;
    if (text.size() <= longest_kept) {
        if (kept.size() >= most_kept) kept.clear();
        kept.emplace(std::move(key), width);
    }
    return width * lettering.px;
}

} // namespace drawercast::theme
