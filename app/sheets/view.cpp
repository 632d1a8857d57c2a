// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/view.h"

namespace drawercast::sheets {

Path View::operator()(const Path& path) const {
    Path mapped = path;
    for (Strand& strand : mapped.strands) {
        strand.start = (*this)(strand.start);
        for (Piece& piece : strand.pieces) {
            piece.to = (*this)(piece.to);
            piece.radius *= -per_mm; // y points the other way: left turns become right turns
        }
    }
    return mapped;
}

} // namespace drawercast::sheets
