// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/one_sheet.h"

#include "source_dir.h"

#include <fstream>
#include <sstream>
#include <string>

namespace drawercast::stock {

/// A published set of tests/data/packing; its source stands in the file. Without pieces where there is none.
inline OneSheetIn published_set(const std::string& name) {
    std::ifstream file(std::string(DRAWERCAST_SOURCE_DIR) + "/tests/data/packing/" + name + ".txt");
    OneSheetIn in;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line[0] == '#') continue;
        std::istringstream words(line);
        if (in.width == 0) {
            words >> in.width >> in.height;
            continue;
        }
        ValuedPiece piece;
        words >> piece.width >> piece.height >> piece.limit >> piece.value;
        in.pieces.push_back(piece);
    }
    return in;
}

} // namespace drawercast::stock
