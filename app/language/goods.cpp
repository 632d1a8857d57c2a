// SPDX-License-Identifier: GPL-3.0-or-later
#include "language/goods.h"

#include <QCoreApplication>

#include <algorithm>
#include <iterator>

namespace drawercast::language {

namespace {

#define TEXT(words) QT_TRANSLATE_NOOP("Goods", words)
constexpr const char* names[] = {
    TEXT("Particleboard 12"),
    TEXT("Particleboard 16"),
    TEXT("Particleboard 18"),
    TEXT("Particleboard 19"),
    TEXT("Particleboard 22"),
    TEXT("Particleboard 25"),
    TEXT("Plywood 18"),
    TEXT("Screw 4 × 40"),
    TEXT("Screw 4 × 50"),
    TEXT("Screw 4 × 60"),
    TEXT("Screw 4.5 × 100"),
    TEXT("Screw 5 × 60"),
    TEXT("Screw 5 × 80"),
    TEXT("Screw 5 × 100"),
    TEXT("Screw 5 × 110"),
    TEXT("Bar clamp"),
    TEXT("Rod M8 with wing nut"),
    TEXT("Pipe 32"),
    TEXT("Pipe 40"),
    TEXT("Pipe 50"),
    TEXT("Pipe 75"),
    TEXT("Pipe 90"),
    TEXT("Pipe 110"),
    TEXT("Pipe 125"),
    TEXT("Firm, rises ×7"),
    TEXT("Medium, rises ×10"),
    TEXT("Soft, rises ×13"),
    TEXT("3 L kit"),
    TEXT("10 L kit"),
    TEXT("50 L kit"),
    // objects of published size, each with its source
    TEXT("Round cell R03 (AAA)"),
    TEXT("IEC 60086-2: diameter 9.5–10.5, height 43.3–44.5; largest taken, lying"),
    TEXT("Round cell R6 (AA)"),
    TEXT("IEC 60086-2: diameter 13.5–14.5, height 49.2–50.5; largest taken, lying"),
    TEXT("Round cell R14 (C)"),
    TEXT("IEC 60086-2: diameter 24.9–26.2, height 48.6–50.0; largest taken, lying"),
    TEXT("Round cell R20 (D)"),
    TEXT("IEC 60086-2: diameter 32.3–34.2, height 59.5–61.5; largest taken, standing"),
    TEXT("Battery 6F22 (9 V)"),
    TEXT("IEC 60086-2: at most 26.5 × 17.5 × 48.5; standing"),
    TEXT("Lithium cell 18650"),
    TEXT("Trade size: 18 mm diameter, 65.0 mm high; bare cells measure up to 18.6; lying"),
    TEXT("ID-1 card"),
    TEXT("ISO/IEC 7810: 85.60 × 53.98 × 0.76, corners 3.18; a stack of ten, on edge"),
    TEXT("Coin cell CR2032"),
    TEXT("IEC 60086: diameter 20.0, height 3.2, as its designation says; on edge"),
    TEXT("Gauge block 35 × 9, 100 long"),
    TEXT("ISO 3650: section 35 × 9 above 10 mm length (section not checked against the standard); lying"),
    TEXT("Hexagon nut M16, across flats 24"),
    TEXT("ISO 272: 24 across flats, 27.71 across corners; ISO 4032 height 14.8 (not checked against the "
         "standard)"),
    TEXT("Rack blanking panel, 1 unit"),
    TEXT("IEC 60297-3-100: 482.6 wide, 44.45 less 0.79 high; 25 deep with its flange taken"),
};
#undef TEXT

QString in_language(const char* name) { return QCoreApplication::translate("Goods", name); }

} // namespace

QString goods_name(const std::string& name) {
    const auto* at = std::find(std::begin(names), std::end(names), name);
    return at == std::end(names) ? QString::fromStdString(name) : in_language(*at);
}

std::string goods_key(const QString& shown) {
    const auto* at = std::find_if(std::begin(names), std::end(names),
                                  [&](const char* name) { return in_language(name) == shown; });
    return at == std::end(names) ? shown.toStdString() : *at;
}

} // namespace drawercast::language
