// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

#include <QByteArray>

#include <string>
#include <vector>

/// Reads back what a PDF really draws: the numbers of its content streams through their matrices, not what a
/// viewer makes of them.
namespace drawercast::test {

struct InkPath {
    std::vector<shape::Vec> points; ///< mm from the page's lower left corner; ends and control points
    std::vector<char> kinds;        ///< of each point: m, l or c (three of them for a curve)
    bool stroked = false;
    bool filled = false;
    bool clips = false;
    double width_mm = 0; ///< of the line

    shape::Box box() const;
};
struct InkPage {
    double width_mm = 0;
    double height_mm = 0;
    std::vector<InkPath> paths;
};

/// Unpacks the file with qpdf. Fails the running test where that does not work.
std::vector<InkPage> read_pdf(const QByteArray& pdf);

/// Standard output of a shell command; `exit` gets its code.
std::string output_of(const std::string& command, int* exit = nullptr);

/// A file of these bytes in a fresh folder that lives as long as the test program.
std::string file_of(const QByteArray& bytes, const std::string& name);

} // namespace drawercast::test
