// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/paper.h"

namespace drawercast::print {

std::optional<Paper> paper_named(std::string_view name) {
    if (name == "a4") return Paper::a4;
    if (name == "letter") return Paper::letter;
    if (name == "a3") return Paper::a3;
    if (name == "tabloid") return Paper::tabloid;
    return std::nullopt;
}

std::optional<Orientation> orientation_named(std::string_view name) {
    if (name == "portrait") return Orientation::portrait;
    if (name == "landscape") return Orientation::landscape;
    return std::nullopt;
}

shape::Vec size_mm(Paper paper, Orientation orientation) {
    shape::Vec size{210, 297};
    switch (paper) {
    case Paper::a4:
        break;
    case Paper::letter:
        size = {215.9, 279.4};
        break;
    case Paper::a3:
        size = {297, 420};
        break;
    case Paper::tabloid:
        size = {279.4, 431.8};
        break;
    }
    if (orientation == Orientation::landscape) return {size.y, size.x};
    return size;
}

} // namespace drawercast::print
